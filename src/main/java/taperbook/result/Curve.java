package taperbook.result;

/**
 * A curve to draw: points in order, a band that holds the truth, and which joins between
 * neighbouring points span a wide gap.
 *
 * <p>A final class and not a record because it keeps arrays, which it copies in.
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
   * @param x abscissae, in the unit that the curve's place in {@link Curves} names
   * @param y ordinates
   * @param low lower edge of the band at each point
   * @param high upper edge of the band at each point
   * @param wideGapAfter for each point, whether the join to the next spans a wide gap
   * @throws IllegalArgumentException if lengths differ
   */
  public Curve(double[] x, double[] y, double[] low, double[] high, boolean[] wideGapAfter) {
    this(wideGapAfter.clone(), x.clone(), y.clone(), low.clone(), high.clone());
  }

  /** As the constructor, with arrays that nobody else has, so that they need not be copied. */
  public static Curve taking(
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

  /** Number of points, perhaps 0. */
  public int size() {
    return x.length;
  }

  /** Abscissa of point {@code i}. */
  public double x(int i) {
    return x[i];
  }

  /** Ordinate of point {@code i}. */
  public double y(int i) {
    return y[i];
  }

  /** Lower edge of the band at point {@code i}. */
  public double low(int i) {
    return low[i];
  }

  /** Upper edge of the band at point {@code i}. */
  public double high(int i) {
    return high[i];
  }

  /** True if the join from point {@code i} to the next spans a wide gap between readings. */
  public boolean wideGapAfter(int i) {
    return wideGapAfter[i];
  }
}
