package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.i18n.Texts;
import taperbook.metric.recording.DrivenEnergy;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.CrossCheck;
import taperbook.result.CrossCheck.CheckOutcome;
import taperbook.result.CrossCheck.Compared;
import taperbook.result.CrossCheck.NotPossible;
import taperbook.result.CrossCheck.Side;
import taperbook.result.Numbers;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.RangeTest;

/** Cross-checks of the energy of a full battery: by charging, by driving, and as stated. */
final class CapacityChecks {
  private static final String FITTED = Texts.of("side.by_line");

  private final Recording recording;
  private final Numbers numbers;
  private final Finding<Estimate> driven;
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
            Texts.of("check.energy_per_soc"),
            Unit.KILOWATT_HOUR_PER_PERCENT,
            perShare()));
    checks.add(
        new CrossCheck(
            "check_full_energy",
            Texts.of("check.full_energy", Losses.percent(drivenOverCharged)),
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
                        Texts.of("check.usable_energy", Losses.percent(drivenOverCharged)),
                        Unit.KILOWATT_HOUR,
                        againstStated(stated))));
    return checks;
  }

  private CheckOutcome perShare() {
    return compared(
        side(Texts.of("side.by_ends"), Finding.of(numbers.get("energy_per_soc"))),
        side(FITTED, Finding.of(numbers.get("energy_per_soc_fitted"))),
        Interval.exactly(1));
  }

  private CheckOutcome againstDrive() {
    return compared(
        fitted(), side(Texts.of("side.drive_energy_over_share"), driven), drivenOverCharged);
  }

  private CheckOutcome againstStated(Fact stated) {
    return compared(
        fitted(),
        side(
            Texts.of("side.usable_energy", stated.howKnown().words()),
            Finding.of(stated.amount().orElseThrow(), List.of(stated.row()))),
        drivenOverCharged);
  }

  private Finding<Side> fitted() {
    return side(FITTED, Finding.of(numbers.get("implied_full_energy_fitted")));
  }

  static Finding<Side> side(String label, Finding<Estimate> estimate) {
    return estimate.map(e -> new Side(label, e, estimate.rows()));
  }

  /** Compares two sides, or returns the reason why one is missing. */
  static CheckOutcome compared(Finding<Side> one, Finding<Side> other, Interval ratio) {
    Finding<CheckOutcome> both = one.flatMap(a -> other.map(b -> new Compared(a, b, ratio)));
    return both.value().orElseGet(() -> new NotPossible(both.reason().orElseThrow()));
  }
}
