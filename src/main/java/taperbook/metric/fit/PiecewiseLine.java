package taperbook.metric.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * A line of straight segments, fitted by least squares for given breakpoints, some of which are
 * steps where the power jumps by h:
 *
 * <pre>
 *   P(q) = a + b q + sum over j of ( c[j] max(0, q - psi[j]) + h[j] [q > psi[j]] )
 * </pre>
 *
 * with h[j] = 0 if breakpoint j is not a step.
 *
 * <p>A final class and not a record because it keeps arrays.
 */
final class PiecewiseLine {
  private final double intercept;
  private final double firstSlope;
  private final double[] bends;
  private final double[] heights;
  private final List<Break> breaks;
  private final double residualSumOfSquares;

  private PiecewiseLine(LeastSquares fit, List<Break> breaks) {
    this.intercept = fit.coefficient(0);
    this.firstSlope = fit.coefficient(1);
    this.breaks = breaks;
    this.bends = new double[breaks.size()];
    this.heights = new double[breaks.size()];
    int column = 2 + breaks.size();
    for (int j = 0; j < bends.length; j++) {
      bends[j] = fit.coefficient(2 + j);
      if (breaks.get(j).step()) {
        heights[j] = fit.coefficient(column);
        column++;
      }
    }
    this.residualSumOfSquares = fit.residualSumOfSquares();
  }

  /**
   * Fits the line with these breakpoints.
   *
   * @param soc abscissae, %
   * @param power ordinates, kW
   * @param breaks breakpoints in ascending order
   * @return the line, or empty if the points do not determine it
   */
  static Optional<PiecewiseLine> through(double[] soc, double[] power, List<Break> breaks) {
    List<Break> kept = List.copyOf(breaks);
    return LeastSquares.solve(columns(soc, kept), power).map(fit -> new PiecewiseLine(fit, kept));
  }

  /** Returns the columns 1, q, max(0, q - psi) for each breakpoint, and [q > psi] for each step. */
  static List<double[]> columns(double[] soc, List<Break> breaks) {
    List<double[]> columns = new ArrayList<>();
    double[] ones = new double[soc.length];
    Arrays.fill(ones, 1);
    columns.add(ones);
    columns.add(soc.clone());
    for (Break at : breaks) {
      columns.add(column(soc, q -> Math.max(0, q - at.soc())));
    }
    for (Break at : breaks) {
      if (at.step()) {
        columns.add(column(soc, q -> q > at.soc() ? 1 : 0));
      }
    }
    return columns;
  }

  private static double[] column(double[] soc, DoubleUnaryOperator of) {
    double[] column = new double[soc.length];
    for (int i = 0; i < soc.length; i++) {
      column[i] = of.applyAsDouble(soc[i]);
    }
    return column;
  }

  /** Returns the number of segments, at least 1. */
  int segments() {
    return bends.length + 1;
  }

  /** Returns the number of coefficients; those of steps follow those of slopes. */
  int coefficients() {
    return stepColumn(bends.length);
  }

  /** Returns the column of the height of breakpoint {@code j}, which must be a step. */
  int stepColumn(int j) {
    int steps = (int) breaks.stream().limit(j).filter(Break::step).count();
    return 2 + bends.length + steps;
  }

  /** Returns breakpoint {@code j}, between segments {@code j} and {@code j + 1}, %. */
  double at(int j) {
    return breaks.get(j).soc();
  }

  /** Returns true if the power jumps at breakpoint {@code j}. */
  boolean isStep(int j) {
    return breaks.get(j).step();
  }

  List<Break> breaks() {
    return breaks;
  }

  /** Returns the change of slope at breakpoint {@code j}, kW per %. */
  double bend(int j) {
    return bends[j];
  }

  /** Returns the jump of power at breakpoint {@code j}, kW; zero if it is not a step. */
  double height(int j) {
    return heights[j];
  }

  /** Returns the slope of segment {@code k}, kW per %. */
  double slope(int k) {
    double slope = firstSlope;
    for (int j = 0; j < k; j++) {
      slope += bends[j];
    }
    return slope;
  }

  /** Returns the power of segment {@code k}, or of its extrapolation, at a state of charge, kW. */
  double power(int k, double soc) {
    double sum = intercept + firstSlope * soc;
    for (int j = 0; j < k; j++) {
      sum += bends[j] * (soc - at(j)) + heights[j];
    }
    return sum;
  }

  /** Returns the power at a state of charge without the steps, kW. */
  double withoutSteps(double soc) {
    double sum = intercept + firstSlope * soc;
    for (int j = 0; j < bends.length; j++) {
      sum += bends[j] * Math.max(0, soc - at(j));
    }
    return sum;
  }

  double residualSumOfSquares() {
    return residualSumOfSquares;
  }
}
