package taperbook.result;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * The curves of a session, one point per reading. A curve is empty if its channels are missing.
 *
 * @param powerOverSoc power in kW over state of charge in %
 * @param powerOverTime power in kW over time since plugging in, s
 * @param socOverTime state of charge in % over time, s
 * @param distanceOverTime distance added on the report's basis, km over time, s
 * @param powerBand power in kW over state of charge in %, at steps of charge, with a pointwise 95 %
 *     band of the true power
 * @param distancePerMinute distance on the driven basis added per minute of charging, km/min, over
 *     the midpoint of a range of state of charge, %; only if the report requests it
 * @param stopTimes charging times by state of charge at plug-in and distance to drive; only for the
 *     reported session, and only computed for outputs, as the check of a report does not use them
 */
public record Curves(
    Optional<Curve> powerOverSoc,
    Optional<Curve> powerOverTime,
    Optional<Curve> socOverTime,
    Optional<Curve> distanceOverTime,
    Optional<Curve> powerBand,
    Optional<Curve> distancePerMinute,
    Supplier<Optional<StopTimes>> stopTimes) {
  /** Omits curves without points. */
  public Curves {
    stopTimes = new Once<>(stopTimes);
    powerOverSoc = powerOverSoc.filter(c -> c.size() > 0);
    powerOverTime = powerOverTime.filter(c -> c.size() > 0);
    socOverTime = socOverTime.filter(c -> c.size() > 0);
    distanceOverTime = distanceOverTime.filter(c -> c.size() > 0);
  }

  /** Creates curves without those that are computed from draws. */
  public Curves(
      Optional<Curve> powerOverSoc,
      Optional<Curve> powerOverTime,
      Optional<Curve> socOverTime,
      Optional<Curve> distanceOverTime) {
    this(
        powerOverSoc,
        powerOverTime,
        socOverTime,
        distanceOverTime,
        Optional.empty(),
        Optional.empty(),
        Optional::empty);
  }
}
