package taperbook.metric.comparison;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import taperbook.metric.course.Course;
import taperbook.metric.course.Courses;
import taperbook.metric.course.Draw;
import taperbook.metric.course.RandomNumbers;
import taperbook.metric.fit.Quantiles;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;

/**
 * Joint draws of two sessions: for each trial the differences of power and time at each state of
 * charge of a grid.
 *
 * <p>The draws of a session depend only on its readings. Each draw of one session is paired with
 * several of the other, never with the draw of the same index, so that two sessions with the same
 * readings are still independent. The pairing is symmetric and sums run from both ends of the
 * sorted values, so that swapping the sessions changes only the sign.
 *
 * <p>If runs differ by more than their readings, each draw of a session has its own power factor,
 * log-normal with a median of 1.
 */
final class SampledPair {
  /** The interval of a number excludes one in this many trials at each end. */
  private static final int ONE_IN = 40;

  /** Index offsets of paired draws, in hundredths of their number; each with its opposite. */
  private static final int[] APART = {50, 21, 79, 37, 63};

  private static final long RUN_SEED = 0x72756e73;

  private final double[] grid;
  private final Side one;
  private final Side other;
  private final double[][] kilowatts;
  private final double[][] seconds;

  /**
   * Creates the draws of a pair.
   *
   * @param one courses of one session
   * @param other courses of the other
   * @param grid states of charge that both cover, ascending, %
   * @param runShare half the 95 % interval of a run's power beyond its readings, as a share
   */
  SampledPair(Courses one, Courses other, double[] grid, double runShare) {
    this.grid = grid.clone();
    Side a = new Side(one, grid, runShare);
    Side b = new Side(other, grid, runShare);
    this.one = a;
    this.other = b;
    int n = Math.min(a.count(), b.count());
    this.kilowatts = new double[n * APART.length][];
    this.seconds = new double[n * APART.length][];
    int trial = 0;
    for (int apart : APART) {
      int by = by(apart, n);
      for (int k = 0; k < n; k++) {
        int own = k;
        int partner = partner(k, by, n);
        kilowatts[trial] = filled(i -> a.kilowatts[own][i] - b.kilowatts[partner][i]);
        seconds[trial] = filled(i -> b.seconds[partner][i] - a.seconds[own][i]);
        trial++;
      }
    }
  }

  private static int by(int apart, int count) {
    return apart > 50 ? count - count * (100 - apart) / 100 : count * apart / 100;
  }

  private static int partner(int draw, int by, int count) {
    return (draw + by) % count;
  }

  /** Returns, as {@link #meanLead}, the mean ratio of power of the first to the other, %. */
  Estimate meanRatio(double from, double to) {
    int n = trials() / APART.length;
    return interval(
        k ->
            100
                * integral(one.kilowatts[k % n], from, to)
                / integral(other.kilowatts[partner(k % n, by(APART[k / n], n), n)], from, to));
  }

  /** Power and time of each draw of one session at each point of the grid. */
  private static final class Side {
    private final double[][] kilowatts;
    private final double[][] seconds;

    Side(Courses courses, double[] grid, double runShare) {
      List<Draw> draws = courses.draws();
      double offset = courses.displayOffset();
      this.kilowatts = new double[draws.size()][grid.length];
      this.seconds = new double[draws.size()][grid.length];
      double scale = StrictMath.log1p(runShare) / Quantiles.NORMAL_95;
      // The same seed for all sessions: paired draws have different indices, so different factors.
      RandomNumbers random = new RandomNumbers(RUN_SEED + courses.redraw());
      for (int k = 0; k < draws.size(); k++) {
        Course course = draws.get(k).course();
        double factor = StrictMath.exp(scale * random.normal());
        for (int i = 0; i < grid.length; i++) {
          double second = course.timeOfCharge(grid[i] + offset);
          seconds[k][i] = second / factor;
          kilowatts[k][i] = factor * course.powerAt(second);
        }
      }
    }

    int count() {
      return seconds.length;
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

  /** Returns the power of the first minus that of the other at a grid point, for each trial, kW. */
  double[] kilowatts(int point) {
    double[] values = new double[trials()];
    Arrays.setAll(values, k -> kilowatts[k][point]);
    return values;
  }

  /**
   * Returns the mean over state of charge of the difference of power, kW: the mean of the trials,
   * with the equal-tailed interval (JCGM 101:2008, 5.3.3).
   */
  Estimate meanLead(double from, double to) {
    return interval(k -> integral(kilowatts[k], from, to) / (to - from));
  }

  /**
   * Returns, as {@link #meanLead}, the time of the other minus that of the first over a stretch, s.
   */
  Estimate timeGain(double from, double to) {
    return interval(k -> at(seconds[k], to) - at(seconds[k], from));
  }

  private Estimate interval(IntToDoubleFunction ofTrial) {
    double[] values = new double[trials()];
    Arrays.setAll(values, ofTrial);
    Arrays.sort(values);
    int tail = values.length / ONE_IN;
    Interval interval = new Interval(values[tail], values[values.length - 1 - tail]);
    return new Estimate(mean(values), interval.hull(mean(values)));
  }

  /**
   * Returns the mean of sorted values, summed from both ends: opposite values have opposite means.
   */
  static double mean(double[] sorted) {
    double sum = 0;
    int n = sorted.length;
    for (int i = 0; i < n / 2; i++) {
      sum += sorted[i] + sorted[n - 1 - i];
    }
    return (n % 2 == 0 ? sum : sum + sorted[n / 2]) / n;
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

  /**
   * Returns the index of the first grid point above a state of charge that is not below the grid.
   */
  private int above(double percent) {
    int found = Arrays.binarySearch(grid, percent);
    return found >= 0 ? found + 1 : -found - 1;
  }
}
