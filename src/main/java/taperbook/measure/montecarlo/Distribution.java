package taperbook.measure.montecarlo;

/**
 * Summary of the distribution of one output.
 *
 * <p>The interval is the shortest one. Where many are nearly as short, as in a rectangular
 * distribution, chance alone would choose between them; then it is the one of those within two per
 * mille of the shortest that leaves the most equal shares on both sides.
 *
 * @param mean estimate: the mean of the trials (JCGM 101:2008, 7.6)
 * @param standardUncertainty standard deviation of the trials (7.6)
 * @param low lower end of the shortest coverage interval (5.3.4, 7.7)
 * @param high upper end
 * @param lowQuantile lower end of the probabilistically symmetric interval (5.3.3), whose place
 *     does not depend on chance and so tells when a run is stable
 * @param highQuantile upper end of that interval
 */
public record Distribution(
    double mean,
    double standardUncertainty,
    double low,
    double high,
    double lowQuantile,
    double highQuantile) {
  private static final double NEARLY_AS_SHORT = 1.002;

  /**
   * The summary of samples.
   *
   * @param samples at least two finite values; rearranged in place
   * @param coverage coverage of the interval, between 0 and 1
   * @param tails what found the tails of earlier samples of the same output
   */
  static Distribution of(double[] samples, double coverage, Tails tails) {
    double mean = mean(samples);
    double squares = 0;
    for (double sample : samples) {
      squares += (sample - mean) * (sample - mean);
    }
    int span = Math.min(samples.length - 1, (int) Math.round(coverage * samples.length));
    // Every interval of that many samples begins at one of the lowest and ends at one of the
    // highest.
    int starts = samples.length - span;
    tails.part(samples, starts);
    int start = startOfShortest(samples, starts);
    int tail = (starts - 1) / 2;
    return new Distribution(
        mean,
        Math.sqrt(squares / (samples.length - 1)),
        samples[start],
        samples[span + start],
        samples[tail],
        samples[span + tail]);
  }

  private static double mean(double[] samples) {
    double sum = 0;
    for (double sample : samples) {
      sum += sample;
    }
    return sum / samples.length;
  }

  private static int startOfShortest(double[] samples, int starts) {
    int span = samples.length - starts;
    double shortest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < starts; i++) {
      shortest = Math.min(shortest, samples[span + i] - samples[i]);
    }
    int middle = (starts - 1) / 2;
    for (int off = 0; off < starts; off++) {
      for (int i : new int[] {middle - off, middle + off}) {
        boolean inside = i >= 0 && i < starts;
        if (inside && samples[span + i] - samples[i] <= NEARLY_AS_SHORT * shortest) {
          return i;
        }
      }
    }
    return middle;
  }
}
