package taperbook.metric.recording;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.session.Facts;
import taperbook.session.HowKnown;
import taperbook.session.RangeItem;
import taperbook.session.RowRef;

/**
 * The average speed of a drive. A car computes it from its own odometer, so a correction of the
 * distance also applies to the speed:
 *
 * <pre>
 *   speed = average speed * correction   if the car displayed it, else average speed
 * </pre>
 */
public final class DriveSpeed {
  private DriveSpeed() {}

  /** Returns the average speed with its bounds, km/h; empty if unknown. */
  public static Optional<Estimate> of(Facts<RangeItem> facts) {
    Optional<Estimate> stated = facts.amount(RangeItem.AVERAGE_SPEED);
    return isOfTheCar(facts)
        ? stated.map(speed -> correction(facts).map(speed::times).orElse(speed))
        : stated;
  }

  /** Returns true if the speed is the one that the car displayed. */
  public static boolean isOfTheCar(Facts<RangeItem> facts) {
    return facts
        .known(RangeItem.AVERAGE_SPEED)
        .filter(f -> f.howKnown() == HowKnown.DISPLAYED)
        .isPresent();
  }

  /** Returns the rows that the speed is computed from. */
  public static List<RowRef> rows(Facts<RangeItem> facts) {
    return isOfTheCar(facts)
        ? RangeFigures.rows(facts, RangeItem.AVERAGE_SPEED, RangeItem.ODOMETER_CORRECTION)
        : facts.rows(RangeItem.AVERAGE_SPEED);
  }

  /** Returns the true distance divided by the distance read. */
  public static Optional<Estimate> correction(Facts<RangeItem> facts) {
    return facts.amount(RangeItem.ODOMETER_CORRECTION);
  }
}
