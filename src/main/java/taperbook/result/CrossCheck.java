package taperbook.result;

import java.util.List;
import java.util.function.Function;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.session.RowRef;

/**
 * Comparison of two ways to determine the same quantity.
 *
 * @param id name of the check, such as {@code check_energy_counter}
 * @param title heading that names both sides
 * @param unit unit of both sides, a base unit
 * @param outcome the two sides, or why the check cannot be made
 */
public record CrossCheck(String id, String title, Unit unit, CheckOutcome outcome) {
  /**
   * One side of a check.
   *
   * @param label how this side was determined
   * @param estimate value and bounds
   * @param rows input rows
   */
  public record Side(String label, Estimate estimate, List<RowRef> rows) {
    /** Sorts the rows and removes duplicates. */
    public Side {
      rows = rows.stream().sorted().distinct().toList();
    }
  }

  /** The result of a check. */
  public sealed interface CheckOutcome {
    /** Applies one function to a completed check and another to an impossible one. */
    default <R> R fold(
        Function<? super Compared, ? extends R> compared,
        Function<? super NotPossible, ? extends R> notPossible) {
      return this instanceof Compared c ? compared.apply(c) : notPossible.apply((NotPossible) this);
    }
  }

  /**
   * A completed check.
   *
   * @param first the side that the report uses
   * @param second the side it is compared with
   * @param ratio possible ratios of the true second to the true first value: 1 if both are the same
   *     quantity, otherwise the range that losses between the two allow
   */
  public record Compared(Side first, Side second, Interval ratio) implements CheckOutcome {
    /** Creates a check whose two sides are the same quantity. */
    public Compared(Side first, Side second) {
      this(first, second, Interval.exactly(1));
    }

    /** Returns true if some true values in a possible ratio fit both sides. */
    public boolean agrees() {
      return first.estimate().bounds().times(ratio).overlaps(second.estimate().bounds());
    }

    /** Returns the maximum loss from the higher side to the lower one, as a share of the higher. */
    public double maxLoss() {
      return Math.max(1 - ratio.low(), 1 - 1 / ratio.high());
    }

    /** Returns the first side minus the second, with bounds. */
    public Estimate difference() {
      return first.estimate().minus(second.estimate());
    }
  }

  /**
   * A check that cannot be made.
   *
   * @param reason why, as a sentence without a full stop
   */
  public record NotPossible(String reason) implements CheckOutcome {}
}
