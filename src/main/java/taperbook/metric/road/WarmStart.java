package taperbook.metric.road;

import java.util.List;
import java.util.Optional;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.result.Outcome;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * A session without its initial climb: below the end of the climb, extrapolates the pace of the
 * stretch right after it. An inference, not a measurement.
 *
 * <pre>
 *   p = (t(w + L) - t(w)) / L,   L = max(5 %, w - q[1])      [s per %]
 * </pre>
 *
 * <p>The end of the climb is drawn uniformly from the interval of the fit.
 */
final class WarmStart {
  /**
   * Minimum width: narrower stretches give an imprecise pace if the display shows whole per cents.
   */
  private static final double LEAST_WIDTH = 5;

  private final Recording recording;
  private final Estimate climbEnd;
  private final double firstPercent;
  private final double firstSecond;
  private final double lastPercent;

  /**
   * Creates a session with a known end of the climb.
   *
   * @param climbEnd where it ends, %
   */
  WarmStart(Recording recording, Estimate climbEnd) {
    Trace soc = recording.soc().orElseThrow();
    this.recording = recording;
    this.climbEnd = climbEnd;
    this.firstPercent = soc.firstValue();
    this.firstSecond = soc.firstSecond();
    this.lastPercent = soc.lastValue();
  }

  double climbEnd() {
    return climbEnd.value();
  }

  /** Returns the width of the stretch whose pace is extrapolated, %. */
  double width() {
    return width(climbEnd.value());
  }

  private double width(double end) {
    return Math.max(LEAST_WIDTH, end - firstPercent);
  }

  /** Returns true if the session shows the pace of a warm battery right after the climb. */
  boolean hasPace() {
    return !recording.hasFewRows() && climbEnd.value() + width() <= lastPercent;
  }

  private double end(Draw draw) {
    return climbEnd.bounds().low() + draw.place() * climbEnd.bounds().width();
  }

  /** Returns the seconds per per cent right after the climb. */
  private double pace(Draw draw, double end) {
    return draw.seconds(end, end + width(end)) / width(end);
  }

  /** Returns the time from a state of charge below the end of the climb until a gain, s. */
  double seconds(Draw draw, double from, double gain) {
    double end = end(draw);
    double to = from + gain;
    if (end <= from) {
      return draw.seconds(from, to);
    }
    double pace = pace(draw, end);
    return to <= end ? pace * gain : pace * (end - from) + draw.seconds(end, to);
  }

  /** Returns the extra time of the climb compared with a warm battery, s. */
  Outcome lost() {
    return recording.measure(this::lost);
  }

  private double lost(Draw draw) {
    double end = end(draw);
    double start = draw.course().chargeAt(firstSecond);
    return draw.course().timeOfCharge(end) - firstSecond - pace(draw, end) * (end - start);
  }

  /** Returns the rows of the climb and of the stretch after it. */
  List<RowRef> rows() {
    return recording
        .between(firstPercent, Math.min(lastPercent, climbEnd.value() + width()))
        .rows();
  }

  /**
   * Returns true if the climb was certainly slower than the pace after it; otherwise a warm start
   * gives no information.
   */
  boolean isFaster() {
    return certainLoss().isPresent();
  }

  /** Returns the certain extra time of the climb, s. */
  Optional<Estimate> certainLoss() {
    return hasPace()
        ? recording.courses().estimate(this::lost).filter(e -> e.bounds().low() > 0)
        : Optional.empty();
  }
}
