package taperbook.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemLog;
import taperbook.input.cell.Suggestion;
import taperbook.input.folder.FrontMatterValue;
import taperbook.input.folder.ReportFile;
import taperbook.input.plan.FrontMatter;
import taperbook.input.plan.LibraryPlanParser;
import taperbook.input.plan.ReportKey;
import taperbook.input.plan.ReportPlanParser;
import taperbook.plan.Plan;

/** Determines the kind of report in front matter, and parses it accordingly. */
public final class PlanParser {
  private static final String SESSION = "session";
  private static final String LIBRARY = "library";
  private static final List<String> KINDS = List.of(SESSION, LIBRARY);

  private PlanParser() {}

  /**
   * Returns the plan of the report, or all problems of its front matter.
   *
   * @param reportName name of the report: that of its file without the extension
   * @param raw the split file
   * @param sessions names of the existing sessions
   * @param rangeTests names of the existing range tests
   * @param templates names of the existing templates
   * @param started true for the name of an existing folder of a session or range test
   */
  public static Checked<Plan> check(
      String reportName,
      ReportFile raw,
      Set<String> sessions,
      Set<String> rangeTests,
      Set<String> templates,
      Predicate<String> started) {
    // A separate log, because the checks of both kinds report unknown and repeated keys themselves.
    Optional<FrontMatterValue> written =
        new FrontMatter(raw, new ProblemLog(raw.file())).value(ReportKey.KIND);
    ProblemLog log = new ProblemLog(raw.file());
    String kind = written.map(w -> kind(w, log)).orElse(SESSION);
    Checked<? extends Plan> plan =
        kind.equals(LIBRARY)
            ? LibraryPlanParser.check(reportName, raw, without(templates, "report"))
            : ReportPlanParser.check(
                reportName, raw, sessions, rangeTests, without(templates, LIBRARY), started);
    List<Problem> problems = new ArrayList<>(log.list());
    problems.addAll(plan.problems());
    return plan.value().isEmpty() || log.hasErrors()
        ? Checked.refused(problems)
        : Checked.of(plan.value().get(), problems);
  }

  /** Returns the kind as written, or, after a problem, the most likely one. */
  private static String kind(FrontMatterValue written, ProblemLog log) {
    if (KINDS.contains(written.text())) {
      return written.text();
    }
    Optional<String> meant = Suggestion.of(written.text(), KINDS);
    FrontMatter.refuseWord(written, KINDS, meant, log);
    return meant.orElse(SESSION);
  }

  /** The built-in template of the other kind would print content that this kind lacks. */
  private static Set<String> without(Set<String> templates, String other) {
    Set<String> rest = new TreeSet<>(templates);
    rest.remove(other);
    return rest;
  }
}
