package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.bounds.EnergyCounter;
import taperbook.metric.bounds.PowerIntegral;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
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
        Texts.of("check.energy_counter"),
        Unit.KILOWATT_HOUR,
        counterOutcome());
  }

  private CheckOutcome counterOutcome() {
    if (recording.counter().isEmpty() || recording.integral().isEmpty()) {
      return new NotPossible(Message.of("metric.cross_checks.session_did_not_record_both"));
    }
    EnergyCounter counter = recording.counter().get();
    PowerIntegral integral = recording.integral().get();
    double from = Math.max(counter.span().low(), integral.span().low());
    double to = Math.min(counter.span().high(), integral.span().high());
    if (from >= to) {
      return new NotPossible(Message.of("metric.cross_checks.energy_and_power_were_not"));
    }
    return new Compared(
        new Side(Texts.of("side.by_counter"), counter.between(from, to), counter.rows(from, to)),
        new Side(Texts.of("side.by_power"), integral.between(from, to), integral.rows(from, to)),
        Losses.powerOverCounter(recording.session().conditions()));
  }

  private CrossCheck shareAgainstConsumption(WantedDistance distance) {
    return new CrossCheck(
        "check_energy_for_" + distance.idPart(),
        Texts.of("check.energy_for", distance.words(), Losses.percent(drivenOverCharged)),
        Unit.KILOWATT_HOUR,
        shareOutcome(distance));
  }

  private CheckOutcome shareOutcome(WantedDistance distance) {
    return CapacityChecks.compared(
        CapacityChecks.side(
            Texts.of("side.by_driven_share"),
            range
                .share(distance)
                .flatMap(share -> Finding.of(numbers.get("energy_per_soc")).map(share::times))),
        CapacityChecks.side(
            Texts.of("side.by_consumption"),
            range.consumption().map(c -> c.times(distance.kilometres() / 1000))),
        drivenOverCharged);
  }

  private CrossCheck consumptionAgainstDisplay() {
    return new CrossCheck(
        "check_consumption_displayed",
        Texts.of("check.consumption_displayed"),
        Unit.WATT_HOUR_PER_KILOMETRE,
        consumptionOutcome());
  }

  private CheckOutcome consumptionOutcome() {
    if (test.isEmpty()) {
      return new NotPossible(RangeFigures.NO_TEST);
    }
    Optional<Estimate> displayed = test.get().facts().amount(RangeItem.CONSUMPTION_DISPLAYED);
    if (displayed.isEmpty()) {
      return new NotPossible(
          Message.of("metric.cross_checks.no_displayed_consumption_was_recorded"));
    }
    Optional<Estimate> used = test.get().facts().amount(RangeItem.ENERGY_USED);
    Optional<Estimate> read = test.get().facts().amount(RangeItem.DISTANCE);
    if (used.isEmpty() || read.filter(d -> d.bounds().low() > 0).isEmpty()) {
      return new NotPossible(Message.of("metric.cross_checks.energy_used_or_distance_is"));
    }
    // The car divides by its own odometer, so its figure is compared with the distance as read.
    return new Compared(
        new Side(
            Texts.of("side.energy_over_distance"),
            used.get().times(1000).over(read.get()),
            RangeFigures.rows(test.get().facts(), RangeItem.ENERGY_USED, RangeItem.DISTANCE)),
        new Side(
            Texts.of("side.as_displayed"),
            displayed.get(),
            RangeFigures.rows(test.get().facts(), RangeItem.CONSUMPTION_DISPLAYED)));
  }

  private CrossCheck legsAgainstDrive(RangeTest drive) {
    return new CrossCheck(
        "check_legs_distance", Texts.of("check.legs_distance"), Unit.KILOMETRE, legsOutcome(drive));
  }

  private CheckOutcome legsOutcome(RangeTest drive) {
    Optional<Estimate> read = drive.facts().amount(RangeItem.DISTANCE);
    if (read.isEmpty()) {
      return new NotPossible(Message.of("metric.common.distance_driven_is_not_known"));
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
            Texts.of("side.drive_distance_as_read"),
            read.get(),
            RangeFigures.rows(drive.facts(), RangeItem.DISTANCE)),
        new Side(Texts.of("side.legs_as_read"), new Estimate(sum, bounds.hull(sum)), rows));
  }
}
