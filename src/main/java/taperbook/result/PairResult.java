package taperbook.result;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Interval;

/**
 * The comparison of the power curve of the reported session with that of another, over the states
 * of charge that both cover.
 *
 * @param other name of the other session
 * @param shared the states of charge that both cover, %, if there are any
 * @param stretches ranges by which of the two takes more power, in order; empty if nothing is
 *     shared
 * @param crossings ids of the numbers for the crossings of the curves, in order
 * @param difference power of the reported session minus that of the other, kW over %, with a
 *     simultaneous 95 % band; empty if nothing is shared
 * @param numbers the numbers of the pair; the origin of each names both sessions
 */
public record PairResult(
    String other,
    Optional<Interval> shared,
    List<Stretch> stretches,
    List<String> crossings,
    Optional<Curve> difference,
    Numbers numbers) {
  public PairResult {
    stretches = List.copyOf(stretches);
    crossings = List.copyOf(crossings);
  }

  /** Returns the id of the difference between a number of two sessions. */
  public static String differenceId(String id) {
    return id + "_difference";
  }

  /** Returns the same result with more numbers. */
  public PairResult with(Numbers more) {
    return new PairResult(other, shared, stretches, crossings, difference, numbers.plus(more));
  }
}
