package taperbook.metric.trip;

import java.util.OptionalDouble;

/** Where a time that is a straight line between points reaches a value for good. */
public final class LevelCrossing {
  private LevelCrossing() {}

  /**
   * The least abscissa from which on the time is at or above the value.
   *
   * @param abscissae rising
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
