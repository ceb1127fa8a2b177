package taperbook.metric.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.bounds.LinearPower;
import taperbook.metric.fit.LastFall;
import taperbook.metric.fit.Segment;
import taperbook.metric.fit.SegmentKind;
import taperbook.metric.fit.Step;
import taperbook.metric.fit.TaperFit;
import taperbook.metric.fit.TimeShare;
import taperbook.metric.recording.Finding;
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
  public static final Message NO_CLIMB = Message.of("metric.taper_metrics.no_warm_up_climb_was");

  /** Coverage of two standard uncertainties to each side, JCGM 100:2008, 6.3.3. */
  private static final double COVERAGE = 0.95;

  private static final Metric COUNT =
      Metric.charging("taper_segments", Unit.ONE, Method.SEGMENTED_FIT);
  private static final Metric WARM_UP_END =
      Metric.charging("warm_up_end_soc", Unit.PERCENT, Method.SEGMENTED_FIT).in(Role.CURVE);
  private static final Metric PLATEAU_FROM =
      Metric.charging("longest_plateau_soc_from", Unit.PERCENT, Method.SEGMENTED_FIT);
  private static final Metric PLATEAU_TO =
      Metric.charging("longest_plateau_soc_to", Unit.PERCENT, Method.SEGMENTED_FIT);
  private static final Metric STEEPEST =
      Metric.charging("steepest_taper_slope", Unit.KILOWATT_PER_PERCENT, Method.SEGMENTED_FIT)
          .in(Role.CURVE);
  private static final Metric RATIO =
      Metric.charging("peak_to_average_ratio", Unit.ONE, Method.PEAK_TO_AVERAGE).in(Role.CURVE);
  private static final Message FEW_POINTS =
      Message.of("metric.taper_metrics.power_was_read_at_fewer", TaperFit.FEWEST_POINTS);
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
    Finding<TaperFit> fit =
        recording
            .charge()
            .flatMap(
                soc ->
                    recording
                        .powers()
                        .flatMap(
                            p ->
                                Finding.of(
                                    recording.steadyPower().flatMap(s -> TaperFit.of(soc, s)),
                                    FEW_POINTS)))
            .from(f -> rows(f.segments()));
    collector.covered(COUNT, fit.map(f -> new Estimate(f.segments().size(), f.counts())), COVERAGE);
    fit.value()
        .ifPresent(
            f -> {
              IntStream.range(0, f.segments().size()).forEach(k -> segment(f.segments(), k));
              f.steps().forEach(this::step);
            });
    collector.covered(WARM_UP_END, part(fit, this::warmUp).map(Segment::to), COVERAGE);
    Finding<List<Segment>> plateau = part(fit, this::plateau);
    collector.covered(PLATEAU_FROM, plateau.map(run -> run.get(0).from()), COVERAGE);
    collector.covered(PLATEAU_TO, plateau.map(run -> run.get(run.size() - 1).to()), COVERAGE);
    collector.covered(STEEPEST, part(fit, this::steepest).map(Segment::slope), COVERAGE);
  }

  /** Returns a part of the fit, with the rows of the part only. */
  private static <T> Finding<T> part(Finding<TaperFit> fit, Function<TaperFit, Finding<T>> part) {
    return fit.value().map(part).orElseGet(() -> Finding.missing(fit.reason().orElseThrow()));
  }

  private void segment(List<Segment> segments, int k) {
    Segment segment = segments.get(k);
    String id = "taper_segment_" + (k + 1);
    String kind = segment.kind().words();
    Metric from =
        fitted(
            id + "_soc_from", Texts.of("number.taper_segment_soc_from", k + 1, kind), Unit.PERCENT);
    Metric to =
        fitted(id + "_soc_to", Texts.of("number.taper_segment_soc_to", k + 1, kind), Unit.PERCENT);
    Metric slope =
        fitted(
            id + "_slope",
            Texts.of("number.taper_segment_slope", k + 1, kind),
            Unit.KILOWATT_PER_PERCENT);
    List<RowRef> rows = segment.rows();
    boolean isLast = k == segments.size() - 1;
    collector.covered(from, Finding.of(segment.from(), rows), k == 0 ? 1 : COVERAGE);
    collector.covered(to, Finding.of(segment.to(), rows), isLast ? 1 : COVERAGE);
    collector.covered(
        slope,
        Finding.of(segment.slope(), rows)
            .filter(
                s -> segment.slopeSeen(),
                Message.of("metric.taper_metrics.fewer_than_two_states_of")),
        COVERAGE);
    collector.covered(
        fitted(id + "_power", Texts.of("number.taper_segment_power", k + 1, kind), Unit.KILOWATT),
        Finding.of(segment.power(), rows),
        COVERAGE);
  }

  private void step(Step step) {
    int before = step.after() + 1;
    String id = "taper_step_" + before;
    collector.covered(
        fitted(id + "_soc", Texts.of("number.taper_step_soc", before), Unit.PERCENT),
        Finding.of(step.soc(), step.rows()),
        1);
    collector.covered(
        fitted(id + "_height", Texts.of("number.taper_step_height", before), Unit.KILOWATT),
        Finding.of(step.height(), step.rows()),
        COVERAGE);
  }

  private Finding<Segment> warmUp(TaperFit fit) {
    List<Segment> climb =
        fit.segments().stream().takeWhile(s -> s.kind() == SegmentKind.WARM_UP).toList();
    if (climb.isEmpty()) {
      return Finding.missing(NO_CLIMB);
    }
    return climb.size() == fit.segments().size()
        ? Finding.missing(Message.of("metric.taper_metrics.power_was_still_climbing_at"))
        : Finding.of(climb.get(climb.size() - 1), rows(climb));
  }

  private Finding<List<Segment>> plateau(TaperFit fit) {
    return Finding.of(
            runs(fit, SegmentKind.PLATEAU).stream()
                .max(
                    Comparator.comparingDouble(
                        r -> r.get(r.size() - 1).to().value() - r.get(0).from().value())),
            Message.of("metric.taper_metrics.no_plateau_was_seen"))
        .from(TaperMetrics::rows);
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

  private Finding<Segment> steepest(TaperFit fit) {
    return Finding.of(
            fit.segments().stream()
                .filter(s -> s.kind() == SegmentKind.TAPER && s.slopeSeen())
                .min(Comparator.comparingDouble(s -> s.slope().value())),
            Message.of("metric.taper_metrics.no_taper_was_seen"))
        .from(Segment::rows);
  }

  private void fallBelow(int percentOfPeak) {
    Metric metric =
        Metric.charging(
                "soc_below_" + percentOfPeak + "_percent_of_peak",
                Texts.of("number.soc_below_percent_of_peak", percentOfPeak),
                Unit.PERCENT,
                Method.LAST_FALL)
            .in(Role.CURVE);
    double share = percentOfPeak / 100.0;
    Message notSurely =
        Message.of("metric.taper_metrics.readings_do_not_end_surely", percentOfPeak);
    collector.add(
        metric,
        recording
            .charge()
            .flatMap(q -> recording.powers())
            .flatMap(
                p ->
                    Finding.of(LastFall.below(p, share), notSurely)
                        .from(LastFall::rows)
                        .flatMap(fall -> recording.chargeAround(fall.times()))
                        .map(
                            q ->
                                recording.measure(
                                    d -> d.trueChargeAt(d.course().lastAbove(share * p.max()))))));
  }

  private void timeAbove(int kilowatts) {
    Metric metric =
        Metric.charging(
                "time_share_above_" + kilowatts + "_kw",
                Texts.of("number.time_share_above", kilowatts),
                Unit.PERCENT,
                Method.TIME_SHARE)
            .in(Role.CURVE);
    Interval recorded = recording.session().recorded();
    double session = recorded.high() - Math.min(0, recorded.low());
    collector.measured(metric, overTime().map(p -> new TimeShare(p, session).atLeast(kilowatts)));
  }

  private void peakToAverage() {
    collector.measured(RATIO, overTime().flatMap(this::peakToAverage));
  }

  private Finding<Estimate> peakToAverage(Trace power) {
    double from = power.firstSecond();
    double to = power.lastSecond();
    Estimate hours =
        Estimate.around(
            (to - from) / LinearPower.SECONDS_PER_HOUR,
            2 * power.clockHalfStep() / LinearPower.SECONDS_PER_HOUR);
    Estimate energy = recording.integral().orElseThrow().between(from, to);
    if (energy.bounds().low() <= 0 || hours.bounds().low() <= 0) {
      return Finding.missing(Message.of("metric.taper_metrics.average_power_is_not_more"));
    }
    Estimate peak = Estimate.around(power.max(), power.halfStep());
    Estimate ratio = peak.times(hours).over(energy);
    // An average cannot exceed its peak.
    return Finding.of(
        new Estimate(ratio.value(), ratio.bounds().atLeast(1).hull(ratio.value())), List.of());
  }

  /** Returns the power readings if they cover some time. */
  private Finding<Trace> overTime() {
    return recording
        .powers()
        .filter(
            p -> recording.integral().isPresent() && p.lastSecond() > p.firstSecond(),
            Message.of("metric.taper_metrics.power_was_read_only_once"))
        .from(p -> recording.integral().orElseThrow().rows(p.firstSecond(), p.lastSecond()));
  }
}
