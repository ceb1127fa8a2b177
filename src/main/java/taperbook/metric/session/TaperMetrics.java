package taperbook.metric.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import taperbook.format.Labels;
import taperbook.metric.bounds.LinearPower;
import taperbook.metric.bounds.PowerIntegral;
import taperbook.metric.fit.LastFall;
import taperbook.metric.fit.Segment;
import taperbook.metric.fit.SegmentKind;
import taperbook.metric.fit.Step;
import taperbook.metric.fit.TaperFit;
import taperbook.metric.fit.TimeShare;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/** Computes the shape of power over state of charge and how fast it tapers. */
public final class TaperMetrics {
  /** The reason why the end of a warm-up climb is withheld if there is none. */
  public static final String NO_CLIMB = "no warm-up climb was seen";

  /** Coverage of two standard uncertainties to each side, JCGM 100:2008, 6.3.3. */
  private static final double COVERAGE = 0.95;

  private static final Metric COUNT =
      Metric.charging(
          "taper_segments", Labels.of("number.taper_segments"), Unit.ONE, Method.SEGMENTED_FIT);
  private static final Metric WARM_UP_END =
      fitted("warm_up_end_soc", Labels.of("number.warm_up_end_soc"), Unit.PERCENT).in(Role.CURVE);
  private static final Metric PLATEAU_FROM =
      fitted(
          "longest_plateau_soc_from", Labels.of("number.longest_plateau_soc_from"), Unit.PERCENT);
  private static final Metric PLATEAU_TO =
      fitted("longest_plateau_soc_to", Labels.of("number.longest_plateau_soc_to"), Unit.PERCENT);
  private static final Metric STEEPEST =
      fitted(
              "steepest_taper_slope",
              Labels.of("number.steepest_taper_slope"),
              Unit.KILOWATT_PER_PERCENT)
          .in(Role.CURVE);
  private static final Metric RATIO =
      Metric.charging(
              "peak_to_average_ratio",
              Labels.of("number.peak_to_average_ratio"),
              Unit.ONE,
              Method.PEAK_TO_AVERAGE)
          .in(Role.CURVE);
  private static final List<Integer> SHARES_OF_PEAK = List.of(80, 50);
  private static final List<Integer> LEVELS_KILOWATTS = List.of(50, 100, 150);

  private final Recording recording;
  private final MetricCollector collector;

  public TaperMetrics(Recording recording, MetricCollector collector) {
    this.recording = recording;
    this.collector = collector;
  }

  private static Metric fitted(String id, String label, Unit unit) {
    return Metric.charging(id, label, unit, Method.SEGMENTED_FIT);
  }

  public void measure() {
    fit();
    SHARES_OF_PEAK.forEach(this::fallBelow);
    LEVELS_KILOWATTS.forEach(this::timeAbove);
    peakToAverage();
  }

  private void fit() {
    Optional<TaperFit> fit =
        recording.soc().flatMap(soc -> recording.steadyPower().flatMap(p -> TaperFit.of(soc, p)));
    if (fit.isEmpty()) {
      for (Metric metric : List.of(COUNT, WARM_UP_END, PLATEAU_FROM, PLATEAU_TO, STEEPEST)) {
        collector.withheld(metric, whyNoFit());
      }
      return;
    }
    List<Segment> segments = fit.get().segments();
    List<RowRef> all = segments.stream().flatMap(s -> s.rows().stream()).distinct().toList();
    Estimate count = new Estimate(segments.size(), fit.get().counts());
    collector.covered(COUNT, count, COVERAGE, all);
    for (int k = 0; k < segments.size(); k++) {
      segment(segments, k);
    }
    fit.get().steps().forEach(this::step);
    warmUp(segments);
    plateau(fit.get());
    steepest(segments);
  }

  private String whyNoFit() {
    if (recording.soc().isEmpty()) {
      return Recording.NO_SOC;
    }
    return recording.power().isEmpty()
        ? Recording.NO_POWER
        : "power was read at fewer than "
            + TaperFit.FEWEST_POINTS
            + " different states of charge, or over less than 1 %: too few for a fit";
  }

