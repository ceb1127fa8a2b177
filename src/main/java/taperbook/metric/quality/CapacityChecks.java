package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.format.Labels;
import taperbook.metric.recording.Derived;
import taperbook.metric.recording.DrivenEnergy;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.CrossCheck;
import taperbook.result.CrossCheck.CheckOutcome;
import taperbook.result.CrossCheck.Compared;
import taperbook.result.CrossCheck.NotPossible;
import taperbook.result.CrossCheck.Side;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.RangeTest;

/** Cross-checks of the energy of a full battery: by charging, by driving, and as stated. */
final class CapacityChecks {
  private static final String FITTED = Labels.of("side.by_line");

  private final Recording recording;
  private final Numbers numbers;
  private final Derived driven;
  private final Interval drivenOverCharged;

  CapacityChecks(Recording recording, Optional<RangeTest> test, Numbers numbers) {
    this.recording = recording;
    this.numbers = numbers;
    this.drivenOverCharged = Losses.drivenOverCharged(recording.session().conditions());
    this.driven = DrivenEnergy.ofFullBattery(test, recording.session().displayRounding());
  }

  List<CrossCheck> make() {
    List<CrossCheck> checks = new ArrayList<>();
    checks.add(
        new CrossCheck(
            "check_energy_per_soc",
            Labels.of("check.energy_per_soc"),
            Unit.KILOWATT_HOUR_PER_PERCENT,
            perShare()));
    checks.add(
        new CrossCheck(
            "check_full_energy",
            Labels.of("check.full_energy", Losses.percent(drivenOverCharged)),
            Unit.KILOWATT_HOUR,
            againstDrive()));
    Facts<ConditionItem> facts = recording.session().conditions();
    facts
        .known(ConditionItem.BATTERY_USABLE_ENERGY)
        .ifPresent(
            stated ->
                checks.add(
                    new CrossCheck(
                        "check_usable_energy",
                        Labels.of("check.usable_energy", Losses.percent(drivenOverCharged)),
                        Unit.KILOWATT_HOUR,
                        againstStated(stated))));
    return checks;
  }

  private CheckOutcome perShare() {
    ReportNumber ends = numbers.get("energy_per_soc");
    ReportNumber fitted = numbers.get("energy_per_soc_fitted");
    if (ends.withheld().isPresent()) {
      return new NotPossible(ends.withheld().get());
    }
    if (fitted.withheld().isPresent()) {
      return new NotPossible(fitted.withheld().get());
    }
    return new Compared(side(Labels.of("side.by_ends"), ends), side(FITTED, fitted));
  }

  private CheckOutcome againstDrive() {
    ReportNumber fitted = numbers.get("implied_full_energy_fitted");
    if (fitted.withheld().isPresent()) {
      return new NotPossible(fitted.withheld().get());
    }
    if (driven.withheld().isPresent()) {
      return new NotPossible(driven.withheld().get());
    }
    return new Compared(
        side(FITTED, fitted),
        new Side(
            Labels.of("side.drive_energy_over_share"),
            driven.estimate().orElseThrow(),
            driven.rows()),
        drivenOverCharged);
  }

  private CheckOutcome againstStated(Fact stated) {
    ReportNumber fitted = numbers.get("implied_full_energy_fitted");
    if (fitted.withheld().isPresent()) {
      return new NotPossible(fitted.withheld().get());
    }
    return new Compared(
        side(FITTED, fitted),
        new Side(
            Labels.of("side.usable_energy", stated.howKnown().words()),
            stated.amount().orElseThrow(),
            List.of(stated.row())),
        drivenOverCharged);
  }

  private static Side side(String label, ReportNumber number) {
    return new Side(label, number.estimate().orElseThrow(), number.origin().rows());
  }
}
