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
 * A session without the climb that it began with: below the end of the climb the pace of the
 * stretch right after it is carried on. An inference: no session shows it.
 *
 * <pre>
 *   p = (t(w + L) - t(w)) / L,   L = max(5 %, w - q[1])      [s for each %]
 * </pre>
 *
 * <p>The end of the climb is drawn anywhere in the interval that the fit gives.
 */
final class WarmStart {
  /** Narrower stretches tell a pace too badly where the display shows whole per cents. */
  private static final double LEAST_WIDTH = 5;

  private final Recording recording;
  private final Estimate climbEnd;
  private final double firstPercent;
  private final double firstSecond;
  private final double lastPercent;

  /**
   * A session whose climb ends somewhere.
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

  /** Width of the stretch whose pace is carried on, %. */
  double width() {
    return width(climbEnd.value());
  }

  private double width(double end) {
    return Math.max(LEAST_WIDTH, end - firstPercent);
  }

  /** True if the session shows the pace of a warm battery, right after the climb. */
  boolean hasPace() {
    return !recording.hasFewRows() && climbEnd.value() + width() <= lastPercent;
  }

  private double end(Draw drawn) {
    return climbEnd.bounds().low() + drawn.place() * climbEnd.bounds().width();
  }

  /** Seconds for each per cent right after the climb. */
  private double pace(Draw drawn, double end) {
    return drawn.seconds(end, end + width(end)) / width(end);
  }

  /** Time from a state of charge below the end of the climb until a gain, s. */
  double seconds(Draw drawn, double from, double gain) {
    double end = end(drawn);
    double to = from + gain;
    if (end <= from) {
      return drawn.seconds(from, to);
    }
    double pace = pace(drawn, end);
    return to <= end ? pace * gain : pace * (end - from) + drawn.seconds(end, to);
  }

  /** Time that the climb took more than a warm battery would have, s. */
  Outcome lost() {
    return recording.measure(
        d -> {
          double end = end(d);
          double start = d.course().chargeAt(firstSecond);
          return d.course().timeOfCharge(end) - firstSecond - pace(d, end) * (end - start);
        });
  }

  /** The rows of the climb and of the stretch after it. */
  List<RowRef> rows() {
    return recording
        .rowsBetween(firstPercent, Math.min(lastPercent, climbEnd.value() + width()))
        .orElse(List.of());
  }

  /**
   * True if the climb surely took longer than the pace after it: else a warm start tells nothing.
   */
  boolean isFaster() {
    return surelyLost().isPresent();
  }

  /** What the climb surely cost, s. */
  Optional<Estimate> surelyLost() {
    return hasPace()
        ? lost().estimateIfMeasured().filter(e -> e.bounds().low() > 0)
        : Optional.empty();
  }
}
