package taperbook.metric;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.comparison.ConditionSimilarity;
import taperbook.metric.comparison.RunMetrics;
import taperbook.metric.course.Courses;
import taperbook.metric.fit.Quantiles;
import taperbook.metric.fit.SampleMean;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.metric.session.DistanceMetrics;
import taperbook.metric.session.WindowMetrics;
import taperbook.plan.Basis;
import taperbook.plan.ReportPlan;
import taperbook.plan.ReportPlan.Season;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Drives;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.result.Role;
import taperbook.session.Caveat;
import taperbook.session.ConditionItem;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;
import taperbook.session.Session;

/**
 * Computes ratios of cold to warm runs of the reported car:
 *
 * <pre>
 *   r = c / w    (u(r) / r)^2 = (u(c) / c)^2 + (u(w) / w)^2
 * </pre>
 *
 * @see <a href="https://doi.org/10.59161/JCGM100-2008E">JCGM 100:2008, 5.1.6, for independent
 *     inputs</a>
 */
final class SeasonMetrics {
  private static final double COVERAGE = 0.95;

  /**
   * Largest half-width, as a share of the ratio, at which an interval still counts as symmetric.
   */
  private static final double MOST_OPEN = 0.5;

  private static final Message STARTS =
      Message.of("metric.season_metrics.sessions_did_not_begin_at");

  private final ReportPlan plan;
  private final Session main;
  private final List<RangeTest> tests;
  private final int redraw;
  private final double runShare;
  private final List<WantedDistance> distance;
  private final NumberFormatter formatter;
  private final MetricCollector collector;

  /**
   * Creates the season metrics of a report.
   *
   * @param main the reported session
   * @param runShare half the 95 % interval of a run's power beyond its readings, as a share; 0 if
   *     unknown
   */
  SeasonMetrics(
      ReportPlan plan, Session main, List<RangeTest> rangeTests, int redraw, double runShare) {
    this.plan = plan;
    this.main = main;
    this.tests = Drives.of(main.vehicle(), rangeTests).agreeing();
    this.redraw = redraw;
    this.runShare = runShare;
    this.distance = plan.wishes().distances().stream().limit(1).toList();
    this.formatter = new NumberFormatter(plan.style());
    this.collector = new MetricCollector(main.name(), List.of());
  }

  private record Run(String name, String degrees, Numbers numbers) {}

  private record Pair(Run warm, Run cold, List<String> unlike, boolean areStartsAlike) {
    Caveat caveat() {
      String differ =
          unlike.isEmpty()
              ? "."
              : Texts.of("metric.season_metrics.they_differ_in", String.join(", ", unlike));
      return new Caveat(
          Caveat.Kind.SEASON,
          Message.of(
              "metric.season_metrics.at_over_at",
              cold.name,
              cold.degrees,
              warm.name,
              warm.degrees,
              differ));
    }
  }

  /** A ratio with half its 95 % interval. */
  record Ratio(double value, double half95, List<RowRef> rows) {}

  Numbers measure(Season<Session, RangeTest> season) {
    List<Pair> sessions = new ArrayList<>();
    for (int k = 0; k < season.sessions().size(); k += 2) {
      Session warm = season.sessions().get(k);
      Session cold = season.sessions().get(k + 1);
      boolean alike = !ConditionSimilarity.startsApart(List.of(warm, cold));
      sessions.add(
          new Pair(
              run(warm), run(cold), ConditionSimilarity.unlikeBesideSeason(warm, cold), alike));
    }
    List<Pair> drives = new ArrayList<>();
    for (int k = 0; k < season.drives().size(); k += 2) {
      RangeTest warm = season.drives().get(k);
      RangeTest cold = season.drives().get(k + 1);
      drives.add(
          new Pair(run(warm), run(cold), ConditionSimilarity.unlikeBesideSeason(warm, cold), true));
    }
    String window = plan.wishes().windows().get(0).idPart();
    String rated = plan.style().basis() == Basis.RATED ? "_rated" : "";
    add("time_soc_" + window, sessions, runShare, false);
    add("average_power_" + window, sessions, runShare, false);
    distance.forEach(d -> add("time_to_add_" + d.idPart() + rated, sessions, runShare, true));
    add("consumption", drives, 0, false);
    add("driven_range_full", drives, 0, false);
    return collector.numbers();
  }

  private Run run(Session session) {
    Optional<Estimate> air = session.conditions().amount(ConditionItem.AMBIENT_TEMPERATURE);
    return new Run(session.name(), degrees(air), numbers(session));
  }

  private Run run(RangeTest test) {
    Optional<Estimate> air = test.facts().amount(RangeItem.AMBIENT_TEMPERATURE);
    return new Run(test.name(), degrees(air), numbers(test));
  }

  private String degrees(Optional<Estimate> air) {
    return formatter.exactly(air.orElseThrow().value(), Unit.CELSIUS);
  }

  private Numbers numbers(Session session) {
    Courses courses = new Courses(session, tests, Courses.FOR_REPORT, redraw);
    Recording recording = Recording.of(session, courses, formatter);
    RangeFigures range = RangeFigures.of(tests, session.displayRounding(), plan.style().basis());
    MetricCollector own = new MetricCollector(session.name(), List.of());
    SocWindow window = plan.wishes().windows().get(0);
    new WindowMetrics(recording, own).measure(List.of(window), window);
    new DistanceMetrics(recording, range, own).measure(distance);
    return own.numbers();
  }

