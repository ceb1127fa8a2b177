package taperbook.command;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.build.CommandContext;
import taperbook.build.ReportBuild;
import taperbook.buildinfo.BuildInfo;
import taperbook.buildinfo.ReportDate;
import taperbook.cli.ExitStatus;
import taperbook.cli.Messages;
import taperbook.cli.ProcessContext;
import taperbook.cli.Request;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.input.DuplicateReadings;
import taperbook.input.folder.FileName;
import taperbook.result.MovedNumber;
import taperbook.uptodate.StatCache;
import taperbook.verify.NumberMoves;
import taperbook.verify.NumbersFile;
import taperbook.workspace.FirstSteps;
import taperbook.workspace.PublishedFolder;
import taperbook.workspace.ReportLock;

/** Builds reports that are out of date. */
public final class ReportCommand {
  private static final String NUMBERS = "numbers.json";

  private final Messages messages;
  private final ProcessContext processContext;
  private final Set<Problem> reported = new LinkedHashSet<>();

  public ReportCommand(Messages messages, ProcessContext processContext) {
    this.messages = messages;
    this.processContext = processContext;
  }

  public ExitStatus run(Request request) {
    try (StatCache looks =
        BuildInfo.statCache(request.folder(), new ReportDate(processContext.environment()))) {
      return run(request, looks);
    }
  }

  private ExitStatus run(Request request, StatCache looks) {
    CommandContext commandContext =
        CommandContext.in(request.folder(), processContext.environment());
    if (request.names().isEmpty()) {
      report(commandContext.project().folderProblems());
    }
    List<String> names = commandContext.requestedReports(request);
    if (names.isEmpty()) {
      FirstSteps.of(commandContext.project()).forEach(messages::remark);
      return ExitStatus.INPUT_REFUSED;
    }
    if (request.names().isEmpty() && commandContext.project().folderProblems().isEmpty()) {
      looks.enterFolders(commandContext.project().sessionFolders());
    }
    int refused = 0;
    for (int i = 0; i < names.size(); i++) {
      messages.progress(i, names.size(), names.get(i));
      refused += make(commandContext, names.get(i), looks) ? 0 : 1;
    }
    report(DuplicateReadings.check(commandContext.project().kept()));
    if (refused > 0) {
      messages.remark(
          refused == 1
              ? Texts.of("command.report_command.one_report_was_refused_what")
              : Texts.of("command.report_command.reports_were_refused_what_was", refused));
    }
    return refused == 0 ? ExitStatus.DONE : ExitStatus.INPUT_REFUSED;
  }

  private boolean make(CommandContext commandContext, String name, StatCache looks) {
    if (looks.isUpToDate(name)) {
      messages.result(Texts.of("command.report_command.up_to_date", name));
      return true;
    }
    Checked<ReportBuild> making = commandContext.reportBuild(name);
    if (!FileName.isAllowed(name)) {
      // Nothing may be written under such a name, whether or not there is input.
      return refused(
          name, making.problems().isEmpty() ? FileName.problems(name) : making.problems());
    }
    // An existing lock is held by another run, or was left behind by a killed one.
    boolean clear =
        !commandContext.published(name).isCutOff()
            && !ReportLock.exists(commandContext.reports(), name);
    if (clear && isUpToDate(commandContext, name, making, looks)) {
      return true;
    }
    if (clear && making.value().isEmpty()) {
      return refused(name, making.problems());
    }
    try (ReportLock lock = ReportLock.of(commandContext.reports(), name)) {
      commandContext.published(name).recover();
      if (clear && !lock.waited()) {
        return publish(commandContext, name, making, looks);
      }
      // Input that was read before waiting may be older than the published version.
      Checked<ReportBuild> again = commandContext.reportBuild(name);
      return isUpToDate(commandContext, name, again, looks)
          || publish(commandContext, name, again, looks);
    }
  }

  private boolean isUpToDate(
      CommandContext commandContext, String name, Checked<ReportBuild> making, StatCache looks) {
    PublishedFolder published = commandContext.published(name);
    if (making.value().isEmpty() || published.isCutOff() || !published.exists()) {
      return false;
    }
    String fingerprint = making.value().get().fingerprint();
    if (!published.isMadeFrom(fingerprint)) {
      return false;
    }
    report(making.problems());
    messages.result(Texts.of("command.report_command.up_to_date", name));
    enter(looks, name, making, fingerprint);
    return true;
  }

