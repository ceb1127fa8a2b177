package taperbook.metric.comparison;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import taperbook.quantity.Interval;

/** The states of charge at which two curves are compared. */
final class Grid {
  /** Points per per cent. */
  private static final int POINTS = 4;

  /** Maximum number of corners of a curve to add to the grid; a logger has more than needed. */
  private static final int MOST_CORNERS = 200;

  /** Points closer than this are merged, %. */
  private static final double CLOSE = 1e-6;

  private Grid() {}

  /**
   * Returns the ends of a window, each quarter of a per cent in it, and the corners of both curves.
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
