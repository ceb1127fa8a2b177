package taperbook.metric.trip;

import org.jspecify.annotations.Nullable;

/**
 * A departure from a station, with the least total time of all stops so far.
 *
 * @param station number of the station; 0 is the start of the trip
 * @param unplugPercent state of charge on leaving, %
 * @param arrivalPercent state of charge on arrival there, %
 * @param seconds time of all stops so far, s
 * @param before the previous departure; null at the start
 */
record Departure(
    int station,
    double unplugPercent,
    double arrivalPercent,
    double seconds,
    @Nullable Departure before) {
  static Departure atStart(double percent) {
    return new Departure(0, percent, percent, 0, null);
  }
}
