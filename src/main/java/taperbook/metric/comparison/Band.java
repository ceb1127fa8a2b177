package taperbook.metric.comparison;

import java.util.Arrays;

/**
 * The difference of two power curves on a grid of states of charge, with a simultaneous band: it
 * contains the whole true difference curve in 95 % of cases.
 *
 * <p>At each point the band runs from the d-th smallest to the d-th largest of the drawn
 * differences, with the greatest d that leaves 95 % of the trials inside the band at every point.
 * Its value is the mean of the drawn differences. The band uses quantiles because the draws are far
 * from normal: near a possible step of power most trials agree and a few are far away, so that one
 * factor on the standard uncertainty would have to cover those at all points.
 *
 * @see <a href="https://doi.org/10.1002/jae.2656">J. L. Montiel Olea, M. Plagborg-M&oslash;ller,
 *     Journal of Applied Econometrics 34 (2019) 1-17, on simultaneous bands from draws, by
 *     quantiles as well as by sup-t; cited from memory</a>
 */
final class Band {
  private static final double COVERAGE = 0.95;

  /** Spreads below this are floating-point noise, kW. */
  private static final double NOISE = 1e-9;

  private final double[] grid;
  private final double[] values;
  private final double[] lows;
  private final double[] highs;
  private final int depth;

  /** Computes the band of a pair on its grid. */
  Band(double[] grid, SampledPair pair) {
    this.grid = grid.clone();
    this.values = new double[grid.length];
    this.lows = new double[grid.length];
    this.highs = new double[grid.length];
    double[][] drawn = new double[grid.length][];
    int[] depths = new int[pair.trials()];
    Arrays.fill(depths, depths.length);
    for (int i = 0; i < grid.length; i++) {
      double[] unsorted = pair.kilowatts(i);
      drawn[i] = unsorted.clone();
      Arrays.sort(drawn[i]);
      values[i] = SampledPair.mean(drawn[i]);
      reduceDepths(depths, unsorted, drawn[i]);
    }
    Arrays.sort(depths);
    int outside = depths.length - (int) Math.ceil(COVERAGE * depths.length);
    this.depth = Math.min(depths[outside], (depths.length + 1) / 2);
    for (int i = 0; i < grid.length; i++) {
      lows[i] = Math.min(values[i], drawn[i][depth - 1]);
      highs[i] = Math.max(values[i], drawn[i][depths.length - depth]);
    }
  }

  /**
   * Reduces the depth of each trial to its depth at one point: the number of trials on its outer
   * side, including itself. Counts beyond the outer twentieth are not needed.
   */
  private static void reduceDepths(int[] depths, double[] unsorted, double[] sorted) {
    int n = sorted.length;
    if (sorted[n - 1] - sorted[0] < NOISE) {
      return;
    }
    int tail = n / 20;
    for (int k = 0; k < n; k++) {
      double value = unsorted[k];
      if (value <= sorted[tail]) {
        depths[k] = Math.min(depths[k], countUpTo(sorted, value));
      }
      if (value >= sorted[n - 1 - tail]) {
        depths[k] = Math.min(depths[k], n - countBelow(sorted, value));
      }
    }
  }

  private static int countUpTo(double[] sorted, double value) {
    int i = Arrays.binarySearch(sorted, value) + 1;
    while (i < sorted.length && sorted[i] == value) {
      i++;
    }
    return i;
  }

  private static int countBelow(double[] sorted, double value) {
    int i = Arrays.binarySearch(sorted, value);
    while (i > 0 && sorted[i - 1] == value) {
      i--;
    }
    return i;
  }

  int size() {
    return grid.length;
  }

  /** Returns the state of charge of a point, %. */
  double percent(int i) {
    return grid[i];
  }

  /** Returns the mean of the drawn differences, kW. */
  double value(int i) {
    return values[i];
  }

  /** Returns the lower edge of the band, kW. */
  double low(int i) {
    return lows[i];
  }

  /** Returns the upper edge of the band, kW. */
  double high(int i) {
    return highs[i];
  }

  /** Returns the number of trials on or outside the band at a point and side, at least 1. */
  int depth() {
    return depth;
  }
}
