package taperbook.metric.comparison;

/**
 * Quantiles of the chi-square distribution with integer degrees of freedom, by bisection of its
 * distribution function: the regularised incomplete gamma function P(f / 2, x / 2), by its power
 * series.
 *
 * @see <a href="https://dlmf.nist.gov/8.11#E4">NIST Digital Library of Mathematical Functions,
 *     8.11.4; from memory</a>
 */
final class ChiSquare {
  private static final int HALVINGS = 200;

  private ChiSquare() {}

  /**
   * Returns the quantile of a probability.
   *
   * @param degrees degrees of freedom, at least 1
   * @param share above 0 and below 1
   */
  static double quantile(int degrees, double share) {
    double low = 0;
    double high = 10.0 * degrees + 100;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (below(degrees, middle) < share) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private static double below(int degrees, double value) {
    double a = degrees / 2.0;
    double x = value / 2;
    double term = StrictMath.exp(a * StrictMath.log(x) - x) / gammaOfNext(degrees);
    double sum = 0;
    for (int n = 1; term > 1e-18 * sum; n++) {
      sum += term;
      term *= x / (a + n);
    }
    return sum;
  }

  /** Returns the gamma function of f / 2 + 1, by recursion from 1 or 1/2. */
  private static double gammaOfNext(int degrees) {
    double product = degrees % 2 == 0 ? 1 : Math.sqrt(Math.PI);
    for (int f = degrees; f > 0; f -= 2) {
      product *= f / 2.0;
    }
    return product;
  }
}
