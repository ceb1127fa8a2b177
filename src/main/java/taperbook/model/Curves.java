package taperbook.model;

import java.util.Optional;

/**
 * The curves of a session; each is missing where its channels are. One point for each reading.
 *
 * @param powerOverSoc power in kW over state of charge in %
 * @param powerOverTime power in kW over time since plugging in, s
 * @param socOverTime state of charge in % over time, s
 * @param distanceOverTime distance added on the report's basis, km over time, s
 */
public record Curves(
    Optional<Curve> powerOverSoc,
    Optional<Curve> powerOverTime,
    Optional<Curve> socOverTime,
    Optional<Curve> distanceOverTime) {}
