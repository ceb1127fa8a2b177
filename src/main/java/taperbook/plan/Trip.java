package taperbook.plan;

import java.util.OptionalDouble;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;

/**
 * A requested trip: a straight road with stations at a constant spacing.
 *
 * @param distance length of the whole trip
 * @param spacing distance from the start to the first station, and from each to the next
 * @param secondsPerStop time that a stop takes in addition to charging: leaving the road, plugging
 *     in, paying, s, not negative
 * @param startSoc state of charge at the start, whole %, above {@code reserveSoc}, at most 100
 * @param reserveSoc minimum state of charge at any station and at the end, whole %, not negative
 * @param kilometresPerHour speed of all cars, above zero; if empty, that of the range test of the
 *     reported car
 * @param overhead source of {@code secondsPerStop}
 */
public record Trip(
    WantedDistance distance,
    WantedDistance spacing,
    double secondsPerStop,
    int startSoc,
    int reserveSoc,
    OptionalDouble kilometresPerHour,
    Overhead overhead) {
  /** Source of the time that a stop takes in addition to charging. */
  public enum Overhead {
    /** Stated for the trip. */
    STATED,
    /** {@link #DEFAULT_SECONDS_PER_STOP}. */
    USUAL,
    /** Measured at the stop of the reported session. */
    MEASURED
  }

  /** Maximum number of stations; limits the time to find a plan. */
  public static final int MAX_STATIONS = 200;

  /** Default time that a stop takes in addition to charging, s. */
  public static final double DEFAULT_SECONDS_PER_STOP = 300;

  private static final double MAX_SECONDS_PER_STOP = 36_000;

  /** Default state of charge at the start, %. */
  public static final int DEFAULT_START_SOC = 100;

  /** Default reserve, %. */
  public static final int DEFAULT_RESERVE_SOC = 10;

  /**
   * Returns a day's trip of 1,000 km, or of 600 mi, at one speed for all cars: common practice, no
   * source.
   */
  public static Trip day(Unit units) {
    boolean miles = units == Unit.MILE;
    return new Trip(
        new WantedDistance(miles ? 600 : 1000, units),
        new WantedDistance(miles ? 30 : 50, units),
        DEFAULT_SECONDS_PER_STOP,
        DEFAULT_START_SOC,
        DEFAULT_RESERVE_SOC,
        OptionalDouble.of(
            miles ? Unit.MILE_PER_HOUR.toBase(70) : Unit.KILOMETRE_PER_HOUR.toBase(110)),
        Overhead.USUAL);
  }

  /** Creates a trip at the speed of the reported car's range test. */
  public Trip(
      WantedDistance distance,
      WantedDistance spacing,
      double secondsPerStop,
      int startSoc,
      int reserveSoc) {
    this(
        distance,
        spacing,
        secondsPerStop,
        startSoc,
        reserveSoc,
        OptionalDouble.empty(),
        Overhead.STATED);
  }

  /** Checks the ranges. */
  public Trip {
    if (!(secondsPerStop >= 0 && secondsPerStop <= MAX_SECONDS_PER_STOP)
        || !(0 <= reserveSoc && reserveSoc < startSoc && startSoc <= 100)) {
      throw new IllegalArgumentException("no such trip: " + startSoc + " to " + reserveSoc + " %");
    }
    if (!(kilometresPerHour.orElse(1) > 0)) {
      throw new IllegalArgumentException("no such speed: " + kilometresPerHour);
    }
    if (stations(distance, spacing) > MAX_STATIONS) {
      throw new IllegalArgumentException("too many stations: " + distance + " by " + spacing);
    }
  }

  /** Returns the trip with a measured stop overhead if none is stated. */
  public Trip withMeasured(double seconds) {
    return overhead == Overhead.USUAL && seconds <= MAX_SECONDS_PER_STOP
        ? new Trip(
            distance, spacing, seconds, startSoc, reserveSoc, kilometresPerHour, Overhead.MEASURED)
        : this;
  }

  /** Returns the number of stations on the way, excluding one at the very end. */
  public int stations() {
    return stations(distance, spacing);
  }

  /** Returns the number of stations on a road with the given spacing. */
  public static int stations(WantedDistance distance, WantedDistance spacing) {
    double hops = distance.kilometres() / spacing.kilometres();
    return (int) Math.ceil(hops - 1e-9) - 1;
  }
}
