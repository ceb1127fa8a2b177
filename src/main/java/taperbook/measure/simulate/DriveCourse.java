package taperbook.measure.simulate;

import org.jspecify.annotations.Nullable;
import taperbook.model.Estimate;
import taperbook.model.Facts;
import taperbook.model.Interval;
import taperbook.model.RangeItem;
import taperbook.model.RangeTest;
import taperbook.model.UncertaintySource;

/** Draws range tests whose figures lie within the last digits that were written down. */
final class DriveCourse {
  private final @Nullable Interval distance;
  private final @Nullable Interval correction;
  private final @Nullable Interval startSoc;
  private final @Nullable Interval endSoc;
  private final @Nullable Interval energyUsed;
  private final @Nullable Interval displayed;
  private final double ratedKilometres;
  private double fullRange;
  private double consumption;

  DriveCourse(RangeTest test) {
    Facts<RangeItem> facts = test.facts();
    this.distance = bounds(facts, RangeItem.DISTANCE);
    this.correction = bounds(facts, RangeItem.ODOMETER_CORRECTION);
    this.startSoc = share(bounds(facts, RangeItem.START_SOC));
    this.endSoc = share(bounds(facts, RangeItem.END_SOC));
    this.energyUsed = bounds(facts, RangeItem.ENERGY_USED);
    this.displayed = bounds(facts, RangeItem.CONSUMPTION_DISPLAYED);
    this.ratedKilometres =
        facts.amount(RangeItem.RATED_RANGE).map(Estimate::value).orElse(Double.NaN);
  }

  private static @Nullable Interval bounds(Facts<RangeItem> facts, RangeItem item) {
    return facts.amount(item).map(Estimate::bounds).orElse(null);
  }

  /** A state of charge cannot be below empty or above full, whatever its last digit allows. */
  private static @Nullable Interval share(@Nullable Interval bounds) {
    return bounds == null
        ? null
        : new Interval(Math.max(0, bounds.low()), Math.max(0, Math.min(100, bounds.high())));
  }

  void draw(Draws draws) {
    double driven =
        drawn(distance, UncertaintySource.RANGE_DISTANCE, draws)
            * (correction == null ? 1 : drawn(correction, UncertaintySource.RANGE_DISTANCE, draws));
    double used =
        drawn(startSoc, UncertaintySource.RANGE_SOC, draws)
            - drawn(endSoc, UncertaintySource.RANGE_SOC, draws);
    fullRange = driven * 100 / used;
    consumption =
        energyUsed != null && distance != null
            ? drawn(energyUsed, UncertaintySource.RANGE_ENERGY, draws) * 1000 / driven
            : drawn(displayed, UncertaintySource.RANGE_ENERGY, draws);
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

  /** Rated range, km; NaN if not known. */
  double ratedRange() {
    return ratedKilometres;
  }
}
