package taperbook.metric.course;

import java.util.Arrays;

/**
 * A symmetric positive definite system whose matrix has two subdiagonals and a border of a few full
 * rows, solved by Cholesky factorisation in linear time:
 *
 * <pre>
 *   [ A  B' ] [ x ]   [ b ]
 *   [ B  G  ] [ y ] = [ c ]      A pentadiagonal, n x n; G full, m x m
 * </pre>
 *
 * <p>The factor also transforms independent standard normal numbers into draws of the normal
 * distribution with this precision matrix (Rue and Held, Gaussian Markov Random Fields, 2005,
 * algorithm 2.4).
 */
final class ArrowSystem {
  /** Number of subdiagonals. */
  static final int BAND = 2;

  private final int n;
  private final int m;

  /** Row i contains the diagonal, the two subdiagonals, the border, and the right-hand side. */
  private final double[] rows;

  private final int width;
  private final double[][] corner;
  private final double[] cornerSide;

  /** Creates a system of zeros with n banded unknowns and m border unknowns. */
  ArrowSystem(int n, int m) {
    this.n = n;
    this.m = m;
    this.width = 1 + BAND + m + 1;
    this.rows = new double[n * width];
    this.corner = new double[m][m];
    this.cornerSide = new double[m];
  }

  int size() {
    return n;
  }

  int border() {
    return m;
  }

  /** Copies all values of another system of the same shape. */
  void copy(ArrowSystem other) {
    System.arraycopy(other.rows, 0, rows, 0, rows.length);
    for (int i = 0; i < m; i++) {
      System.arraycopy(other.corner[i], 0, corner[i], 0, m);
    }
    System.arraycopy(other.cornerSide, 0, cornerSide, 0, m);
  }

  /**
   * Adds an independent normal observation of a linear form: weight times the square of (form -
   * value) to twice the negative log density.
   *
   * @param first index of the first banded unknown; may be -1, then its coefficient is ignored
   * @param banded coefficients of up to three neighbouring banded unknowns
   * @param bordered coefficients of the border unknowns
   * @param value observed value
   * @param weight inverse variance
   */
  void add(int first, double[] banded, double[] bordered, double value, double weight) {
    for (int i = 0; i < banded.length; i++) {
      int at = first + i;
      if (at < 0 || at >= n || banded[i] == 0) {
        continue;
      }
      int row = at * width;
      double scaled = weight * banded[i];
      for (int j = i; j < banded.length && first + j < n; j++) {
        rows[row + j - i] += scaled * banded[j];
      }
      for (int j = 0; j < m; j++) {
        rows[row + 1 + BAND + j] += scaled * bordered[j];
      }
      rows[row + 1 + BAND + m] += scaled * value;
    }
    for (int i = 0; i < m; i++) {
      if (bordered[i] != 0) {
        double scaled = weight * bordered[i];
        for (int j = 0; j <= i; j++) {
          corner[i][j] += scaled * bordered[j];
        }
        cornerSide[i] += scaled * value;
      }
    }
  }

  /** Adds, as {@link #add}, an observation of zero of one border unknown. */
  void addBorder(int border, double weight) {
    corner[border][border] += weight;
  }

  /** Adds, as {@link #add}, an observation of zero of a form in banded unknowns only. */
  void addDifference(int first, double a0, double a1, double a2, double weight) {
    int row = (first + 1) * width;
    if (first >= 0) {
      rows[row - width] += weight * a0 * a0;
      rows[row - width + 1] += weight * a0 * a1;
      rows[row - width + 2] += weight * a0 * a2;
    }
    rows[row] += weight * a1 * a1;
    rows[row + 1] += weight * a1 * a2;
    rows[row + width] += weight * a2 * a2;
  }

  /**
   * Replaces the matrix by its Cholesky factor and the right-hand side by the solution of the lower
   * triangular system.
   */
  void factor() {
    double[] all = rows;
    int side = 1 + BAND + m;
    for (int i = 0; i < n; i++) {
      int row = i * width;
      double root = 1 / Math.sqrt(all[row]);
      // From here on the diagonal stores its inverse root, so that solving does not divide.
      all[row] = root;
      for (int j = row + 1; j <= row + side; j++) {
        all[j] *= root;
      }
      for (int d = 1; d <= BAND && i + d < n; d++) {
        double factor = all[row + d];
        int below = row + d * width;
        for (int j = d; j <= BAND; j++) {
          all[below + j - d] -= factor * all[row + j];
        }
        for (int j = 1 + BAND; j <= side; j++) {
          all[below + j] -= factor * all[row + j];
        }
      }
      double value = all[row + side];
      for (int j = 0; j < m; j++) {
        double factor = all[row + 1 + BAND + j];
        double[] into = corner[j];
        for (int k = 0; k <= j; k++) {
          into[k] -= factor * all[row + 1 + BAND + k];
        }
        cornerSide[j] -= factor * value;
      }
    }
    factorCorner();
  }

