package taperbook.measure.compare;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import taperbook.measure.simulate.DrawnCurves;
import taperbook.model.Interval;
import taperbook.model.Session;

/**
 * Two sessions drawn together many times: for each trial the difference of their power and of their
 * time at each state of charge of a grid.
 *
 * <p>The draws of a session depend on its readings alone. Trial k of the one goes with trial k +
 * n/2 of the other, so that two sessions with the same readings are still drawn independently; and
 * sums are taken by halves. Thus swapping the two changes the sign of everything, and nothing else.
 */
final class DrawnPair {
  /** One in so many trials lies below the interval of a number, and one above. */
  private static final int ONE_IN = 40;

  private final double[] grid;
  private final double[][] kilowatts;
  private final double[][] seconds;

  /**
   * Draws a pair.
   *
   * @param grid states of charge that both went through, rising, %
   * @param trials number of draws, even
   */
  DrawnPair(Session one, Session other, double[] grid, int trials) {
    this.grid = grid.clone();
    this.kilowatts = new double[trials][];
    this.seconds = new double[trials][];
    DrawnCurves a = DrawnCurves.of(one, grid, trials);
    DrawnCurves b = DrawnCurves.of(other, grid, trials);
    for (int k = 0; k < trials; k++) {
      int trial = k;
      int partner = (k + trials / 2) % trials;
      kilowatts[k] = filled(i -> a.kilowatts(trial, i) - b.kilowatts(partner, i));
      seconds[k] = filled(i -> b.second(partner, i) - a.second(trial, i));
    }
  }

  private double[] filled(IntToDoubleFunction value) {
    double[] values = new double[grid.length];
    Arrays.setAll(values, value);
    return values;
  }

  int trials() {
    return kilowatts.length;
  }

  /** Power of the first less that of the other at a point of the grid, for each trial, kW. */
  double[] kilowatts(int point) {
    double[] values = new double[trials()];
    Arrays.setAll(values, k -> kilowatts[k][point]);
    return values;
  }

  /**
   * Interval that holds the mean over state of charge of the difference of power in 95 % of the
   * trials, kW: the one with equal shares on both sides (JCGM 101:2008, 5.3.3).
   */
  Interval meanLead(double from, double to) {
    return interval(k -> integral(kilowatts[k], from, to) / (to - from));
  }

  /** As {@link #meanLead}, for the time of the other less that of the first over a stretch, s. */
  Interval timeGain(double from, double to) {
    return interval(k -> at(seconds[k], to) - at(seconds[k], from));
  }

  private Interval interval(IntToDoubleFunction ofTrial) {
    double[] values = new double[trials()];
    Arrays.setAll(values, ofTrial);
    Arrays.sort(values);
    int tail = values.length / ONE_IN;
    return new Interval(values[tail], values[values.length - 1 - tail]);
  }

  private double integral(double[] values, double from, double to) {
    int i = above(from);
    double sum = 0;
    double lastPercent = from;
    double last = at(values, from);
    for (; i < grid.length && grid[i] < to; i++) {
      sum += (values[i] + last) / 2 * (grid[i] - lastPercent);
      lastPercent = grid[i];
      last = values[i];
    }
    return sum + (at(values, to) + last) / 2 * (to - lastPercent);
  }

  private double at(double[] values, double percent) {
    int i = Math.min(grid.length - 1, above(percent));
    double share = (percent - grid[i - 1]) / (grid[i] - grid[i - 1]);
    return values[i - 1] + share * (values[i] - values[i - 1]);
  }

  /** Index of the first point of the grid above a state of charge that is not below the grid. */
  private int above(double percent) {
    int found = Arrays.binarySearch(grid, percent);
    return found >= 0 ? found + 1 : -found - 1;
  }
}
