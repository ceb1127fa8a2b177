package taperbook.metric.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * The curvature of energy over state of charge, and the resulting correction of its mean slope from
 * the first point to the last. A per cent takes more energy at a high state of charge, where the
 * voltage is higher, and least at low charge, so that the slope of a straight line differs from
 * energy charged over charge gained. The distances r from the line are fitted by polynomials p[k]
 * of degree k that are orthogonal to the line and to each other under the weights W, each scaled to
 * a greatest value of 1:
 *
 * <pre>
 *   c[k] = sum W p[k] r / g[k],  u(c[k])^2 = 1 / g[k],   g[k] = sum W p[k]^2 + 1 / t[k]^2
 *   correction of the slope = sum c[k] (p[k](last) - p[k](first)) / (x[last] - x[first])
 * </pre>
 *
 * <p>t[k] is the prior standard deviation of a coefficient: it widens the interval with few
 * readings and is negligible with many. It is 4 % of the total energy over k squared, a rule of
 * this report; over nine measured charges of three cells, of which three are test data ({@code
 * nasa-cccv}), the coefficients are at most 0.95, 0.32, 0.12 and 0.12 % for k = 2 to 5.
 *
 * @param correction correction to add to the slope of the line
 * @param standard standard uncertainty of the correction
 * @param distances distances of the points from the curve, in order of x
 * @param chiSquare their squares over the variances of the points
 * @param degreesOfFreedom points minus effective parameters
 */
record Curvature(
    double correction,
    double standard,
    List<Double> distances,
    double chiSquare,
    double degreesOfFreedom) {
  private static final int HIGHEST_DEGREE = 5;
  private static final double SHARE_AT_DEGREE_ONE = 0.04;

  /** Polynomials that lose more than this share of their square are dependent on the others. */
  private static final double DEPENDENT = 1e-9;

  Curvature {
    distances = List.copyOf(distances);
  }

  /**
   * Estimates the curvature about a line.
   *
   * @param line the line through the points
   * @param points the points in order of x, at least three
   */
  static Curvature about(YorkLine line, List<LinePoint> points) {
    int n = points.size();
    double first = points.get(0).x();
    double span = points.get(n - 1).x() - first;
    double[] weights = new double[n];
    double[] left = new double[n];
    for (int i = 0; i < n; i++) {
      LinePoint p = points.get(i);
      weights[i] = 1 / (p.yVariance() + line.slope() * line.slope() * p.xVariance());
      left[i] = p.y() - line.at(p.x());
    }
    List<double[]> basis = new ArrayList<>();
    double correction = 0;
    double variance = 0;
    double spent = 2;
    for (int k = 0; k <= Math.min(HIGHEST_DEGREE, n - 1); k++) {
      double[] p = new double[n];
      for (int i = 0; i < n; i++) {
        p[i] = Math.pow(2 * (points.get(i).x() - first) / span - 1, k);
      }
      double before = product(weights, p, p);
      basis.forEach(b -> subtract(p, b, product(weights, p, b) / product(weights, b, b)));
      if (product(weights, p, p) <= DEPENDENT * before) {
        break;
      }
      basis.add(p);
      if (k >= 2) {
        scale(p);
        double open = SHARE_AT_DEGREE_ONE / (k * k) * line.slope() * span;
        double seen = product(weights, p, p);
        double sum = seen + 1 / (open * open);
        double rise = (p[n - 1] - p[0]) / span;
        double coefficient = product(weights, p, left) / sum;
        correction += coefficient * rise;
        variance += rise * rise / sum;
        spent += seen / sum;
        subtract(left, p, coefficient);
      }
    }
    List<Double> distances = new ArrayList<>();
    for (double distance : left) {
      distances.add(distance);
    }
    return new Curvature(
        correction, Math.sqrt(variance), distances, product(weights, left, left), n - spent);
  }

  private static double product(double[] weights, double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += weights[i] * a[i] * b[i];
    }
    return sum;
  }

  private static void subtract(double[] from, double[] direction, double share) {
    for (int i = 0; i < from.length; i++) {
      from[i] -= share * direction[i];
    }
  }

  private static void scale(double[] values) {
    double most = 0;
    for (double value : values) {
      most = Math.max(most, Math.abs(value));
    }
    for (int i = 0; i < values.length; i++) {
      values[i] /= most;
    }
  }
}
