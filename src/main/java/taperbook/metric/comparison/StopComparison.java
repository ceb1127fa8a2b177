package taperbook.metric.comparison;

import java.util.List;
import taperbook.i18n.Message;
import taperbook.metric.course.Courses;
import taperbook.metric.recording.Finding;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Stretch;

/**
 * A later stop of a day compared with the first, at equal charge.
 *
 * @param ratio mean power divided by that of the first, %
 * @param below where its power is lower by more than the simultaneous band, %
 */
public record StopComparison(Estimate ratio, List<Interval> below) {
  /** Smallest common window to compare, %. */
  private static final double LEAST_PERCENT = 1;

  public StopComparison {
    below = List.copyOf(below);
  }

  /**
   * Compares a stop.
   *
   * @param stop courses of the stop
   * @param first courses of the first stop
   * @param runShare half the 95 % interval of a run's power beyond its readings, as a share
   */
  public static Finding<StopComparison> of(Courses stop, Courses first, double runShare) {
    return Side.of(stop).flatMap(one -> Side.of(first).flatMap(other -> of(one, other, runShare)));
  }

  private static Finding<StopComparison> of(Side one, Side other, double runShare) {
    double from = Math.max(one.start().value(), other.start().value());
    double to = Math.min(one.end().value(), other.end().value());
    if (to - from < LEAST_PERCENT) {
      return Finding.missing(Message.of("metric.stop_comparison.two_stops_share_less_than"));
    }
    Pair pair = new Pair(one, other, new Interval(from, to), runShare);
    List<Interval> below =
        LeadStretches.of(pair.band()).stream()
            .filter(span -> span.order() == Stretch.Order.BEHIND)
            .map(span -> new Interval(span.from(), span.to()))
            .toList();
    return Finding.of(new StopComparison(pair.meanRatio(from, to), below), pair.rows(from, to));
  }
}
