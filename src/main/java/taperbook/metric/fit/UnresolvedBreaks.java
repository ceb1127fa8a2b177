package taperbook.metric.fit;

import java.util.Arrays;
import java.util.List;
import taperbook.quantity.DistinctNumbers;

/**
 * Determines which breakpoints the points cannot place between two abscissae. A segment needs two
 * abscissae of its own; an inner segment with fewer strictly inside it, such as a drop between two
 * readings, could begin and end anywhere in its gaps with the same sum of squares. Its breakpoints
 * are kept at readings, and known only within the adjacent readings. A step is always unresolved:
 * all places in its gap give the same sum of squares.
 */
final class UnresolvedBreaks {
  private static final int LEAST_OF_ITS_OWN = 2;

  private final DistinctNumbers distinct;

  UnresolvedBreaks(double[] soc) {
    this.distinct = DistinctNumbers.of(Arrays.stream(soc));
  }

  /** Returns for each breakpoint whether it is unresolved. */
  boolean[] of(List<Break> breaks) {
    boolean[] unresolved = new boolean[breaks.size()];
    for (int k = 0; k <= unresolved.length; k++) {
      boolean few = !hasItsOwn(breaks, k);
      if (k > 0) {
        unresolved[k - 1] |= few;
      }
      if (k < unresolved.length) {
        unresolved[k] |= few || breaks.get(k).step();
      }
    }
    return unresolved;
  }

  /**
   * Returns true if segment {@code k} has enough abscissae strictly inside to determine its slope.
   */
  boolean hasItsOwn(List<Break> breaks, int k) {
    double from = k == 0 ? Double.NEGATIVE_INFINITY : breaks.get(k - 1).soc();
    double to = k == breaks.size() ? Double.POSITIVE_INFINITY : breaks.get(k).soc();
    return distinct.countBetween(from, to) >= LEAST_OF_ITS_OWN;
  }

  /** Returns the nearest abscissa below a value, or the lowest. */
  double below(double value) {
    return distinct.below(value).orElse(lowest());
  }

  /** Returns the nearest abscissa above a value, or the highest. */
  double above(double value) {
    return distinct.above(value).orElse(highest());
  }

  double lowest() {
    return distinct.lowest();
  }

  double highest() {
    return distinct.highest();
  }
}
