package taperbook.measure.simulate;

import java.util.List;
import org.jspecify.annotations.Nullable;
import taperbook.model.DisplayRounding;
import taperbook.model.DriveEnds;
import taperbook.model.Estimate;
import taperbook.model.Facts;
import taperbook.model.Interval;
import taperbook.model.RangeItem;
import taperbook.model.RangeTest;
import taperbook.model.UncertaintySource;

/**
 * Draws range tests whose figures lie within the last digits that were written down, and whose
 * states of charge are such as the display shows, see {@link DriveEnds}.
 */
final class DriveCourse {
  private final @Nullable Interval distance;
  private final @Nullable Interval correction;
  private final @Nullable DriveEnds ends;
  private final @Nullable Interval energyUsed;
  private final @Nullable Interval displayed;
  private final double ratedKilometres;
  private double fullRange;
  private double consumption;
  private double speedShare;

  DriveCourse(RangeTest test, DisplayRounding rounding) {
    Facts<RangeItem> facts = test.facts();
    this.distance = bounds(facts, RangeItem.DISTANCE);
    this.correction = bounds(facts, RangeItem.ODOMETER_CORRECTION);
    this.ends = DriveEnds.of(facts, rounding).orElse(null);
    this.energyUsed = bounds(facts, RangeItem.ENERGY_USED);
    this.displayed = bounds(facts, RangeItem.CONSUMPTION_DISPLAYED);
    this.ratedKilometres =
        facts.amount(RangeItem.RATED_RANGE).map(Estimate::value).orElse(Double.NaN);
  }

  private static @Nullable Interval bounds(Facts<RangeItem> facts, RangeItem item) {
    return facts.amount(item).map(Estimate::bounds).orElse(null);
  }

  void draw(Draws draws) {
    double driven =
        drawn(distance, UncertaintySource.RANGE_DISTANCE, draws)
            * (correction == null ? 1 : drawn(correction, UncertaintySource.RANGE_DISTANCE, draws));
    fullRange = driven * 100 / (ends == null ? Double.NaN : used(ends, draws));
    consumption =
        energyUsed != null && distance != null
            ? drawn(energyUsed, UncertaintySource.RANGE_ENERGY, draws) * 1000 / driven
            : drawn(displayed, UncertaintySource.RANGE_ENERGY, draws);
    speedShare = draws.share(UncertaintySource.SPEED);
  }

  /** Charge used, %; the mean of all draws if the source is switched off. */
  private static double used(DriveEnds ends, Draws draws) {
    UncertaintySource source = UncertaintySource.RANGE_SOC;
    if (!draws.has(source)) {
      return ends.used().value();
    }
    List<DisplayRounding> possible = ends.rounding().possible();
    // One way for both ends, as both are read from one display.
    DisplayRounding way =
        possible.size() == 1
            ? possible.get(0)
            : possible.get((int) (possible.size() * draws.share(source)));
    double full = ends.fullShare(way);
    double start =
        full > 0 && draws.share(source) < full ? 100 : drawn(ends.starts(way), source, draws);
    return start - drawn(ends.ends(way), source, draws);
  }

  private static double drawn(@Nullable Interval figure, UncertaintySource source, Draws draws) {
    return figure == null ? Double.NaN : draws.between(source, figure.low(), figure.high());
  }

  /** Driven range of a full battery, km; NaN if not known. */
  double fullRange() {
    return fullRange;
  }

  /** Consumption, Wh/km; NaN if not known. */
  double consumption() {
    return consumption;
  }

  /**
   * A speed that is known within bounds, km/h. It need not be this drive's: all cars of a report
   * take a trip at one speed.
   */
  double speedWithin(Interval bounds) {
    return bounds.low() + speedShare * bounds.width();
  }

  /** Rated range, km; NaN if not known. */
  double ratedRange() {
    return ratedKilometres;
  }
}
