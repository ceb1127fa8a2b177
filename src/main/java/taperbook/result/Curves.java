package taperbook.result;

import java.util.Optional;

/**
 * The curves of a session; each is missing where its channels are. One point for each reading.
 *
 * @param powerOverSoc power in kW over state of charge in %
 * @param powerOverTime power in kW over time since plugging in, s
 * @param socOverTime state of charge in % over time, s
 * @param distanceOverTime distance added on the report's basis, km over time, s
 * @param powerBand power in kW over state of charge in %, at steps of charge, with a band that
 *     holds the true power at each of them in 95 % of cases
 * @param distancePerMinute distance on the driven basis that a minute of charging buys, km/min,
 *     over the middle of a stretch of state of charge, %; only if the report asks for it
 * @param stopTimes charging times by where one plugs in and how far one wants to go; of the
 *     reported session only
 */
public record Curves(
    Optional<Curve> powerOverSoc,
    Optional<Curve> powerOverTime,
    Optional<Curve> socOverTime,
    Optional<Curve> distanceOverTime,
    Optional<Curve> powerBand,
    Optional<Curve> distancePerMinute,
    Optional<StopTimes> stopTimes) {
  /** The curves without those that are computed from draws. */
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
        Optional.empty());
  }
}
