package taperbook.metric.fit;

/**
 * A point of a straight line with independent errors in both coordinates.
 *
 * @param x abscissa
 * @param y ordinate
 * @param xVariance squared standard uncertainty of {@code x}, not negative
 * @param yVariance squared standard uncertainty of {@code y}, not negative; not zero where {@code
 *     xVariance} is
 */
public record LinePoint(double x, double y, double xVariance, double yVariance) {
  /** Validates that the point has a weight. */
  public LinePoint {
    boolean finite = Double.isFinite(x) && Double.isFinite(y);
    if (!(finite && xVariance >= 0 && yVariance >= 0 && xVariance + yVariance > 0)) {
      throw new IllegalArgumentException(
          "cannot be weighed: " + x + ", " + y + ", " + xVariance + ", " + yVariance);
    }
  }

  /**
   * Creates a point with rounded coordinates: a rectangular error of half-width h has the variance
   * h<sup>2</sup>/3 (JCGM 100:2008, 4.3.7 and F.2.2.1).
   *
   * @param xHalf half-width of the error of {@code x}
   * @param yHalf half-width of the error of {@code y}
   */
  public static LinePoint rounded(double x, double y, double xHalf, double yHalf) {
    return new LinePoint(x, y, xHalf * xHalf / 3, yHalf * yHalf / 3);
  }
}
