package taperbook.command;

import java.util.ArrayList;
import java.util.List;
import taperbook.build.CommandContext;
import taperbook.build.LibraryIntake;
import taperbook.cli.ExitStatus;
import taperbook.cli.Messages;
import taperbook.format.NumberFormatter;
import taperbook.plan.LibraryPlan;
import taperbook.result.LibraryRow;
import taperbook.result.ReportNumber;
import taperbook.session.InputFile;
import taperbook.session.RangeTest;
import taperbook.session.Session;
import taperbook.workspace.InputRows;
import taperbook.workspace.Project;
import taperbook.workspace.VisitedSession;

/** Explains how a number of a library was computed: that of one session, which must be named. */
final class LibraryExplanation {
  private final Messages messages;
  private final CommandContext commandContext;

  LibraryExplanation(Messages messages, CommandContext commandContext) {
    this.messages = messages;
    this.commandContext = commandContext;
  }

  /**
   * Writes the explanation.
   *
   * @param names name of the library, id of the number, name of the session
   */
  ExitStatus run(LibraryPlan plan, List<String> names) {
    Project project = commandContext.project();
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
      VisitedSession<RangeTest> test = project.visitRangeTest(name);
      intake.rangeTest(name, test);
      files.addAll(test.files());
    }
    VisitedSession<Session> visited = project.visitSession(session);
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
    NumberFormatter wording = new NumberFormatter(plan.style());
    Explanation.lines(number, number.cautions(), wording, new InputRows(files), messages.width())
        .forEach(messages::result);
    return ExitStatus.DONE;
  }
}
