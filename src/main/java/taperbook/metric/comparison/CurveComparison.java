package taperbook.metric.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import taperbook.i18n.Message;
import taperbook.metric.course.Courses;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Curve;
import taperbook.result.Metric;
import taperbook.result.PairResult;
import taperbook.result.Stretch;
import taperbook.session.Caveat;
import taperbook.session.RowRef;

/**
 * Compares the power curves of two sessions. The entry point of this package.
 *
 * <p>Every interval comes from the same drawn pairs of sessions. The coverage is 95 %: jointly for
 * all stretches and crossings, individually for each other number.
 */
public final class CurveComparison {
  private static final double COVERAGE = 0.95;

  private static final double COVERAGE_OF_BOUNDS = 1;

  /** Smallest common window to compare, %. */
  private static final double LEAST_PERCENT = 1;

  private final Courses courses;
  private final Courses others;
  private final PairMetricNames names;
  private final MetricCollector collector;
  private final double runShare;

  private CurveComparison(
      Courses courses, Courses others, String name, List<Caveat> caveats, double runShare) {
    this.courses = courses;
    this.others = others;
    this.runShare = runShare;
    this.names = new PairMetricNames(name);
    this.collector =
        new MetricCollector(courses.session().name(), others.session().name(), caveats);
  }

  /**
   * Compares two sessions.
   *
   * @param courses courses of the reported session
   * @param others courses of the session it is compared with
   * @param name short name of the other session in labels
   * @param caveats caveats of either session's charging
   */
  public static PairResult of(Courses courses, Courses others, String name, List<Caveat> caveats) {
    return of(courses, others, name, caveats, 0);
  }

  /**
   * Compares as {@link #of(Courses, Courses, String, List)}, for runs whose power varies by more
   * than the uncertainty of their readings.
   *
   * @param runShare half the 95 % interval of a run's power beyond its readings, as a share
   */
  public static PairResult of(
      Courses courses, Courses others, String name, List<Caveat> caveats, double runShare) {
    return new CurveComparison(courses, others, name, caveats, runShare).result();
  }

  private PairResult result() {
    Finding<Side> one = Side.of(courses);
    Finding<Side> two = one.flatMap(o -> Side.of(others));
    if (two.value().isEmpty()) {
      return notComparable(two.reason().orElseThrow());
    }
    Side mine = one.value().orElseThrow();
    Side theirs = two.value().get();
    Estimate from = later(mine.start(), theirs.start());
    Estimate to = earlier(mine.end(), theirs.end());
    if (to.value() - from.value() < LEAST_PERCENT) {
      return notComparable(Message.of("metric.curve_comparison.two_sessions_share_less_than"));
    }
    Interval window = new Interval(from.value(), to.value());
    Pair pair = new Pair(mine, theirs, window, runShare);
    shared(pair, from, to);
    List<LeadStretches.Span> spans = LeadStretches.of(pair.band());
    return new PairResult(
        others.session().name(),
        Optional.of(window),
        stretches(pair, spans),
        crossings(pair, spans),
        Optional.of(DifferenceCurve.of(pair)),
        collector.numbers());
  }

  private PairResult notComparable(Message reason) {
    for (Metric heading : names.ofWindow()) {
      collector.withheld(heading, reason);
    }
    Optional<Curve> none = Optional.empty();
    return new PairResult(
        others.session().name(), Optional.empty(), List.of(), List.of(), none, collector.numbers());
  }

  private static Estimate later(Estimate a, Estimate b) {
    Interval bounds =
        new Interval(
            Math.max(a.bounds().low(), b.bounds().low()),
            Math.max(a.bounds().high(), b.bounds().high()));
    return new Estimate(Math.max(a.value(), b.value()), bounds);
  }

  private static Estimate earlier(Estimate a, Estimate b) {
    return later(a.times(-1), b.times(-1)).times(-1);
  }

  private void shared(Pair pair, Estimate from, Estimate to) {
    double low = from.value();
    double high = to.value();
    collector.covered(
        names.sharedFrom(), Finding.of(from, pair.rows(low, low)), COVERAGE_OF_BOUNDS);
    collector.covered(names.sharedTo(), Finding.of(to, pair.rows(high, high)), COVERAGE_OF_BOUNDS);
    List<RowRef> rows = pair.rows(low, high);
    collector.covered(names.meanLead(), Finding.of(pair.meanLead(low, high), rows), COVERAGE);
    collector.covered(names.timeGain(), Finding.of(pair.timeGain(low, high), rows), COVERAGE);
  }

  private List<Stretch> stretches(Pair pair, List<LeadStretches.Span> spans) {
    List<Stretch> stretches = new ArrayList<>();
    int led = 0;
    for (LeadStretches.Span span : spans) {
      Optional<Stretch.Ids> ids = Optional.empty();
      if (span.isLed()) {
        led++;
        ids = Optional.of(lead(pair, span, led));
      }
      stretches.add(new Stretch(span.order(), span.from(), span.to(), ids));
    }
    return stretches;
  }

  private Stretch.Ids lead(Pair pair, LeadStretches.Span span, int k) {
    String id = "lead_" + k + "_";
    Stretch.Ids ids =
        new Stretch.Ids(id + "soc_from", id + "soc_to", id + "power", id + "time_gain");
    double from = span.from();
    double to = span.to();
    List<RowRef> rows = pair.rows(from, to);
    List<Metric> headings = names.lead(ids, k, span.order());
    // Edges are where a band crosses zero: they limit what is known and are therefore exact.
    List<Estimate> estimates =
        List.of(
            Estimate.exactly(from),
            Estimate.exactly(to),
            pair.meanLead(from, to),
            pair.timeGain(from, to));
    for (int i = 0; i < estimates.size(); i++) {
      collector.covered(headings.get(i), Finding.of(estimates.get(i), rows), COVERAGE);
    }
    return ids;
  }

  private List<String> crossings(Pair pair, List<LeadStretches.Span> spans) {
    List<String> ids = new ArrayList<>();
    for (Estimate crossing : CurveCrossing.all(pair.band(), spans)) {
      Metric heading = names.crossing(ids.size() + 1);
      Interval where = crossing.bounds();
      collector.covered(
          heading, Finding.of(crossing, pair.rows(where.low(), where.high())), COVERAGE);
      ids.add(heading.id());
    }
    return ids;
  }

  /** Builds the curve of the difference of two power curves with its band: kW over %. */
  static final class DifferenceCurve {
    private static final int MOST_POINTS = 400;

    private DifferenceCurve() {}

    static Curve of(Pair pair) {
      Band band = pair.band();
      int step = (band.size() + MOST_POINTS - 1) / MOST_POINTS;
      int last = band.size() - 1;
      int[] kept = IntStream.rangeClosed(0, last).filter(i -> i % step == 0 || i == last).toArray();
      return Curve.of(
          kept.length,
          k -> {
            double x = band.percent(kept[k]);
            return new Curve.Point(
                x,
                band.value(kept[k]),
                new Interval(band.low(kept[k]), band.high(kept[k])),
                k + 1 < kept.length && pair.isInWideGap((x + band.percent(kept[k + 1])) / 2));
          });
    }
  }
}
