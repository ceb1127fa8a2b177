package taperbook.metric.trip;

import java.util.Arrays;
import java.util.Optional;
import taperbook.session.Trace;

/**
 * When a session reached each state of charge: linear interpolation of the first times at which the
 * display showed a new value. Continuous and strictly increasing, so each stretch has one duration.
 */
public final class ChargeTimes {
  private final double[] percents;
  private final double[] seconds;

  private ChargeTimes(double[] percents, double[] seconds) {
    this.percents = percents;
    this.seconds = seconds;
  }

  /** Returns the clock of a session; empty if its state of charge never rose. */
  public static Optional<ChargeTimes> of(Trace soc) {
    double[] percents = new double[soc.size()];
    double[] seconds = new double[soc.size()];
    int n = 0;
    for (int i = 0; i < soc.size(); i++) {
      if (n == 0 || soc.value(i) > percents[n - 1]) {
        percents[n] = soc.value(i);
        seconds[n] = soc.second(i);
        n++;
      }
    }
    return n < 2
        ? Optional.empty()
        : Optional.of(new ChargeTimes(Arrays.copyOf(percents, n), Arrays.copyOf(seconds, n)));
  }

  /**
   * Creates a clock from the times at which charges were first shown.
   *
   * @param percents charges, rising, %
   * @param seconds time of each, s
   * @return the clock; empty if fewer than two times rise
   */
  public static Optional<ChargeTimes> of(double[] percents, double[] seconds) {
    double[] risingPercents = new double[percents.length];
    double[] risingSeconds = new double[percents.length];
    int n = 0;
    for (int i = 0; i < percents.length; i++) {
      if (Double.isFinite(seconds[i]) && (n == 0 || seconds[i] > risingSeconds[n - 1])) {
        risingPercents[n] = percents[i];
        risingSeconds[n] = seconds[i];
        n++;
      }
    }
    return n < 2
        ? Optional.empty()
        : Optional.of(
            new ChargeTimes(Arrays.copyOf(risingPercents, n), Arrays.copyOf(risingSeconds, n)));
  }

  /** Returns the lowest state of charge recorded, %. */
  public double low() {
    return percents[0];
  }

  /** Returns the highest state of charge recorded, %. */
  public double high() {
    return percents[percents.length - 1];
  }

  /** Returns the states of charge between which the clock is linear, ascending, %. */
  public double[] marks() {
    return percents.clone();
  }

  /**
   * Returns when a state of charge was reached, s.
   *
   * @throws IllegalArgumentException if it lies outside what was recorded
   */
  public double secondAt(double percent) {
    // Sums of shares may miss an end by floating-point error.
    double inside = Math.min(high(), Math.max(low(), percent));
    if (!(Math.abs(inside - percent) <= 1e-6)) {
      throw new IllegalArgumentException(percent + " % was not recorded");
    }
    int found = Arrays.binarySearch(percents, inside);
    if (found >= 0) {
      return seconds[found];
    }
    int i = -found - 1;
    double share = (inside - percents[i - 1]) / (percents[i] - percents[i - 1]);
    return seconds[i - 1] + share * (seconds[i] - seconds[i - 1]);
  }

  /** Returns the time from one state of charge to another, s. */
  public double seconds(double fromPercent, double toPercent) {
    return secondAt(toPercent) - secondAt(fromPercent);
  }
}
