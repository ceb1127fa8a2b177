package taperbook.metric.trip;

import taperbook.plan.Trip;

/**
 * A trip of a car with known distance per per cent.
 *
 * @param distanceKilometres length of the trip, above zero
 * @param spacingKilometres distance between stations, above zero
 * @param stations number of stations on the way
 * @param secondsPerStop overhead of a stop, s
 * @param startPercent state of charge at the start, %
 * @param reservePercent minimum state of charge at stations and at the end, %
 * @param kilometresPerPercent distance per per cent, above zero
 */
public record TripTask(
    double distanceKilometres,
    double spacingKilometres,
    int stations,
    double secondsPerStop,
    double startPercent,
    double reservePercent,
    double kilometresPerPercent) {
  /** Validates the divisors; rejects NaN. */
  public TripTask {
    if (!(distanceKilometres > 0 && spacingKilometres > 0 && kilometresPerPercent > 0)) {
      throw new IllegalArgumentException("no such trip: " + distanceKilometres + " km");
    }
  }

  /** Returns the task of a trip. */
  public static TripTask of(Trip trip, double kilometresPerPercent) {
    return new TripTask(
        trip.distance().kilometres(),
        trip.spacing().kilometres(),
        trip.stations(),
        trip.secondsPerStop(),
        trip.startSoc(),
        trip.reserveSoc(),
        kilometresPerPercent);
  }

  /** Returns the distance from the start to a station, numbered from 1, km; 0 is the start. */
  double kilometre(int station) {
    return station * spacingKilometres;
  }

  /** Returns the state of charge used between two stations, %. */
  double share(int fromStation, int toStation) {
    return (kilometre(toStation) - kilometre(fromStation)) / kilometresPerPercent;
  }

  /** Returns the state of charge used from a station to the end, %. */
  double shareToEnd(int station) {
    return (distanceKilometres - kilometre(station)) / kilometresPerPercent;
  }
}
