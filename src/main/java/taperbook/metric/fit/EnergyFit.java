package taperbook.metric.fit;

import java.util.List;
import java.util.Optional;
import taperbook.metric.bounds.PowerIntegral;
import taperbook.quantity.Estimate;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * The mean energy per per cent over the recorded state of charge: the slope of a straight line,
 * corrected for the curvature of the energies.
 *
 * <pre>
 *   e = b + c        half an interval = k sqrt( w^2 (u(b)^2 + u(c)^2) + e^2 r^2 )
 * </pre>
 *
 * with the slope <i>b</i> and its standard uncertainty <i>u(b)</i> from {@link YorkLine}, the
 * correction <i>c</i> with <i>u(c)</i> from {@link Curvature}, the widening <i>w</i> from {@link
 * Scatter}, the relative uncertainty <i>r</i> of the scale of integrated power, and <i>k</i> =
 * 1.96, or Student's t if the scatter widened the interval.
 *
 * <p>A display that rounds down, or a tester who always waits for the display to change, shifts all
 * readings by the same part of a step, which affects the intercept but not the slope.
 *
 * @param perPercent energy per per cent with its 95 % interval, kWh/%, all above zero
 * @param residual root mean square of the distances of the energies from the curve, kWh
 * @param consistency chi-square per degree of freedom
 * @param widening factor by which the scatter widened the interval, at least 1
 * @param rows the rows behind the points
 */
public record EnergyFit(
    Estimate perPercent, double residual, double consistency, double widening, List<RowRef> rows) {
  public EnergyFit {
    rows = List.copyOf(rows);
  }

  /** Coverage of the interval of {@link #perPercent}. */
  public static final double COVERAGE = 0.95;

  /** Minimum number of displayed states of charge for a fit. */
  public static final int LEAST_POINTS = EnergyReadings.LEAST_POINTS;

  /**
   * Fits the line of a session.
   *
   * @param soc state of charge, %
   * @param energy energy counter, kWh, if recorded
   * @param integral integrated power, if recorded
   * @return the line; empty if fewer than {@link #LEAST_POINTS} steps of the state of charge have
   *     an energy, or if the interval would not exclude zero
   */
  public static Optional<EnergyFit> of(
      Trace soc, Optional<Trace> energy, Optional<PowerIntegral> integral) {
    return EnergyReadings.of(soc, energy, integral).flatMap(EnergyFit::of);
  }

  private static Optional<EnergyFit> of(EnergyReadings readings) {
    YorkLine line = YorkLine.through(readings.points());
    Curvature curve = Curvature.about(line, readings.points());
    Scatter scatter = Scatter.about(curve);
    double value = line.slope() + curve.correction();
    double fromScatter = scatter.widening() * Math.hypot(line.slopeError(), curve.standard());
    double half = scatter.factor95() * Math.hypot(fromScatter, value * readings.relativeScale());
    if (!(Double.isFinite(half) && value - half > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        new EnergyFit(
            Estimate.around(value, half),
            scatter.residual(),
            scatter.consistency(),
            scatter.widening(),
            readings.rows()));
  }

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
   * @param degreesOfFreedom n' - 2, not below {@link Quantiles#MIN_DEGREES}
   * @param residual root mean square of the distances in y
   * @see <a href="https://doi.org/10.1029/1999JD901105">B. D. Santer and others, Journal of
   *     Geophysical Research 105 (2000) 7337-7356, equation 6, for n'</a>
   */
  private record Scatter(
      double consistency, double widening, int degreesOfFreedom, double residual) {
    /**
     * Upper limit of the correlation; beyond it too few effective points are left to estimate it.
     */
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
          Math.max(Quantiles.MIN_DEGREES, (int) (points * share) - 2),
          Math.sqrt(squares / points));
    }

    /**
     * Returns half a 95 % interval in standard uncertainties: Student's factor if the scatter
     * widened it.
     */
    double factor95() {
      return widening > 1 ? Quantiles.student95(degreesOfFreedom) : Quantiles.NORMAL_95;
    }
  }
}
