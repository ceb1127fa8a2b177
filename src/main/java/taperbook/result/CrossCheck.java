package taperbook.result;

import java.util.List;
import java.util.function.Function;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.session.RowRef;

/**
 * The same quantity found in two ways, and whether the two agree.
 *
 * @param id name of the check, such as {@code check_energy_counter}
 * @param title what is held against what, as a heading
 * @param unit unit of both sides, a base unit
 * @param outcome the two sides, or why the check cannot be made
 */
public record CrossCheck(String id, String title, Unit unit, CheckOutcome outcome) {
  /**
   * One side of a check.
   *
   * @param label how this side was found
   * @param estimate value and bounds
   * @param rows rows it came from
   */
  public record Side(String label, Estimate estimate, List<RowRef> rows) {
    /** Sorts the rows and drops repeats. */
    public Side {
      rows = rows.stream().sorted().distinct().toList();
    }
  }

  /** What came of a check. */
  public sealed interface CheckOutcome {
    /** Does one thing with a check that was made and another with one that was not. */
    default <R> R fold(
        Function<? super Compared, ? extends R> compared,
        Function<? super NotPossible, ? extends R> notPossible) {
      return this instanceof Compared c ? compared.apply(c) : notPossible.apply((NotPossible) this);
    }
  }

  /**
   * A check that was made.
   *
   * @param first the side that the report uses
   * @param second the side it is held against
   * @param ratio what the true second over the true first may be: 1 where both are the same
   *     quantity, else what losses between the two allow
   */
  public record Compared(Side first, Side second, Interval ratio) implements CheckOutcome {
    /** A check of two sides that are the same quantity. */
    public Compared(Side first, Side second) {
      this(first, second, Interval.exactly(1));
    }

    /** True if some true values in a possible ratio fit both sides. */
    public boolean agrees() {
      return first.estimate().bounds().times(ratio).overlaps(second.estimate().bounds());
    }

    /** Most that may be lost from the higher side to the lower one, as a share of the higher. */
    public double mostLost() {
      return Math.max(1 - ratio.low(), 1 - 1 / ratio.high());
    }

    /** First less second, with bounds. */
    public Estimate difference() {
      return first.estimate().minus(second.estimate());
    }
  }

  /**
   * A check that cannot be made.
   *
   * @param reason why, as a sentence without its full stop
   */
  public record NotPossible(String reason) implements CheckOutcome {}
}
