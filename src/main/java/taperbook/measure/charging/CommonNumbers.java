package taperbook.measure.charging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import taperbook.measure.curve.EnergyOverTime;
import taperbook.measure.curve.Envelope;
import taperbook.measure.ledger.Entry;
import taperbook.measure.ledger.Ledger;
import taperbook.measure.ledger.Scope;
import taperbook.measure.recording.Derived;
import taperbook.measure.recording.RangeFigures;
import taperbook.measure.recording.Recording;
import taperbook.measure.recording.SocTime;
import taperbook.model.Basis;
import taperbook.model.Caveat;
import taperbook.model.CommonGround;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.Method;
import taperbook.model.ReportPlan;
import taperbook.model.RowRef;
import taperbook.model.SocWindow;
import taperbook.model.Unit;
import taperbook.model.WantedDistance;
import taperbook.words.Labels;

/** The numbers of a session on the ground that all sessions of a report have in common. */
public final class CommonNumbers {
  private final Recording recording;
  private final RangeFigures range;
  private final Ledger ledger;

  public CommonNumbers(Recording recording, RangeFigures range, Ledger ledger) {
    this.recording = recording;
    this.range = range;
    this.ledger = ledger;
  }

  public void measure(CommonGround ground, ReportPlan.Wishes wishes) {
    List<SocWindow> more = new ArrayList<>(ground.windows());
    more.removeAll(wishes.windows());
    new WindowNumbers(recording, ledger).measure(more);
    for (SocWindow window : ground.windows()) {
      wishes.distances().forEach(d -> distance(d, window.from()));
    }
    ground
        .shared()
        .ifPresent(w -> ground.energyKilowattHours().ifPresent(e -> energy(e, w.from())));
  }

  private void distance(WantedDistance distance, int from) {
    Entry entry =
        new Entry(
            CommonGround.timeToAddId(distance, from),
            Labels.of("number.time_to_add_from", distance.words(), from),
            Unit.SECOND,
            Method.TIME_TO_ADD_FROM,
            range.chosenBasis(),
            range.chosenBasis() == Basis.RATED ? Scope.CHARGING : Scope.ROAD);
    Derived full = range.chosenRange();
    Optional<Estimate> share = DistanceNumbers.share(distance, full);
    Optional<SocTime> start = SocTime.of(recording, from);
    if (share.isEmpty() || start.isEmpty()) {
      ledger.withheld(entry, full.withheld().orElseGet(() -> SocTime.whyNot(recording, from)));
      return;
    }
    double target = from + share.get().value();
    Interval targets = share.get().bounds().plus(Interval.exactly(from));
    Optional<SocTime> end = SocTime.of(recording, target, targets);
    if (end.isEmpty()) {
      ledger.withheld(entry, recording.beyondTheEnd(recording.soc().orElseThrow()));
      return;
    }
    List<RowRef> rows = new ArrayList<>(start.get().rows());
    rows.addAll(end.get().rows());
    rows.addAll(full.rows());
    Envelope envelope = recording.envelope().orElseThrow();
    List<Caveat> own =
        envelope.latestRunsPastEnd(targets.high())
            ? List.of(DistanceNumbers.pastTheEnd())
            : List.of();
    ledger.measured(entry, between(start.get(), end.get().second(), end.get().times()), rows, own);
  }

  private static Estimate between(SocTime start, double end, Interval ends) {
    double seconds = end - start.second();
    return new Estimate(seconds, ends.minus(start.times()).hull(seconds).atLeast(0));
  }

  private void energy(int kilowattHours, int from) {
    Entry entry =
        Entry.charging(
            CommonGround.timeToAddId(kilowattHours, from),
            Labels.of("number.time_to_add_energy_from", kilowattHours, from),
            Unit.SECOND,
            Method.TIME_TO_ADD_ENERGY);
    Optional<SocTime> start = SocTime.of(recording, from);
    Optional<EnergyOverTime> source =
        start.flatMap(s -> recording.energyOver(s.second(), s.second()));
    if (start.isEmpty() || source.isEmpty()) {
      String why = start.isEmpty() ? SocTime.whyNot(recording, from) : recording.whyNoEnergy();
      ledger.withheld(entry, why);
      return;
    }
    energy(entry, kilowattHours, start.get(), source.get());
  }

  private void energy(Entry entry, int kilowattHours, SocTime start, EnergyOverTime energy) {
    double zero = energy.span().low();
    double before = energy.between(zero, start.second()).value();
    Interval earlier =
        energy
            .between(zero, energy.clamp(start.times().low()))
            .bounds()
            .hull(energy.between(zero, energy.clamp(start.times().high())).bounds());
    OptionalDouble end = energy.timeOf(before + kilowattHours);
    Optional<Interval> ends = energy.boundsOfTime(earlier.plus(Interval.exactly(kilowattHours)));
    if (end.isEmpty() || ends.isEmpty()) {
      ledger.withheld(entry, "the session added less energy from there on");
      return;
    }
    List<RowRef> rows = new ArrayList<>(start.rows());
    rows.addAll(energy.rows(start.second(), end.getAsDouble()));
    List<Caveat> own =
        ends.get().high() > energy.span().high()
            ? List.of(DistanceNumbers.pastTheEnd())
            : List.of();
    ledger.measured(entry, between(start, end.getAsDouble(), ends.get()), rows, own);
  }
}
