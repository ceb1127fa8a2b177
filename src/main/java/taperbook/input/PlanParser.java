package taperbook.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.cell.Suggestion;
import taperbook.input.folder.FrontMatterValue;
import taperbook.input.folder.ReportFile;
import taperbook.input.plan.FrontMatter;
import taperbook.input.plan.LibraryPlanParser;
import taperbook.input.plan.ReportKey;
import taperbook.input.plan.ReportPlanParser;
import taperbook.plan.Plan;

/** Finds out what kind of report a front matter asks for, and has it checked as such. */
public final class PlanParser {
  private static final String SESSION = "session";
  private static final String LIBRARY = "library";
  private static final List<String> KINDS = List.of(SESSION, LIBRARY);

  private PlanParser() {}

  /**
   * The plan of the report, or every problem of its front matter.
   *
   * @param reportName name of the report, that of its file without the ending
   * @param raw the file, split
   * @param sessions names of the sessions there are
   * @param rangeTests names of the range tests there are
   * @param templates names of the templates there are
   * @param begun true for the name of a folder of a session or range test that is there
   */
  public static Checked<Plan> check(
      String reportName,
      ReportFile raw,
      Set<String> sessions,
      Set<String> rangeTests,
      Set<String> templates,
      Predicate<String> begun) {
    // A log of its own: the checks of both kinds tell of unknown and repeated keys themselves.
    Optional<FrontMatterValue> written =
        new FrontMatter(raw, new ProblemLog(raw.file())).value(ReportKey.KIND);
    ProblemLog log = new ProblemLog(raw.file());
    String kind = written.map(w -> kind(w, log)).orElse(SESSION);
    Checked<? extends Plan> plan =
        kind.equals(LIBRARY)
            ? LibraryPlanParser.check(reportName, raw, without(templates, "report"))
            : ReportPlanParser.check(
                reportName, raw, sessions, rangeTests, without(templates, LIBRARY), begun);
    List<Problem> problems = new ArrayList<>(log.list());
    problems.addAll(plan.problems());
    return plan.value().isEmpty() || log.hasErrors()
        ? Checked.refused(problems)
        : Checked.of(plan.value().get(), problems);
  }

  /** The kind as written, or the one that was most likely meant, after a problem. */
  private static String kind(FrontMatterValue written, ProblemLog log) {
    if (KINDS.contains(written.text())) {
      return written.text();
    }
    Optional<String> meant = Suggestion.of(written.text(), KINDS);
    log.add(
        ProblemCode.VALUE_NOT_UNDERSTOOD,
        written.line(),
        written.column(),
        Quoted.of(written.text()),
        "one of the words " + String.join(", ", KINDS),
        meant.map(w -> "write " + w).orElse("write one of these words"));
    return meant.orElse(SESSION);
  }

  /** The built-in template of the other kind would print what this kind does not have. */
  private static Set<String> without(Set<String> templates, String other) {
    Set<String> rest = new TreeSet<>(templates);
    rest.remove(other);
    return rest;
  }
}
