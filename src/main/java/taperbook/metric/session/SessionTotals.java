package taperbook.metric.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import taperbook.format.Labels;
import taperbook.metric.bounds.EnergyOverTime;
import taperbook.metric.bounds.LinearPower;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.Input;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/** Computes start, end, duration and energy of a session, and the energy per per cent. */
public final class SessionTotals {
  private final Recording recording;
  private final MetricCollector collector;
  private final UninterruptedMetrics uninterrupted;

  public SessionTotals(Recording recording, MetricCollector collector) {
    this.recording = recording;
    this.collector = collector;
    this.uninterrupted = new UninterruptedMetrics(recording, collector);
  }

  public void measure() {
    ends();
    time();
    uninterrupted.sum();
    energyAdded();
    energyPerShare();
  }

  private void ends() {
    Metric start = end("start_soc", Labels.of("number.start_soc"));
    Metric end = end("end_soc", Labels.of("number.end_soc"));
    if (recording.soc().isEmpty()) {
      collector.withheld(start, Recording.NO_SOC);
      collector.withheld(end, Recording.NO_SOC);
      return;
    }
    Trace soc = recording.soc().get();
    collector.measured(start, shown(soc.firstValue(), soc), List.of(soc.row(0)));
    collector.measured(end, shown(soc.lastValue(), soc), List.of(soc.row(soc.size() - 1)));
  }

  /** Returns a displayed charge with all true charges that the display's rounding allows. */
  private Estimate shown(double value, Trace soc) {
    double step = 2 * soc.halfStep();
    return switch (recording.session().displayRounding()) {
      case NEAREST -> Estimate.around(value, soc.halfStep());
      case DOWN -> new Estimate(value, new Interval(value, value + step));
      case UP -> new Estimate(value, new Interval(value - step, value));
      case NOT_KNOWN -> Estimate.around(value, step);
    };
  }

  private static Metric end(String id, String label) {
    return new Metric(
        id,
        label,
        Unit.PERCENT,
        Method.END_READING,
        Basis.READINGS,
        Set.of(Input.READINGS),
        Set.of(Role.LIBRARY));
  }

  private void time() {
    Metric metric =
        Metric.charging(
            "session_time",
            Labels.of("number.session_time", recording.zero()),
            Unit.SECOND,
            Method.RECORDED_TIME);
    double end = recording.session().recorded().high();
    Trace last =
        recording.session().traces().values().stream()
            .reduce((a, b) -> b.lastSecond() > a.lastSecond() ? b : a)
            .orElseThrow();
    collector.measured(
        uninterrupted.included(metric, 0, end),
        Estimate.around(end, last.clockHalfStep()),
        List.of(last.row(last.size() - 1)));
  }

  private void energyAdded() {
    Metric added =
        Metric.charging(
                "energy_added",
                Labels.of("number.energy_added"),
                Unit.KILOWATT_HOUR,
                Method.ENERGY_COUNTER)
            .in(Role.ENERGY);
    Metric average =
        Metric.charging(
            "average_power_session",
            Labels.of("number.average_power_session"),
            Unit.KILOWATT,
            Method.TIME_AVERAGE);
    Optional<EnergyOverTime> source = recording.energy();
    if (source.isEmpty()) {
      collector.withheld(added, Recording.NO_ENERGY);
      collector.withheld(average, Recording.NO_ENERGY);
      return;
    }
    EnergyOverTime energy = source.get();
    double from = energy.span().low();
    double to = energy.span().high();
    ToDoubleFunction<Draw> total = d -> d.course().energyAt(to) - d.course().energyAt(from);
    List<RowRef> rows = energy.rows(from, to);
    collector.add(added.with(energy.method()), recording.measure(total), rows);
    if (to > from) {
      double hours = (to - from) / LinearPower.SECONDS_PER_HOUR;
      collector.add(
          uninterrupted.included(average, from, to),
          recording.measure(d -> total.applyAsDouble(d) / hours),
          rows,
          uninterrupted.caveats(from, to));
    } else {
      collector.withheld(average, "energy was read at one time only");
    }
  }

  private void energyPerShare() {
    Metric perShare =
        Metric.charging(
                "energy_per_soc",
                Labels.of("number.energy_per_soc"),
                Unit.KILOWATT_HOUR_PER_PERCENT,
                Method.ENERGY_SHARE)
            .in(Role.ENERGY)
            .in(Role.LIBRARY);
    Metric full =
        Metric.charging(
            "implied_full_energy",
            Labels.of("number.implied_full_energy"),
            Unit.KILOWATT_HOUR,
            Method.ENERGY_SHARE);
    if (recording.soc().isEmpty()) {
      collector.withheld(perShare, Recording.NO_SOC);
      collector.withheld(full, Recording.NO_SOC);
      return;
    }
    Trace soc = recording.soc().get();
    Optional<EnergyOverTime> source = recording.energy();
    if (source.isEmpty() || !recording.rises()) {
      String reason = source.isEmpty() ? recording.whyNoEnergy() : Recording.NO_GAIN;
      collector.withheld(perShare, reason);
      collector.withheld(full, reason);
      return;
    }
    List<RowRef> rows = rowsOf(source.get(), soc);
    collector.add(perShare, recording.measure(d -> perPercent(d, soc)), rows);
    collector.add(full, recording.measure(d -> 100 * perPercent(d, soc)), rows);
  }

  /** Returns energy added over charge gained, kWh per %. */
  private static double perPercent(Draw draw, Trace soc) {
    double from = soc.firstSecond();
    double to = soc.lastSecond();
    return (draw.course().energyAt(to) - draw.course().energyAt(from))
        / (draw.course().chargeAt(to) - draw.course().chargeAt(from));
  }

  private static List<RowRef> rowsOf(EnergyOverTime energy, Trace soc) {
    List<RowRef> rows = new ArrayList<>(energy.rows(soc.firstSecond(), soc.lastSecond()));
    rows.add(soc.row(0));
    rows.add(soc.row(soc.size() - 1));
    return rows;
  }
}
