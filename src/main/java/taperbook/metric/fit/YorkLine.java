package taperbook.metric.fit;

import java.util.List;
import java.util.function.ToDoubleBiFunction;

/**
 * The best straight line through points with independent errors in both coordinates. Uses variances
 * <i>s</i> instead of weights, so that exact coordinates are not a special case:
 *
 * <pre>
 *   W    = 1 / (s_y + b^2 s_x)
 *   beta = W [ (x - X) s_y + b (y - Y) s_x ]        X, Y: means of x and y weighted by W
 *   b    = sum W beta (y - Y) / sum W beta (x - X)  iterated until b converges
 *   a    = Y - b X
 *   u(b)^2 = 1 / sum W (beta - B)^2                 B: mean of beta weighted by W
 *   u(a)^2 = 1 / sum W + (X + B)^2 u(b)^2
 *   S    = sum W (y - b x - a)^2
 * </pre>
 *
 * <p>Edge cases: through two points the line is exact and S zero; with all {@code x} exact it is
 * the weighted least-squares line.
 *
 * @param slope b
 * @param intercept a
 * @param slopeError standard uncertainty of the slope if the stated variances hold
 * @param interceptError standard uncertainty of the intercept if the stated variances hold
 * @param centre X + B, where the line is known best
 * @param chiSquare S, the squared distance of the points from the line in standard uncertainties
 * @param points number of points, at least 2
 * @see <a href="https://doi.org/10.1119/1.1632486">D. York, N. M. Evensen, M. Lopez Martinez and J.
 *     De Basabe Delgado, American Journal of Physics 72 (2004) 367-375, equations 13</a>
 */
public record YorkLine(
    double slope,
    double intercept,
    double slopeError,
    double interceptError,
    double centre,
    double chiSquare,
    int points) {
  private static final int MOST_ROUNDS = 200;

  /** Relative change of the slope at which the iteration has converged. */
  private static final double STILL = 1e-14;

  /**
   * Fits a line through points.
   *
   * @param points at least two, with at least two different abscissae
   * @throws IllegalArgumentException if there are fewer, or they lie on a vertical line
   */
  public static YorkLine through(List<LinePoint> points) {
    if (points.size() < 2 || points.stream().mapToDouble(LinePoint::x).distinct().count() < 2) {
      throw new IllegalArgumentException("no line through " + points);
    }
    double slope = leastSquaresSlope(points);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double next = new Sums(points, slope).nextSlope();
      boolean converged = Math.abs(next - slope) <= STILL * Math.abs(next);
      slope = next;
      if (converged) {
        break;
      }
    }
    return new Sums(points, slope).line();
  }

  /** Returns the degrees of freedom: points minus the two parameters. */
  public int degreesOfFreedom() {
    return points - 2;
  }

  /**
   * Returns chi-square per degree of freedom: near 1 if the stated variances explain the scatter; 0
   * for no degrees of freedom.
   */
  public double reducedChiSquare() {
    return degreesOfFreedom() == 0 ? 0 : chiSquare / degreesOfFreedom();
  }

  /** Returns the ordinate of the line. */
  public double at(double x) {
    return intercept + slope * x;
  }

  /** Returns the standard uncertainty of the ordinate if the stated variances hold. */
  public double errorAt(double x) {
    double atCentre = interceptError * interceptError - centre * centre * slopeError * slopeError;
    double away = (x - centre) * slopeError;
    return Math.sqrt(Math.max(0, atCentre) + away * away);
  }

  /**
   * Returns half a 95 % interval of the ordinate: by the stated variances, or by the scatter of the
   * points about the line with Student's factor, whichever is wider.
   */
  public double half95At(double x) {
    return errorAt(x) * factor95();
  }

  /** Returns half a 95 % interval of the slope, as {@link #half95At}. */
  public double slopeHalf95() {
    return slopeError * factor95();
  }

  private double factor95() {
    int degrees = degreesOfFreedom();
    return degrees == 0
        ? Quantiles.NORMAL_95
        : Math.max(
            Quantiles.NORMAL_95, Quantiles.student95(degrees) * Math.sqrt(reducedChiSquare()));
  }

  /** Returns the initial slope; it need not be accurate, but must not be zero over zero. */
  private static double leastSquaresSlope(List<LinePoint> points) {
    double meanX = points.stream().mapToDouble(LinePoint::x).average().orElseThrow();
    double meanY = points.stream().mapToDouble(LinePoint::y).average().orElseThrow();
    double xx = 0;
    double xy = 0;
    for (LinePoint p : points) {
      xx += (p.x() - meanX) * (p.x() - meanX);
      xy += (p.x() - meanX) * (p.y() - meanY);
    }
    return xy / xx;
  }

  /** The sums over all points at one slope. */
  private static final class Sums {
    private final List<LinePoint> points;
    private final double slope;
    private final double weights;
    private final double meanX;
    private final double meanY;

    Sums(List<LinePoint> points, double slope) {
      this.points = points;
      this.slope = slope;
      this.weights = sum((p, w) -> w);
      this.meanX = sum((p, w) -> w * p.x()) / weights;
      this.meanY = sum((p, w) -> w * p.y()) / weights;
    }

    private double sum(ToDoubleBiFunction<LinePoint, Double> term) {
      double sum = 0;
      for (LinePoint p : points) {
        sum += term.applyAsDouble(p, 1 / (p.yVariance() + slope * slope * p.xVariance()));
      }
      return sum;
    }

    private double beta(LinePoint p, double weight) {
      double u = p.x() - meanX;
      double v = p.y() - meanY;
      return weight * (u * p.yVariance() + slope * v * p.xVariance());
    }

    double nextSlope() {
      double above = sum((p, w) -> w * beta(p, w) * (p.y() - meanY));
      double below = sum((p, w) -> w * beta(p, w) * (p.x() - meanX));
      return above / below;
    }

    YorkLine line() {
      double intercept = meanY - slope * meanX;
      double meanBeta = sum((p, w) -> w * beta(p, w)) / weights;
      double spread = sum((p, w) -> w * Math.pow(beta(p, w) - meanBeta, 2));
      double adjusted = meanX + meanBeta;
      double chiSquare = sum((p, w) -> w * Math.pow(p.y() - intercept - slope * p.x(), 2));
      return new YorkLine(
          slope,
          intercept,
          Math.sqrt(1 / spread),
          Math.sqrt(1 / weights + adjusted * adjusted / spread),
          adjusted,
          chiSquare,
          points.size());
    }
  }
}
