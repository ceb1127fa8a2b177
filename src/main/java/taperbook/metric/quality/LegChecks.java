package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.format.Labels;
import taperbook.metric.recording.DriveSpeed;
import taperbook.metric.recording.RangeFigures;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.CrossCheck;
import taperbook.result.CrossCheck.CheckOutcome;
import taperbook.result.CrossCheck.Compared;
import taperbook.result.CrossCheck.NotPossible;
import taperbook.result.CrossCheck.Side;
import taperbook.session.Facts;
import taperbook.session.Leg;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;

/** Checks the whole drive against the sum of its legs: energy, state of charge, and speed. */
final class LegChecks {
  private static final int SECONDS_PER_HOUR = 3600;

  private final RangeTest drive;

  LegChecks(RangeTest drive) {
    this.drive = drive;
  }

  List<CrossCheck> make() {
    return List.of(
        new CrossCheck(
            "check_legs_energy", Labels.of("check.legs_energy"), Unit.KILOWATT_HOUR, energy()),
        new CrossCheck("check_legs_charge", Labels.of("check.legs_charge"), Unit.PERCENT, charge()),
        new CrossCheck(
            "check_average_speed",
            Labels.of("check.average_speed"),
            Unit.KILOMETRE_PER_HOUR,
            speed()));
  }

  /**
   * Compares the stated speed within a whole step, because displays of speed also round down. Legs
   * use the odometer's distance, as a car's own average does; an average measured otherwise may use
   * the corrected distance.
   */
  private CheckOutcome speed() {
    Facts<RangeItem> facts = drive.facts();
    Optional<Estimate> stated = facts.amount(RangeItem.AVERAGE_SPEED);
    if (stated.isEmpty()) {
      return new NotPossible("the average speed is not known");
    }
    Estimate distance = Estimate.exactly(0);
    Estimate seconds = Estimate.exactly(0);
    for (Leg leg : drive.legs()) {
      if (leg.duration().isEmpty()) {
        return new NotPossible("the duration is not known for every leg");
      }
      distance = distance.minus(leg.distance().times(-1));
      seconds = seconds.minus(leg.duration().get().times(-1));
    }
    if (seconds.bounds().low() <= 0) {
      return new NotPossible("the legs took less time than their clock can tell");
    }
    Estimate read = distance.times(SECONDS_PER_HOUR).over(seconds);
    Estimate corrected = DriveSpeed.correction(facts).map(read::times).orElse(read);
    Estimate ofLegs =
        new Estimate(
            read.value(),
            DriveSpeed.isOfTheCar(facts) ? read.bounds() : read.bounds().hull(corrected.bounds()));
    return new Compared(
        new Side(
            Labels.of("side.speed_stated"),
            Estimate.around(stated.get().value(), stated.get().bounds().width()),
            RangeFigures.rows(facts, RangeItem.AVERAGE_SPEED)),
        new Side(Labels.of("side.legs_as_read"), ofLegs, rows()));
  }

  private CheckOutcome energy() {
    Optional<Estimate> used = drive.facts().amount(RangeItem.ENERGY_USED);
    if (used.isEmpty()) {
      return new NotPossible("the energy used is not known");
    }
    Estimate sum = Estimate.exactly(0);
    for (Leg leg : drive.legs()) {
      if (leg.energyUsed().isEmpty()) {
        return new NotPossible("the energy used is not known for every leg");
      }
      sum = sum.minus(leg.energyUsed().get().times(-1));
    }
    return new Compared(
        new Side(
            Labels.of("side.drive_energy_as_read"),
            used.get(),
            RangeFigures.rows(drive.facts(), RangeItem.ENERGY_USED)),
        new Side(Labels.of("side.legs_as_read"), sum, rows()));
  }

  private CheckOutcome charge() {
    Optional<Estimate> start = drive.facts().amount(RangeItem.START_SOC);
    Optional<Estimate> end = drive.facts().amount(RangeItem.END_SOC);
    if (start.isEmpty() || end.isEmpty()) {
      return new NotPossible("the state of charge at the start or end of the drive is not known");
    }
    Estimate sum = Estimate.exactly(0);
    for (Leg leg : drive.legs()) {
      if (leg.soc().isEmpty()) {
        return new NotPossible("the state of charge is not known for every leg");
      }
      Leg.Span span = leg.soc().get();
      sum = sum.minus(span.end().minus(span.start()));
    }
    return new Compared(
        new Side(
            Labels.of("side.drive_ends"),
            start.get().minus(end.get()),
            RangeFigures.rows(drive.facts(), RangeItem.START_SOC, RangeItem.END_SOC)),
        new Side(Labels.of("side.legs"), sum, rows()));
  }

  private List<RowRef> rows() {
    return new ArrayList<>(drive.legs().stream().map(Leg::row).toList());
  }
}
