package taperbook.metric.course;

import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.session.DisplayRounding;
import taperbook.session.DriveEnds;
import taperbook.session.Facts;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;

/**
 * The figures of one drive, with bounds of its independent errors only: the odometer correction
 * counts as exact, as its error is common to all drives.
 *
 * @param facts its record
 * @param ends charge at its start and end, if known
 */
public record DriveFigures(Facts<RangeItem> facts, Optional<DriveEnds> ends) {
  /** Computes the figures of a drive, given the display rounding of its car. */
  public static DriveFigures of(RangeTest test, DisplayRounding rounding) {
    return new DriveFigures(test.facts(), DriveEnds.of(test.facts(), rounding));
  }

  /** Returns the consumption, Wh/km: energy used over distance, or else as displayed. */
  public Optional<Estimate> consumption() {
    Optional<Estimate> distance = distance();
    Optional<Estimate> energy = facts.amount(RangeItem.ENERGY_USED);
    return energy.isPresent() && distance.isPresent()
        ? energy.map(e -> e.times(1000).over(distance.get()))
        : facts.amount(RangeItem.CONSUMPTION_DISPLAYED);
  }

  /** Returns the charge per kilometre, %/km. */
  public Optional<Estimate> chargePerKilometre() {
    return ends.map(DriveEnds::used)
        .filter(used -> used.bounds().low() > 0)
        .flatMap(used -> distance().map(used::over));
  }

  /** Returns the range of a full battery, km. */
  public Optional<Estimate> fullRange() {
    return chargePerKilometre().map(Estimate.exactly(100)::over);
  }

  /** Returns the average speed, km/h. */
  public Optional<Estimate> speed(boolean isOfTheCar) {
    return facts.amount(RangeItem.AVERAGE_SPEED).map(s -> isOfTheCar ? s.times(correction()) : s);
  }

  private Optional<Estimate> distance() {
    return facts
        .amount(RangeItem.DISTANCE)
        .map(d -> d.times(correction()))
        .filter(d -> d.bounds().low() > 0);
  }

  private double correction() {
    return facts.amount(RangeItem.ODOMETER_CORRECTION).map(Estimate::value).orElse(1.0);
  }
}
