package taperbook.metric.comparison;

import java.util.List;
import taperbook.metric.fit.Quantiles;
import taperbook.metric.fit.SampleMean;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;

/**
 * Statistics of one quantity over runs, for independent normal values of equal variance.
 *
 * <p>Mean and next run use only the spread s between the runs (JCGM 100:2008, 4.2 and G.3), which
 * includes the reading errors and needs no model of them. Contributions that all runs share, such
 * as the drive, do not appear in s and are added in quadrature. No interval is narrower than the
 * step of the display.
 *
 * @param values the value of each run; two or more
 * @param readings standard uncertainty of each run by its readings alone
 * @param common standard uncertainty that all runs share
 * @param halfStep half the step in which the values were displayed; 0 if negligible
 */
record RunStatistics(List<Double> values, List<Double> readings, double common, double halfStep) {
  private static final double TAIL = 0.025;

  RunStatistics {
    values = List.copyOf(values);
    readings = List.copyOf(readings);
    if (values.size() < 2 || readings.size() != values.size()) {
      throw new IllegalArgumentException("statistics need two runs or more");
    }
  }

  int count() {
    return values.size();
  }

  double mean() {
    return SampleMean.of(values).value();
  }

  /** Returns the sample standard deviation of the runs. */
  private double deviation() {
    return SampleMean.of(values).deviation();
  }

  private double readingVariance() {
    return readings.stream().mapToDouble(u -> u * u).average().orElseThrow();
  }

  /** Returns the mean of the runs with the 95 % interval for the mean of all runs. */
  Estimate meanOfAll() {
    return aroundMean(Math.sqrt(1.0 / count()));
  }

  /** Returns the mean with the 95 % prediction interval for one more run. */
  Estimate nextRun() {
    return aroundMean(Math.sqrt(1 + 1.0 / count()));
  }

  private Estimate aroundMean(double share) {
    double half = Math.max(halfStep, Math.hypot(share * expanded(), Quantiles.NORMAL_95 * common));
    Interval interval = Interval.around(mean(), half);
    // Power, time and distance are not negative, but with two runs the interval could be.
    double low = mean() < 0 ? interval.low() : Math.max(0, interval.low());
    return new Estimate(mean(), new Interval(low, interval.high()));
  }

  /** Returns the standard deviation between runs, with its 95 % interval by chi-square. */
  Estimate spread() {
    return new Estimate(deviation(), spreadBounds());
  }

  private Interval spreadBounds() {
    int degrees = count() - 1;
    double sum = degrees * deviation() * deviation();
    return new Interval(
        Math.sqrt(sum / Quantiles.chiSquare(1 - TAIL, degrees)),
        Math.sqrt(sum / Quantiles.chiSquare(TAIL, degrees)));
  }

  /**
   * Returns the part of the spread that the readings do not explain: the root of s^2 - mean u^2, or
   * 0 (ISO 5725-2, the variance between groups of known variance within; from memory).
   */
  Estimate beyondReadings() {
    return new Estimate(
        beyond(deviation()), spreadBounds().mapMonotone(this::beyond).hull(beyond(deviation())));
  }

  private double beyond(double spread) {
    return Math.sqrt(Math.max(0, spread * spread - readingVariance()));
  }

  /**
   * Returns half the 95 % interval of one run beyond its readings: Student's factor times the
   * spread, minus the part that the readings explain. Does not use 1.96 times {@link
   * #beyondReadings()}, which is often 0 by chance for few runs and would separate equal cars.
   */
  double halfBeyondReadings() {
    double own = Quantiles.NORMAL_95 * Quantiles.NORMAL_95 * readingVariance();
    return Math.sqrt(Math.max(0, expanded() * expanded() - own));
  }

  private double expanded() {
    return Quantiles.student95(count() - 1) * deviation();
  }
}
