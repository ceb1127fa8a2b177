package taperbook.metric.road;

import java.util.Set;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.metric.trip.ChargeTimes;
import taperbook.metric.trip.TripPlan;
import taperbook.metric.trip.TripSearch;
import taperbook.metric.trip.TripTask;
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
    Finding<Day> found = range.fullRange().flatMap(full -> day(day, recording, full));
    collector.add(
        TIME,
        found.map(
            f -> {
              TripTimes times = new TripTimes(f.task(), f.best());
              double fixed =
                  3600 * day.distance().kilometres() / day.kilometresPerHour().orElseThrow()
                      + f.best().stops().size() * day.secondsPerStop();
              return recording.measure(d -> times.charging(d) + fixed);
            }));
    collector.measured(STOPS, found.map(f -> Estimate.exactly(f.best().stops().size())));
    double stop = day.secondsPerStop();
    collector.measured(MORE_CONSUMPTION, found.flatMap(f -> f.moved(stop, 1.1)));
    collector.measured(SHORT_STOPS, found.flatMap(f -> f.moved(180, 1)));
    collector.measured(LONG_STOPS, found.flatMap(f -> f.moved(600, 1)));
  }

  private static Finding<Day> day(Trip day, Recording recording, Estimate full) {
    TripTask task = TripTask.of(day, full.value() / 100);
    return recording
        .clock()
        .flatMap(
            clock ->
                Finding.of(
                    new TripSearch(clock, task).best().map(best -> new Day(clock, task, best)),
                    TripMetrics.noPlan(day, recording)))
        .from(f -> recording.charge().from(q -> q.rows(0, q.size() - 1)).rows());
  }

  /** The best plan of a car's day. */
  private record Day(ChargeTimes clock, TripTask task, TripPlan best) {
    /**
     * Returns how much longer the best plan takes if one assumption changes, on the mean of the
     * courses, s.
     */
    Finding<Estimate> moved(double secondsPerStop, double consumption) {
      TripTask other =
          new TripTask(
              task.distanceKilometres(),
              task.spacingKilometres(),
              task.stations(),
              secondsPerStop,
              task.startPercent(),
              task.reservePercent(),
              task.kilometresPerPercent() / consumption);
      return Finding.of(
          new TripSearch(clock, other)
              .best()
              .map(plan -> Estimate.exactly(plan.stopSeconds() - best.stopSeconds())),
          Message.of("metric.day_metrics.no_plan_is_left_then"));
    }
  }
}