  private void segment(List<Segment> segments, int k) {
    Segment segment = segments.get(k);
    String id = "taper_segment_" + (k + 1);
    String kind = segment.kind().words();
    Metric from =
        fitted(
            id + "_soc_from",
            Labels.of("number.taper_segment_soc_from", k + 1, kind),
            Unit.PERCENT);
    Metric to =
        fitted(id + "_soc_to", Labels.of("number.taper_segment_soc_to", k + 1, kind), Unit.PERCENT);
    Metric slope =
        fitted(
            id + "_slope",
            Labels.of("number.taper_segment_slope", k + 1, kind),
            Unit.KILOWATT_PER_PERCENT);
    collector.covered(from, segment.from(), k == 0 ? 1 : COVERAGE, segment.rows());
    collector.covered(to, segment.to(), k == segments.size() - 1 ? 1 : COVERAGE, segment.rows());
    if (segment.slopeSeen()) {
      collector.covered(slope, segment.slope(), COVERAGE, segment.rows());
    } else {
      collector.withheld(
          slope,
          "fewer than two states of charge were read within the segment: too few to tell how steep"
              + " it is");
    }
    collector.covered(
        fitted(id + "_power", Labels.of("number.taper_segment_power", k + 1, kind), Unit.KILOWATT),
        segment.power(),
        COVERAGE,
        segment.rows());
  }

  private void step(Step step) {
    int before = step.after() + 1;
    String id = "taper_step_" + before;
    collector.covered(
        fitted(id + "_soc", Labels.of("number.taper_step_soc", before), Unit.PERCENT),
        step.soc(),
        1,
        step.rows());
    collector.covered(
        fitted(id + "_height", Labels.of("number.taper_step_height", before), Unit.KILOWATT),
        step.height(),
        COVERAGE,
        step.rows());
  }

  private void warmUp(List<Segment> segments) {
    List<Segment> climb =
        segments.stream().takeWhile(s -> s.kind() == SegmentKind.WARM_UP).toList();
    if (climb.isEmpty()) {
      collector.withheld(WARM_UP_END, NO_CLIMB);
    } else if (climb.size() == segments.size()) {
      collector.withheld(WARM_UP_END, "the power was still climbing at the last reading");
    } else {
      collector.covered(WARM_UP_END, climb.get(climb.size() - 1).to(), COVERAGE, rows(climb));
    }
  }

  private void plateau(TaperFit fit) {
    Optional<List<Segment>> longest =
        runs(fit, SegmentKind.PLATEAU).stream()
            .max(
                Comparator.comparingDouble(
                    r -> r.get(r.size() - 1).to().value() - r.get(0).from().value()));
    if (longest.isEmpty()) {
      collector.withheld(PLATEAU_FROM, "no plateau was seen");
      collector.withheld(PLATEAU_TO, "no plateau was seen");
      return;
    }
    List<Segment> run = longest.get();
    collector.covered(PLATEAU_FROM, run.get(0).from(), COVERAGE, rows(run));
    collector.covered(PLATEAU_TO, run.get(run.size() - 1).to(), COVERAGE, rows(run));
  }

  /** Groups consecutive segments of one kind without a step between them. */
  private static List<List<Segment>> runs(TaperFit fit, SegmentKind kind) {
    List<List<Segment>> runs = new ArrayList<>();
    boolean joins = false;
    for (int k = 0; k < fit.segments().size(); k++) {
      boolean of = fit.segments().get(k).kind() == kind;
      if (of && !joins) {
        runs.add(new ArrayList<>());
      }
      if (of) {
        runs.get(runs.size() - 1).add(fit.segments().get(k));
      }
      int here = k;
      joins = of && fit.steps().stream().noneMatch(step -> step.after() == here);
    }
    return runs;
  }

  private static List<RowRef> rows(List<Segment> run) {
    return run.stream().flatMap(s -> s.rows().stream()).distinct().toList();
  }

