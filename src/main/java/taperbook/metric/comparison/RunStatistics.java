package taperbook.metric.comparison;

import java.util.List;
import taperbook.metric.fit.SampleMean;
import taperbook.metric.fit.Student;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;

/**
 * Statistics of one quantity over runs, as of independent normal values with one variance.
 *
 * <p>Mean and next run rest on the spread s between the runs alone (JCGM 100:2008, 4.2 and G.3): it
 * holds the errors of reading as well, whatever their size, and asks for no model of them. What all
 * runs have in common, such as the drive that gives a distance its charge, does not show in s and
 * is added in the root of squares. Equal figures of a display that shows steps say nothing finer
 * than that step, so that no interval is narrower.
 *
 * @param values the value of each run; two or more
 * @param readings standard uncertainty of each run by its readings alone
 * @param common standard uncertainty that all runs share
 * @param halfStep half the step in which the values were displayed; 0 if they are not so coarse
 */
record RunStatistics(List<Double> values, List<Double> readings, double common, double halfStep) {
  private static final double TAIL = 0.025;

  /** Copies the lists. */
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

  /** Sample standard deviation of the runs. */
  private double deviation() {
    return SampleMean.of(values).deviation();
  }

  private double readingVariance() {
    return readings.stream().mapToDouble(u -> u * u).average().orElseThrow();
  }

  /** Mean of the runs with the 95 % interval for the mean of all runs. */
  Estimate meanOfAll() {
    return aroundMean(Math.sqrt(1.0 / count()));
  }

  /** The same value with the 95 % prediction interval for one more run. */
  Estimate nextRun() {
    return aroundMean(Math.sqrt(1 + 1.0 / count()));
  }

  private Estimate aroundMean(double share) {
    double half = Math.max(halfStep, Math.hypot(share * expanded(), Student.NORMAL_95 * common));
    Interval interval = Interval.around(mean(), half);
    // Power, time and distance are not negative; with two runs the interval could reach there.
    double low = mean() < 0 ? interval.low() : Math.max(0, interval.low());
    return new Estimate(mean(), new Interval(low, interval.high()));
  }

  /** Standard deviation between runs, with its 95 % interval by chi-square. */
  Estimate spread() {
    return new Estimate(deviation(), spreadBounds());
  }

  private Interval spreadBounds() {
    int degrees = count() - 1;
    double sum = degrees * deviation() * deviation();
    return new Interval(
        Math.sqrt(sum / ChiSquare.quantile(degrees, 1 - TAIL)),
        Math.sqrt(sum / ChiSquare.quantile(degrees, TAIL)));
  }

  /**
   * What of the spread the readings do not explain: the root of s^2 - mean u^2, or 0 (ISO 5725-2,
   * the variance between groups of known variance within; from memory).
   */
  Estimate beyondReadings() {
    return new Estimate(
        beyond(deviation()), spreadBounds().mapMonotone(this::beyond).hull(beyond(deviation())));
  }

  private double beyond(double spread) {
    return Math.sqrt(Math.max(0, spread * spread - readingVariance()));
  }

  /**
   * Half the 95 % interval that one run has beyond its readings: Student's factor times the spread,
   * less what the readings explain of it. Student's factor, and not 1.96 times {@link
   * #beyondReadings()}, as that is often 0 by chance for few runs, which would order equal cars.
   */
  double halfBeyondReadings() {
    double own = Student.NORMAL_95 * Student.NORMAL_95 * readingVariance();
    return Math.sqrt(Math.max(0, expanded() * expanded() - own));
  }

  private double expanded() {
    return Student.factor95(count() - 1) * deviation();
  }
}
