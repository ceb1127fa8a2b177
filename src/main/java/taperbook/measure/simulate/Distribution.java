package taperbook.measure.simulate;

import java.util.Arrays;

/**
 * Summary of the distribution of one output.
 *
 * @param mean estimate: the mean of the trials (JCGM 101:2008, 7.6)
 * @param standardUncertainty standard deviation of the trials (7.6)
 * @param low lower end of the shortest coverage interval (5.3.4, 7.7)
 * @param high upper end
 */
record Distribution(double mean, double standardUncertainty, double low, double high) {

  /**
   * The summary of samples.
   *
   * @param samples at least two finite values, left as they are
   * @param coverage coverage of the interval, between 0 and 1
   */
  static Distribution of(double[] samples, double coverage) {
    int n = samples.length;
    double mean = Arrays.stream(samples).sum() / n;
    double squares = 0;
    for (double sample : samples) {
      squares += (sample - mean) * (sample - mean);
    }
    double[] sorted = samples.clone();
    Arrays.sort(sorted);
    int span = (int) Math.round(coverage * n);
    int best = 0;
    for (int i = 1; i + span < n; i++) {
      if (sorted[i + span] - sorted[i] < sorted[best + span] - sorted[best]) {
        best = i;
      }
    }
    int last = Math.min(n - 1, best + span);
    return new Distribution(mean, Math.sqrt(squares / (n - 1)), sorted[best], sorted[last]);
  }
}
