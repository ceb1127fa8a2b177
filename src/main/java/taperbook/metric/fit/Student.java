package taperbook.metric.fit;

/**
 * Student's distribution, used instead of the normal one for a standard uncertainty from scatter
 * with few degrees of freedom (JCGM 100:2008, G.3 and table G.2). With integer degrees of freedom f
 * and <i>tan a = t / sqrt f</i> the probability between -t and t is
 *
 * <pre>
 *   f odd:   2/pi (a + sin a (cos a + 2/3 cos^3 a + ... + 2*4...(f-3) / 3*5...(f-2) cos^(f-2) a))
 *   f even:  sin a (1 + 1/2 cos^2 a + ... + 1*3...(f-3) / 2*4...(f-2) cos^(f-2) a)
 * </pre>
 *
 * <p>after M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (1964), 26.7.3 and
 * 26.7.4.
 */
public final class Student {
  /** The two-sided 95 % normal quantile, JCGM 100:2008, table G.1. */
  public static final double NORMAL_95 = 1.959963984540054;

  /** Minimum degrees of freedom to estimate the scatter about a line. */
  static final int LEAST_DEGREES = 3;

  /** From here the 95 % quantile is within 0.1 % of the normal one. */
  private static final int MANY_DEGREES = 2000;

  private static final int HALVINGS = 80;

  private Student() {}

  /**
   * Returns half a 95 % interval in standard uncertainties.
   *
   * @param degrees degrees of freedom, at least 1
   */
  public static double factor95(int degrees) {
    return quantile(0.975, degrees);
  }

  /**
   * Returns the quantile of a probability.
   *
   * @param p probability, at least 0.5 and below 1
   * @param degrees degrees of freedom, at least 1
   * @throws IllegalArgumentException if either is outside
   */
  public static double quantile(double p, int degrees) {
    if (!(p >= 0.5 && p < 1) || degrees < 1) {
      throw new IllegalArgumentException("no quantile " + p + " of " + degrees + " degrees");
    }
    int f = Math.min(degrees, MANY_DEGREES);
    double low = 0;
    double high = StrictMath.PI / 2;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (between(middle, f) < 2 * p - 1) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.sqrt(f) * StrictMath.tan((low + high) / 2);
  }

  /** Returns the probability between -t and t. */
  private static double between(double angle, int degrees) {
    double cosine = StrictMath.cos(angle);
    boolean odd = degrees % 2 == 1;
    double term = odd ? cosine : 1;
    double sum = 0;
    for (int power = odd ? 1 : 0; power <= degrees - 2; power += 2) {
      sum += term;
      term *= cosine * cosine * (power + 1) / (power + 2);
    }
    double even = StrictMath.sin(angle) * sum;
    return odd ? 2 / StrictMath.PI * (angle + even) : even;
  }
}
