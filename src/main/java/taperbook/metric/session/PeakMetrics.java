package taperbook.metric.session;

import java.util.List;
import java.util.function.ToDoubleFunction;
import taperbook.format.Labels;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.Caveat;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/** Computes the peak power, where it occurred, and how long it lasted. */
public final class PeakMetrics {
  private static final Metric POWER =
      Metric.charging(
              "peak_power", Labels.of("number.peak_power"), Unit.KILOWATT, Method.HIGHEST_READING)
          .in(Role.HEADLINE);
  private static final Metric REACHED_SOC =
      Metric.charging(
              "peak_reached_soc",
              Labels.of("number.peak_reached_soc"),
              Unit.PERCENT,
              Method.FIRST_AT_PEAK)
          .in(Role.CURVE);
  private static final Metric HOLD_TIME =
      Metric.charging(
              "peak_hold_time", Labels.of("number.peak_hold_time"), Unit.SECOND, Method.HOLD)
          .in(Role.HEADLINE);
  private static final Metric HOLD_FROM =
      Metric.charging(
          "peak_hold_soc_from", Labels.of("number.peak_hold_soc_from"), Unit.PERCENT, Method.HOLD);
  private static final Metric HOLD_TO =
      Metric.charging(
          "peak_hold_soc_to", Labels.of("number.peak_hold_soc_to"), Unit.PERCENT, Method.HOLD);

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
                Labels.of("number.peak_reached_time", recording.zero()),
                Unit.SECOND,
                Method.FIRST_AT_PEAK)
            .in(Role.CURVE);
    this.holdSince =
        Metric.charging(
            "peak_hold_time_from",
            Labels.of("number.peak_hold_time_from", recording.zero()),
            Unit.SECOND,
            Method.HOLD);
  }

  public void measure() {
    if (recording.power().isEmpty()) {
      for (Metric metric :
          List.of(POWER, REACHED_SOC, reachedTime, HOLD_TIME, holdSince, HOLD_FROM, HOLD_TO)) {
        collector.withheld(metric, Recording.NO_POWER);
      }
      return;
    }
    Trace power = recording.power().get();
    peak(power);
    hold(power);
  }

  private void peak(Trace power) {
    int at = power.indexOfMax();
    List<Caveat> own = at == 0 ? List.of(peakInFirstReading()) : List.of();
    List<RowRef> rows = List.of(power.row(at));
    Estimate peak = Estimate.around(power.max(), power.halfStep());
    collector.measured(POWER, peak, rows, own);
    double second = power.second(at);
    double since = at == 0 ? Math.min(0, second) : power.second(at - 1);
    Interval reached =
        new Interval(
            Math.min(second, Math.max(0, since - power.clockHalfStep())),
            second + power.clockHalfStep());
    charge(REACHED_SOC, reached, d -> reached.low() + d.place() * reached.width(), rows);
    collector.measured(reachedTime, new Estimate(second, reached), rows, own);
  }

  private static Caveat peakInFirstReading() {
    return new Caveat(
        Caveat.Kind.STARTING_SOC,
        "The highest power stands in the first reading: the session may have begun past the"
            + " car's peak.");
  }

  private void hold(Trace power) {
    if (recording.hasFewRows()) {
      List.of(HOLD_TIME, holdSince, HOLD_FROM, HOLD_TO)
          .forEach(metric -> collector.withheld(metric, Recording.FEW_ROWS));
      return;
    }
    PowerHold hold = new PowerHold(power);
    List<RowRef> rows = hold.rows();
    collector.add(HOLD_TIME, recording.measure(hold::seconds), rows);
    collector.add(holdSince, recording.measure(hold::start), rows);
    Interval read = new Interval(power.firstSecond(), power.lastSecond());
    charge(HOLD_FROM, read, hold::start, rows);
    charge(HOLD_TO, read, hold::end, rows);
  }

  /** Adds the state of charge at a moment. */
  private void charge(
      Metric metric, Interval times, ToDoubleFunction<Draw> second, List<RowRef> rows) {
    if (recording.chargeReadAround(times)) {
      collector.add(metric, recording.measure(d -> d.trueChargeAt(second.applyAsDouble(d))), rows);
    } else {
      collector.withheld(
          metric, recording.soc().isEmpty() ? Recording.NO_SOC : Recording.SOC_NOT_READ_THEN);
    }
  }
}
