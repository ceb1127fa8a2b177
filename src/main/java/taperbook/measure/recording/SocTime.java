package taperbook.measure.recording;

import java.util.List;
import java.util.Optional;
import taperbook.measure.curve.Crossing;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.RowRef;
import taperbook.model.Trace;

/**
 * When a state of charge is reached.
 *
 * @param second the time by the piecewise-linear reading, s since plugging in
 * @param times earliest and latest time that the rounded readings allow, s; the earliest may lie
 *     before plugging in if the session began within a display step of the value
 * @param rows the rows it lies between
 */
public record SocTime(double second, Interval times, List<RowRef> rows) {

  /** When a value is reached; empty if it was not, see {@link #whyNot}. */
  public static Optional<SocTime> of(Recording recording, double percent) {
    return of(recording, percent, Interval.exactly(percent));
  }

  /**
   * When a value that is itself known within bounds is reached.
   *
   * @param percent best value, %
   * @param bounds bounds of the true value, %
   */
  public static Optional<SocTime> of(Recording recording, double percent, Interval bounds) {
    if (recording.soc().isEmpty() || recording.envelope().isEmpty()) {
      return Optional.empty();
    }
    Optional<Crossing> crossing = Crossing.first(recording.soc().get(), percent);
    Optional<Interval> times = recording.envelope().get().timesOf(bounds);
    if (crossing.isEmpty() || times.isEmpty()) {
      return Optional.empty();
    }
    double second = crossing.get().second();
    return Optional.of(new SocTime(second, times.get().hull(second), crossing.get().rows()));
  }

  /** Why {@link #of} gives nothing. */
  public static String whyNot(Recording recording, double percent) {
    if (recording.soc().isEmpty()) {
      return Recording.NO_SOC;
    }
    Trace soc = recording.soc().get();
    if (Crossing.first(soc, percent).isEmpty()) {
      return recording.whyNotReached(soc, percent);
    }
    return "the state of charge gained is not more than its display can tell";
  }

  /** The time with its bounds, none before plugging in, s. */
  public Estimate sincePluggingIn() {
    return new Estimate(second, times.atLeast(Math.min(0, second)));
  }
}
