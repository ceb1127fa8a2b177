package taperbook.result;

import java.util.function.IntFunction;
import taperbook.quantity.Interval;

/**
 * A curve to draw: points in order, an uncertainty band, and a flag for each segment that spans a
 * wide gap between readings.
 *
 * <p>A final class and not a record because it contains arrays, which it copies.
 */
public final class Curve {
  /** A curve without a point. */
  public static final Curve EMPTY =
      new Curve(new double[0], new double[0], new double[0], new double[0], new boolean[0]);

  private final double[] x;
  private final double[] y;
  private final double[] low;
  private final double[] high;
  private final boolean[] wideGapAfter;

  /**
   * Copies the points.
   *
   * @param x abscissas, in the unit that {@link Curves} documents
   * @param y ordinates
   * @param low lower edge of the band at each point
   * @param high upper edge of the band at each point
   * @param wideGapAfter for each point, whether the segment to the next spans a wide gap
   * @throws IllegalArgumentException if lengths differ
   */
  public Curve(double[] x, double[] y, double[] low, double[] high, boolean[] wideGapAfter) {
    this(wideGapAfter.clone(), x.clone(), y.clone(), low.clone(), high.clone());
  }

  /**
   * A point of a curve.
   *
   * @param band the band at the point
   * @param wideGapAfter whether the segment to the next point spans a wide gap
   */
  public record Point(double x, double y, Interval band, boolean wideGapAfter) {}

  /** Creates a curve of {@code n} points. */
  public static Curve of(int n, IntFunction<Point> points) {
    double[] x = new double[n];
    double[] y = new double[n];
    double[] low = new double[n];
    double[] high = new double[n];
    boolean[] wide = new boolean[n];
    for (int i = 0; i < n; i++) {
      Point point = points.apply(i);
      x[i] = point.x();
      y[i] = point.y();
      low[i] = point.band().low();
      high[i] = point.band().high();
      wide[i] = point.wideGapAfter();
    }
    return wrap(x, y, low, high, wide);
  }

  /** As the constructor, but takes ownership of the arrays without copying them. */
  public static Curve wrap(
      double[] x, double[] y, double[] low, double[] high, boolean[] wideGapAfter) {
    return new Curve(wideGapAfter, x, y, low, high);
  }

  private Curve(boolean[] wideGapAfter, double[] x, double[] y, double[] low, double[] high) {
    if (y.length != x.length
        || low.length != x.length
        || high.length != x.length
        || wideGapAfter.length != x.length) {
      throw new IllegalArgumentException("a curve needs points of one length");
    }
    this.x = x;
    this.y = y;
    this.low = low;
    this.high = high;
    this.wideGapAfter = wideGapAfter;
  }

  /** Returns the number of points, possibly 0. */
  public int size() {
    return x.length;
  }

  /** Returns the abscissa of point {@code i}. */
  public double x(int i) {
    return x[i];
  }

  /** Returns the ordinate of point {@code i}. */
  public double y(int i) {
    return y[i];
  }

  /** Returns the lower edge of the band at point {@code i}. */
  public double low(int i) {
    return low[i];
  }

  /** Returns the upper edge of the band at point {@code i}. */
  public double high(int i) {
    return high[i];
  }

  /**
   * Returns true if the segment from point {@code i} to the next spans a wide gap between readings.
   */
  public boolean wideGapAfter(int i) {
    return wideGapAfter[i];
  }
}
