package taperbook.metric.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.quantity.DistinctNumbers;
import taperbook.session.Trace;

/**
 * Time nodes of the course of a logged session. Half of them follow the time and half the variation
 * of the power, so that cells are short where the power changes quickly: evenly spaced, three times
 * as many describe a ramp or a step less well.
 */
final class LogNodes {
  /** Maximum number of intervals at whose ends nodes are placed. */
  private static final int INTERVALS = 960;

  private final double first;
  private final double length;
  private final int intervals;

  private LogNodes(DistinctNumbers rows) {
    this.first = rows.lowest();
    this.length = rows.highest() - first;
    this.intervals = Math.min(INTERVALS, rows.size() - 1);
  }

  /**
   * Returns the nodes.
   *
   * @param rows times of all rows, s
   * @param power readings of power, kW, if there are any; otherwise nodes are evenly spaced
   * @param cells maximum number of cells
   * @return ascending times from the first row to the last, s
   */
  static double[] of(DistinctNumbers rows, Optional<Trace> power, int cells) {
    LogNodes nodes = new LogNodes(rows);
    return nodes.at(nodes.shares(power.map(nodes::variation)), cells);
  }

  /** Returns the share of nodes that belongs to each interval. */
  private double[] shares(Optional<double[]> variation) {
    double total = 0;
    for (double v : variation.orElse(new double[0])) {
      total += v;
    }
    double[] shares = new double[intervals];
    for (int i = 0; i < intervals; i++) {
      double even = 1.0 / intervals;
      shares[i] = total > 0 ? (even + variation.get()[i] / total) / 2 : even;
    }
    return shares;
  }

  /** Returns the changes of mean power before and after each interval that has readings, kW. */
  private double[] variation(Trace power) {
    double[] sums = new double[intervals];
    int[] counts = new int[intervals];
    for (int i = 0; i < power.size(); i++) {
      int at = (int) ((power.second(i) - first) / length * intervals);
      int interval = Math.min(intervals - 1, at);
      sums[interval] += power.value(i);
      counts[interval]++;
    }
    double[] variation = new double[intervals];
    int last = -1;
    for (int i = 0; i < intervals; i++) {
      if (counts[i] == 0) {
        continue;
      }
      if (last >= 0) {
        double change = Math.abs(sums[i] / counts[i] - sums[last] / counts[last]);
        variation[last] += change;
        variation[i] += change;
      }
      last = i;
    }
    return variation;
  }

  /** Places a node where the sum of the shares passes each whole cell. */
  private double[] at(double[] shares, int cells) {
    List<Double> nodes = new ArrayList<>(List.of(first));
    double sum = 0;
    int passed = 0;
    for (int i = 0; i < intervals; i++) {
      sum += shares[i] * cells;
      // Sums of shares are subject to rounding.
      int whole = (int) (sum + 1e-9);
      if (whole > passed && i + 1 < intervals) {
        nodes.add(first + length * (i + 1) / intervals);
        passed = whole;
      }
    }
    nodes.add(first + length);
    return nodes.stream().mapToDouble(x -> x).toArray();
  }
}
