package taperbook.measure.taper;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A continuous line of straight segments, fitted by least squares for given breakpoints:
 *
 * <pre>
 *   P(q) = a + b q + sum over j of c[j] max(0, q - psi[j])
 * </pre>
 *
 * <p>A final class and not a record because it keeps arrays.
 */
final class BrokenLine {
  private final double intercept;
  private final double firstSlope;
  private final double[] bends;
  private final double[] breaks;
  private final double residualSumOfSquares;

  private BrokenLine(LeastSquares fit, double[] breaks) {
    this.intercept = fit.coefficient(0);
    this.firstSlope = fit.coefficient(1);
    this.breaks = breaks;
    this.bends = new double[breaks.length];
    for (int j = 0; j < breaks.length; j++) {
      bends[j] = fit.coefficient(2 + j);
    }
    this.residualSumOfSquares = fit.residualSumOfSquares();
  }

  /**
   * The best line with these breakpoints.
   *
   * @param soc abscissae, %
   * @param power ordinates, kW
   * @param breaks breakpoints in rising order, %
   * @return the line, or empty if the points do not determine it
   */
  static Optional<BrokenLine> through(double[] soc, double[] power, double... breaks) {
    double[] kept = breaks.clone();
    return LeastSquares.solve(columns(soc, kept), power).map(fit -> new BrokenLine(fit, kept));
  }

  /** Columns 1, q and max(0, q - psi) for each breakpoint. */
  static List<double[]> columns(double[] soc, double[] breaks) {
    List<double[]> columns = new ArrayList<>();
    double[] ones = new double[soc.length];
    Arrays.fill(ones, 1);
    columns.add(ones);
    columns.add(soc.clone());
    for (double at : breaks) {
      double[] hinge = new double[soc.length];
      for (int i = 0; i < soc.length; i++) {
        hinge[i] = Math.max(0, soc[i] - at);
      }
      columns.add(hinge);
    }
    return columns;
  }

  /** Number of segments, at least 1. */
  int segments() {
    return breaks.length + 1;
  }

  /** Breakpoint {@code j}, between segments {@code j} and {@code j + 1}, %. */
  double at(int j) {
    return breaks[j];
  }

  double[] breaks() {
    return breaks.clone();
  }

  /** Change of slope at breakpoint {@code j}, kW per %. */
  double bend(int j) {
    return bends[j];
  }

  /** Slope of segment {@code k}, kW per %. */
  double slope(int k) {
    double slope = firstSlope;
    for (int j = 0; j < k; j++) {
      slope += bends[j];
    }
    return slope;
  }

  /** Power at a state of charge, kW. */
  double power(double soc) {
    double sum = intercept + firstSlope * soc;
    for (int j = 0; j < breaks.length; j++) {
      sum += bends[j] * Math.max(0, soc - breaks[j]);
    }
    return sum;
  }

  double residualSumOfSquares() {
    return residualSumOfSquares;
  }
}
