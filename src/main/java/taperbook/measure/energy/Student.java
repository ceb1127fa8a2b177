package taperbook.measure.energy;

/**
 * How many standard uncertainties make a 95 % interval.
 *
 * <p>Where the standard uncertainty follows from scatter with few degrees of freedom, Student's t
 * takes the place of the normal distribution (JCGM 100:2008, G.3 and table G.2). With one and two
 * degrees of freedom its quantile has a closed form; with more it is found by the series in 1/f of
 * the normal quantile:
 *
 * <pre>
 *   t = z + (z^3 + z) / 4f + (5 z^5 + 16 z^3 + 3 z) / 96 f^2
 *         + (3 z^7 + 19 z^5 + 17 z^3 - 15 z) / 384 f^3
 *         + (79 z^9 + 776 z^7 + 1482 z^5 - 1920 z^3 - 945 z) / 92160 f^4
 * </pre>
 *
 * <p>after M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (1964), 26.7.5.
 */
public final class Student {
  /** The normal quantile for 95 % on both sides, JCGM 100:2008, table G.1. */
  public static final double NORMAL_95 = 1.959963984540054;

  /** Degrees of freedom; with fewer the series is off by more than 0.1 %. */
  static final int LEAST_DEGREES = 3;

  private Student() {}

  /**
   * Half a 95 % interval in standard uncertainties.
   *
   * @param degrees degrees of freedom, at least 1
   * @throws IllegalArgumentException if there are fewer
   */
  public static double factor95(int degrees) {
    if (degrees < 1) {
      throw new IllegalArgumentException("too few degrees of freedom: " + degrees);
    }
    if (degrees == 1) {
      return StrictMath.tan(0.475 * Math.PI);
    }
    if (degrees == 2) {
      return 0.95 * Math.sqrt(2 / (1 - 0.95 * 0.95));
    }
    double z = NORMAL_95;
    double f = degrees;
    double z2 = z * z;
    double first = z * (z2 + 1) / 4;
    double second = z * ((5 * z2 + 16) * z2 + 3) / 96;
    double third = z * (((3 * z2 + 19) * z2 + 17) * z2 - 15) / 384;
    double fourth = z * ((((79 * z2 + 776) * z2 + 1482) * z2 - 1920) * z2 - 945) / 92160;
    return z + (first + (second + (third + fourth / f) / f) / f) / f;
  }
}