  /**
   * Returns numbers of a drive with bounds: for a few rounded readings, a 95 % interval is too
   * narrow.
   */
  private Numbers numbers(RangeTest test) {
    RangeFigures figures =
        RangeFigures.of(Optional.of(test), main.displayRounding(), plan.style().basis());
    MetricCollector own = new MetricCollector(main.name(), List.of());
    own.measured(figures.consumptionMetric(), figures.consumption());
    own.measured(figures.rangeMetric(), figures.fullRange());
    return own.numbers();
  }

  /**
   * Adds one ratio for each pair, and their mean if there are several pairs.
   *
   * @param beyond half the 95 % interval of a run beyond its readings, as a share
   * @param isDistance true for the time to add a distance: it depends on the start charge, and the
   *     drive, which both runs of a pair share, cancels
   */
  private void add(String id, List<Pair> pairs, double beyond, boolean isDistance) {
    List<Ratio> ratios = new ArrayList<>();
    boolean single = pairs.size() == 1;
    for (int k = 1; k <= pairs.size(); k++) {
      Pair pair = pairs.get(k - 1);
      ReportNumber warm = pair.warm.numbers.get(id);
      ReportNumber cold = pair.cold.numbers.get(id);
      String degrees = Texts.of("metric.season_metrics.over", pair.cold.degrees, pair.warm.degrees);
      Metric metric =
          metric(
              warm,
              "season_" + (single ? "" : k + "_") + id + "_ratio",
              Texts.of("number.season_ratio", warm.label(), degrees),
              Method.SEASON_RATIO);
      Optional<Message> reason = warm.reason().or(cold::reason);
      if (reason.isPresent() || (isDistance && !pair.areStartsAlike)) {
        collector.withheld(metric, reason.orElse(STARTS));
        continue;
      }
      List<Caveat> own = new ArrayList<>(List.of(pair.caveat()));
      if (single && beyond == 0) {
        own.add(caveat(Message.of("metric.season_metrics.how_much_runs_differ_by")));
      }
      ratios.add(ratio(warm, cold, beyond, isDistance));
      add(metric, ratios.get(ratios.size() - 1), own);
    }
    if (pairs.size() > 1) {
      mean(id, pairs, ratios);
    }
  }

  /**
   * Returns the ratio of two numbers.
   *
   * @param beyond half the 95 % interval of a run beyond its readings, as a share
   * @param isDriveShared true if the contribution of the drive is the same in both
   */
  static Ratio ratio(ReportNumber warm, ReportNumber cold, double beyond, boolean isDriveShared) {
    double variance = 0;
    List<RowRef> rows = new ArrayList<>();
    for (ReportNumber number : List.of(warm, cold)) {
      double relative = RunMetrics.standardUncertainty(number) / value(number);
      double shared = isDriveShared ? RunMetrics.driveShare(number) : 0;
      variance += (1 - shared) * relative * relative + Math.pow(beyond / Quantiles.NORMAL_95, 2);
      rows.addAll(number.origin().rows());
    }
    double value = value(cold) / value(warm);
    return new Ratio(value, Quantiles.NORMAL_95 * Math.sqrt(variance) * value, rows);
  }

  private static double value(ReportNumber number) {
    return number.estimate().orElseThrow().value();
  }

  private void mean(String id, List<Pair> pairs, List<Ratio> ratios) {
    ReportNumber of = pairs.get(0).warm.numbers.get(id);
    int n = ratios.size();
    String label = Texts.of("number.season_mean", of.label(), n);
    Metric metric = metric(of, "season_" + id + "_ratio", label, Method.SEASON_MEAN);
    if (n < 2) {
      collector.withheld(metric, Message.of("metric.season_metrics.fewer_than_two_pairs_have"));
      return;
    }
    SampleMean mean = SampleMean.of(ratios.stream().map(Ratio::value).toList());
    double readings = Math.sqrt(ratios.stream().mapToDouble(r -> r.half95 * r.half95).sum()) / n;
    List<RowRef> rows = ratios.stream().flatMap(r -> r.rows.stream()).toList();
    List<Caveat> own = new ArrayList<>(pairs.stream().map(Pair::caveat).toList());
    if (n == 2) {
      own.add(caveat(Message.of("metric.season_metrics.two_pairs_tell_little_of")));
    }
    add(metric, new Ratio(mean.value(), Math.max(mean.half95(), readings), rows), own);
  }

  private void add(Metric metric, Ratio ratio, List<Caveat> own) {
    if (ratio.half95 > MOST_OPEN * ratio.value) {
      collector.withheld(
          metric, Message.of("metric.season_metrics.its_interval_would_reach_beyond"));
    } else {
      Estimate estimate = Estimate.around(ratio.value, ratio.half95);
      collector.covered(metric, Finding.of(estimate, ratio.rows), COVERAGE, own);
    }
  }

  private static Metric metric(ReportNumber of, String id, String label, Method method) {
    Metric metric = of.metric();
    return new Metric(id, label, Unit.ONE, method, metric.basis(), metric.inputs()).in(Role.SEASON);
  }

  private static Caveat caveat(Message sentence) {
    return new Caveat(Caveat.Kind.SEASON, sentence);
  }
}
