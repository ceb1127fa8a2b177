package taperbook.metric.road;

import java.util.List;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.metric.trip.ChargeTimes;
import taperbook.metric.trip.FastestStretch;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.session.Input;

/**
 * Finds the state of charge to unplug at before a leg to the next station with the least charging
 * time.
 */
final class NextLegMetrics {
  /** Delay that still counts as optimal: a minute. */
  private static final double FLAT_SECONDS = 60;

  private final Recording recording;
  private final RangeFigures range;
  private final MetricCollector collector;

  NextLegMetrics(Recording recording, RangeFigures range, MetricCollector collector) {
    this.recording = recording;
    this.range = range;
    this.collector = collector;
  }

  void measure(List<WantedDistance> legs, int reserve) {
    legs.forEach(leg -> measure(leg, reserve));
  }

  private void measure(WantedDistance leg, int reserve) {
    Finding<Estimate> share = range.share(leg);
    Finding<ChargeTimes> clock = share.flatMap(s -> recording.clock());
    Finding<FastestStretch> best = share.flatMap(s -> clock.flatMap(c -> best(c, s, reserve)));
    Finding<Interval> flat =
        best.map(b -> b.endsWithin(clock.value().orElseThrow(), reserve, FLAT_SECONDS));
    // The unplug point is fixed; the arrival charge is as uncertain as the share.
    add(soc(leg, "", "number.best_unplug_soc"), best.map(FastestStretch::toPercent));
    collector.add(
        time(leg),
        best.map(FastestStretch::toPercent)
            .map(to -> recording.measure(d -> d.seconds(to - d.share(leg.kilometres()), to))));
    add(soc(leg, "_from", "number.best_unplug_soc_from"), flat.map(Interval::low));
    add(soc(leg, "_to", "number.best_unplug_soc_to"), flat.map(Interval::high));
  }

  private Finding<FastestStretch> best(ChargeTimes clock, Estimate share, int reserve) {
    Message none =
        Message.of(
            "metric.next_leg_metrics.it_takes_and_session_holds",
            recording.formatter().value(share, Unit.PERCENT),
            reserve);
    Finding<FastestStretch> best =
        Finding.of(FastestStretch.of(clock, share.value(), reserve), none);
    Finding<?> read = best.flatMap(b -> recording.between(b.fromPercent(), b.toPercent()));
    return read.value().isPresent() ? best.and(read) : Finding.missing(none);
  }

  private void add(Metric metric, Finding<Double> percent) {
    collector.measured(metric, percent.map(Estimate::exactly));
  }

  private static Metric soc(WantedDistance leg, String idEnd, String labelKey) {
    return new Metric(
        "best_unplug_soc_" + leg.idPart() + idEnd,
        Texts.of(labelKey, leg.words()),
        Unit.PERCENT,
        Method.BEST_UNPLUG,
        Basis.DRIVEN,
        Input.ROAD);
  }

  private static Metric time(WantedDistance leg) {
    return new Metric(
        "best_unplug_time_" + leg.idPart(),
        Texts.of("number.best_unplug_time", leg.words()),
        Unit.SECOND,
        Method.BEST_UNPLUG,
        Basis.DRIVEN,
        Input.ROAD);
  }
}
