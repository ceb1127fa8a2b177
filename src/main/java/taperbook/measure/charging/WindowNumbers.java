package taperbook.measure.charging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.measure.curve.EnergyOverTime;
import taperbook.measure.ledger.Entry;
import taperbook.measure.ledger.Ledger;
import taperbook.measure.recording.Recording;
import taperbook.measure.recording.SocTime;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.Method;
import taperbook.model.RowRef;
import taperbook.model.SocWindow;
import taperbook.model.Unit;
import taperbook.words.Labels;

/** Time, energy and both averages of power for each window of state of charge. */
public final class WindowNumbers {
  private final Recording recording;
  private final Ledger ledger;

  public WindowNumbers(Recording recording, Ledger ledger) {
    this.recording = recording;
    this.ledger = ledger;
  }

  public void measure(List<SocWindow> windows) {
    windows.forEach(this::measure);
  }

  private void measure(SocWindow window) {
    Optional<SocTime> from = SocTime.of(recording, window.from());
    Optional<SocTime> to = SocTime.of(recording, window.to());
    if (from.isEmpty() || to.isEmpty()) {
      String why = SocTime.whyNot(recording, from.isEmpty() ? window.from() : window.to());
      for (Entry entry :
          List.of(time(window), energy(window), timeAverage(window), socAverage(window))) {
        ledger.withheld(entry, why);
      }
      return;
    }
    List<RowRef> edges = new ArrayList<>(from.get().rows());
    edges.addAll(to.get().rows());
    double seconds = to.get().second() - from.get().second();
    Interval bounds = to.get().times().minus(from.get().times()).atLeast(0);
    ledger.measured(time(window), new Estimate(seconds, bounds.hull(seconds)), edges);
    energyAndAverage(window, from.get(), to.get(), edges);
    if (ledger.wants(socAverage(window))) {
      socAverage(window, from.get(), to.get(), edges);
    }
  }

  private void energyAndAverage(SocWindow window, SocTime from, SocTime to, List<RowRef> edges) {
    Optional<EnergyOverTime> source = recording.energyOver(from.second(), to.second());
    if (source.isEmpty()) {
      ledger.withheld(energy(window), recording.whyNoEnergy());
      ledger.withheld(timeAverage(window), recording.whyNoEnergy());
      return;
    }
    EnergyOverTime energy = source.get();
    List<RowRef> rows = new ArrayList<>(edges);
    rows.addAll(energy.rows(from.second(), to.second()));
    WindowEnergy measured = WindowEnergy.of(energy, from, to);
    ledger.measured(energy(window).with(energy.method()), measured.energy(), rows);
    if (to.second() > from.second()) {
      ledger.measured(timeAverage(window), measured.averagePower(), rows);
    } else {
      ledger.withheld(timeAverage(window), "the window took no time that the clock can tell");
    }
  }

  private void socAverage(SocWindow window, SocTime from, SocTime to, List<RowRef> edges) {
    boolean covered =
        recording
            .power()
            .filter(p -> p.firstSecond() <= from.second() && to.second() <= p.lastSecond())
            .isPresent();
    if (!covered) {
      ledger.withheld(
          socAverage(window),
          recording.power().isEmpty()
              ? Recording.NO_POWER
              : "no power was read over the whole of that time");
      return;
    }
    List<RowRef> rows = new ArrayList<>(edges);
    recording.integral().ifPresent(p -> rows.addAll(p.rows(from.second(), to.second())));
    ledger.measured(socAverage(window), MeanOverSoc.of(recording, window, from, to), rows);
  }

  private static Entry time(SocWindow window) {
    return Entry.charging(
        "time_soc_" + window.idPart(),
        Labels.of("number.time_soc", window.from(), window.to()),
        Unit.SECOND,
        Method.WINDOW_TIME);
  }

  private static Entry energy(SocWindow window) {
    return Entry.charging(
        "energy_soc_" + window.idPart(),
        Labels.of("number.energy_soc", window.from(), window.to()),
        Unit.KILOWATT_HOUR,
        Method.ENERGY_COUNTER);
  }

  private static Entry timeAverage(SocWindow window) {
    return Entry.charging(
        "average_power_" + window.idPart(),
        Labels.of("number.average_power", window.from(), window.to()),
        Unit.KILOWATT,
        Method.TIME_AVERAGE);
  }

  private static Entry socAverage(SocWindow window) {
    return Entry.charging(
        "soc_average_power_" + window.idPart(),
        Labels.of("number.soc_average_power", window.from(), window.to()),
        Unit.KILOWATT,
        Method.SOC_AVERAGE);
  }
}
