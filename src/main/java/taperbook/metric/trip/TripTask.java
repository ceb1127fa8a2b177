package taperbook.metric.trip;

import taperbook.plan.Trip;

/**
 * A trip for a car of which it is known how far a per cent takes it.
 *
 * @param distanceKilometres length of the trip, above zero
 * @param spacingKilometres distance between stations, above zero
 * @param stations number of stations on the way
 * @param secondsPerStop time of a stop beside charging, s
 * @param startPercent state of charge at the start, %
 * @param reservePercent least state of charge at stations and at the end, %
 * @param kilometresPerPercent distance that each per cent drives, above zero
 */
public record TripTask(
    double distanceKilometres,
    double spacingKilometres,
    int stations,
    double secondsPerStop,
    double startPercent,
    double reservePercent,
    double kilometresPerPercent) {
  /** Checks what everything is divided by; NaN is refused. */
  public TripTask {
    if (!(distanceKilometres > 0 && spacingKilometres > 0 && kilometresPerPercent > 0)) {
      throw new IllegalArgumentException("no such trip: " + distanceKilometres + " km");
    }
  }

  /** The task of a trip. */
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

  /** Distance from the start to a station, counted from 1, km; 0 is the start itself. */
  double kilometre(int station) {
    return station * spacingKilometres;
  }

  /** State of charge that the way between two stations takes, %. */
  double share(int fromStation, int toStation) {
    return (kilometre(toStation) - kilometre(fromStation)) / kilometresPerPercent;
  }

  /** State of charge that the way from a station to the end takes, %. */
  double shareToEnd(int station) {
    return (distanceKilometres - kilometre(station)) / kilometresPerPercent;
  }
}
