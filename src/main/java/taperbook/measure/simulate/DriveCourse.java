package taperbook.measure.simulate;

import java.util.Optional;
import taperbook.model.Estimate;
import taperbook.model.Facts;
import taperbook.model.Interval;
import taperbook.model.RangeItem;
import taperbook.model.RangeTest;
import taperbook.model.UncertaintySource;

/** Draws range tests whose figures lie within the last digits that were written down. */
final class DriveCourse {
  private final Optional<Estimate> distance;
  private final Optional<Estimate> correction;
  private final Optional<Estimate> startSoc;
  private final Optional<Estimate> endSoc;
  private final Optional<Estimate> energyUsed;
  private final Optional<Estimate> displayed;
  private final double ratedKilometres;
  private double fullRange;
  private double consumption;

  DriveCourse(RangeTest test) {
    Facts<RangeItem> facts = test.facts();
    this.distance = facts.amount(RangeItem.DISTANCE);
    this.correction = facts.amount(RangeItem.ODOMETER_CORRECTION);
    this.startSoc = facts.amount(RangeItem.START_SOC);
    this.endSoc = facts.amount(RangeItem.END_SOC);
    this.energyUsed = facts.amount(RangeItem.ENERGY_USED);
    this.displayed = facts.amount(RangeItem.CONSUMPTION_DISPLAYED);
    this.ratedKilometres =
        facts.amount(RangeItem.RATED_RANGE).map(Estimate::value).orElse(Double.NaN);
  }

  void draw(Draws draws) {
    double driven =
        drawn(distance, UncertaintySource.RANGE_DISTANCE, draws)
            * (correction.isPresent()
                ? drawn(correction, UncertaintySource.RANGE_DISTANCE, draws)
                : 1);
    double used = drawnShare(startSoc, draws) - drawnShare(endSoc, draws);
    fullRange = driven * 100 / used;
    consumption =
        energyUsed.isPresent() && distance.isPresent()
            ? drawn(energyUsed, UncertaintySource.RANGE_ENERGY, draws) * 1000 / driven
            : drawn(displayed, UncertaintySource.RANGE_ENERGY, draws);
  }

  private static double drawn(Optional<Estimate> figure, UncertaintySource source, Draws draws) {
    return figure
        .map(Estimate::bounds)
        .map(b -> draws.between(source, b.low(), b.high()))
        .orElse(Double.NaN);
  }

  /** A state of charge cannot be below empty or above full, whatever its last digit allows. */
  private static double drawnShare(Optional<Estimate> figure, Draws draws) {
    return figure
        .map(Estimate::bounds)
        .map(b -> new Interval(Math.max(0, b.low()), Math.max(0, Math.min(100, b.high()))))
        .map(b -> draws.between(UncertaintySource.RANGE_SOC, b.low(), b.high()))
        .orElse(Double.NaN);
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
