package taperbook.input.plan;

import java.util.List;
import java.util.Set;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.folder.FrontMatterValue;
import taperbook.input.folder.ReportFile;
import taperbook.plan.LibraryPlan;
import taperbook.plan.ReportPlan;

/** Parses the front matter of a library, a report on every session of the folder. */
public final class LibraryPlanParser {
  private static final String DEFAULT_TEMPLATE = "library";
  private static final String TAKE_AWAY = "take the line away, or write kind: session";

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
    String all = "no such key in a library, which shows every session";
    frontMatter.refuse(ReportKey.ANSWER, all, TAKE_AWAY);
    frontMatter.refuse(ReportKey.SESSION, all, TAKE_AWAY);
    frontMatter.refuse(ReportKey.COMPARE, all, TAKE_AWAY);
    frontMatter.refuse(ReportKey.REPEATS, all, TAKE_AWAY);
    frontMatter.refuse(ReportKey.RUN_SPREAD, all, TAKE_AWAY);
    frontMatter.refuse(ReportKey.STOPS, all, TAKE_AWAY);
    frontMatter.refuse(ReportKey.SEASON, all, TAKE_AWAY);
    frontMatter.refuse(
        ReportKey.RANGE_TEST,
        "no such key in a library, where each session uses the range tests of its vehicle",
        TAKE_AWAY);
    frontMatter.refuse(
        ReportKey.FILM,
        "no such key in a library, which is no session that could be filmed",
        "take the line away");
    String never = "no such key in a library, which is a page over what there is";
    frontMatter.refuse(ReportKey.STATE, never, "take the line away");
    frontMatter.refuse(ReportKey.CORRECTIONS, never, "take the lines away");
    frontMatter.refuse(
        ReportKey.SOC_MARKS,
        "no such key in a library, which gives the time of one window instead",
        "take the line away, or write the window as in window: 10-80 %");
  }

  private static void oneWindow(FrontMatter frontMatter, ProblemLog log) {
    List<FrontMatterValue> windows = frontMatter.list(ReportKey.WINDOW);
    if (windows.size() > 1) {
      FrontMatterValue second = windows.get(1);
      log.add(
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          second.line(),
          second.column(),
          Quoted.of(second.text()) + ", window 2 of " + windows.size(),
          "one window for a library",
          "keep the one that is meant");
    }
  }
}
