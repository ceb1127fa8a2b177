package taperbook.measure.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The adaptive Monte Carlo procedure of JCGM 101:2008, 7.9: blocks of 10 000 trials until twice the
 * standard deviation of the block means of estimate, standard uncertainty and both interval ends is
 * below the numerical tolerance of every output, where the tolerance is half a unit of the last of
 * the wanted significant digits of the standard uncertainty (7.9.2).
 */
final class MonteCarlo {
  /** Trials in a block: JCGM 101:2008, 7.9.4 b, for a coverage of 95 %. */
  static final int BLOCK = 10_000;

  /** Never fewer blocks, or no standard deviation could be formed. */
  private static final int LEAST_BLOCKS = 2;

  private final int blockSize;
  private final int mostBlocks;
  private final int digits;
  private final double coverage;

  /**
   * A procedure.
   *
   * @param digits significant digits of the standard uncertainty that are wanted, 1 or 2
   * @param coverage coverage of the intervals, between 0 and 1
   * @param mostBlocks blocks after which it stops whatever the tolerance, at least 2
   */
  MonteCarlo(int digits, double coverage, int mostBlocks) {
    this(BLOCK, digits, coverage, mostBlocks);
  }

  /** A procedure whose blocks are smaller or larger than the guide's. */
  MonteCarlo(int blockSize, int digits, double coverage, int mostBlocks) {
    this.blockSize = blockSize;
    this.digits = digits;
    this.coverage = coverage;
    this.mostBlocks = Math.max(LEAST_BLOCKS, mostBlocks);
  }

  /** One trial: fills in the value of each output. */
  interface Trial {
    void run(double[] outputs);
  }

  /**
   * What came of a run.
   *
   * @param trials number of trials
   * @param stable true if the tolerance was reached for every output
   * @param outputs summary of each output
   */
  record Run(int trials, boolean stable, List<Distribution> outputs) {}

  Run run(Trial trial, int outputs) {
    List<double[][]> blocks = new ArrayList<>();
    List<Tails> tails = Stream.generate(Tails::new).limit(outputs).toList();
    double[][][] statistics = new double[outputs][4][mostBlocks];
    boolean stable = false;
    while (!stable && blocks.size() < mostBlocks) {
      double[][] block = block(trial, outputs);
      for (int k = 0; k < outputs; k++) {
        Distribution d = Distribution.of(block[k], coverage, tails.get(k));
        statistics[k][0][blocks.size()] = d.mean();
        statistics[k][1][blocks.size()] = d.standardUncertainty();
        statistics[k][2][blocks.size()] = d.lowQuantile();
        statistics[k][3][blocks.size()] = d.highQuantile();
      }
      blocks.add(block);
      stable = blocks.size() >= LEAST_BLOCKS && isStable(statistics, blocks.size());
    }
    double[] all = new double[blocks.size() * blockSize];
    List<Distribution> summaries = new ArrayList<>();
    for (int k = 0; k < outputs; k++) {
      for (int b = 0; b < blocks.size(); b++) {
        System.arraycopy(blocks.get(b)[k], 0, all, b * blockSize, blockSize);
      }
      summaries.add(Distribution.of(all, coverage, tails.get(k)));
    }
    return new Run(all.length, stable, summaries);
  }

  private double[][] block(Trial trial, int outputs) {
    double[][] block = new double[outputs][blockSize];
    double[] values = new double[outputs];
    for (int i = 0; i < blockSize; i++) {
      trial.run(values);
      for (int k = 0; k < outputs; k++) {
        block[k][i] = values[k];
      }
    }
    return block;
  }

  private boolean isStable(double[][][] statistics, int blocks) {
    for (double[][] output : statistics) {
      double tolerance = tolerance(mean(output[1], blocks));
      for (double[] statistic : output) {
        if (2 * deviationOfMean(statistic, blocks) >= tolerance && tolerance > 0) {
          return false;
        }
      }
    }
    return true;
  }

  /** Half a unit in the last wanted digit of a standard uncertainty: JCGM 101:2008, 7.9.2. */
  double tolerance(double standardUncertainty) {
    if (standardUncertainty <= 0) {
      return 0;
    }
    double exponent = Math.floor(Math.log10(standardUncertainty)) - (digits - 1);
    return 0.5 * Math.pow(10, exponent);
  }

  private static double mean(double[] values, int n) {
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += values[i];
    }
    return sum / n;
  }

  /** Standard deviation of the mean of the first n values. */
  private static double deviationOfMean(double[] values, int n) {
    double mean = mean(values, n);
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += (values[i] - mean) * (values[i] - mean);
    }
    return Math.sqrt(sum / (n * (n - 1.0)));
  }
}
