package taperbook.write.text;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import taperbook.model.LibraryResult;
import taperbook.model.Numbers;
import taperbook.model.ReportPlan;
import taperbook.model.ReportResult;
import taperbook.model.SessionResult;
import taperbook.model.Unit;

/**
 * An article and what it can print.
 *
 * @param article the tester's text
 * @param units the unit for every distance
 * @param mainSession the session whose numbers need no name; empty if there is none
 * @param sessions the numbers that can be printed, by session
 * @param charts every chart that a report of this kind can have
 */
public record ArticleSource(
    ReportPlan.Article article,
    Unit units,
    String mainSession,
    Map<String, Numbers> sessions,
    List<String> charts) {
  private static final List<String> SESSION_CHARTS =
      List.of(
          "power-over-soc",
          "power-over-time",
          "soc-over-time",
          "distance-over-time",
          "compare-over-soc",
          "compare-over-time",
          "difference-over-soc",
          "c-rate-over-soc",
          "plug-in-table",
          "road-per-minute",
          "trip-timeline");

  private static final List<String> LIBRARY_CHARTS =
      List.of("library-average-over-peak", "library-minutes-over-range", "library-curves");

  /** Copies the collections. */
  public ArticleSource {
    sessions = Collections.unmodifiableMap(new LinkedHashMap<>(sessions));
    charts = List.copyOf(charts);
  }

  /** The article of a session's report. */
  static ArticleSource of(ReportResult result) {
    Map<String, Numbers> sessions = new LinkedHashMap<>();
    result.sessions().forEach(s -> sessions.putIfAbsent(s.session().name(), all(result, s)));
    return new ArticleSource(
        result.plan().article(),
        result.plan().style().units(),
        result.main().session().name(),
        sessions,
        SESSION_CHARTS);
  }

  /** The numbers of a session, and of the pairs that it stands for. */
  private static Numbers all(ReportResult result, SessionResult session) {
    String name = session.session().name();
    return new Numbers(
        result.ids(name).stream().flatMap(id -> result.find(id, name).stream()).toList());
  }

  /**
   * The article of a library.
   *
   * @param figures names of the charts that the library has
   */
  public static ArticleSource of(LibraryResult result, Set<String> figures) {
    Map<String, Numbers> sessions = new LinkedHashMap<>();
    result.rows().forEach(r -> sessions.put(r.session(), r.numbers()));
    Set<String> charts = new TreeSet<>(figures);
    charts.addAll(LIBRARY_CHARTS);
    return new ArticleSource(
        result.plan().article(),
        result.plan().style().units(),
        "",
        sessions,
        new ArrayList<>(charts));
  }

  Optional<Numbers> numbersOf(String session) {
    return Optional.ofNullable(sessions.get(session));
  }
}
