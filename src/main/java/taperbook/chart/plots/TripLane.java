package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.plan.RoadWishes;
import taperbook.plan.Trip;
import taperbook.quantity.Estimate;
import taperbook.result.Numbers;
import taperbook.result.SessionResult;

/**
 * The trip of one car as blocks of time.
 *
 * @param name name of the session
 * @param numbers its numbers
 * @param drives the drives, in order; one more than stops
 * @param stops the stops, in order
 */
record TripLane(String name, Numbers numbers, List<Drive> drives, List<Stop> stops) {
  /**
   * A drive between two stops.
   *
   * @param from start, s since the start
   * @param to end, s since the start
   */
  record Drive(double from, double to) {}

  /**
   * A stop.
   *
   * @param from arrival, s since the start
   * @param plugged start of charging, s since the start
   * @param to departure, s since the start
   * @param arrivalSoc state of charge on arrival, %
   * @param unplugSoc state of charge on departure, %
   */
  record Stop(double from, double plugged, double to, double arrivalSoc, double unplugSoc) {}

  TripLane {
    drives = List.copyOf(drives);
    stops = List.copyOf(stops);
  }

  /** Returns the time of the whole trip, s. */
  double end() {
    return drives.get(drives.size() - 1).to();
  }

  /** Returns the trip of a session under a name; empty if it has no plan. */
  static Optional<TripLane> of(SessionResult session, String name, Trip trip) {
    Numbers numbers = session.numbers();
    Optional<Estimate> stops = numbers.estimate("trip_stops");
    Optional<Estimate> driving = numbers.estimate("trip_driving_time");
    if (stops.isEmpty() || driving.isEmpty()) {
      return Optional.empty();
    }
    double secondsPerKilometre = driving.get().value() / trip.distance().kilometres();
    List<Drive> drives = new ArrayList<>();
    List<Stop> made = new ArrayList<>();
    double second = 0;
    double kilometre = 0;
    for (int k = 1; k <= stops.get().value(); k++) {
      double at = value(numbers, k, "distance");
      double arrived = second + (at - kilometre) * secondsPerKilometre;
      drives.add(new Drive(second, arrived));
      double plugged = arrived + trip.secondsPerStop();
      second = plugged + value(numbers, k, "time");
      made.add(
          new Stop(
              arrived,
              plugged,
              second,
              value(numbers, k, "arrival_soc"),
              value(numbers, k, "unplug_soc")));
      kilometre = at;
    }
    double left = (trip.distance().kilometres() - kilometre) * secondsPerKilometre;
    drives.add(new Drive(second, second + left));
    return Optional.of(new TripLane(name, numbers, drives, made));
  }

  private static double value(Numbers numbers, int stop, String what) {
    return numbers.estimate(RoadWishes.stopId(stop, what)).orElseThrow().value();
  }
}
