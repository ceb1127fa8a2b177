package taperbook.metric.trip;

import java.util.OptionalDouble;

/** Finds where a piecewise-linear time finally reaches a value. */
public final class LevelCrossing {
  private LevelCrossing() {}

  /**
   * Finds the least abscissa from which the time stays at or above the value.
   *
   * @param abscissae ascending
   * @param seconds time at each, s
   * @param least the value, s
   * @return the abscissa; empty if the time lies below the value at the end
   */
  public static OptionalDouble of(double[] abscissae, double[] seconds, double least) {
    int i = abscissae.length - 1;
    if (i < 0 || seconds[i] < least) {
      return OptionalDouble.empty();
    }
    while (i > 0 && seconds[i - 1] >= least) {
      i--;
    }
    if (i == 0) {
      return OptionalDouble.of(abscissae[0]);
    }
    double share = (least - seconds[i - 1]) / (seconds[i] - seconds[i - 1]);
    return OptionalDouble.of(abscissae[i - 1] + share * (abscissae[i] - abscissae[i - 1]));
  }
}
