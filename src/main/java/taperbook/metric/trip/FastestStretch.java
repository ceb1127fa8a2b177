package taperbook.metric.trip;

import java.util.Optional;
import java.util.TreeSet;
import taperbook.quantity.Interval;

/**
 * The fastest stretch of a session that is so many per cent wide.
 *
 * <p>The time of a stretch, as a function of where it begins, is made of straight lines between the
 * points at which its beginning or its end meets a reading. Its least value therefore lies at one
 * of these points, and trying them all is exact.
 *
 * @param fromPercent where it begins, %
 * @param toPercent where it ends, %
 * @param seconds how long it takes, s
 */
public record FastestStretch(double fromPercent, double toPercent, double seconds) {
  /**
   * The fastest stretch; of equals the first. Empty if the session is not so wide.
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
   * The hull of the ends of all stretches of this width that take at most so much more time, %.
   *
   * @param moreSeconds how much more time, s
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

  /** Where a stretch of this width can begin so that one of its ends meets a reading, rising, %. */
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
