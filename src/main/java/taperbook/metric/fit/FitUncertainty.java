package taperbook.metric.fit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import taperbook.quantity.Interval;

/**
 * Standard uncertainties of a fitted line, from its linearisation at the fitted breakpoints. Each
 * point's variance is the residual variance of the fit, but at least that of the rounding of both
 * displays: s^2/12 of the power's step s, and of the state of charge's step times the slope there.
 * So even points without scatter have an uncertainty.
 *
 * @see <a href="https://doi.org/10.1002/sim.1545">V. M. R. Muggeo, Statistics in Medicine 22 (2003)
 *     3055-3071, for the linearisation</a>
 * @see <a href="https://doi.org/10.59161/JCGM100-2008E">JCGM 100:2008, F.2.2.1 and 5.1.2, for the
 *     variance of rounding and its propagation</a>
 */
final class FitUncertainty {
  /** Substitute for the rounding of a display without steps, as a share of the greatest power. */
  private static final double WITHOUT_STEPS = 1e-6;

  private final PiecewiseLine line;
  private final boolean[] unresolved;
  private final UnresolvedBreaks rule;
  private final Optional<LeastSquares> tangent;
  private final double[] variances;

  /** Standard uncertainty of one power reading from rounding, kW. */
  private final double oneRounding;

  FitUncertainty(TaperPoints points, PiecewiseLine line) {
    this.line = line;
    this.rule = new UnresolvedBreaks(points.socs());
    double[] soc = points.socs();
    boolean[] atReadings = rule.of(line.breaks());
    Optional<LeastSquares> full = tangent(soc, points.powers(), line, atReadings);
    if (full.isEmpty()) {
      Arrays.fill(atReadings, true);
      full = tangent(soc, points.powers(), line, atReadings);
    }
    this.unresolved = atReadings;
    this.tangent = full;
    this.variances = variances(points, line);
    this.oneRounding = points.halfPower() / Math.sqrt(3);
  }

  private static Optional<LeastSquares> tangent(
      double[] soc, double[] power, PiecewiseLine line, boolean[] unresolved) {
    List<double[]> columns = PiecewiseLine.columns(soc, line.breaks());
    for (int j = 0; j < unresolved.length; j++) {
      if (!unresolved[j]) {
        double[] column = new double[soc.length];
        for (int i = 0; i < soc.length; i++) {
          column[i] = soc[i] > line.at(j) ? -line.bend(j) : 0;
        }
        columns.add(column);
      }
    }
    return LeastSquares.solve(columns, power);
  }

  private static double[] variances(TaperPoints points, PiecewiseLine line) {
    int freedom = points.size() - 2 * line.segments();
    double scatter = freedom > 0 ? line.residualSumOfSquares() / freedom : 0;
    double[] variances = new double[points.size()];
    for (int i = 0; i < variances.length; i++) {
      variances[i] = Math.max(scatter, rounding(points, line, i));
    }
    return variances;
  }

  /** Returns the variance of point {@code i} from the rounding of both displays, kW^2. */
  private static double rounding(TaperPoints points, PiecewiseLine line, int i) {
    double h = points.halfSoc();
    double q = points.soc(i);
    double change = (line.withoutSteps(q + h) - line.withoutSteps(q - h)) / 2;
    double least = WITHOUT_STEPS * points.scale();
    return (Math.pow(points.halfPower(), 2) + change * change) / 3 + least * least;
  }

  /** Returns the sum over the points of the variance from rounding, kW^2. */
  static double sumOfRounding(TaperPoints points, PiecewiseLine line) {
    double sum = 0;
    for (int i = 0; i < points.size(); i++) {
      sum += rounding(points, line, i);
    }
    return sum;
  }

  /**
   * Returns true if segment {@code k} ends at the first or last reading, or contains enough
   * readings.
   */
  boolean isSlopeSeen(int k) {
    return k == 0 || k == line.segments() - 1 || rule.hasItsOwn(line.breaks(), k);
  }

  /**
   * Returns the interval of breakpoint {@code j}, %: two standard uncertainties to each side, or
   * the adjacent readings for an unresolved one.
   */
  Interval ofBreak(int j) {
    double at = line.at(j);
    if (unresolved[j]) {
      return new Interval(rule.below(at), rule.above(at));
    }
    int column = line.coefficients();
    for (int i = 0; i < j; i++) {
      column += unresolved[i] ? 0 : 1;
    }
    double[] gradient = gradient();
    gradient[column] = 1;
    return Interval.around(at, 2 * standard(gradient));
  }

  /**
   * Returns the interval of the height of step {@code j}, kW: two standard uncertainties to each
   * side of the distance between the adjacent segments, wherever the step lies in its gap. The
   * readings of a plateau share one rounding error, which averaging does not reduce.
   */
  Interval ofHeight(int j, Interval gap) {
    Interval hull = Interval.exactly(line.height(j));
    for (double soc : new double[] {gap.low(), gap.high()}) {
      double[] gradient = gradient();
      gradient[line.stepColumn(j)] = 1;
      gradient[2 + j] = soc - line.at(j);
      double height = line.height(j) + line.bend(j) * (soc - line.at(j));
      double spread = 2 * Math.max(standard(gradient), oneRounding * Math.sqrt(2));
      hull = hull.hull(height - spread).hull(height + spread);
    }
    return hull;
  }

  /** Returns the standard uncertainty of the slope of segment {@code k}, kW per %. */
  double ofSlope(int k) {
    double[] gradient = gradient();
    for (int j = 0; j <= k; j++) {
      gradient[1 + j] = 1;
    }
    return standard(gradient);
  }

  /**
   * Returns the standard uncertainty of the mean power of segment {@code k} at two states of
   * charge, kW. The two are exact, so that the uncertainty of breakpoints enters once, through the
   * line. At least the rounding of one reading, which the readings of a plateau share.
   */
  double ofMeanPower(int k, double from, double to) {
    double[] gradient = gradient();
    for (double soc : new double[] {from, to}) {
      gradient[0] += 0.5;
      gradient[1] += soc / 2;
      int column = line.coefficients();
      for (int j = 0; j < k; j++) {
        gradient[2 + j] += (soc - line.at(j)) / 2;
        if (line.isStep(j)) {
          gradient[line.stepColumn(j)] += 0.5;
        }
        if (!unresolved[j]) {
          // At its own breakpoint the line has the slope of its left side.
          gradient[column] -= soc > line.at(j) ? line.bend(j) / 2 : 0;
          column++;
        }
      }
    }
    return Math.max(standard(gradient), oneRounding);
  }

  private double[] gradient() {
    int free = 0;
    for (boolean h : unresolved) {
      free += h ? 0 : 1;
    }
    return new double[line.coefficients() + free];
  }

  private double standard(double[] gradient) {
    return tangent.map(t -> Math.sqrt(t.variance(gradient, variances))).orElse(0.0);
  }
}