  /**
   * Returns the log density of the observations of a factored system, up to terms that do not
   * depend on the weights of the differences.
   */
  double logEvidence() {
    double squares = 0;
    double logs = 0;
    double product = 1;
    for (int i = 0; i < n; i++) {
      double side = rows[(i + 1) * width - 1];
      squares += side * side;
      product *= rows[i * width];
      if (product < 1e-200 || product > 1e200) {
        logs += Math.log(product);
        product = 1;
      }
    }
    for (int i = 0; i < m; i++) {
      squares += cornerSide[i] * cornerSide[i];
      product /= corner[i][i];
    }
    return squares / 2 + logs + Math.log(product);
  }

  private void factorCorner() {
    for (int i = 0; i < m; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = corner[i][j];
        for (int k = 0; k < j; k++) {
          sum -= corner[i][k] * corner[j][k];
        }
        corner[i][j] = i == j ? Math.sqrt(sum) : sum / corner[j][j];
      }
      double sum = cornerSide[i];
      for (int k = 0; k < i; k++) {
        sum -= corner[i][k] * cornerSide[k];
      }
      cornerSide[i] = sum / corner[i][i];
    }
  }

  /**
   * Returns the variance of a linear form of the unknowns of a factored system.
   *
   * @param first index of the first banded unknown of the form; may be -1
   * @param banded coefficients of up to three neighbouring banded unknowns
   * @param bordered coefficients of the border unknowns
   */
  double variance(int first, double[] banded, double[] bordered) {
    double[] border = bordered.clone();
    double squares = 0;
    double next = 0;
    double afterNext = 0;
    for (int i = Math.max(0, first); i < n; i++) {
      int row = i * width;
      int at = i - first;
      double value = ((at < banded.length ? banded[at] : 0) + next) * rows[row];
      next = afterNext - rows[row + 1] * value;
      afterNext = -rows[row + 2] * value;
      for (int j = 0; j < m; j++) {
        border[j] -= rows[row + 1 + BAND + j] * value;
      }
      squares += value * value;
    }
    for (int i = 0; i < m; i++) {
      double value = border[i];
      for (int k = 0; k < i; k++) {
        value -= corner[i][k] * border[k];
      }
      border[i] = value / corner[i][i];
      squares += border[i] * border[i];
    }
    return squares;
  }

  /**
   * Solves the factored system.
   *
   * @param solution receives the n banded unknowns, then the m border unknowns
   */
  void solve(double[] solution) {
    for (int i = 0; i < n; i++) {
      solution[i] = rows[(i + 1) * width - 1];
    }
    System.arraycopy(cornerSide, 0, solution, n, m);
    backward(solution);
  }

  /**
   * Solves the upper triangular system in place. Transforms independent standard normal numbers
   * into a zero-mean draw with the precision matrix of this system.
   *
   * @param values n + m numbers, replaced by the solution
   */
  void backward(double[] values) {
    for (int i = m - 1; i >= 0; i--) {
      double sum = values[n + i];
      for (int k = i + 1; k < m; k++) {
        sum -= corner[k][i] * values[n + k];
      }
      values[n + i] = sum / corner[i][i];
    }
    double next = 0;
    double afterNext = 0;
    for (int i = n - 1; i >= 0; i--) {
      int row = i * width;
      double sum = values[i] - rows[row + 1] * next - rows[row + 2] * afterNext;
      for (int j = 0; j < m; j++) {
        sum -= rows[row + 1 + BAND + j] * values[n + j];
      }
      double value = sum * rows[row];
      values[i] = value;
      afterNext = next;
      next = value;
    }
  }

  void clear() {
    Arrays.fill(rows, 0);
    for (double[] row : corner) {
      Arrays.fill(row, 0);
    }
    Arrays.fill(cornerSide, 0);
  }
}
