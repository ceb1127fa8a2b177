package taperbook.metric.road;

import taperbook.i18n.Message;
import taperbook.metric.recording.Finding;
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

/**
 * Computes the distance added per minute of charging: where it is highest, and where it is half.
 */
final class PerMinuteMetrics {
  private static final Metric BEST = metric("road_per_minute_best", Unit.KILOMETRE_PER_MINUTE);
  private static final Metric FROM = metric("road_per_minute_best_soc_from", Unit.PERCENT);
  private static final Metric TO = metric("road_per_minute_best_soc_to", Unit.PERCENT);
  private static final Metric HALF = metric("road_per_minute_half_soc", Unit.PERCENT);

  private final Recording recording;
  private final RangeFigures range;
  private final MetricCollector collector;

  PerMinuteMetrics(Recording recording, RangeFigures range, MetricCollector collector) {
    this.recording = recording;
    this.range = range;
    this.collector = collector;
  }

  private static Metric metric(String id, Unit unit) {
    return Metric.of(id, unit, Method.ROAD_PER_MINUTE, Basis.DRIVEN, Input.ROAD)
        .in(Role.PER_MINUTE);
  }

  void measure() {
    Finding<ChargeTimes> clock = range.fullRange().flatMap(r -> recording.clock());
    Finding<FastestStretch> best =
        clock
            .flatMap(
                c ->
                    Finding.of(
                        FastestStretch.of(c, TenPercent.WIDTH, c.low()),
                        Message.of("metric.per_minute_metrics.session_gained_too_little_to")))
            .from(b -> recording.between(b.fromPercent(), b.toPercent()).rows());
    Finding<Double> from = best.map(FastestStretch::fromPercent);
    collector.add(BEST, from.map(f -> recording.measure(TenPercent.kilometresPerMinute(f))));
    collector.measured(FROM, from.map(Estimate::exactly));
    collector.measured(TO, best.map(FastestStretch::toPercent).map(Estimate::exactly));
    collector.add(
        HALF, from.flatMap(f -> half(new TenPercent(recording, clock.value().orElseThrow()), f)));
  }

  private Finding<Outcome> half(TenPercent stretches, double bestFrom) {
    double[] middles = stretches.middles();
    Outcome half =
        recording.measure(
            d ->
                LevelCrossing.of(middles, stretches.seconds(d), 2 * TenPercent.seconds(d, bestFrom))
                    .orElse(Double.POSITIVE_INFINITY));
    return Finding.of(
            half.estimateIfMeasured(),
            Message.of("metric.per_minute_metrics.readings_do_not_end_surely"))
        .from(e -> stretches.rowsAt(e.value()))
        .map(e -> half);
  }
}
