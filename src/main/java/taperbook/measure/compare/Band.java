package taperbook.measure.compare;

import java.util.Arrays;

/**
 * The difference of two power curves on a grid of states of charge, with a band that holds the
 * whole of the true difference in 95 % of cases, not just each point of it:
 *
 * <pre>
 *   mean(s) - c u(s)  to  mean(s) + c u(s)
 * </pre>
 *
 * with mean and standard uncertainty u of the drawn differences at s, and the factor c that the
 * greatest |D(s) - mean(s)| / u(s) of a trial does not exceed in 95 % of the trials. Points at
 * which nothing varies have no part in it. The band is widened to the difference by the readings.
 *
 * @see <a href="https://doi.org/10.1002/jae.2656">J. L. Montiel Olea, M. Plagborg-M&oslash;ller,
 *     Journal of Applied Econometrics 34 (2019) 1-17: the sup-t band; cited from memory</a>
 */
final class Band {
  private static final double COVERAGE = 0.95;

  /** A standard uncertainty below this is the noise of floating point, kW. */
  private static final double NOISE = 1e-9;

  private final double[] grid;
  private final double[] values;
  private final double[] lows;
  private final double[] highs;
  private final double factor;

  /** The band of a pair; the values are those of the readings at each point of the grid, kW. */
  Band(double[] grid, double[] values, DrawnPair drawn) {
    int n = grid.length;
    this.grid = grid.clone();
    this.values = values.clone();
    this.lows = values.clone();
    this.highs = values.clone();
    double[] means = new double[n];
    double[] uncertainties = new double[n];
    for (int i = 0; i < n; i++) {
      means[i] = mean(drawn, i);
      uncertainties[i] = uncertainty(drawn, i, means[i]);
    }
    this.factor = factor(drawn, means, uncertainties);
    for (int i = 0; i < n; i++) {
      double half = uncertainties[i] > NOISE ? factor * uncertainties[i] : 0;
      lows[i] = Math.min(values[i], means[i] - half);
      highs[i] = Math.max(values[i], means[i] + half);
    }
  }

  private static double mean(DrawnPair drawn, int point) {
    double[] halves = new double[2];
    for (int k = 0; k < DrawnPair.TRIALS; k++) {
      halves[2 * k / DrawnPair.TRIALS] += drawn.kilowatts(k, point);
    }
    return (halves[0] + halves[1]) / DrawnPair.TRIALS;
  }

  private static double uncertainty(DrawnPair drawn, int point, double mean) {
    double[] halves = new double[2];
    for (int k = 0; k < DrawnPair.TRIALS; k++) {
      double off = drawn.kilowatts(k, point) - mean;
      halves[2 * k / DrawnPair.TRIALS] += off * off;
    }
    return Math.sqrt((halves[0] + halves[1]) / (DrawnPair.TRIALS - 1));
  }

  private static double factor(DrawnPair drawn, double[] means, double[] uncertainties) {
    double[] farthest = new double[DrawnPair.TRIALS];
    for (int k = 0; k < farthest.length; k++) {
      for (int i = 0; i < means.length; i++) {
        if (uncertainties[i] > NOISE) {
          double off = Math.abs(drawn.kilowatts(k, i) - means[i]) / uncertainties[i];
          farthest[k] = Math.max(farthest[k], off);
        }
      }
    }
    Arrays.sort(farthest);
    return farthest[(int) Math.ceil(COVERAGE * farthest.length) - 1];
  }

  int size() {
    return grid.length;
  }

  /** State of charge of a point, %. */
  double percent(int i) {
    return grid[i];
  }

  /** The difference by the readings, kW. */
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

  /** The factor c; 0 if nothing varies. */
  double factor() {
    return factor;
  }
}
