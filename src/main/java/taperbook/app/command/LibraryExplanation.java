package taperbook.app.command;

import java.util.ArrayList;
import java.util.List;
import taperbook.app.making.LibraryIntake;
import taperbook.app.making.Workshop;
import taperbook.app.process.ExitStatus;
import taperbook.app.process.Messages;
import taperbook.app.project.InputRows;
import taperbook.app.project.Project;
import taperbook.app.project.Visited;
import taperbook.model.InputFile;
import taperbook.model.LibraryPlan;
import taperbook.model.LibraryRow;
import taperbook.model.RangeTest;
import taperbook.model.ReportNumber;
import taperbook.model.Session;
import taperbook.words.Wording;

/** Says how a number of a library came about: that of one session, which has to be named. */
final class LibraryExplanation {
  private final Messages messages;
  private final Workshop workshop;

  LibraryExplanation(Messages messages, Workshop workshop) {
    this.messages = messages;
    this.workshop = workshop;
  }

  /**
   * Explains.
   *
   * @param names name of the library, id of the number, name of the session
   */
  ExitStatus run(LibraryPlan plan, List<String> names) {
    Project project = workshop.project();
    if (names.size() < 3) {
      messages.stopped("in a library explain needs the name of a session too.");
      messages.remark("usage: taperbook explain " + plan.name() + " ID SESSION");
      return ExitStatus.WRONG_USAGE;
    }
    String session = names.get(2);
    if (!project.sessionNames().contains(session)) {
      throw ExplainCommand.unknown(
          "the library " + plan.name() + " has no session", session, project.sessionNames());
    }
    List<InputFile> files = new ArrayList<>();
    LibraryIntake intake = LibraryIntake.withoutArticle(plan);
    for (String name : project.rangeTestNames()) {
      Visited<RangeTest> test = project.visitRangeTest(name);
      intake.rangeTest(name, test);
      files.addAll(test.files());
    }
    Visited<Session> visited = project.visitSession(session);
    intake.take(intake.measured(session, visited));
    files.addAll(visited.files());
    messages.problems(intake.problems());
    return intake
        .result()
        .row(session)
        .map(row -> explained(plan, row, names.get(1), files))
        .orElse(ExitStatus.INPUT_REFUSED);
  }

  private ExitStatus explained(LibraryPlan plan, LibraryRow row, String id, List<InputFile> files) {
    ReportNumber number =
        row.numbers()
            .find(id)
            .orElseThrow(
                () ->
                    ExplainCommand.unknown(
                        "the library " + plan.name() + " has no number of " + row.session(),
                        id,
                        row.numbers().ids()));
    Wording wording = new Wording(plan.style());
    Explanation.lines(number, number.cautions(), wording, new InputRows(files), messages.width())
        .forEach(messages::result);
    return ExitStatus.DONE;
  }
}
