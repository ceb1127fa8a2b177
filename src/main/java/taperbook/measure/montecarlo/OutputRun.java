package taperbook.measure.montecarlo;

import java.util.ArrayList;
import java.util.List;

/** What one output took in the blocks of a run. */
final class OutputRun {
  private final double coverage;
  private final Tails tails = new Tails();
  private final List<double[]> blocks = new ArrayList<>();
  private final List<Distribution> summaries = new ArrayList<>();

  /**
   * No blocks yet.
   *
   * @param coverage coverage of the interval, between 0 and 1
   */
  OutputRun(double coverage) {
    this.coverage = coverage;
  }

  /** Takes a block over; it is rearranged. */
  void add(double[] block) {
    summaries.add(Distribution.of(block, coverage, tails));
    blocks.add(block);
  }

  int blocks() {
    return blocks.size();
  }

  /** The mean of the blocks' standard uncertainties. */
  double standardUncertainty() {
    return summaries.stream().mapToDouble(Distribution::standardUncertainty).average().orElse(0);
  }

  /**
   * The largest standard deviation of the mean over blocks, of the statistics that JCGM 101:2008,
   * 7.9.4 g, looks at: estimate, standard uncertainty, both ends of the interval.
   */
  double deviationOfMeans() {
    double largest = 0;
    double[][] statistics = new double[4][summaries.size()];
    for (int b = 0; b < summaries.size(); b++) {
      Distribution d = summaries.get(b);
      statistics[0][b] = d.mean();
      statistics[1][b] = d.standardUncertainty();
      statistics[2][b] = d.lowQuantile();
      statistics[3][b] = d.highQuantile();
    }
    for (double[] statistic : statistics) {
      double deviation = deviationOfMean(statistic);
      // One that is no number, as of times without end, says nothing.
      largest = deviation > largest ? deviation : largest;
    }
    return largest;
  }

  /** The summary of all blocks together. */
  Distribution whole() {
    int size = blocks.get(0).length;
    double[] all = new double[blocks.size() * size];
    for (int b = 0; b < blocks.size(); b++) {
      System.arraycopy(blocks.get(b), 0, all, b * size, size);
    }
    return Distribution.of(all, coverage, tails);
  }

  private static double deviationOfMean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    double mean = sum / values.length;
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    return Math.sqrt(squares / (values.length * (values.length - 1.0)));
  }
}
