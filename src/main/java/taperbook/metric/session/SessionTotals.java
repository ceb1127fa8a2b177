package taperbook.metric.session;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.bounds.EnergyOverTime;
import taperbook.metric.bounds.LinearPower;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.Finding;
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
    collector.measured(end("start_soc"), recording.charge().flatMap(q -> shown(q, 0)));
    collector.measured(end("end_soc"), recording.charge().flatMap(q -> shown(q, q.size() - 1)));
  }

  /** Returns a displayed charge with all true charges that the display's rounding allows. */
  private Finding<Estimate> shown(Trace soc, int i) {
    double value = soc.value(i);
    double step = 2 * soc.halfStep();
    Estimate estimate =
        switch (recording.session().displayRounding()) {
          case NEAREST -> Estimate.around(value, soc.halfStep());
          case DOWN -> new Estimate(value, new Interval(value, value + step));
          case UP -> new Estimate(value, new Interval(value - step, value));
          case NOT_KNOWN -> Estimate.around(value, step);
        };
    return Finding.of(estimate, List.of(soc.row(i)));
  }

  private static Metric end(String id) {
    return Metric.of(id, Unit.PERCENT, Method.END_READING, Basis.READINGS, Set.of(Input.READINGS))
        .in(Role.LIBRARY);
  }

  private void time() {
    Metric metric =
        Metric.charging(
            "session_time",
            Texts.of("number.session_time", recording.zero()),
            Unit.SECOND,
            Method.RECORDED_TIME);
    double end = recording.session().recorded().high();
    Trace last =
        recording.session().traces().values().stream()
            .reduce((a, b) -> b.lastSecond() > a.lastSecond() ? b : a)
            .orElseThrow();
    collector.measured(
        uninterrupted.included(metric, 0, end),
        Finding.of(Estimate.around(end, last.clockHalfStep()), List.of(last.row(last.size() - 1))));
  }

  private void energyAdded() {
    Metric added =
        Metric.charging("energy_added", Unit.KILOWATT_HOUR, Method.ENERGY_COUNTER).in(Role.ENERGY);
    Metric average = Metric.charging("average_power_session", Unit.KILOWATT, Method.TIME_AVERAGE);
    Finding<EnergyOverTime> energy = recording.energy();
    Finding<Interval> span =
        energy.from(e -> e.rows(e.span().low(), e.span().high())).map(EnergyOverTime::span);
    Method method = energy.value().map(EnergyOverTime::method).orElse(added.method());
    collector.add(added.with(method), span.map(s -> recording.measure(d -> added(d, s))));
    Interval whole = span.value().orElse(Interval.exactly(0));
    collector.add(
        uninterrupted.included(average, whole.low(), whole.high()),
        span.filter(s -> s.width() > 0, Message.of("metric.session_totals.energy_was_read_at_one"))
            .map(
                s ->
                    recording.measure(
                        d -> added(d, s) / (s.width() / LinearPower.SECONDS_PER_HOUR))),
        uninterrupted.caveats(whole.low(), whole.high()));
  }

  private static double added(Draw draw, Interval span) {
    return draw.course().energyAt(span.high()) - draw.course().energyAt(span.low());
  }

  private void energyPerShare() {
    Metric perShare =
        Metric.charging("energy_per_soc", Unit.KILOWATT_HOUR_PER_PERCENT, Method.ENERGY_SHARE)
            .in(Role.ENERGY)
            .in(Role.LIBRARY);
    Metric full = Metric.charging("implied_full_energy", Unit.KILOWATT_HOUR, Method.ENERGY_SHARE);
    Finding<Trace> gained =
        recording
            .charge()
            .and(recording.energy())
            .filter(q -> recording.rises(), Recording.NO_GAIN)
            .from(this::rows);
    collector.add(perShare, gained.map(q -> recording.measure(d -> perPercent(d, q))));
    collector.add(full, gained.map(q -> recording.measure(d -> 100 * perPercent(d, q))));
  }

  /** Returns energy added over charge gained, kWh per %. */
  private static double perPercent(Draw draw, Trace soc) {
    double from = soc.firstSecond();
    double to = soc.lastSecond();
    return (draw.course().energyAt(to) - draw.course().energyAt(from))
        / (draw.course().chargeAt(to) - draw.course().chargeAt(from));
  }

  private List<RowRef> rows(Trace soc) {
    EnergyOverTime energy = recording.energy().value().orElseThrow();
    return Stream.concat(
            energy.rows(soc.firstSecond(), soc.lastSecond()).stream(),
            Stream.of(soc.row(0), soc.row(soc.size() - 1)))
        .toList();
  }
}
