package taperbook.app;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import taperbook.problem.Checked;
import taperbook.problem.Problem;
import taperbook.problem.Severity;

/** Reads everything, says every problem, and writes nothing. */
final class CheckCommand {
  private final Messages messages;
  private final Surroundings surroundings;

  CheckCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  ExitStatus run(Request request) {
    Workshop workshop = Workshop.in(request.folder(), surroundings.environment());
    Project project = workshop.project();
    Set<Problem> all = new LinkedHashSet<>();
    if (request.names().isEmpty()) {
      all.addAll(project.folderProblems());
      project
          .sessionNames()
          .forEach(name -> all.addAll(project.visitSession(name).value().problems()));
      project
          .rangeTestNames()
          .forEach(name -> all.addAll(project.visitRangeTest(name).value().problems()));
    }
    List<String> names = workshop.asked(request);
    List<String> typed = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      messages.progress(i, names.size(), names.get(i));
      Checked<Making> making = workshop.making(names.get(i));
      all.addAll(making.problems());
      if (making.value().isPresent()) {
        Making.Findings findings = making.value().get().findings();
        all.addAll(findings.problems());
        FigureLines lines = new FigureLines(names.get(i), !request.names().isEmpty());
        findings.figures().ifPresent(f -> typed.addAll(lines.of(f)));
      }
    }
    messages.problems(List.copyOf(all));
    typed.forEach(messages::result);
    long errors = all.stream().filter(p -> p.severity() == Severity.ERROR).count();
    long notices = all.size() - errors;
    messages.result(
        "checked "
            + count(project.sessionNames().size(), "session")
            + ", "
            + count(project.rangeTestNames().size(), "range test")
            + ", "
            + count(names.size(), "report")
            + ": "
            + count(errors, "error")
            + ", "
            + count(notices, "notice"));
    return errors == 0 ? ExitStatus.DONE : ExitStatus.INPUT_REFUSED;
  }

  private static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }
}
