package taperbook.metric.fit;

import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;

/** The relative change between two fitted energies. */
public final class EnergyChange {
  private EnergyChange() {}

  /**
   * Returns the relative difference of two values, %.
   *
   * <pre>
   *   d = 100 (y / x - 1)      U(d) = 100 (y / x) sqrt( (U(y)/y)^2 + (U(x)/x)^2 )
   * </pre>
   *
   * <p>after JCGM 100:2008, 5.1.6, equation 12.
   *
   * @param now y with its 95 % interval, symmetric, above zero
   * @param before x with its 95 % interval, symmetric, above zero, independent of y
   * @return d with its 95 % interval, %
   */
  public static Estimate percent(Estimate now, Estimate before) {
    double ratio = now.value() / before.value();
    double relative = Math.hypot(relativeHalf(now), relativeHalf(before));
    double change = 100 * (ratio - 1);
    return new Estimate(change, Interval.around(change, 100 * ratio * relative));
  }

  private static double relativeHalf(Estimate estimate) {
    return estimate.bounds().width() / 2 / estimate.value();
  }
}
