package taperbook.measure.charging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.measure.curve.EnergyOverTime;
import taperbook.measure.ledger.Entry;
import taperbook.measure.ledger.Ledger;
import taperbook.measure.ledger.Scope;
import taperbook.measure.recording.Recording;
import taperbook.model.Basis;
import taperbook.model.Estimate;
import taperbook.model.Method;
import taperbook.model.RowRef;
import taperbook.model.Trace;
import taperbook.model.Unit;
import taperbook.words.Labels;

/** Start, end, length and energy of a session, and the energy that a per cent takes. */
public final class SessionNumbers {
  private final Recording recording;
  private final Ledger ledger;

  public SessionNumbers(Recording recording, Ledger ledger) {
    this.recording = recording;
    this.ledger = ledger;
  }

  public void measure() {
    ends();
    time();
    energyAdded();
    energyPerShare();
  }

  private void ends() {
    Entry start = end("start_soc", Labels.of("number.start_soc"));
    Entry end = end("end_soc", Labels.of("number.end_soc"));
    if (recording.soc().isEmpty()) {
      ledger.withheld(start, Recording.NO_SOC);
      ledger.withheld(end, Recording.NO_SOC);
      return;
    }
    Trace soc = recording.soc().get();
    ledger.measured(start, Estimate.around(soc.firstValue(), soc.halfStep()), List.of(soc.row(0)));
    ledger.measured(
        end, Estimate.around(soc.lastValue(), soc.halfStep()), List.of(soc.row(soc.size() - 1)));
  }

  private static Entry end(String id, String label) {
    return new Entry(id, label, Unit.PERCENT, Method.END_READING, Basis.READINGS, Scope.READING);
  }

  private void time() {
    Entry entry =
        Entry.charging(
            "session_time", Labels.of("number.session_time"), Unit.SECOND, Method.RECORDED_TIME);
    double end = recording.session().recorded().high();
    Trace last =
        recording.session().traces().values().stream()
            .reduce((a, b) -> b.lastSecond() > a.lastSecond() ? b : a)
            .orElseThrow();
    ledger.measured(
        entry, Estimate.around(end, last.clockHalfStep()), List.of(last.row(last.size() - 1)));
  }

  private void energyAdded() {
    Entry entry =
        Entry.charging(
            "energy_added",
            Labels.of("number.energy_added"),
            Unit.KILOWATT_HOUR,
            Method.ENERGY_COUNTER);
    Optional<EnergyOverTime> source = recording.energy();
    if (source.isEmpty()) {
      ledger.withheld(entry, Recording.NO_ENERGY);
      return;
    }
    EnergyOverTime energy = source.get();
    double from = energy.span().low();
    double to = energy.span().high();
    ledger.measured(entry.with(energy.method()), energy.between(from, to), energy.rows(from, to));
  }

  private void energyPerShare() {
    Entry perShare =
        Entry.charging(
            "energy_per_soc",
            Labels.of("number.energy_per_soc"),
            Unit.KILOWATT_HOUR_PER_PERCENT,
            Method.ENERGY_SHARE);
    Entry full =
        Entry.charging(
            "implied_full_energy",
            Labels.of("number.implied_full_energy"),
            Unit.KILOWATT_HOUR,
            Method.ENERGY_SHARE);
    if (recording.soc().isEmpty()) {
      ledger.withheld(perShare, Recording.NO_SOC);
      ledger.withheld(full, Recording.NO_SOC);
      return;
    }
    Trace soc = recording.soc().get();
    Estimate gain =
        Estimate.around(soc.lastValue(), soc.halfStep())
            .minus(Estimate.around(soc.firstValue(), soc.halfStep()));
    Optional<EnergyOverTime> source = recording.energyOver(soc.firstSecond(), soc.lastSecond());
    if (source.isEmpty() || gain.bounds().low() <= 0) {
      String why =
          source.isEmpty()
              ? recording.whyNoEnergy()
              : "the state of charge gained is not more than its display can tell";
      ledger.withheld(perShare, why);
      ledger.withheld(full, why);
      return;
    }
    Estimate energy = source.get().between(soc.firstSecond(), soc.lastSecond());
    List<RowRef> rows = rowsOf(source.get(), soc);
    Estimate share = energy.over(gain);
    ledger.measured(perShare, share, rows);
    ledger.measured(full, share.times(100), rows);
  }

  private static List<RowRef> rowsOf(EnergyOverTime energy, Trace soc) {
    List<RowRef> rows = new ArrayList<>(energy.rows(soc.firstSecond(), soc.lastSecond()));
    rows.add(soc.row(0));
    rows.add(soc.row(soc.size() - 1));
    return rows;
  }
}