  private void steepest(List<Segment> segments) {
    Optional<Segment> steepest =
        segments.stream()
            .filter(s -> s.kind() == SegmentKind.TAPER && s.slopeSeen())
            .min(Comparator.comparingDouble(s -> s.slope().value()));
    if (steepest.isEmpty()) {
      collector.withheld(STEEPEST, "no taper was seen");
    } else {
      collector.covered(STEEPEST, steepest.get().slope(), COVERAGE, steepest.get().rows());
    }
  }

  private void fallBelow(int percentOfPeak) {
    Metric metric =
        Metric.charging(
                "soc_below_" + percentOfPeak + "_percent_of_peak",
                Labels.of("number.soc_below_percent_of_peak", percentOfPeak),
                Unit.PERCENT,
                Method.LAST_FALL)
            .in(Role.CURVE);
    if (recording.soc().isEmpty() || recording.power().isEmpty()) {
      collector.withheld(metric, recording.soc().isEmpty() ? Recording.NO_SOC : Recording.NO_POWER);
      return;
    }
    Optional<LastFall> fall = LastFall.below(recording.power().get(), percentOfPeak / 100.0);
    if (fall.isEmpty()) {
      collector.withheld(
          metric, "the readings do not end surely below " + percentOfPeak + " % of the peak");
      return;
    }
    if (recording.chargeReadAround(fall.get().times())) {
      double threshold = percentOfPeak / 100.0 * recording.power().get().max();
      collector.add(
          metric,
          recording.measure(d -> d.trueChargeAt(d.course().lastAbove(threshold))),
          fall.get().rows());
    } else {
      collector.withheld(metric, Recording.SOC_NOT_READ_THEN);
    }
  }

  private void timeAbove(int kilowatts) {
    Metric metric =
        Metric.charging(
                "time_share_above_" + kilowatts + "_kw",
                Labels.of("number.time_share_above", kilowatts),
                Unit.PERCENT,
                Method.TIME_SHARE)
            .in(Role.CURVE);
    Optional<PowerIntegral> integral = overTime(metric);
    if (integral.isEmpty()) {
      return;
    }
    Trace power = recording.power().orElseThrow();
    Interval recorded = recording.session().recorded();
    double session = recorded.high() - Math.min(0, recorded.low());
    Estimate share = new TimeShare(power, session).atLeast(kilowatts);
    collector.measured(metric, share, integral.get().rows(power.firstSecond(), power.lastSecond()));
  }

  private void peakToAverage() {
    Optional<PowerIntegral> integral = overTime(RATIO);
    if (integral.isEmpty()) {
      return;
    }
    Trace power = recording.power().orElseThrow();
    double from = power.firstSecond();
    double to = power.lastSecond();
    Estimate hours =
        Estimate.around(
            (to - from) / LinearPower.SECONDS_PER_HOUR,
            2 * power.clockHalfStep() / LinearPower.SECONDS_PER_HOUR);
    Estimate energy = integral.get().between(from, to);
    if (energy.bounds().low() <= 0 || hours.bounds().low() <= 0) {
      collector.withheld(RATIO, "the average power is not more than the displays can tell");
      return;
    }
    Estimate peak = Estimate.around(power.max(), power.halfStep());
    Estimate ratio = peak.times(hours).over(energy);
    // An average cannot exceed its peak.
    Estimate bounded = new Estimate(ratio.value(), ratio.bounds().atLeast(1).hull(ratio.value()));
    collector.measured(RATIO, bounded, integral.get().rows(from, to));
  }

  /** Returns the power readings over time; if there are none, adds the reason. */
  private Optional<PowerIntegral> overTime(Metric metric) {
    Optional<Trace> power = recording.power();
    if (power.isEmpty()) {
      collector.withheld(metric, Recording.NO_POWER);
      return Optional.empty();
    }
    if (recording.integral().isEmpty() || power.get().lastSecond() <= power.get().firstSecond()) {
      collector.withheld(metric, "power was read only once");
      return Optional.empty();
    }
    return recording.integral();
  }
}
