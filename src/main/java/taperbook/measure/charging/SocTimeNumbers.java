package taperbook.measure.charging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.measure.curve.EnergyOverTime;
import taperbook.measure.curve.Envelope;
import taperbook.measure.curve.PowerBounds;
import taperbook.measure.ledger.Entry;
import taperbook.measure.ledger.Ledger;
import taperbook.measure.ledger.Scope;
import taperbook.measure.recording.RangeFigures;
import taperbook.measure.recording.Recording;
import taperbook.measure.recording.SocTime;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.Method;
import taperbook.model.RowRef;
import taperbook.model.Trace;
import taperbook.model.Unit;
import taperbook.words.Labels;

/** The minutes to each mark of state of charge, with the energy, power and distance there. */
public final class SocTimeNumbers {
  private final Recording recording;
  private final RangeFigures range;
  private final Ledger ledger;

  public SocTimeNumbers(Recording recording, RangeFigures range, Ledger ledger) {
    this.recording = recording;
    this.range = range;
    this.ledger = ledger;
  }

  public void measure(List<Integer> marks) {
    for (int mark : marks) {
      measure(mark);
    }
  }

  private void measure(int mark) {
    Optional<SocTime> reached = SocTime.of(recording, mark);
    Entry time =
        Entry.charging(
            "time_to_soc_" + mark,
            Labels.of("number.time_to_soc", mark),
            Unit.SECOND,
            Method.SOC_CROSSING);
    if (reached.isEmpty()) {
      String why = SocTime.whyNot(recording, mark);
      ledger.withheld(time, why);
      ledger.withheld(energyEntry(mark), why);
      ledger.withheld(powerEntry(mark), why);
      ledger.withheld(distanceEntry(mark), why);
      return;
    }
    SocTime at = reached.get();
    ledger.measured(time, at.sincePluggingIn(), at.rows());
    energy(mark, at);
    power(mark, at);
    distance(mark, at);
  }

  private static Entry energyEntry(int mark) {
    return Entry.charging(
        "energy_to_soc_" + mark,
        Labels.of("number.energy_to_soc", mark),
        Unit.KILOWATT_HOUR,
        Method.INTERPOLATION);
  }

  private static Entry powerEntry(int mark) {
    return Entry.charging(
        "power_at_soc_" + mark,
        Labels.of("number.power_at_soc", mark),
        Unit.KILOWATT,
        Method.INTERPOLATION);
  }

  private Entry distanceEntry(int mark) {
    return new Entry(
        "distance_to_soc_" + mark,
        Labels.of("number.distance_to_soc", mark),
        Unit.KILOMETRE,
        Method.SOC_SHARE,
        range.chosenBasis(),
        Scope.ROAD);
  }

  private void energy(int mark, SocTime at) {
    Optional<EnergyOverTime> source = recording.energyOver(at.second(), at.second());
    if (source.isEmpty()) {
      ledger.withheld(energyEntry(mark), recording.whyNoEnergy());
      return;
    }
    EnergyOverTime energy = source.get();
    double start = energy.span().low();
    double low = energy.between(start, energy.clamp(at.times().low())).bounds().low();
    double high = energy.between(start, energy.clamp(at.times().high())).bounds().high();
    Estimate value = energy.between(start, at.second());
    List<RowRef> rows = new ArrayList<>(at.rows());
    rows.addAll(energy.rows(start, at.second()));
    ledger.measured(
        energyEntry(mark),
        new Estimate(value.value(), new Interval(low, high).hull(value.value())),
        rows);
  }

  private void power(int mark, SocTime at) {
    Optional<Trace> power =
        recording
            .power()
            .filter(p -> p.firstSecond() <= at.second() && at.second() <= p.lastSecond());
    if (power.isEmpty()) {
      ledger.withheld(
          powerEntry(mark),
          recording.power().isEmpty() ? Recording.NO_POWER : "no power was read there");
      return;
    }
    double value = power.get().at(at.second());
    Interval bounds =
        new PowerBounds(power.get()).over(at.times().low(), at.times().high()).hull(value);
    ledger.measured(powerEntry(mark), new Estimate(value, bounds), at.rows());
  }

  private void distance(int mark, SocTime at) {
    if (range.chosenRange().withheld().isPresent()) {
      ledger.withheld(distanceEntry(mark), range.chosenRange().withheld().get());
      return;
    }
    Trace soc = recording.soc().orElseThrow();
    Envelope envelope = recording.envelope().orElseThrow();
    Interval gain =
        new Interval(
            Math.max(0, mark - envelope.firstHigh()), Math.max(0, mark - envelope.firstLow()));
    double value = mark - soc.firstValue();
    Estimate share = new Estimate(value, gain.hull(value)).times(0.01);
    List<RowRef> rows = new ArrayList<>(at.rows());
    rows.add(soc.row(0));
    rows.addAll(range.chosenRange().rows());
    ledger.measured(
        distanceEntry(mark), share.times(range.chosenRange().estimate().orElseThrow()), rows);
  }
}
