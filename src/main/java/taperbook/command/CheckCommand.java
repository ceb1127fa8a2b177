package taperbook.command;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import taperbook.build.CommandContext;
import taperbook.build.ReportBuild;
import taperbook.cli.ExitStatus;
import taperbook.cli.Messages;
import taperbook.cli.ProcessContext;
import taperbook.cli.Request;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.Severity;
import taperbook.i18n.Texts;
import taperbook.input.DuplicateReadings;
import taperbook.input.mapping.ColumnMapProposal;
import taperbook.session.InputHash;
import taperbook.session.Session;
import taperbook.workspace.FirstSteps;
import taperbook.workspace.Project;
import taperbook.workspace.VisitedSession;

/** Reads all input, reports all problems, and writes nothing. */
public final class CheckCommand {
  private final Messages messages;
  private final ProcessContext processContext;

  public CheckCommand(Messages messages, ProcessContext processContext) {
    this.messages = messages;
    this.processContext = processContext;
  }

  public ExitStatus run(Request request) {
    CommandContext commandContext =
        CommandContext.in(request.folder(), processContext.environment());
    Project project = commandContext.project();
    if (!project.isStarted()) {
      FirstSteps.of(project).forEach(messages::remark);
      return ExitStatus.INPUT_REFUSED;
    }
    List<String> names = commandContext.requestedReports(request);
    // Reports first, because they cache the sessions that they use.
    Set<Problem> ofReports = new LinkedHashSet<>();
    List<String> typed = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      messages.progress(i, names.size(), names.get(i));
      Checked<ReportBuild> making = commandContext.reportBuild(names.get(i));
      ofReports.addAll(making.problems());
      if (making.value().isPresent()) {
        ReportBuild.Findings findings = making.value().get().findings(messages.steps());
        ofReports.addAll(findings.problems());
        FigureLines lines = new FigureLines(names.get(i), !request.names().isEmpty());
        findings.figures().ifPresent(f -> typed.addAll(lines.of(f)));
      }
    }
    Set<Problem> all = new LinkedHashSet<>();
    if (request.names().isEmpty()) {
      all.addAll(project.folderProblems());
      all.addAll(ofSessions(project));
    }
    all.addAll(ofReports);
    project.proposals(all).forEach(this::propose);
    messages.problems(List.copyOf(all));
    typed.forEach(messages::result);
    FirstSteps.of(project).forEach(messages::remark);
    long errors = all.stream().filter(p -> p.severity() == Severity.ERROR).count();
    long notices = all.size() - errors;
    messages.result(
        Texts.of(
            "command.check_command.checked",
            Texts.count(
                project.sessionNames().size(),
                "command.check_command.session",
                "command.check_command.sessions"),
            Texts.count(
                project.rangeTestNames().size(),
                "command.check_command.range_test",
                "command.check_command.range_tests"),
            Texts.count(
                names.size(), "command.check_command.report", "command.check_command.reports"),
            Texts.count(errors, "command.check_command.error", "command.check_command.errors"),
            Texts.count(notices, "command.check_command.notice", "command.check_command.notices")));
    return errors == 0 ? ExitStatus.DONE : ExitStatus.INPUT_REFUSED;
  }

  private Set<Problem> ofSessions(Project project) {
    Set<Problem> all = new LinkedHashSet<>();
    List<InputHash> files = new ArrayList<>();
    List<String> names = project.sessionNames();
    for (int i = 0; i < names.size(); i++) {
      messages.progress(i, names.size(), names.get(i));
      VisitedSession<Session> session = project.visitSession(names.get(i));
      all.addAll(session.value().problems());
      files.addAll(session.hashes());
    }
    all.addAll(DuplicateReadings.check(files));
    project
        .rangeTestNames()
        .forEach(name -> all.addAll(project.visitRangeTest(name).value().problems()));
    return all;
  }

  private void propose(ColumnMapProposal proposal) {
    messages.remark(
        Texts.of(
            "command.check_command.guess_to_check_row_by",
            proposal.path(),
            proposal.errors() == 0
                ? Texts.of("command.check_command.no_error")
                : Texts.count(
                    proposal.errors(),
                    "command.check_command.error",
                    "command.check_command.errors")));
    proposal.lines().forEach(messages::remark);
    if (!proposal.leftOut().isEmpty()) {
      messages.remark(Texts.of("command.check_command.these_lines_leave_out"));
      proposal.leftOut().forEach(each -> messages.remark("  " + each));
    }
  }
}
