package taperbook.input.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Joined;
import taperbook.i18n.Texts;
import taperbook.input.folder.FrontMatterValue;
import taperbook.input.folder.ReportFile;
import taperbook.plan.ReportPlan;

/** Parses the front matter of a report. */
public final class ReportPlanParser {
  private static final String DEFAULT_TEMPLATE = "report";

  /**
   * Maximum number of compared sessions: pages can distinguish six sessions by letters and line
   * styles.
   */
  private static final int MAX_COMPARED = 5;

  private final ProblemLog log;
  private final FrontMatter frontMatter;
  private final PlanSections parts;

  private ReportPlanParser(ReportFile raw) {
    this.log = new ProblemLog(raw.file());
    this.frontMatter = new FrontMatter(raw, log);
    this.parts = new PlanSections(raw, frontMatter, log);
  }

  /**
   * Returns the plan of the report, or all problems of its front matter.
   *
   * @param reportName name of the report: that of its file without the extension
   * @param raw the split file
   * @param knownSessions names of the existing sessions
   * @param knownRangeTests names of the existing range tests
   * @param knownTemplates names of the existing templates
   * @param started true for the name of an existing folder of a session or range test
   */
  public static Checked<ReportPlan> check(
      String reportName,
      ReportFile raw,
      Set<String> knownSessions,
      Set<String> knownRangeTests,
      Set<String> knownTemplates,
      Predicate<String> started) {
    ReportPlanParser check = new ReportPlanParser(raw);
    ReportPlan.Heading heading = check.parts.headingWithHistory();
    ReportPlan.Subject subject = check.subject(knownSessions, knownRangeTests, started);
    ReportPlan.Style style = check.parts.style(knownTemplates, DEFAULT_TEMPLATE);
    ReportPlan.Wishes wishes = new RequestParser(check.frontMatter, check.log).read(style.units());
    return Checked.of(
        new ReportPlan(reportName, heading, subject, wishes, style, check.parts.article()),
        check.log.list());
  }

  private ReportPlan.Subject subject(
      Set<String> knownSessions, Set<String> knownRangeTests, Predicate<String> started) {
    KnownNames sessions =
        new KnownNames(
            Texts.of("input.report_plan_parser.session"),
            "readings.csv",
            knownSessions,
            started,
            log);
    KnownNames rangeTests =
        new KnownNames(
            Texts.of("input.report_plan_parser.range_test"),
            "range-test.csv",
            knownRangeTests,
            started,
            log);
    Set<String> all = new TreeSet<>(knownSessions);
    all.addAll(knownRangeTests);
    KnownNames either =
        new KnownNames(
            Texts.of("input.report_plan_parser.session_or_range_test"),
            Joined.or(List.of("readings.csv", "range-test.csv")),
            all,
            started,
            log);
    String session = frontMatter.required(ReportKey.SESSION).flatMap(sessions::find).orElse("");
    List<FrontMatterValue> drives = frontMatter.list(ReportKey.RANGE_TEST);
    reportDuplicates(drives);
    List<FrontMatterValue> compare = frontMatter.list(ReportKey.COMPARE);
    compare.stream().filter(c -> c.text().equals(session)).forEach(this::reportSelfComparison);
    reportTooMany(compare);
    return new ReportPlan.Subject(
        session,
        compare.stream().flatMap(c -> sessions.find(c).stream()).distinct().toList(),
        drives.stream().flatMap(r -> rangeTests.find(r).stream()).distinct().toList(),
        new RepeatParser(frontMatter, log).names(session, compare, sessions),
        new RepeatParser(frontMatter, log).spread(),
        stops(session, sessions),
        new SeasonParser(frontMatter, log).read(sessions, rangeTests, either));
  }

  private List<String> stops(String session, KnownNames sessions) {
    List<FrontMatterValue> written = frontMatter.list(ReportKey.STOPS);
    reportDuplicates(written);
    List<String> stops =
        written.stream().flatMap(s -> sessions.find(s).stream()).distinct().toList();
    boolean allKnown = stops.size() == written.size();
    if (allKnown && !written.isEmpty() && (stops.size() < 2 || !stops.contains(session))) {
      FrontMatterValue first = written.get(0);
      first.report(
          log,
          ProblemCode.VALUE_OUT_OF_RANGE,
          stops.size() < 2
              ? Texts.of("input.report_plan_parser.one_stop")
              : Texts.of("input.report_plan_parser.stops_without", Quoted.of(session)),
          Texts.of("input.report_plan_parser.two_sessions_or_more_of"),
          Texts.of("input.report_plan_parser.name_all_stops_of_day"));
    }
    return stops;
  }

  private void reportTooMany(List<FrontMatterValue> compare) {
    List<String> names = compare.stream().map(FrontMatterValue::text).distinct().toList();
    if (names.size() <= MAX_COMPARED) {
      return;
    }
    String first = names.get(MAX_COMPARED);
    FrontMatterValue beyond =
        compare.stream().filter(c -> c.text().equals(first)).findFirst().orElseThrow();
    beyond.report(
        log,
        ProblemCode.VALUE_OUT_OF_RANGE,
        Texts.of("input.report_plan_parser.sessions_to_compare", names.size()),
        Texts.of("input.report_plan_parser.at_most_as_charts_and", MAX_COMPARED),
        Texts.of("input.report_plan_parser.take_sessions_away_from_here"));
  }

  /** A run must be named only once: otherwise it would count as a repeat of itself. */
  private void reportDuplicates(List<FrontMatterValue> names) {
    Set<String> seen = new HashSet<>();
    names.stream()
        .filter(name -> !seen.add(name.text()))
        .forEach(
            name ->
                name.report(
                    log,
                    ProblemCode.FACTS_CONTRADICT,
                    Texts.of("input.report_plan_parser.named_twice", Quoted.of(name.text())),
                    Texts.of("input.report_plan_parser.each_one_once"),
                    Texts.of("input.common.take_one_of_two_away")));
  }

  private void reportSelfComparison(FrontMatterValue written) {
    written.report(
        log,
        ProblemCode.FACTS_CONTRADICT,
        Texts.of("input.report_plan_parser.session_reported_itself", Quoted.of(written.text())),
        Texts.of("input.report_plan_parser.other_sessions_to_compare_it"),
        Texts.of("input.common.take_it_away"));
  }
}
