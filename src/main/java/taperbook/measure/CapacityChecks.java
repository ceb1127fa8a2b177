package taperbook.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.model.ConditionItem;
import taperbook.model.CrossCheck;
import taperbook.model.CrossCheck.CheckOutcome;
import taperbook.model.CrossCheck.Compared;
import taperbook.model.CrossCheck.NotPossible;
import taperbook.model.CrossCheck.Side;
import taperbook.model.Fact;
import taperbook.model.Facts;
import taperbook.model.Numbers;
import taperbook.model.RangeTest;
import taperbook.model.ReportNumber;
import taperbook.model.Unit;

/** The energy of a full battery, found by charging, by driving, and as stated. */
final class CapacityChecks {
  private static final String FITTED = "By a line through all readings while charging";

  private final Recording recording;
  private final Numbers numbers;
  private final Derived driven;

  CapacityChecks(Recording recording, Optional<RangeTest> test, Numbers numbers) {
    this.recording = recording;
    this.numbers = numbers;
    this.driven = DrivenEnergy.ofFullBattery(test);
  }

  List<CrossCheck> make() {
    List<CrossCheck> checks = new ArrayList<>();
    checks.add(
        new CrossCheck(
            "check_energy_per_soc",
            "Energy for each per cent: from first and last reading against a line through all",
            Unit.KILOWATT_HOUR_PER_PERCENT,
            perShare()));
    checks.add(
        new CrossCheck(
            "check_full_energy",
            "Energy of a full battery, by charging against by driving (charging counts what goes"
                + " in and driving what comes out, so that they differ by the battery's losses)",
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
                        "Energy of a full battery, by charging against the stated usable energy"
                            + " (charging counts what goes in, the statement what comes out)",
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
    return new Compared(side("From first and last reading", ends), side(FITTED, fitted));
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
            "Energy used in the range test over the share of charge used",
            driven.estimate().orElseThrow(),
            driven.rows()));
  }

  private CheckOutcome againstStated(Fact stated) {
    ReportNumber fitted = numbers.get("implied_full_energy_fitted");
    if (fitted.withheld().isPresent()) {
      return new NotPossible(fitted.withheld().get());
    }
    return new Compared(
        side(FITTED, fitted),
        new Side(
            "Usable energy, " + stated.howKnown().words(),
            stated.amount().orElseThrow(),
            List.of(stated.row())));
  }

  private static Side side(String label, ReportNumber number) {
    return new Side(label, number.estimate().orElseThrow(), number.origin().rows());
  }
}
