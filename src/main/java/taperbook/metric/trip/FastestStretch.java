package taperbook.metric.trip;

import java.util.Optional;
import java.util.TreeSet;
import taperbook.quantity.Interval;

/**
 * The fastest stretch of a session of a given width in per cent.
 *
 * <p>The time of a stretch is piecewise linear in its start, with corners where its start or its
 * end meets a reading. The minimum is at a corner, so trying all of them is exact.
 *
 * @param fromPercent where it begins, %
 * @param toPercent where it ends, %
 * @param seconds how long it takes, s
 */
public record FastestStretch(double fromPercent, double toPercent, double seconds) {
  /**
   * Finds the fastest stretch, the first of equal ones; empty if the session is narrower.
   *
   * @param clock the session
   * @param width width of the stretch, above zero, %
   * @param floorPercent least state of charge to begin at, %
   */
  public static Optional<FastestStretch> of(ChargeTimes clock, double width, double floorPercent) {
    FastestStretch best = null;
    for (double from : starts(clock, width, floorPercent)) {
      double seconds = clock.seconds(from, from + width);
      if (best == null || seconds < best.seconds) {
        best = new FastestStretch(from, from + width, seconds);
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * Returns the hull of the ends of all stretches of this width within an additional time, %.
   *
   * @param moreSeconds additional time, s
   */
  public Interval endsWithin(ChargeTimes clock, double floorPercent, double moreSeconds) {
    double width = toPercent - fromPercent;
    double most = seconds + moreSeconds;
    Interval ends = Interval.exactly(toPercent);
    double before = Double.NaN;
    double secondsBefore = Double.NaN;
    for (double from : starts(clock, width, floorPercent)) {
      double here = clock.seconds(from, from + width);
      if (here <= most) {
        ends = ends.hull(from + width);
      }
      if (!Double.isNaN(before) && (here <= most) != (secondsBefore <= most)) {
        double share = (most - secondsBefore) / (here - secondsBefore);
        ends = ends.hull(before + share * (from - before) + width);
      }
      before = from;
      secondsBefore = here;
    }
    return ends;
  }

  /**
   * Returns the starts at which an end of a stretch of this width meets a reading, ascending, %.
   */
  static TreeSet<Double> starts(ChargeTimes clock, double width, double floorPercent) {
    TreeSet<Double> starts = new TreeSet<>();
    double low = Math.max(clock.low(), floorPercent);
    double high = clock.high() - width;
    if (low > high) {
      return starts;
    }
    starts.add(low);
    starts.add(high);
    for (double mark : clock.marks()) {
      for (double from : new double[] {mark, mark - width}) {
        if (low < from && from < high) {
          starts.add(from);
        }
      }
    }
    return starts;
  }
}
