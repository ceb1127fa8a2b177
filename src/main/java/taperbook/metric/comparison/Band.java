package taperbook.metric.comparison;

import java.util.Arrays;

/**
 * The difference of two power curves on a grid of states of charge, with a band that holds the
 * whole of the true difference in 95 % of cases, not just each point of it.
 *
 * <p>At each point the band runs from the d-th smallest to the d-th largest of the drawn
 * differences, with the greatest d that leaves 95 % of the trials inside the band at every point.
 * Its value is the mean of the drawn differences. Quantiles, and not multiples of a standard
 * uncertainty, as the draws are far from normal: where a step of power may lie, most trials agree
 * and a few are far away, and one factor for all points would have to reach those.
 *
 * @see <a href="https://doi.org/10.1002/jae.2656">J. L. Montiel Olea, M. Plagborg-M&oslash;ller,
 *     Journal of Applied Econometrics 34 (2019) 1-17, on simultaneous bands from draws, by
 *     quantiles as well as by sup-t; cited from memory</a>
 */
final class Band {
  private static final double COVERAGE = 0.95;

  /** A spread below this is the noise of floating point, kW. */
  private static final double NOISE = 1e-9;

  private final double[] grid;
  private final double[] values;
  private final double[] lows;
  private final double[] highs;
  private final int depth;

  /** The band of a pair on its grid. */
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
      deepen(depths, unsorted, drawn[i]);
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
   * Lowers the depth of each trial to that at one point: how many trials lie on its outer side,
   * itself included. Beyond the outer twentieth the count does not matter.
   */
  private static void deepen(int[] depths, double[] unsorted, double[] sorted) {
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

  /** State of charge of a point, %. */
  double percent(int i) {
    return grid[i];
  }

  /** The mean of the drawn differences, kW. */
  double value(int i) {
    return values[i];
  }

  /** Lower edge of the band, kW. */
  double low(int i) {
    return lows[i];
  }

  /** Upper edge of the band, kW. */
  double high(int i) {
    return highs[i];
  }

  /** How many trials lie outside the band or on its edge at a point and side, at least 1. */
  int depth() {
    return depth;
  }
}
