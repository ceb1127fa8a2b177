package taperbook.build;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import taperbook.chart.plots.FigureSet;
import taperbook.chart.render.Figure;
import taperbook.diagnostics.Checked;
import taperbook.plan.ReportPlan;
import taperbook.result.CommonGround;
import taperbook.result.Once;
import taperbook.result.ReportResult;
import taperbook.session.InputHash;

/**
 * The last results and charts of reports, for a process that builds them more than once. They
 * depend on the data, the front matter, and the windows of a published version, but not on the
 * tester's text: after a changed sentence nothing is measured or painted again.
 */
public final class ResultCache {
  /** Some megabytes each: the reports that a tester works on at once. */
  private static final int MOST_REPORTS = 8;

  private final int most;
  private final Map<String, Kept> entries =
      new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Kept> eldest) {
          return size() > most;
        }
      };

  private ResultCache(int most) {
    this.most = most;
  }

  /** Returns a cache that stores nothing, for a process that builds each report once. */
  public static ResultCache none() {
    return new ResultCache(0);
  }

  /** Returns a cache of the reports that were built last. */
  public static ResultCache ofLastReports() {
    return new ResultCache(MOST_REPORTS);
  }

  /**
   * Everything that the results of a report depend on besides the program.
   *
   * @param plan the plan without its text
   * @param data the files of sessions and range tests
   * @param ground the windows that are taken from the published version
   */
  private record Key(ReportPlan plan, List<InputHash> data, Optional<CommonGround> ground) {}

  private record Kept(Key key, Checked<ReportResult> result, Supplier<List<Figure>> figures) {
    static Kept of(Key key, Checked<ReportResult> result) {
      return new Kept(key, result, new Once<>(() -> FigureSet.draw(result.value().orElseThrow())));
    }

    /** Returns true for these results with any text, which share the measured session itself. */
    @SuppressWarnings("ReferenceEquality")
    boolean isOf(ReportResult other) {
      return result.value().filter(r -> r.main() == other.main()).isPresent();
    }
  }

  /**
   * Returns the results for a plan, measured only if something that they depend on has changed.
   *
   * @param data the files of sessions and range tests
   */
  Checked<ReportResult> result(
      ReportPlan plan,
      List<InputHash> data,
      Optional<CommonGround> ground,
      Supplier<Checked<ReportResult>> measuring) {
    Key key = new Key(plan.withoutText(), data, ground);
    Kept known = entries.remove(plan.name());
    Kept entry = known != null && known.key.equals(key) ? known : Kept.of(key, measuring.get());
    entries.put(plan.name(), entry);
    return new Checked<>(
        entry.result.value().map(r -> r.withTextOf(plan)), entry.result.problems());
  }

  /** Returns the charts of results, drawn only once for results from this cache. */
  List<Figure> figures(ReportResult result) {
    Kept entry = entries.get(result.plan().name());
    return entry != null && entry.isOf(result) ? entry.figures.get() : FigureSet.draw(result);
  }
}
