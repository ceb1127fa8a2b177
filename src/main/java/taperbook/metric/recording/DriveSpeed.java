package taperbook.metric.recording;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.session.Facts;
import taperbook.session.HowKnown;
import taperbook.session.RangeItem;
import taperbook.session.RowRef;

/**
 * The average speed of a drive. A car works it out of the distance by its own odometer, so that
 * what corrects the distance corrects its speed as well:
 *
 * <pre>
 *   speed = average speed * correction   if the car displayed it, else average speed
 * </pre>
 */
public final class DriveSpeed {
  private DriveSpeed() {}

  /** Average speed with its bounds, km/h; empty if it is not known. */
  public static Optional<Estimate> of(Facts<RangeItem> facts) {
    Optional<Estimate> stated = facts.amount(RangeItem.AVERAGE_SPEED);
    return isOfTheCar(facts)
        ? stated.map(speed -> correction(facts).map(speed::times).orElse(speed))
        : stated;
  }

  /** True if the speed is what the car displayed. */
  public static boolean isOfTheCar(Facts<RangeItem> facts) {
    return facts
        .known(RangeItem.AVERAGE_SPEED)
        .filter(f -> f.howKnown() == HowKnown.DISPLAYED)
        .isPresent();
  }

  /** The rows that the speed comes from. */
  public static List<RowRef> rows(Facts<RangeItem> facts) {
    return isOfTheCar(facts)
        ? RangeFigures.rows(facts, RangeItem.AVERAGE_SPEED, RangeItem.ODOMETER_CORRECTION)
        : facts.rows(RangeItem.AVERAGE_SPEED);
  }

  /** True distance over the distance read. */
  public static Optional<Estimate> correction(Facts<RangeItem> facts) {
    return facts.amount(RangeItem.ODOMETER_CORRECTION);
  }
}
