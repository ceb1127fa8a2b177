package taperbook.result;

/**
 * Contribution of one source to the uncertainty of a number: a line of its budget.
 *
 * @param source the source
 * @param standardUncertainty standard uncertainty of the number from this source alone, in the
 *     number's unit, not negative
 * @param share share in the sum of squares of all sources, 0 to 1
 */
public record Contribution(UncertaintySource source, double standardUncertainty, double share) {
  /** Checks the ranges. */
  public Contribution {
    if (!(standardUncertainty >= 0 && share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("no such contribution: " + source);
    }
  }
}
