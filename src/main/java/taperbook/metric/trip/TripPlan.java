package taperbook.metric.trip;

import java.util.List;

/**
 * The stops of a trip.
 *
 * @param stops where to stop and at which state of charge to unplug, in order; may be empty
 * @param arrivalPercent state of charge at the end, %
 * @param stopSeconds time of all stops: charging and overhead, s
 */
public record TripPlan(List<Stop> stops, double arrivalPercent, double stopSeconds) {
  public TripPlan {
    stops = List.copyOf(stops);
  }

  /**
   * One stop.
   *
   * @param station number of the station, from 1
   * @param kilometre its distance from the start, km
   * @param arrivalPercent state of charge on arrival, %
   * @param unplugPercent state of charge to unplug at, %
   * @param chargingSeconds time between the two, s
   */
  public record Stop(
      int station,
      double kilometre,
      double arrivalPercent,
      double unplugPercent,
      double chargingSeconds) {}
}