  private static void enter(
      StatCache looks, String name, Checked<ReportBuild> making, String fingerprint) {
    List<String> paths = making.value().map(ReportBuild::paths).orElse(List.of());
    if (making.problems().isEmpty() && !paths.isEmpty()) {
      looks.enter(name, fingerprint, paths);
    }
  }

  private boolean refused(String name, List<Problem> problems) {
    report(problems);
    messages.refused(name);
    return false;
  }

  private boolean publish(
      CommandContext commandContext, String name, Checked<ReportBuild> making, StatCache looks) {
    if (making.value().isEmpty()) {
      return refused(name, making.problems());
    }
    report(making.problems());
    Checked<ReportBuild.Made> made = making.value().get().make(messages.steps());
    report(made.problems());
    Optional<ReportBuild.Made> value = made.value();
    if (value.isEmpty()) {
      return refused(name, List.of());
    }
    report(value.get().problems());
    messages.steps().begin(1, Texts.of("command.report_command.publishing"));
    Optional<String> moved = moved(commandContext, name, making.value().get(), value.get());
    commandContext.published(name).replace(value.get().files(), value.get().fingerprint());
    messages.outcome(
        name,
        Texts.of("command.report_command.made_reports_files", name, value.get().files().count()));
    value.get().summary().forEach(messages::result);
    moved.ifPresent(messages::result);
    remarks(commandContext.published(name)).forEach(messages::remark);
    messages.result(
        Texts.of(
            "command.report_command.open",
            commandContext.reports().resolve(name).resolve("report.html")));
    enter(looks, name, making, value.get().fingerprint());
    return true;
  }

  /**
   * Returns the numbers that moved since the version to be replaced, if there is one; empty if the
   * numbers are too many to keep in memory.
   */
  private static Optional<String> moved(
      CommandContext commandContext, String name, ReportBuild making, ReportBuild.Made made) {
    if (!made.files().all().containsKey(NUMBERS)) {
      return Optional.empty();
    }
    return commandContext
        .published(name)
        .bytes(NUMBERS)
        .flatMap(b -> NumbersFile.read(NUMBERS, b).value())
        .map(b -> new MovedLine(new NumberFormatter(making.plan().style())).of(b, fresh(made)));
  }

  /**
   * Returns remarks on links in the report's folder whose targets are outside the project, and on a
   * path that is too long.
   */
  static List<String> remarks(PublishedFolder published) {
    List<String> remarks = new ArrayList<>();
    List<String> links = published.linksToOutside();
    if (!links.isEmpty()) {
      remarks.add(
          Texts.of("command.report_command.links_that_lead_out_of", String.join(", ", links)));
    }
    published
        .tooLongForWindows()
        .ifPresent(path -> remarks.add(Texts.of("command.report_command.path_is_too_long", path)));
    return remarks;
  }

  private static NumbersFile fresh(ReportBuild.Made made) {
    return NumbersFile.read(NUMBERS, made.files().bytes(NUMBERS)).value().orElseThrow();
  }

  /** Reports each problem once, even if several reports use the same file. */
  private void report(List<Problem> problems) {
    messages.problems(problems.stream().filter(reported::add).toList());
  }

  /**
   * Summarizes in one line the numbers that a corrected reading moved, with the first of them by
   * name.
   */
  private static final class MovedLine {
    private final NumberFormatter wording;

    MovedLine(NumberFormatter wording) {
      this.wording = wording;
    }

    /** Returns the line for two versions of a report. */
    String of(NumbersFile before, NumbersFile after) {
      List<MovedNumber> seen =
          NumberMoves.between(before, after).stream()
              .filter(m -> !wording.isPrintedAlike(m))
              .toList();
      if (seen.isEmpty()) {
        return NumberMoves.stated(before, after).isEmpty()
            ? Texts.of("command.moved_line.no_number_moved_since_last")
            : Texts.of("command.moved_line.no_number_moved_since_last_version");
      }
      return Texts.of(
          "command.moved_line.of_moved_since_last_version",
          seen.size(),
          Texts.count(after.numbers().size(), "count.number", "count.numbers"),
          shown(seen));
    }

    /** Returns the first number whose value moved, or else the first one whose interval did. */
    private String shown(List<MovedNumber> seen) {
      String others = seen.size() > 1 ? Texts.of("command.moved_line.and_others") : "";
      for (MovedNumber number : seen) {
        String before = wording.value(number, number.before());
        String after = wording.value(number, number.after());
        if (!before.equals(after)) {
          return Texts.of("command.moved_line.value_before", number.label(), after, before, others);
        }
      }
      return Texts.of("command.moved_line.interval", seen.get(0).label(), others);
    }
  }
}
