package taperbook.metric.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.format.Labels;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.metric.session.DistanceMetrics;
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
import taperbook.session.RowRef;

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
    Optional<Estimate> share = DistanceMetrics.share(leg, range.fullRange());
    Optional<ChargeTimes> clock = recording.clock();
    if (share.isEmpty() || clock.isEmpty()) {
      withhold(
          leg,
          share.isEmpty() ? range.fullRange().withheld().orElseThrow() : recording.whyNoClock());
      return;
    }
    Optional<FastestStretch> best = FastestStretch.of(clock.get(), share.get().value(), reserve);
    Optional<List<RowRef>> rows =
        best.flatMap(b -> recording.rowsBetween(b.fromPercent(), b.toPercent()));
    if (best.isEmpty() || rows.isEmpty()) {
      withhold(
          leg,
          "it takes "
              + recording.formatter().value(share.get(), Unit.PERCENT)
              + ", and the session holds no such stretch that begins at "
              + reserve
              + " % or more");
      return;
    }
    add(leg, best.get(), rows.get(), best.get().endsWithin(clock.get(), reserve, FLAT_SECONDS));
  }

  /** Adds the numbers for a fixed unplug point; the arrival charge is as uncertain as the share. */
  private void add(WantedDistance leg, FastestStretch best, List<RowRef> stretch, Interval flat) {
    List<RowRef> rows = new ArrayList<>(stretch);
    rows.addAll(range.fullRange().rows());
    double unplug = best.toPercent();
    collector.measured(soc(leg, "", "number.best_unplug_soc"), exactly(unplug), rows);
    collector.add(
        time(leg),
        recording.measure(d -> d.seconds(unplug - d.share(leg.kilometres()), unplug)),
        rows);
    collector.measured(soc(leg, "_from", "number.best_unplug_soc_from"), exactly(flat.low()), rows);
    collector.measured(soc(leg, "_to", "number.best_unplug_soc_to"), exactly(flat.high()), rows);
  }

  private static Estimate exactly(double percent) {
    return Estimate.exactly(percent);
  }

  private void withhold(WantedDistance leg, String reason) {
    collector.withheld(soc(leg, "", "number.best_unplug_soc"), reason);
    collector.withheld(time(leg), reason);
    collector.withheld(soc(leg, "_from", "number.best_unplug_soc_from"), reason);
    collector.withheld(soc(leg, "_to", "number.best_unplug_soc_to"), reason);
  }

  private static Metric soc(WantedDistance leg, String idEnd, String labelKey) {
    return new Metric(
        "best_unplug_soc_" + leg.idPart() + idEnd,
        Labels.of(labelKey, leg.words()),
        Unit.PERCENT,
        Method.BEST_UNPLUG,
        Basis.DRIVEN,
        Input.ROAD);
  }

  private static Metric time(WantedDistance leg) {
    return new Metric(
        "best_unplug_time_" + leg.idPart(),
        Labels.of("number.best_unplug_time", leg.words()),
        Unit.SECOND,
        Method.BEST_UNPLUG,
        Basis.DRIVEN,
        Input.ROAD);
  }
}
