package taperbook.metric.comparison;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.session.RowRef;

/** Two power curves over the states of charge that both sessions cover. */
final class Pair {
  private final Side one;
  private final Side other;
  private final SampledPair drawn;
  private final Band band;

  /**
   * Compares two sides.
   *
   * @param window states of charge that both cover, %
   * @param runShare half the 95 % interval of a run's power beyond its readings, as a share
   */
  Pair(Side one, Side other, Interval window, double runShare) {
    this.one = one;
    this.other = other;
    double[] grid = Grid.of(window, one.curve(), other.curve());
    this.drawn = new SampledPair(one.courses(), other.courses(), grid, runShare);
    this.band = new Band(grid, drawn);
  }

  Band band() {
    return band;
  }

  /** Returns the mean over state of charge of one's power minus the other's, kW. */
  Estimate meanLead(double from, double to) {
    return drawn.meanLead(from, to);
  }

  /** Returns the mean over state of charge of one's power divided by the other's, %. */
  Estimate meanRatio(double from, double to) {
    return drawn.meanRatio(from, to);
  }

  /** Returns the time that the other takes for a stretch minus that of one, s. */
  Estimate timeGain(double from, double to) {
    return drawn.timeGain(from, to);
  }

  /** Returns the rows of both sessions that a stretch is computed from. */
  List<RowRef> rows(double from, double to) {
    List<RowRef> rows = new ArrayList<>(one.rows(from, to));
    rows.addAll(other.rows(from, to));
    return rows;
  }

  /** Returns true if a wide gap between readings of either session contains a state of charge. */
  boolean isInWideGap(double percent) {
    return one.isInWideGap(percent) || other.isInWideGap(percent);
  }

  /** The states of charge at which two curves are compared. */
  private static final class Grid {
    /** Points per per cent. */
    private static final int POINTS = 4;

    /** Maximum number of corners of a curve to add to the grid; a logger has more than needed. */
    private static final int MOST_CORNERS = 200;

    /** Points closer than this are merged, %. */
    private static final double CLOSE = 1e-6;

    private Grid() {}

    /**
     * Returns the ends of a window, each quarter of a per cent in it, and the corners of both
     * curves.
     *
     * @return states of charge, rising, %
     */
    static double[] of(Interval window, SocTimeCurve one, SocTimeCurve other) {
      int first = (int) Math.ceil(window.low() * POINTS);
      int last = (int) Math.floor(window.high() * POINTS);
      DoubleStream quarters =
          IntStream.rangeClosed(first, last).mapToDouble(i -> (double) i / POINTS);
      DoubleStream corners = DoubleStream.concat(corners(one), corners(other));
      double[] inside =
          DoubleStream.concat(quarters, corners)
              .filter(s -> window.low() + CLOSE < s && s < window.high() - CLOSE)
              .sorted()
              .toArray();
      double[] grid = new double[inside.length + 2];
      int size = 0;
      grid[size++] = window.low();
      for (double percent : inside) {
        if (percent - grid[size - 1] > CLOSE) {
          grid[size++] = percent;
        }
      }
      grid[size++] = window.high();
      return Arrays.copyOf(grid, size);
    }

    private static DoubleStream corners(SocTimeCurve curve) {
      double[] corners = curve.corners();
      return corners.length <= MOST_CORNERS ? Arrays.stream(corners) : DoubleStream.empty();
    }
  }
}
