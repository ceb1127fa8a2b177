package taperbook.metric.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * A line of straight segments fitted to power over state of charge by least squares, with as many
 * segments and steps between them as the readings support. Dynamic programming over the readings
 * finds the breakpoints, then iterative linearisation moves them between readings; a step is known
 * within the gap between its adjacent readings.
 *
 * @param segments the segments from the lowest state of charge on, at least one
 * @param steps where the power jumps from one segment to the next, in the same order
 * @param counts fewest and most segments that the readings do not rule out at odds of 20 to 1
 * @param residualSumOfSquares residual sum of squares of the points, kW^2
 * @param points number of points that it was fitted to, one per step of state of charge
 * @see <a href="https://doi.org/10.1002/sim.1545">V. M. R. Muggeo, Estimating regression models
 *     with unknown break-points, Statistics in Medicine 22 (2003) 3055-3071</a>
 */
public record TaperFit(
    List<Segment> segments,
    List<Step> steps,
    Interval counts,
    double residualSumOfSquares,
    int points) {
  /** Minimum number of points: AICc requires it for one segment. */
  public static final int FEWEST_POINTS = 5;

  /** Minimum span of state of charge of a fit, %. */
  public static final double LEAST_SPAN_PERCENT = 1;

  public TaperFit {
    steps = List.copyOf(steps);
    segments = List.copyOf(segments);
  }

  /**
   * Fits a line to a session.
   *
   * @param soc state of charge, %
   * @param power power, kW
   * @return the fit, or empty if power was read at fewer than {@link #FEWEST_POINTS} different
   *     states of charge, or over less than {@link #LEAST_SPAN_PERCENT}
   */
  public static Optional<TaperFit> of(Trace soc, Trace power) {
    TaperPoints points = TaperPoints.of(soc, power);
    return points.size() < FEWEST_POINTS
            || points.lastSoc() - points.firstSoc() < LEAST_SPAN_PERCENT
        ? Optional.empty()
        : Optional.of(of(points, power.max()));
  }

  static TaperFit of(TaperPoints points, double peakKilowatts) {
    SegmentCount count = new SegmentCount(points);
    PiecewiseLine line = count.chosen();
    FitUncertainty uncertainty = new FitUncertainty(points, line);
    List<SegmentKind> kinds = Classification.of(line, points, peakKilowatts);
    List<Segment> segments = new ArrayList<>();
    for (int k = 0; k < line.segments(); k++) {
      segments.add(segment(points, line, uncertainty, kinds.get(k), k));
    }
    List<Step> steps = new ArrayList<>();
    for (int j = 0; j + 1 < line.segments(); j++) {
      if (line.isStep(j)) {
        Interval height = uncertainty.ofHeight(j, points.gap(line.at(j)));
        steps.add(
            new Step(
                j,
                joint(points, line, uncertainty, j),
                new Estimate(line.height(j), height),
                points.rowsBeside(line.at(j))));
      }
    }
    return new TaperFit(
        segments, steps, count.plausibleCounts(), line.residualSumOfSquares(), points.size());
  }

  private static Segment segment(
      TaperPoints points, PiecewiseLine line, FitUncertainty uncertainty, SegmentKind kind, int k) {
    boolean first = k == 0;
    boolean last = k == line.segments() - 1;
    Estimate from =
        first
            ? Estimate.around(points.firstSoc(), points.halfSoc())
            : joint(points, line, uncertainty, k - 1);
    Estimate to =
        last
            ? Estimate.around(points.lastSoc(), points.halfSoc())
            : joint(points, line, uncertainty, k);
    double mean = (line.power(k, from.value()) + line.power(k, to.value())) / 2;
    return new Segment(
        kind,
        from,
        to,
        Estimate.around(line.slope(k), 2 * uncertainty.ofSlope(k)),
        uncertainty.isSlopeSeen(k),
        Estimate.around(mean, 2 * uncertainty.ofMeanPower(k, from.value(), to.value())),
        rows(points, line, k));
  }

  /** Returns a breakpoint with at least the uncertainty of the state-of-charge display. */
  private static Estimate joint(
      TaperPoints points, PiecewiseLine line, FitUncertainty uncertainty, int j) {
    double at = line.at(j);
    if (line.isStep(j)) {
      Interval gap = points.gap(at);
      return new Estimate((gap.low() + gap.high()) / 2, gap);
    }
    Interval fitted = uncertainty.ofBreak(j).hull(Interval.around(at, points.halfSoc()));
    double low = Math.max(fitted.low(), Math.min(at, points.firstSoc() - points.halfSoc()));
    double high = Math.min(fitted.high(), Math.max(at, points.lastSoc() + points.halfSoc()));
    return new Estimate(at, new Interval(low, high));
  }

  /** Returns the rows of a segment; those next to a step belong to one side only. */
  private static List<RowRef> rows(TaperPoints points, PiecewiseLine line, int k) {
    double half = points.halfSoc();
    double from = k == 0 ? points.firstSoc() - half : line.at(k - 1);
    double to = k == line.segments() - 1 ? points.lastSoc() + half : line.at(k);
    return points.rows(
        k > 0 && !line.isStep(k - 1) ? from - half : from,
        k < line.segments() - 1 && !line.isStep(k) ? to + half : to);
  }

  /**
   * Classifies segments by rules of this report: a plateau changes by less than 0.3 % of the peak
   * per per cent, or by less than one step of the display from end to end; a step falls by at least
   * 3 % of the peak per per cent over at most 5 %; a rise is a warm-up climb if it begins with the
   * session or follows another warm-up climb.
   */
  private static final class Classification {
    private static final double PLATEAU_SHARE = 0.003;
    private static final double STEP_SHARE = 0.03;
    private static final double STEP_WIDTH = 5;

    private Classification() {}

    static List<SegmentKind> of(PiecewiseLine line, TaperPoints points, double peakKilowatts) {
      List<SegmentKind> kinds = new ArrayList<>();
      boolean warmingUp = true;
      for (int k = 0; k < line.segments(); k++) {
        double from = k == 0 ? points.firstSoc() : line.at(k - 1);
        double to = k == line.segments() - 1 ? points.lastSoc() : line.at(k);
        SegmentKind kind =
            of(line.slope(k), to - from, 2 * points.halfPower(), peakKilowatts, warmingUp);
        warmingUp = kind == SegmentKind.WARM_UP;
        kinds.add(kind);
      }
      return kinds;
    }

    private static SegmentKind of(
        double slope, double width, double step, double peak, boolean warmingUp) {
      boolean unseen = Math.abs(slope) * width < step;
      if (Math.abs(slope) < PLATEAU_SHARE * peak || unseen) {
        return SegmentKind.PLATEAU;
      }
      if (slope > 0) {
        return warmingUp ? SegmentKind.WARM_UP : SegmentKind.RISE;
      }
      return slope <= -STEP_SHARE * peak && width <= STEP_WIDTH
          ? SegmentKind.STEP
          : SegmentKind.TAPER;
    }
  }
}
