package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.format.Labels;
import taperbook.metric.bounds.EnergyCounter;
import taperbook.metric.bounds.PowerIntegral;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.metric.session.DistanceMetrics;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.CrossCheck;
import taperbook.result.CrossCheck.CheckOutcome;
import taperbook.result.CrossCheck.Compared;
import taperbook.result.CrossCheck.NotPossible;
import taperbook.result.CrossCheck.Side;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.session.Leg;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;

/**
 * Checks each figure by a second method, within display rounding and within expected losses where
 * energy is measured before and after a lossy path.
 */
public final class CrossChecks {
  private final Recording recording;
  private final Optional<RangeTest> test;
  private final RangeFigures range;
  private final Numbers numbers;
  private final Interval drivenOverCharged;

  public CrossChecks(
      Recording recording, Optional<RangeTest> test, RangeFigures range, Numbers numbers) {
    this.recording = recording;
    this.test = test;
    this.range = range;
    this.numbers = numbers;
    this.drivenOverCharged = Losses.drivenOverCharged(recording.session().conditions());
  }

  public List<CrossCheck> make(List<WantedDistance> distances) {
    List<CrossCheck> checks = new ArrayList<>();
    checks.add(counterAgainstPower());
    for (WantedDistance distance : distances) {
      checks.add(shareAgainstConsumption(distance));
    }
    checks.add(consumptionAgainstDisplay());
    checks.addAll(new CapacityChecks(recording, test, numbers).make());
    Optional<RangeTest> byLegs = test.filter(t -> !t.legs().isEmpty());
    byLegs.ifPresent(t -> checks.add(legsAgainstDrive(t)));
    byLegs.ifPresent(t -> checks.addAll(new LegChecks(t).make()));
    return checks;
  }

  private CrossCheck counterAgainstPower() {
    return new CrossCheck(
        "check_energy_counter",
        Labels.of("check.energy_counter"),
        Unit.KILOWATT_HOUR,
        counterOutcome());
  }

  private CheckOutcome counterOutcome() {
    if (recording.counter().isEmpty() || recording.integral().isEmpty()) {
      return new NotPossible("the session did not record both energy and power");
    }
    EnergyCounter counter = recording.counter().get();
    PowerIntegral integral = recording.integral().get();
    double from = Math.max(counter.span().low(), integral.span().low());
    double to = Math.min(counter.span().high(), integral.span().high());
    if (from >= to) {
      return new NotPossible("energy and power were not read over a common time");
    }
    return new Compared(
        new Side(Labels.of("side.by_counter"), counter.between(from, to), counter.rows(from, to)),
        new Side(Labels.of("side.by_power"), integral.between(from, to), integral.rows(from, to)),
        Losses.powerOverCounter(recording.session().conditions()));
  }

  private CrossCheck shareAgainstConsumption(WantedDistance distance) {
    return new CrossCheck(
        "check_energy_for_" + distance.idPart(),
        Labels.of("check.energy_for", distance.words(), Losses.percent(drivenOverCharged)),
        Unit.KILOWATT_HOUR,
        shareOutcome(distance));
  }

  private CheckOutcome shareOutcome(WantedDistance distance) {
    Optional<Estimate> share = DistanceMetrics.share(distance, range.fullRange());
    ReportNumber perShare = numbers.get("energy_per_soc");
    Optional<Estimate> consumption = range.consumption().estimate();
    if (share.isEmpty()) {
      return new NotPossible(range.fullRange().withheld().orElseThrow());
    }
    if (perShare.estimate().isEmpty()) {
      return new NotPossible(perShare.withheld().orElseThrow());
    }
    if (consumption.isEmpty()) {
      return new NotPossible(range.consumption().withheld().orElseThrow());
    }
    List<RowRef> rows = new ArrayList<>(range.fullRange().rows());
    rows.addAll(perShare.origin().rows());
    return new Compared(
        new Side(
            Labels.of("side.by_driven_share"), share.get().times(perShare.estimate().get()), rows),
        new Side(
            Labels.of("side.by_consumption"),
            consumption.get().times(distance.kilometres() / 1000),
            range.consumption().rows()),
        drivenOverCharged);
  }

  private CrossCheck consumptionAgainstDisplay() {
    return new CrossCheck(
        "check_consumption_displayed",
        Labels.of("check.consumption_displayed"),
        Unit.WATT_HOUR_PER_KILOMETRE,
        consumptionOutcome());
  }

  private CheckOutcome consumptionOutcome() {
    if (test.isEmpty()) {
      return new NotPossible(RangeFigures.NO_TEST);
    }
    Optional<Estimate> displayed = test.get().facts().amount(RangeItem.CONSUMPTION_DISPLAYED);
    if (displayed.isEmpty()) {
      return new NotPossible("no displayed consumption was recorded");
    }
    Optional<Estimate> used = test.get().facts().amount(RangeItem.ENERGY_USED);
    Optional<Estimate> read = test.get().facts().amount(RangeItem.DISTANCE);
    if (used.isEmpty() || read.filter(d -> d.bounds().low() > 0).isEmpty()) {
      return new NotPossible("the energy used or the distance is not known");
    }
    // The car divides by its own odometer, so its figure is compared with the distance as read.
    return new Compared(
        new Side(
            Labels.of("side.energy_over_distance"),
            used.get().times(1000).over(read.get()),
            RangeFigures.rows(test.get().facts(), RangeItem.ENERGY_USED, RangeItem.DISTANCE)),
        new Side(
            Labels.of("side.as_displayed"),
            displayed.get(),
            RangeFigures.rows(test.get().facts(), RangeItem.CONSUMPTION_DISPLAYED)));
  }

  private CrossCheck legsAgainstDrive(RangeTest drive) {
    return new CrossCheck(
        "check_legs_distance",
        Labels.of("check.legs_distance"),
        Unit.KILOMETRE,
        legsOutcome(drive));
  }

  private CheckOutcome legsOutcome(RangeTest drive) {
    Optional<Estimate> read = drive.facts().amount(RangeItem.DISTANCE);
    if (read.isEmpty()) {
      return new NotPossible("the distance driven is not known");
    }
    double sum = 0;
    Interval bounds = Interval.exactly(0);
    List<RowRef> rows = new ArrayList<>();
    for (Leg leg : drive.legs()) {
      sum += leg.distance().value();
      bounds = bounds.plus(leg.distance().bounds());
      rows.add(leg.row());
    }
    return new Compared(
        new Side(
            Labels.of("side.drive_distance_as_read"),
            read.get(),
            RangeFigures.rows(drive.facts(), RangeItem.DISTANCE)),
        new Side(Labels.of("side.legs_as_read"), new Estimate(sum, bounds.hull(sum)), rows));
  }
}
