package taperbook.measure.montecarlo;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The adaptive Monte Carlo procedure of JCGM 101:2008, 7.9: blocks of 10 000 trials until twice the
 * standard deviation of the block means of estimate, standard uncertainty and both interval ends is
 * below the numerical tolerance, which is half a unit of the last of the wanted significant digits
 * of the standard uncertainty (7.9.2).
 *
 * <p>All outputs share their trials, so that they stay numbers of one drawn session; each leaves
 * when it is stable itself.
 */
public final class MonteCarlo {
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
  public MonteCarlo(int digits, double coverage, int mostBlocks) {
    this(BLOCK, digits, coverage, mostBlocks);
  }

  /** A procedure whose blocks are smaller or larger than the guide's. */
  public MonteCarlo(int blockSize, int digits, double coverage, int mostBlocks) {
    this.blockSize = blockSize;
    this.digits = digits;
    this.coverage = coverage;
    this.mostBlocks = Math.max(LEAST_BLOCKS, mostBlocks);
  }

  /** One trial of some outputs. */
  public interface Trial {
    /**
     * Fills in the values of the outputs that are still open.
     *
     * @param outputs a value for each output
     * @param open places of those that are asked for
     */
    void run(double[] outputs, int[] open);
  }

  /**
   * What came of one output.
   *
   * @param trials number of trials
   * @param stable true if the tolerance was reached
   * @param distribution summary of the trials
   */
  public record Result(int trials, boolean stable, Distribution distribution) {}

  /** Runs trials until all outputs are stable, and gives the result of each. */
  public List<Result> run(Trial trial, int outputs) {
    List<OutputRun> runs = Stream.generate(() -> new OutputRun(coverage)).limit(outputs).toList();
    int[] open = IntStream.range(0, outputs).toArray();
    for (int block = 0; block < mostBlocks && open.length > 0; block++) {
      addBlock(trial, runs, open);
      open = IntStream.of(open).filter(k -> !isStable(runs.get(k))).toArray();
    }
    return runs.stream().map(this::result).toList();
  }

  private Result result(OutputRun run) {
    return new Result(run.blocks() * blockSize, isStable(run), run.whole());
  }

  private void addBlock(Trial trial, List<OutputRun> runs, int[] open) {
    double[][] block = new double[open.length][blockSize];
    double[] values = new double[runs.size()];
    for (int i = 0; i < blockSize; i++) {
      trial.run(values, open);
      for (int k = 0; k < open.length; k++) {
        block[k][i] = values[open[k]];
      }
    }
    for (int k = 0; k < open.length; k++) {
      runs.get(open[k]).add(block[k]);
    }
  }

  private boolean isStable(OutputRun run) {
    if (run.blocks() < LEAST_BLOCKS) {
      return false;
    }
    double tolerance = tolerance(run.standardUncertainty());
    boolean wanting = tolerance > 0 && 2 * run.deviationOfMeans() >= tolerance;
    return !wanting;
  }

  /** Half a unit in the last wanted digit of a standard uncertainty: JCGM 101:2008, 7.9.2. */
  double tolerance(double standardUncertainty) {
    if (standardUncertainty <= 0) {
      return 0;
    }
    double exponent = Math.floor(Math.log10(standardUncertainty)) - (digits - 1);
    return 0.5 * Math.pow(10, exponent);
  }
}
