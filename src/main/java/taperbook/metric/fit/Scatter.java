package taperbook.metric.fit;

/**
 * The scatter of points about a curve, and the resulting widening of its uncertainty.
 *
 * <pre>
 *   r = sum e[i] e[i+1] / sum e[i]^2, not below zero    e: distances from the curve, in order of x
 *   n' = n (1 - r) / (1 + r)
 *   w^2 = max(1, S / f * n / n')                        f: degrees of freedom of the curve
 * </pre>
 *
 * <p>Rounding errors of a regular log are autocorrelated: a steady rise sampled at a steady rate
 * beats against the display's steps. The formula uses the effective number of independent points.
 *
 * @param consistency chi-square per degree of freedom, S / f
 * @param widening w, the factor on the standard uncertainty, at least 1
 * @param degreesOfFreedom n' - 2, not below {@link Student#LEAST_DEGREES}
 * @param residual root mean square of the distances in y
 * @see <a href="https://doi.org/10.1029/1999JD901105">B. D. Santer and others, Journal of
 *     Geophysical Research 105 (2000) 7337-7356, equation 6, for n'</a>
 */
record Scatter(double consistency, double widening, int degreesOfFreedom, double residual) {
  /** Upper limit of the correlation; beyond it too few effective points are left to estimate it. */
  private static final double MOST_CORRELATION = 0.98;

  /** Returns the scatter of points about their curve. */
  static Scatter about(Curvature curve) {
    double squares = 0;
    double products = 0;
    double last = 0;
    for (double distance : curve.distances()) {
      squares += distance * distance;
      products += distance * last;
      last = distance;
    }
    int points = curve.distances().size();
    double correlation =
        squares > 0 ? Math.min(MOST_CORRELATION, Math.max(0, products / squares)) : 0;
    double share = (1 - correlation) / (1 + correlation);
    double consistency = curve.chiSquare() / curve.degreesOfFreedom();
    return new Scatter(
        consistency,
        Math.sqrt(Math.max(1, consistency / share)),
        Math.max(Student.LEAST_DEGREES, (int) (points * share) - 2),
        Math.sqrt(squares / points));
  }

  /**
   * Returns half a 95 % interval in standard uncertainties: Student's factor if the scatter widened
   * it.
   */
  double factor95() {
    return widening > 1 ? Student.factor95(degreesOfFreedom) : Student.NORMAL_95;
  }
}
