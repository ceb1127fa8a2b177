package taperbook.output.article;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import taperbook.format.NumberFormatter;
import taperbook.output.view.ArticleTable;
import taperbook.output.view.ArticleTables;
import taperbook.output.view.FactTexts;
import taperbook.plan.Plan;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Unit;
import taperbook.result.LibraryResult;
import taperbook.result.Numbers;
import taperbook.result.ReportResult;
import taperbook.result.Results;
import taperbook.result.SessionResult;

/**
 * An article and the data that it can print.
 *
 * @param article the tester's text
 * @param units the unit for every distance
 * @param mainSession the default session; empty if there is none
 * @param sessions the numbers that can be printed, by session
 * @param charts every chart that a report of this kind can have
 * @param stated tables, facts and dates that can be printed
 */
record ArticleSource(
    ReportPlan.Article article,
    Unit units,
    String mainSession,
    Map<String, Numbers> sessions,
    List<String> charts,
    Stated stated) {
  private static final List<String> SESSION_CHARTS =
      List.of(
          "power-over-soc",
          "power-over-time",
          "soc-over-time",
          "distance-over-time",
          "runs-over-soc",
          "compare-over-soc",
          "compare-over-time",
          "difference-over-soc",
          "c-rate-over-soc",
          "plug-in-table",
          "road-per-minute",
          "trip-timeline",
          "range-over-speed");

  private static final List<String> LIBRARY_CHARTS =
      List.of("library-time-to-add", "library-window-time", "library-curves");

  /**
   * The data that an article can print in addition to numbers and charts.
   *
   * @param tables tables by name
   * @param facts stated facts, by session or range test and by item
   * @param rangeTests names of the range tests that sessions use, by session
   * @param published formatted day of publication; empty if none is stated
   */
  public record Stated(
      Map<String, ArticleTable> tables,
      Map<String, Map<String, String>> facts,
      Map<String, String> rangeTests,
      String published) {
    public Stated {
      tables = Collections.unmodifiableMap(new LinkedHashMap<>(tables));
      rangeTests = Collections.unmodifiableMap(new LinkedHashMap<>(rangeTests));
      facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    }
  }

  public ArticleSource {
    sessions = Collections.unmodifiableMap(new LinkedHashMap<>(sessions));
    charts = List.copyOf(charts);
  }

  /** Returns the same source with another text. */
  ArticleSource with(ReportPlan.Article text) {
    return new ArticleSource(text, units, mainSession, sessions, charts, stated);
  }

  /**
   * Creates the source of a report or library.
   *
   * @param figures names of its charts
   */
  static ArticleSource of(Results results, Set<String> figures) {
    return results.fold(ArticleSource::of, library -> of(library, figures));
  }

  private static ArticleSource of(ReportResult result) {
    Map<String, Numbers> sessions = new LinkedHashMap<>();
    result.sessions().forEach(s -> sessions.putIfAbsent(s.session().name(), all(result, s)));
    return new ArticleSource(
        result.plan().article(),
        result.plan().style().units(),
        result.main().session().name(),
        sessions,
        SESSION_CHARTS,
        new Stated(
            ArticleTables.of(result),
            FactTexts.of(result),
            rangeTests(result),
            published(result.plan())));
  }

  /** Returns the numbers of a session, including those of its pairs. */
  private static Numbers all(ReportResult result, SessionResult session) {
    String name = session.session().name();
    return new Numbers(
        result.ids(name).stream().flatMap(id -> result.find(id, name).stream()).toList());
  }

  private static ArticleSource of(LibraryResult result, Set<String> figures) {
    Map<String, Numbers> sessions = new LinkedHashMap<>();
    result.rows().forEach(r -> sessions.put(r.session(), r.numbers()));
    Set<String> charts = new TreeSet<>(figures);
    charts.addAll(LIBRARY_CHARTS);
    return new ArticleSource(
        result.plan().article(),
        result.plan().style().units(),
        "",
        sessions,
        new ArrayList<>(charts),
        new Stated(Map.of(), Map.of(), Map.of(), published(result.plan())));
  }

  private static Map<String, String> rangeTests(ReportResult result) {
    Map<String, String> tests = new LinkedHashMap<>();
    result
        .sessions()
        .forEach(s -> s.rangeTest().ifPresent(t -> tests.put(s.session().name(), t.name())));
    return tests;
  }

  private static String published(Plan plan) {
    return plan.heading().published().map(NumberFormatter::date).orElse("").replace(' ', '\u00a0');
  }

  Optional<Numbers> numbersOf(String session) {
    return Optional.ofNullable(sessions.get(session));
  }
}
