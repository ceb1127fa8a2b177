package taperbook.metric.fit;

import java.util.List;
import java.util.Optional;

/**
 * A linear least-squares problem solved by modified Gram-Schmidt orthogonalisation, done twice for
 * each column so that the columns of Q are orthogonal to working precision.
 *
 * @see <a href="https://doi.org/10.1007/BF01934122">Å. Björck, Solving linear least squares
 *     problems by Gram-Schmidt orthogonalization, BIT 7 (1967) 1-21</a>
 */
final class LeastSquares {
  /** Columns that lose more than this share of their length are linearly dependent. */
  private static final double DEPENDENT = 1e-9;

  private final double[][] q;
  private final double[][] r;
  private final double[] coefficients;
  private final double residualSumOfSquares;

  private LeastSquares(double[][] q, double[][] r, double[] y) {
    this.q = q;
    this.r = r;
    double[] residual = y.clone();
    double[] projections = new double[q.length];
    for (int pass = 0; pass < 2; pass++) {
      for (int j = 0; j < q.length; j++) {
        double share = dot(q[j], residual);
        projections[j] += share;
        subtract(residual, q[j], share);
      }
    }
    this.coefficients = backward(projections);
    this.residualSumOfSquares = dot(residual, residual);
  }

  /**
   * Solves the problem.
   *
   * @param columns columns of the design matrix, each as long as {@code y}
   * @param y the values to fit
   * @return the solution, or empty if the columns are linearly dependent
   */
  static Optional<LeastSquares> solve(List<double[]> columns, double[] y) {
    int p = columns.size();
    if (p > y.length) {
      return Optional.empty();
    }
    double[][] q = new double[p][];
    double[][] r = new double[p][p];
    for (int j = 0; j < p; j++) {
      q[j] = columns.get(j).clone();
      double length = Math.sqrt(dot(q[j], q[j]));
      for (int pass = 0; pass < 2; pass++) {
        for (int i = 0; i < j; i++) {
          double share = dot(q[i], q[j]);
          r[i][j] += share;
          subtract(q[j], q[i], share);
        }
      }
      r[j][j] = Math.sqrt(dot(q[j], q[j]));
      if (!(r[j][j] > DEPENDENT * length)) {
        return Optional.empty();
      }
      for (int row = 0; row < y.length; row++) {
        q[j][row] /= r[j][j];
      }
    }
    return Optional.of(new LeastSquares(q, r, y));
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static void subtract(double[] from, double[] direction, double share) {
    for (int i = 0; i < from.length; i++) {
      from[i] -= share * direction[i];
    }
  }

  /** Solves R x = right by back substitution. */
  private double[] backward(double[] right) {
    double[] x = new double[right.length];
    for (int i = right.length - 1; i >= 0; i--) {
      double sum = right[i];
      for (int j = i + 1; j < right.length; j++) {
        sum -= r[i][j] * x[j];
      }
      x[i] = sum / r[i][i];
    }
    return x;
  }

  double coefficient(int i) {
    return coefficients[i];
  }

  double residualSumOfSquares() {
    return residualSumOfSquares;
  }

  /**
   * Returns the variance of a linear combination g of the coefficients if the values have
   * independent errors of the given variances v: g' (X'X)^-1 X' diag(v) X (X'X)^-1 g, with X = Q R.
   */
  double variance(double[] gradient, double[] variances) {
    double[] z = forward(gradient);
    double sum = 0;
    for (int row = 0; row < variances.length; row++) {
      double influence = 0;
      for (int j = 0; j < z.length; j++) {
        influence += z[j] * q[j][row];
      }
      sum += influence * influence * variances[row];
    }
    return sum;
  }

  /** Solves R' x = right by forward substitution. */
  private double[] forward(double[] right) {
    double[] x = new double[right.length];
    for (int i = 0; i < right.length; i++) {
      double sum = right[i];
      for (int j = 0; j < i; j++) {
        sum -= r[j][i] * x[j];
      }
      x[i] = sum / r[i][i];
    }
    return x;
  }
}
