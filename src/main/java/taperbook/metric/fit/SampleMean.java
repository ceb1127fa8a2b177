package taperbook.metric.fit;

import java.util.List;

/**
 * The mean of repeated measurements (JCGM 100:2008, 4.2 and G.3):
 *
 * <pre>
 *   s = sqrt( sum (x[i] - mean)^2 / (n - 1) )      half an interval of the mean = t s / sqrt(n)
 * </pre>
 *
 * with Student's t for 95 % and n - 1 degrees of freedom.
 *
 * @param value the mean
 * @param deviation standard deviation s; 0 for a single value
 * @param count number of values, at least 1
 */
public record SampleMean(double value, double deviation, int count) {
  /** Returns the mean of at least one value. */
  public static SampleMean of(List<Double> values) {
    double mean = values.stream().mapToDouble(v -> v).average().orElseThrow();
    double squares = values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
    int n = values.size();
    return new SampleMean(mean, n > 1 ? Math.sqrt(squares / (n - 1)) : 0, n);
  }

  /** Returns the standard uncertainty of the mean from the scatter of the values. */
  public double standard() {
    return deviation / Math.sqrt(count);
  }

  /**
   * Returns half a 95 % interval of the mean from the scatter of the values; 0 for a single value.
   */
  public double half95() {
    return count > 1 ? Quantiles.student95(count - 1) * standard() : 0;
  }
}
