package taperbook.metric.road;

import java.util.Set;
import taperbook.i18n.Texts;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.plan.Basis;
import taperbook.plan.LibraryPlan;
import taperbook.plan.Trip;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.Input;

/** Computes a day's drive of one length for every car, and its sensitivity to the assumptions. */
public final class DayMetrics {
  private static final Metric TIME =
      metric(LibraryPlan.DAY_TIME, Texts.of("number.day_time"), Unit.SECOND);
  private static final Metric STOPS =
      metric(LibraryPlan.DAY_STOPS, Texts.of("number.day_stops"), Unit.ONE);
  private static final Metric MORE_CONSUMPTION =
      metric(
          LibraryPlan.DAY_MORE_CONSUMPTION, Texts.of("number.day_more_consumption"), Unit.SECOND);
  private static final Metric SHORT_STOPS =
      metric(LibraryPlan.DAY_SHORT_STOPS, Texts.of("number.day_minutes_per_stop", 3), Unit.SECOND);
  private static final Metric LONG_STOPS =
      metric(LibraryPlan.DAY_LONG_STOPS, Texts.of("number.day_minutes_per_stop", 10), Unit.SECOND);

  private DayMetrics() {}

  private static Metric metric(String id, String label, Unit unit) {
    return new Metric(
        id, label, unit, Method.TRIP_PLAN, Basis.DRIVEN, Input.ROAD, Set.of(Role.DAY));
  }

  /** Adds the numbers of a car's day. */
  public static void measure(
      Trip day, Recording recording, RangeFigures range, MetricCollector collector) {
    Finding<PlannedTrip> found =
        range.fullRange().flatMap(full -> PlannedTrip.of(day, recording, full));
    collector.add(
        TIME,
        found.map(
            f -> {
              double fixed =
                  3600 * day.distance().kilometres() / day.kilometresPerHour().orElseThrow()
                      + f.best().stops().size() * day.secondsPerStop();
              return recording.measure(d -> f.times().charging(d) + fixed);
            }));
    collector.measured(STOPS, found.map(f -> Estimate.exactly(f.best().stops().size())));
    double stop = day.secondsPerStop();
    collector.measured(MORE_CONSUMPTION, found.flatMap(f -> f.moved(stop, 1.1)));
    collector.measured(SHORT_STOPS, found.flatMap(f -> f.moved(180, 1)));
    collector.measured(LONG_STOPS, found.flatMap(f -> f.moved(600, 1)));
  }
}
