package taperbook.input.plan;

import java.util.List;
import java.util.Set;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
import taperbook.input.folder.FrontMatterValue;
import taperbook.input.folder.ReportFile;
import taperbook.plan.LibraryPlan;
import taperbook.plan.ReportPlan;

/** Parses the front matter of a library, a report on every session of the folder. */
public final class LibraryPlanParser {
  private static final String DEFAULT_TEMPLATE = "library";
  private static final String TAKE_AWAY =
      Texts.of("input.library_plan_parser.take_line_away_or_write");

  private LibraryPlanParser() {}

  /**
   * Returns the plan of the library, or all problems of its front matter.
   *
   * @param reportName name of the report: that of its file without the extension
   * @param raw the split file
   * @param knownTemplates names of the templates that a library can have
   */
  public static Checked<LibraryPlan> check(
      String reportName, ReportFile raw, Set<String> knownTemplates) {
    ProblemLog log = new ProblemLog(raw.file());
    FrontMatter frontMatter = new FrontMatter(raw, log);
    PlanSections parts = new PlanSections(raw, frontMatter, log);
    refuseOthers(frontMatter);
    ReportPlan.Heading heading = parts.heading();
    ReportPlan.Style style = parts.style(knownTemplates, DEFAULT_TEMPLATE);
    ReportPlan.Wishes wishes = new RequestParser(frontMatter, log).read(style.units());
    oneWindow(frontMatter, log);
    return Checked.of(
        new LibraryPlan(
            reportName,
            heading,
            wishes.distances(),
            wishes.windows().get(0),
            style,
            parts.article()),
        log.list());
  }

  /** Keys that select sessions are meaningless in a library, which shows all sessions. */
  private static void refuseOthers(FrontMatter frontMatter) {
    String all = Texts.of("input.library_plan_parser.no_such_key_in_library");
    frontMatter.refuse(ReportKey.ANSWER, all, TAKE_AWAY);
    frontMatter.refuse(ReportKey.SESSION, all, TAKE_AWAY);
    frontMatter.refuse(ReportKey.COMPARE, all, TAKE_AWAY);
    frontMatter.refuse(ReportKey.REPEATS, all, TAKE_AWAY);
    frontMatter.refuse(ReportKey.RUN_SPREAD, all, TAKE_AWAY);
    frontMatter.refuse(ReportKey.STOPS, all, TAKE_AWAY);
    frontMatter.refuse(ReportKey.SEASON, all, TAKE_AWAY);
    frontMatter.refuse(
        ReportKey.RANGE_TEST,
        Texts.of("input.library_plan_parser.no_such_key_in_library_where"),
        TAKE_AWAY);
    frontMatter.refuse(
        ReportKey.FILM,
        Texts.of("input.library_plan_parser.no_such_key_in_library_which"),
        Texts.of("input.library_plan_parser.take_line_away"));
    String never = Texts.of("input.library_plan_parser.no_such_key_in_library_which_is");
    frontMatter.refuse(
        ReportKey.STATE, never, Texts.of("input.library_plan_parser.take_line_away"));
    frontMatter.refuse(
        ReportKey.CORRECTIONS, never, Texts.of("input.library_plan_parser.take_lines_away"));
    frontMatter.refuse(
        ReportKey.SOC_MARKS,
        Texts.of("input.library_plan_parser.no_such_key_in_library_which_gives"),
        Texts.of("input.library_plan_parser.take_line_away_or_write_window"));
  }

  private static void oneWindow(FrontMatter frontMatter, ProblemLog log) {
    List<FrontMatterValue> windows = frontMatter.list(ReportKey.WINDOW);
    if (windows.size() > 1) {
      FrontMatterValue second = windows.get(1);
      second.report(
          log,
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          Texts.of(
              "input.library_plan_parser.window_2_of", Quoted.of(second.text()), windows.size()),
          Texts.of("input.library_plan_parser.one_window_for_library"),
          Texts.of("input.common.keep_one_that_is_meant"));
    }
  }
}
