package taperbook.metric.road;

import taperbook.i18n.Message;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.Recording;
import taperbook.metric.trip.ChargeTimes;
import taperbook.metric.trip.TripPlan;
import taperbook.metric.trip.TripSearch;
import taperbook.metric.trip.TripTask;
import taperbook.plan.Trip;
import taperbook.quantity.Estimate;
import taperbook.session.Trace;

/**
 * The fastest plan of a trip for one car, on the mean of the courses.
 *
 * @param clock the car's clock over its state of charge
 * @param task the trip for this car
 * @param search the search that found the plan
 * @param best the plan
 */
record PlannedTrip(ChargeTimes clock, TripTask task, TripSearch search, TripPlan best) {
  /**
   * Plans a trip. A plan depends on the whole session, so on every state-of-charge reading.
   *
   * @param fullRange range of a full battery, km
   */
  static Finding<PlannedTrip> of(Trip trip, Recording recording, Estimate fullRange) {
    TripTask task = TripTask.of(trip, fullRange.value() / 100);
    return recording
        .charge()
        .from(q -> q.rows(0, q.size() - 1))
        .flatMap(
            q -> recording.clock().flatMap(clock -> of(clock, task, noPlan(trip, recording, q))));
  }

  private static Finding<PlannedTrip> of(ChargeTimes clock, TripTask task, Message noPlan) {
    TripSearch search = new TripSearch(clock, task);
    return Finding.of(
        search.best().map(best -> new PlannedTrip(clock, task, search, best)), noPlan);
  }

  private static Message noPlan(Trip trip, Recording recording, Trace soc) {
    return Message.of(
        "metric.trip_metrics.no_plan_keeps_in_reserve",
        trip.reserveSoc(),
        trip.spacing().words(),
        recording.percent(soc.firstValue(), soc),
        recording.percent(soc.lastValue(), soc));
  }

  /** Returns the times of the plan in each draw. */
  TripTimes times() {
    return new TripTimes(task, best);
  }

  /**
   * Returns how much longer the best plan takes if one assumption changes, s.
   *
   * @param secondsPerStop time of a stop beside charging, s
   * @param consumption factor of the consumption
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
