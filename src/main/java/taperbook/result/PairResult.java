package taperbook.result;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Interval;

/**
 * What came of holding the power curve of the reported session against that of another, over the
 * states of charge that both went through.
 *
 * @param other name of the other session
 * @param shared the states of charge that both went through, %, if there are any
 * @param stretches where which of the two takes more power, in order; empty if nothing is shared
 * @param crossings ids of the numbers that tell where the curves cross, in order
 * @param difference power of the reported session less that of the other, kW over %, with a band
 *     that holds the whole true course in 95 % of cases; missing if nothing is shared
 * @param numbers the numbers of the pair; the origin of each names both sessions
 */
public record PairResult(
    String other,
    Optional<Interval> shared,
    List<Stretch> stretches,
    List<String> crossings,
    Optional<Curve> difference,
    Numbers numbers) {
  /** Copies the lists. */
  public PairResult {
    stretches = List.copyOf(stretches);
    crossings = List.copyOf(crossings);
  }

  /** Id of the difference of a number of two sessions. */
  public static String differenceId(String id) {
    return id + "_difference";
  }

  /** The same result with more numbers. */
  public PairResult with(Numbers more) {
    return new PairResult(other, shared, stretches, crossings, difference, numbers.and(more));
  }
}
