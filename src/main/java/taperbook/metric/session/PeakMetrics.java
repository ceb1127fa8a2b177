package taperbook.metric.session;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.bounds.NearPeak;
import taperbook.metric.bounds.RowScatter;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.Caveat;
import taperbook.session.Trace;

/** Computes the peak power, where it occurred, and how long it lasted. */
public final class PeakMetrics {
  private static final Metric POWER =
      Metric.charging("peak_power", Unit.KILOWATT, Method.HIGHEST_READING).in(Role.HEADLINE);
  private static final Metric REACHED_SOC =
      Metric.charging("peak_reached_soc", Unit.PERCENT, Method.FIRST_AT_PEAK).in(Role.CURVE);
  private static final Metric HOLD_TIME =
      Metric.charging("peak_hold_time", Unit.SECOND, Method.HOLD).in(Role.HEADLINE);
  private static final Metric HOLD_FROM =
      Metric.charging("peak_hold_soc_from", Unit.PERCENT, Method.HOLD);
  private static final Metric HOLD_TO =
      Metric.charging("peak_hold_soc_to", Unit.PERCENT, Method.HOLD);

  private final Recording recording;
  private final MetricCollector collector;
  private final Metric reachedTime;
  private final Metric holdSince;

  public PeakMetrics(Recording recording, MetricCollector collector) {
    this.recording = recording;
    this.collector = collector;
    this.reachedTime =
        Metric.charging(
                "peak_reached_time",
                Texts.of("number.peak_reached_time", recording.zero()),
                Unit.SECOND,
                Method.FIRST_AT_PEAK)
            .in(Role.CURVE);
    this.holdSince =
        Metric.charging(
            "peak_hold_time_from",
            Texts.of("number.peak_hold_time_from", recording.zero()),
            Unit.SECOND,
            Method.HOLD);
  }

  public void measure() {
    Finding<Trace> power = recording.powers();
    Finding<Trace> peak = power.from(p -> List.of(p.row(p.indexOfMax())));
    List<Caveat> own = new ArrayList<>();
    power.value().filter(p -> p.indexOfMax() == 0).ifPresent(p -> own.add(peakInFirstReading()));
    Finding<Trace> steady = power.flatMap(this::steady);
    power.value().filter(p -> steady.value().isEmpty()).ifPresent(p -> own.add(fluctuation(p)));
    Finding<Interval> reached = peak.map(PeakMetrics::reached);
    collector.measured(POWER, peak.map(p -> Estimate.around(p.max(), p.halfStep())), own);
    charge(REACHED_SOC, reached.map(r -> new Moment(r, d -> r.low() + d.place() * r.width())));
    collector.measured(
        reachedTime, peak.map(p -> new Estimate(p.second(p.indexOfMax()), reached(p))), own);
    hold(steady);
  }

  /** Returns when the power reached its peak, s. */
  private static Interval reached(Trace power) {
    int at = power.indexOfMax();
    double second = power.second(at);
    double since = at == 0 ? Math.min(0, second) : power.second(at - 1);
    return new Interval(
        Math.min(second, Math.max(0, since - power.clockHalfStep())),
        second + power.clockHalfStep());
  }

  private static Caveat peakInFirstReading() {
    return new Caveat(
        Caveat.Kind.STARTING_SOC, Message.of("metric.peak_metrics.highest_power_stands_in_first"));
  }

  private Caveat fluctuation(Trace power) {
    return new Caveat(
        Caveat.Kind.READINGS,
        Message.of("metric.peak_metrics.readings_of_power_fluctuate_by", scatter(power)));
  }

  private Finding<Trace> steady(Trace power) {
    return NearPeak.isSteady(power)
        ? Finding.of(power, List.of())
        : Finding.missing(
            Message.of("metric.peak_metrics.power_fluctuates_from_row_to", scatter(power)));
  }

  /** Returns the fluctuation with two digits. */
  private String scatter(Trace power) {
    BigDecimal scatter = new BigDecimal(RowScatter.of(power)).round(new MathContext(2));
    return recording.formatter().exactly(scatter.doubleValue(), Unit.KILOWATT);
  }

  private void hold(Finding<Trace> power) {
    Finding<PowerHold> hold =
        power
            .filter(p -> !recording.hasFewRows(), Recording.FEW_ROWS)
            .map(PowerHold::new)
            .from(PowerHold::rows);
    collector.add(HOLD_TIME, hold.map(h -> recording.measure(h::seconds)));
    collector.add(holdSince, hold.map(h -> recording.measure(h::start)));
    Finding<Interval> read = power.map(p -> new Interval(p.firstSecond(), p.lastSecond()));
    charge(HOLD_FROM, hold.flatMap(h -> read.map(r -> new Moment(r, h::start))));
    charge(HOLD_TO, hold.flatMap(h -> read.map(r -> new Moment(r, h::end))));
  }

  /** A moment in each draw, s, with the times that it lies between. */
  private record Moment(Interval times, ToDoubleFunction<Draw> second) {}

  /** Adds the state of charge at a moment. */
  private void charge(Metric metric, Finding<Moment> moment) {
    collector.add(
        metric,
        moment.flatMap(
            m ->
                recording
                    .chargeAround(m.times())
                    .map(
                        q -> recording.measure(d -> d.trueChargeAt(m.second().applyAsDouble(d))))));
  }
}
