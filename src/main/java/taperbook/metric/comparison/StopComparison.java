package taperbook.metric.comparison;

import java.util.List;
import java.util.Optional;
import taperbook.metric.course.Courses;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Outcome;
import taperbook.result.Stretch;
import taperbook.session.RowRef;

/**
 * A later stop of a day compared with the first, at equal charge.
 *
 * @param ratio mean power divided by that of the first, %
 * @param below where its power is lower by more than the simultaneous band, %
 * @param rows rows of both
 */
public record StopComparison(Outcome ratio, List<Interval> below, List<RowRef> rows) {
  private static final double COVERAGE = 0.95;

  /** Smallest common window to compare, %. */
  private static final double LEAST_PERCENT = 1;

  public StopComparison {
    below = List.copyOf(below);
    rows = List.copyOf(rows);
  }

  /**
   * Compares a stop.
   *
   * @param stop courses of the stop
   * @param first courses of the first stop
   * @param runShare half the 95 % interval of a run's power beyond its readings, as a share
   */
  public static StopComparison of(Courses stop, Courses first, double runShare) {
    Optional<Side> one = Side.of(stop);
    Optional<Side> other = Side.of(first);
    if (one.isEmpty() || other.isEmpty()) {
      return withheld(Side.whyNot((one.isEmpty() ? stop : first).session()));
    }
    double from = Math.max(one.get().start().value(), other.get().start().value());
    double to = Math.min(one.get().end().value(), other.get().end().value());
    if (to - from < LEAST_PERCENT) {
      return withheld("the two stops share less than 1 % of state of charge");
    }
    Pair pair = new Pair(one.get(), other.get(), new Interval(from, to), runShare);
    Estimate ratio = pair.meanRatio(from, to);
    List<Interval> below =
        LeadStretches.of(pair.band()).stream()
            .filter(span -> span.order() == Stretch.Order.BEHIND)
            .map(span -> new Interval(span.from(), span.to()))
            .toList();
    return new StopComparison(new Outcome.Measured(ratio, COVERAGE), below, pair.rows(from, to));
  }

  private static StopComparison withheld(String reason) {
    return new StopComparison(new Outcome.Withheld(reason), List.of(), List.of());
  }
}
