package taperbook.metric.fit;

import java.math.BigDecimal;
import java.math.MathContext;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Quantiles of the distributions that intervals are made of. Student's replaces the normal one for
 * a standard uncertainty from scatter with few degrees of freedom (JCGM 100:2008, G.3).
 */
public final class Quantiles {
  /** The two-sided 95 % normal quantile, JCGM 100:2008, table G.1. */
  public static final double NORMAL_95 = 1.959963984540054;

  /** Minimum degrees of freedom to estimate the scatter about a line. */
  static final int MIN_DEGREES = 3;

  /** The library computes by {@link Math}, whose last digits may differ between processors. */
  private static final MathContext SAME_EVERYWHERE = new MathContext(12);

  private Quantiles() {}

  /**
   * Returns half a 95 % interval in standard uncertainties.
   *
   * @param degrees degrees of freedom, at least 1
   */
  public static double student95(int degrees) {
    return student(0.975, degrees);
  }

  /**
   * Returns the quantile of Student's distribution.
   *
   * @param p probability, above 0 and below 1
   * @param degrees degrees of freedom, at least 1
   * @throws IllegalArgumentException if either is outside
   */
  public static double student(double p, int degrees) {
    return quantile(TDistribution.of(degrees), p);
  }

  /**
   * Returns the quantile of the chi-square distribution.
   *
   * @param p probability, above 0 and below 1
   * @param degrees degrees of freedom, at least 1
   * @throws IllegalArgumentException if either is outside
   */
  public static double chiSquare(double p, int degrees) {
    return quantile(ChiSquaredDistribution.of(degrees), p);
  }

  private static double quantile(ContinuousDistribution distribution, double p) {
    if (!(p > 0 && p < 1)) {
      throw new IllegalArgumentException("no quantile of the probability " + p);
    }
    return new BigDecimal(distribution.inverseCumulativeProbability(p))
        .round(SAME_EVERYWHERE)
        .doubleValue();
  }
}
