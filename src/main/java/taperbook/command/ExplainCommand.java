package taperbook.command;

import java.util.Collection;
import java.util.List;
import taperbook.build.CommandContext;
import taperbook.cli.ExitStatus;
import taperbook.cli.Messages;
import taperbook.cli.ProcessContext;
import taperbook.cli.Request;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.NearestNames;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Joined;
import taperbook.i18n.Texts;
import taperbook.plan.Plan;
import taperbook.plan.ReportPlan;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.workspace.InputRows;
import taperbook.workspace.ReportSources;
import taperbook.workspace.StoppedException;

/** Explains how a number of a report was computed, and writes nothing. */
public final class ExplainCommand {
  private final Messages messages;
  private final ProcessContext processContext;

  public ExplainCommand(Messages messages, ProcessContext processContext) {
    this.messages = messages;
    this.processContext = processContext;
  }

  public ExitStatus run(Request request) {
    List<String> names = request.names();
    if (names.size() < 2 || names.size() > 3) {
      messages.stopped(Texts.of("command.explain_command.explain_needs_name_of_report"));
      messages.remark(Texts.of("command.explain_command.usage_taperbook_explain_name_id"));
      return ExitStatus.WRONG_USAGE;
    }
    CommandContext commandContext =
        CommandContext.in(request.folder(), processContext.environment());
    String report = names.get(0);
    List<String> reports = commandContext.project().reportNames();
    if (!reports.contains(report)) {
      throw unknown(Texts.of("command.common.there_is_no_report"), report, reports);
    }
    Checked<Plan> plan = commandContext.project().plan(report);
    if (plan.value().isEmpty()) {
      messages.problems(plan.problems());
      return ExitStatus.INPUT_REFUSED;
    }
    return plan.value()
        .get()
        .fold(
            session -> ofReport(commandContext, session, names),
            library -> new LibraryExplanation(messages, commandContext).run(library, names));
  }

  private ExitStatus ofReport(CommandContext commandContext, ReportPlan plan, List<String> names) {
    Checked<ReportSources> sources = commandContext.project().sources(plan);
    Checked<ReportResult> measured = sources.then(s -> commandContext.pipeline(s).measured());
    messages.problems(measured.problems());
    if (measured.value().isEmpty() || sources.value().isEmpty()) {
      return ExitStatus.INPUT_REFUSED;
    }
    ReportResult result = measured.value().get();
    ReportNumber number = number(result, session(result, names), names.get(1));
    NumberFormatter wording = new NumberFormatter(plan.style());
    InputRows rows = new InputRows(sources.value().get().files());
    Explanation.lines(number, result.cautions(number), wording, rows, messages.width())
        .forEach(messages::result);
    return ExitStatus.DONE;
  }

  private static String session(ReportResult result, List<String> names) {
    List<String> known = result.sessions().stream().map(s -> s.session().name()).toList();
    String name = names.size() == 2 ? known.get(0) : names.get(2);
    if (!known.contains(name)) {
      throw unknown(
          Texts.of("command.explain_command.report_has_no_session", names.get(0)), name, known);
    }
    return name;
  }

  private static ReportNumber number(ReportResult result, String session, String id) {
    return result
        .find(id, session)
        .orElseThrow(
            () ->
                unknown(
                    Texts.of(
                        "command.explain_command.report_has_no_number_of",
                        result.plan().name(),
                        session),
                    id,
                    result.ids(session)));
  }

  static StoppedException unknown(String what, String name, Collection<String> known) {
    List<String> near = NearestNames.names(name, known);
    return new StoppedException(
        Texts.of("command.explain_command.called", what, name.replaceAll("\\p{Cntrl}", " "))
            + (near.isEmpty()
                ? Texts.of("command.explain_command.there", all(known))
                : Texts.of("command.explain_command.perhaps", Joined.or(near))));
  }

  private static String all(Collection<String> known) {
    return known.isEmpty()
        ? Texts.of("command.explain_command.is_none")
        : Texts.of(
            "command.explain_command.are", String.join(", ", known.stream().sorted().toList()));
  }
}
