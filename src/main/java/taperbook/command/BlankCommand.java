package taperbook.command;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import taperbook.blank.ReportStart;
import taperbook.blank.SheetKind;
import taperbook.blank.SheetPlan;
import taperbook.blank.StartFiles;
import taperbook.blank.StartUnits;
import taperbook.build.CommandContext;
import taperbook.buildinfo.BuildInfo;
import taperbook.buildinfo.ReportDate;
import taperbook.cli.Command;
import taperbook.cli.ExitStatus;
import taperbook.cli.Messages;
import taperbook.cli.Option;
import taperbook.cli.ProcessContext;
import taperbook.cli.Request;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.i18n.Texts;
import taperbook.input.folder.FileName;
import taperbook.output.pdf.SheetWriter;
import taperbook.plan.Paper;
import taperbook.quantity.Unit;
import taperbook.workspace.FirstSteps;
import taperbook.workspace.Project;
import taperbook.workspace.ProjectTemplates;
import taperbook.workspace.StartFolder;
import taperbook.workspace.StoppedException;

/** Writes blank input files and recording sheets. Never overwrites a file. */
public final class BlankCommand {
  private final Messages messages;
  private final ProcessContext processContext;

  public BlankCommand(Messages messages, ProcessContext processContext) {
    this.messages = messages;
    this.processContext = processContext;
  }

  public ExitStatus run(Request request) {
    List<String> names = request.names();
    String what = names.isEmpty() ? "" : names.get(0);
    List<String> rest = names.subList(Math.min(1, names.size()), names.size());
    StartFiles files = new StartFiles(units(request));
    return switch (what) {
      case "session" ->
          rest.size() == 1 ? write(request, rest, files.session(rest.get(0))) : usage(what);
      case "range-test" ->
          rest.size() == 1
              ? write(
                  request,
                  rest,
                  files.rangeTest(rest.get(0), request.options().containsKey(Option.LEGS)))
              : usage(what);
      case "report" -> rest.size() >= 2 ? report(request, rest) : usage(what);
      case "sheet" -> rest.size() <= 1 ? sheet(request, rest) : usage(what);
      default -> usage("");
    };
  }

  private static StartUnits units(Request request) {
    String symbol = request.options().getOrDefault(Option.UNITS, Unit.KILOMETRE.symbol());
    return new StartUnits(Unit.ofSymbol(symbol).orElseThrow());
  }

  private ExitStatus usage(String what) {
    messages.stopped(Texts.of("command.blank_command.blank_needs_to_know_what"));
    for (Command.Usage usage : Command.BLANK.usages()) {
      if (usage.arguments().startsWith(what)) {
        messages.remark(
            Texts.of(
                "command.blank_command.usage_taperbook_blank", usage.arguments(), usage.meaning()));
      }
    }
    messages.remark(Texts.of("command.blank_command.taperbook_help_blank_shows_examples"));
    return ExitStatus.WRONG_USAGE;
  }

  private ExitStatus write(Request request, List<String> names, SortedMap<String, String> files) {
    List<Problem> refused = new ArrayList<>();
    names.forEach(name -> refused.addAll(FileName.problems(name)));
    if (!refused.isEmpty()) {
      messages.problems(refused);
      return ExitStatus.INPUT_REFUSED;
    }
    new StartFolder(request.folder()).write(files);
    files
        .keySet()
        .forEach(path -> messages.result(Texts.of("command.blank_command.written", path)));
    List<String> next =
        FirstSteps.of(CommandContext.in(request.folder(), processContext.environment()).project());
    next.forEach(messages::remark);
    if (next.isEmpty()) {
      messages.remark(Texts.of("command.blank_command.fill_it_in_taperbook_check"));
    }
    return ExitStatus.DONE;
  }

  private ExitStatus report(Request request, List<String> names) {
    Project project = CommandContext.in(request.folder(), processContext.environment()).project();
    known(
        names.get(1),
        project.sessionNames(),
        "session",
        Texts.of("command.blank_command.no_session"));
    List<String> rangeTests = names.subList(2, names.size());
    rangeTests.forEach(
        name ->
            known(
                name,
                project.rangeTestNames(),
                "range-test",
                Texts.of("command.blank_command.no_range_test")));
    SortedMap<String, String> files = new TreeMap<>();
    files.put(
        "reports/" + names.get(0) + ".md",
        new ReportStart(
                request.options().containsKey(Option.UNITS)
                    ? units(request)
                    : new StartUnits(
                        project.distanceUnit(names.get(1), rangeTests).orElse(Unit.KILOMETRE)))
            .text(names.get(1), rangeTests));
    return write(request, names, files);
  }

  private static void known(String name, List<String> names, String what, String none) {
    if (!names.contains(name)) {
      StoppedException unknown = ExplainCommand.unknown(none, name, names);
      throw new StoppedException(
          Texts.of(
              "command.blank_command.taperbook_blank_name_begins_one", unknown.getMessage(), what),
          unknown);
    }
  }

  private ExitStatus sheet(Request request, List<String> rest) {
    SheetKind kind =
        SheetKind.ofWord(rest.isEmpty() ? SheetKind.SESSION.word() : rest.get(0)).orElse(null);
    if (kind == null) {
      return usage("sheet");
    }
    String size = request.options().getOrDefault(Option.PAPER, Paper.A4.word());
    Paper paper = Paper.ofWord(size).orElseThrow();
    SheetWriter writer =
        new SheetWriter(
            ProjectTemplates.ofSheet(request.folder()).withBuiltIn().texts(),
            BuildInfo.ofThisProgram().name(),
            new ReportDate(processContext.environment()).ofSheet());
    Checked<byte[]> pdf = writer.pdf(new SheetPlan(units(request)).sheet(kind), paper);
    messages.problems(pdf.problems());
    if (pdf.value().isEmpty()) {
      return ExitStatus.INPUT_REFUSED;
    }
    String path = "recording-sheet-" + kind.word() + "-" + paper.word() + ".pdf";
    SortedMap<String, byte[]> file = new TreeMap<>();
    file.put(path, pdf.value().get());
    new StartFolder(request.folder()).writeBytes(file);
    messages.result(Texts.of("command.blank_command.written", path));
    return ExitStatus.DONE;
  }
}
