package taperbook.metric.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.format.Labels;
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
import taperbook.session.RowRef;
import taperbook.session.Trace;

/** Computes a day's drive of one length for every car, and its sensitivity to the assumptions. */
public final class DayMetrics {
  private static final Metric TIME =
      metric(LibraryPlan.DAY_TIME, Labels.of("number.day_time"), Unit.SECOND);
  private static final Metric STOPS =
      metric(LibraryPlan.DAY_STOPS, Labels.of("number.day_stops"), Unit.ONE);
  private static final Metric MORE_CONSUMPTION =
      metric(
          LibraryPlan.DAY_MORE_CONSUMPTION, Labels.of("number.day_more_consumption"), Unit.SECOND);
  private static final Metric SHORT_STOPS =
      metric(LibraryPlan.DAY_SHORT_STOPS, Labels.of("number.day_minutes_per_stop", 3), Unit.SECOND);
  private static final Metric LONG_STOPS =
      metric(LibraryPlan.DAY_LONG_STOPS, Labels.of("number.day_minutes_per_stop", 10), Unit.SECOND);

  private DayMetrics() {}

  private static Metric metric(String id, String label, Unit unit) {
    return new Metric(
        id, label, unit, Method.TRIP_PLAN, Basis.DRIVEN, Input.ROAD, Set.of(Role.DAY));
  }

  /** Adds the numbers of a car's day. */
  public static void measure(
      Trip day, Recording recording, RangeFigures range, MetricCollector collector) {
    Optional<Estimate> full = range.fullRange().estimate();
    Optional<ChargeTimes> clock = recording.clock();
    if (full.isEmpty() || clock.isEmpty()) {
      withhold(
          collector,
          full.isEmpty() ? range.fullRange().withheld().orElseThrow() : recording.whyNoClock());
      return;
    }
    TripTask task = TripTask.of(day, full.get().value() / 100);
    Optional<TripPlan> best = new TripSearch(clock.get(), task).best();
    if (best.isEmpty()) {
      withhold(collector, TripMetrics.noPlan(day, recording));
      return;
    }
    Trace soc = recording.soc().orElseThrow();
    List<RowRef> rows = new ArrayList<>(range.fullRange().rows());
    rows.addAll(soc.rows(0, soc.size() - 1));
    TripTimes times = new TripTimes(task, best.get());
    double fixed =
        3600 * day.distance().kilometres() / day.kilometresPerHour().orElseThrow()
            + best.get().stops().size() * day.secondsPerStop();
    collector.add(TIME, recording.measure(d -> times.charging(d) + fixed), rows);
    collector.measured(STOPS, Estimate.exactly(best.get().stops().size()), rows);
    double stop = day.secondsPerStop();
    double range100 = task.kilometresPerPercent();
    moved(
        collector,
        MORE_CONSUMPTION,
        best.get(),
        clock.get(),
        task(task, stop, range100 / 1.1),
        rows);
    moved(collector, SHORT_STOPS, best.get(), clock.get(), task(task, 180, range100), rows);
    moved(collector, LONG_STOPS, best.get(), clock.get(), task(task, 600, range100), rows);
  }

  private static TripTask task(TripTask task, double secondsPerStop, double kilometresPerPercent) {
    return new TripTask(
        task.distanceKilometres(),
        task.spacingKilometres(),
        task.stations(),
        secondsPerStop,
        task.startPercent(),
        task.reservePercent(),
        kilometresPerPercent);
  }

  /**
   * Adds how much longer the best plan takes if one assumption changes, on the mean of the courses.
   */
  private static void moved(
      MetricCollector collector,
      Metric metric,
      TripPlan best,
      ChargeTimes clock,
      TripTask other,
      List<RowRef> rows) {
    new TripSearch(clock, other)
        .best()
        .ifPresentOrElse(
            plan ->
                collector.measured(
                    metric, Estimate.exactly(plan.stopSeconds() - best.stopSeconds()), rows),
            () -> collector.withheld(metric, "no plan is left then"));
  }

  private static void withhold(MetricCollector collector, String reason) {
    List.of(TIME, STOPS, MORE_CONSUMPTION, SHORT_STOPS, LONG_STOPS)
        .forEach(metric -> collector.withheld(metric, reason));
  }
}
