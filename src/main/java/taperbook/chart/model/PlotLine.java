package taperbook.chart.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import taperbook.result.Curve;

/** A curve in the units of its axes, with the queries that a chart needs. */
public final class PlotLine {
  /** Lines with more readings are drawn without dots, which would overlap. */
  static final int MOST_DOTS = 80;

  private final Curve curve;
  private final DoubleUnaryOperator toX;
  private final DoubleUnaryOperator toY;
  private final double floor;
  private final boolean computed;
  private final Optional<PlotLine> band;

  /**
   * Creates a non-negative curve with its conversions.
   *
   * @param curve at least one point
   * @param toX from the curve's abscissa to the axis, increasing
   * @param toY from the curve's ordinate to the axis, increasing
   */
  public PlotLine(Curve curve, DoubleUnaryOperator toX, DoubleUnaryOperator toY) {
    this(curve, toX, toY, 0, false, Optional.empty());
  }

  private PlotLine(
      Curve curve,
      DoubleUnaryOperator toX,
      DoubleUnaryOperator toY,
      double floor,
      boolean computed,
      Optional<PlotLine> band) {
    this.curve = curve;
    this.toX = toX;
    this.toY = toY;
    this.floor = floor;
    this.computed = computed;
    this.band = band;
  }

  /**
   * Creates a computed curve of either sign. Its band also holds between readings, so it is drawn
   * over wide gaps.
   */
  public static PlotLine signed(Curve curve) {
    return new PlotLine(curve, x -> x, y -> y, Double.NEGATIVE_INFINITY, true, Optional.empty());
  }

  /** Creates a curve whose points are computed rather than read; drawn without dots. */
  public static PlotLine computed(Curve curve, DoubleUnaryOperator toX, DoubleUnaryOperator toY) {
    return new PlotLine(curve, toX, toY, 0, true, Optional.empty());
  }

  /** Returns this line with a band from another curve. */
  public PlotLine within(PlotLine other) {
    return new PlotLine(curve, toX, toY, floor, computed, Optional.of(other));
  }

  /** Returns the line whose low and high values are the band: this one unless another was given. */
  public PlotLine band() {
    return band.orElse(this);
  }

  /** Returns true if the band has 95 % coverage, rather than being that of individual readings. */
  boolean hasOwnBand() {
    return band.isPresent();
  }

  boolean isComputed() {
    return computed;
  }

  public int size() {
    return curve.size();
  }

  public double x(int i) {
    return toX.applyAsDouble(curve.x(i));
  }

  public double y(int i) {
    return toY.applyAsDouble(curve.y(i));
  }

  public double low(int i) {
    return Math.max(floor, toY.applyAsDouble(curve.low(i)));
  }

  public double high(int i) {
    return toY.applyAsDouble(curve.high(i));
  }

  public double lastX() {
    return x(size() - 1);
  }

  /** Returns the greatest ordinate, band included; zero if none is above it. */
  public double top() {
    double top = band.map(PlotLine::top).orElse(0.0);
    for (int i = 0; i < size(); i++) {
      top = Math.max(top, Math.max(y(i), high(i)));
    }
    return top;
  }

  /** Returns the least ordinate, band included; zero if none is below it. */
  public double bottom() {
    double bottom = 0;
    for (int i = 0; i < size(); i++) {
      bottom = Math.min(bottom, Math.min(y(i), low(i)));
    }
    return bottom;
  }

  /** Returns the index of the first highest point. */
  public int peak() {
    int peak = 0;
    for (int i = 1; i < size(); i++) {
      if (y(i) > y(peak)) {
        peak = i;
      }
    }
    return peak;
  }

  boolean hasDots() {
    return size() <= MOST_DOTS && !computed;
  }

  /**
   * Returns the indices of points with a minimum distance on the axis, including both ends; all for
   * 0.
   *
   * @param apart minimum distance, not negative
   */
  List<Integer> every(double apart) {
    List<Integer> indices = new ArrayList<>(List.of(0));
    int last = size() - 1;
    for (int i = 1; i <= last; i++) {
      boolean far = x(i) - x(indices.get(indices.size() - 1)) >= apart;
      if (i == last || (far && lastX() - x(i) >= apart)) {
        indices.add(i);
      }
    }
    return indices;
  }

  double width(int i) {
    return high(i) - low(i);
  }

  /** Returns the maximum width of the band; a band of readings is not defined over wide gaps. */
  double widestBand() {
    double widest = 0;
    for (int i = 0; i + 1 < size(); i++) {
      if (!computed && curve.wideGapAfter(i)) {
        continue;
      }
      widest = Math.max(widest, width(i));
    }
    return widest;
  }

  /** Returns the number of wide gaps. */
  public int wideGaps() {
    int gaps = 0;
    for (int i = 0; i + 1 < size(); i++) {
      gaps += curve.wideGapAfter(i) ? 1 : 0;
    }
    return gaps;
  }

  boolean wideGapAfter(int i) {
    return curve.wideGapAfter(i);
  }

  /** Returns the line's ordinate where it first reaches an abscissa; empty beyond its ends. */
  public OptionalDouble yAt(double abscissa) {
    for (int i = 0; i < size(); i++) {
      if (x(i) == abscissa) {
        return OptionalDouble.of(y(i));
      }
      if (i > 0 && x(i - 1) < abscissa && abscissa < x(i)) {
        double share = (abscissa - x(i - 1)) / (x(i) - x(i - 1));
        return OptionalDouble.of(y(i - 1) + share * (y(i) - y(i - 1)));
      }
    }
    return OptionalDouble.empty();
  }

  /** Returns the stretches over which the band is drawn. */
  public List<Run> bandRuns() {
    return computed ? List.of(new Run(0, size() - 1)) : runs();
  }

  /** Returns the indices of the points of a stretch that the edges of the band need. */
  public List<Integer> bandPoints(Run run, PlotArea area, double tolerance) {
    return computed
        ? IntStream.rangeClosed(run.first(), run.last()).boxed().toList()
        : LineThinning.keep(this, run, area, tolerance);
  }

  /**
   * Returns the stretches of the line between wide gaps, as first and last index; some have one
   * point.
   */
  public List<Run> runs() {
    List<Run> runs = new ArrayList<>();
    int first = 0;
    for (int i = 0; i < size(); i++) {
      if (i == size() - 1 || curve.wideGapAfter(i)) {
        runs.add(new Run(first, i));
        first = i + 1;
      }
    }
    return runs;
  }

  /**
   * A stretch of the line.
   *
   * @param first index of its first point
   * @param last index of its last point
   */
  public record Run(int first, int last) {}
}
