package taperbook.metric.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.format.Labels;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.metric.recording.TenPercent;
import taperbook.metric.trip.ChargeTimes;
import taperbook.metric.trip.FastestStretch;
import taperbook.metric.trip.LevelCrossing;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Outcome;
import taperbook.result.Role;
import taperbook.session.Input;
import taperbook.session.RowRef;

/**
 * Computes the distance added per minute of charging: where it is highest, and where it is half.
 */
final class PerMinuteMetrics {
  private static final Metric BEST =
      metric(
          "road_per_minute_best",
          Labels.of("number.road_per_minute_best"),
          Unit.KILOMETRE_PER_MINUTE);
  private static final Metric FROM =
      metric(
          "road_per_minute_best_soc_from",
          Labels.of("number.road_per_minute_best_soc_from"),
          Unit.PERCENT);
  private static final Metric TO =
      metric(
          "road_per_minute_best_soc_to",
          Labels.of("number.road_per_minute_best_soc_to"),
          Unit.PERCENT);
  private static final Metric HALF =
      metric(
          "road_per_minute_half_soc", Labels.of("number.road_per_minute_half_soc"), Unit.PERCENT);

  private final Recording recording;
  private final RangeFigures range;
  private final MetricCollector collector;

  PerMinuteMetrics(Recording recording, RangeFigures range, MetricCollector collector) {
    this.recording = recording;
    this.range = range;
    this.collector = collector;
  }

  private static Metric metric(String id, String label, Unit unit) {
    return new Metric(
        id, label, unit, Method.ROAD_PER_MINUTE, Basis.DRIVEN, Input.ROAD, Set.of(Role.PER_MINUTE));
  }

  void measure() {
    Optional<ChargeTimes> clock = recording.clock();
    Optional<Estimate> full = range.fullRange().estimate();
    if (clock.isEmpty() || full.isEmpty()) {
      withhold(
          full.isEmpty() ? range.fullRange().withheld().orElseThrow() : recording.whyNoClock());
      return;
    }
    Optional<FastestStretch> best =
        FastestStretch.of(clock.get(), TenPercent.WIDTH, clock.get().low());
    if (best.isEmpty()) {
      withhold("the session gained too little to time a stretch of 10 %");
      return;
    }
    double from = best.get().fromPercent();
    double to = best.get().toPercent();
    List<RowRef> rows = new ArrayList<>(recording.rowsBetween(from, to).orElse(List.of()));
    rows.addAll(range.fullRange().rows());
    collector.add(BEST, recording.measure(TenPercent.kilometresPerMinute(from)), rows);
    collector.measured(FROM, Estimate.exactly(from), rows);
    collector.measured(TO, Estimate.exactly(to), rows);
    half(new TenPercent(recording, clock.get()), from, rows);
  }

  private void half(TenPercent stretches, double bestFrom, List<RowRef> bestRows) {
    double[] middles = stretches.middles();
    Outcome half =
        recording.measure(
            d ->
                LevelCrossing.of(middles, stretches.seconds(d), 2 * TenPercent.seconds(d, bestFrom))
                    .orElse(Double.POSITIVE_INFINITY));
    Optional<Estimate> estimate = half.estimateIfMeasured();
    if (estimate.isEmpty()) {
      collector.withheld(HALF, "the readings do not end surely below half of the most");
      return;
    }
    List<RowRef> rows = new ArrayList<>(bestRows);
    rows.addAll(stretches.rowsAt(estimate.get().value()));
    collector.add(HALF, half, rows);
  }

  private void withhold(String reason) {
    List.of(BEST, FROM, TO, HALF).forEach(entry -> collector.withheld(entry, reason));
  }
}
