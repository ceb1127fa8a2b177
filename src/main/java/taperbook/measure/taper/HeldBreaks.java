package taperbook.measure.taper;

import java.util.Arrays;

/**
 * Which breakpoints the points cannot place between two abscissae. A straight segment needs two
 * abscissae of its own; an inner segment with fewer strictly inside it, such as a drop between two
 * readings, could begin and end anywhere in its gaps with the same sum of squares. Its breakpoints
 * are held where readings are, and known no better than to the readings beside them.
 */
final class HeldBreaks {
  private static final int LEAST_OF_ITS_OWN = 2;

  private final double[] distinct;

  HeldBreaks(double[] soc) {
    this.distinct = Arrays.stream(soc).distinct().sorted().toArray();
  }

  /** For each breakpoint whether it is held. */
  boolean[] of(double[] breaks) {
    boolean[] held = new boolean[breaks.length];
    double from = Double.NEGATIVE_INFINITY;
    for (int k = 0; k <= breaks.length; k++) {
      double to = k < breaks.length ? breaks[k] : Double.POSITIVE_INFINITY;
      if (inside(from, to) < LEAST_OF_ITS_OWN) {
        if (k > 0) {
          held[k - 1] = true;
        }
        if (k < breaks.length) {
          held[k] = true;
        }
      }
      from = to;
    }
    return held;
  }

  private long inside(double from, double to) {
    return Arrays.stream(distinct).filter(q -> q > from && q < to).count();
  }

  /** The nearest abscissa below a value, or the lowest. */
  double below(double value) {
    double found = distinct[0];
    for (double q : distinct) {
      if (q < value) {
        found = q;
      }
    }
    return found;
  }

  /** The nearest abscissa above a value, or the highest. */
  double above(double value) {
    return Arrays.stream(distinct).filter(q -> q > value).findFirst().orElse(highest());
  }

  double lowest() {
    return distinct[0];
  }

  double highest() {
    return distinct[distinct.length - 1];
  }
}
