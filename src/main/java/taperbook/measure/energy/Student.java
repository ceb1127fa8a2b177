package taperbook.measure.energy;

/**
 * How many standard uncertainties make a 95 % interval.
 *
 * <p>Where the standard uncertainty follows from scatter with few degrees of freedom, Student's t
 * takes the place of the normal distribution (JCGM 100:2008, G.3 and table G.2). With f degrees of
 * freedom and an angle a = atan(t / root f), the share between -t and t is
 *
 * <pre>
 *   f even:  sin a (1 + 1/2 cos^2 a + 1/2 3/4 cos^4 a + ... to the power f - 2)
 *   f odd:   2/pi (a + sin a (cos a + 2/3 cos^3 a + 2/3 4/5 cos^5 a + ... to the power f - 2))
 * </pre>
 *
 * <p>after M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (1964), 26.7.3 and
 * 26.7.4. The factor is where that is 0.95, by halving the range of the angle.
 */
public final class Student {
  /** The normal quantile for 95 % on both sides, JCGM 100:2008, table G.1. */
  public static final double NORMAL_95 = 1.959963984540054;

  /** Degrees of freedom of a fit that is worth an interval. */
  static final int LEAST_DEGREES = 3;

  private static final int HALVINGS = 60;

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
    double low = 0;
    double high = Math.PI / 2;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (shareWithin(middle, degrees) < 0.95) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return StrictMath.tan(low) * Math.sqrt(degrees);
  }

  private static double shareWithin(double angle, int degrees) {
    double cosine = StrictMath.cos(angle);
    boolean odd = degrees % 2 == 1;
    double term = odd ? cosine : 1;
    double sum = 0;
    for (int power = odd ? 1 : 0; power <= degrees - 2; power += 2) {
      sum += term;
      term *= cosine * cosine * (power + 1) / (power + 2);
    }
    double share = StrictMath.sin(angle) * sum;
    return odd ? 2 / Math.PI * (angle + share) : share;
  }
}
