package taperbook.metric.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.format.Labels;
import taperbook.metric.bounds.EnergyCounter;
import taperbook.metric.fit.EnergyFit;
import taperbook.metric.recording.Derived;
import taperbook.metric.recording.DrivenEnergy;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.Input;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/** Computes the losses between station and battery, and between charging and driving. */
public final class LossMetrics {
  private static final Metric LOSS =
      Metric.charging(
              "charging_loss",
              Labels.of("number.charging_loss"),
              Unit.KILOWATT_HOUR,
              Method.CHARGING_LOSS)
          .in(Role.ENERGY);
  private static final Metric EFFICIENCY =
      Metric.charging(
              "charging_efficiency",
              Labels.of("number.charging_efficiency"),
              Unit.PERCENT,
              Method.CHARGING_LOSS)
          .in(Role.ENERGY);
  private static final Metric DRIVE_SHARE =
      new Metric(
          "drive_energy_share",
          Labels.of("number.drive_energy_share"),
          Unit.PERCENT,
          Method.DRIVE_SHARE,
          Basis.ENERGY,
          Input.ROAD,
          Set.of(Role.ENERGY));

  /** Tolerances of a few per cent by class of meter: NIST Handbook 44, 3.40, from memory. */
  private static final Caveat METER =
      new Caveat(
          Caveat.Kind.METER,
          "A station's meter may be off by a few per cent (assumed, not tested), and the car's counter"
              + " by an amount that nobody states. The interval holds the displays' rounding only, and"
              + " nothing was corrected for either.");

  private static final Caveat TWO_DAYS =
      new Caveat(
          Caveat.Kind.RANGE_TEST,
          "Energy out of a per cent is from the range test and energy into it from the charging"
              + " session: two days, perhaps two temperatures, and perhaps two parts of the"
              + " battery.");

  private final Recording recording;
  private final Derived driven;
  private final Optional<EnergyFit> line;
  private final MetricCollector collector;

  public LossMetrics(
      Recording recording,
      Optional<RangeTest> test,
      Optional<EnergyFit> line,
      MetricCollector collector) {
    this.recording = recording;
    this.line = line;
    this.driven = DrivenEnergy.ofFullBattery(test, recording.session().displayRounding());
    this.collector = collector;
  }

  public void measure() {
    charging();
    driving();
  }

  private void charging() {
    Optional<Trace> station = read(Channel.STATION_ENERGY);
    Optional<Trace> battery = read(Channel.ENERGY_ADDED);
    if (station.isEmpty() || battery.isEmpty()) {
      withholdCharging(
          station.isEmpty()
              ? "the station's energy was not recorded, or only once"
              : "the energy added to the battery was not recorded, or only once");
      return;
    }
    // Differences of readings only: a station's meter may show any value at plugging in.
    double from = Math.max(battery.get().firstSecond(), station.get().firstSecond());
    double to = Math.min(battery.get().lastSecond(), station.get().lastSecond());
    if (from >= to) {
      withholdCharging("the station's energy and the battery's were not read over a common time");
      return;
    }
    charging(new EnergyCounter(station.get()), new EnergyCounter(battery.get()), from, to);
  }

  private Optional<Trace> read(Channel channel) {
    return recording.session().trace(channel).filter(t -> t.size() > 1);
  }

  private void charging(EnergyCounter station, EnergyCounter battery, double from, double to) {
    Estimate delivered = station.between(from, to);
    Estimate stored = battery.between(from, to);
    if (delivered.bounds().low() <= 0) {
      withholdCharging("the station delivered less over the common time than its display can tell");
      return;
    }
    List<RowRef> rows = new ArrayList<>(station.rows(from, to));
    rows.addAll(battery.rows(from, to));
    charging(delivered, stored, rows);
  }

  private void charging(Estimate delivered, Estimate stored, List<RowRef> rows) {
    Estimate loss = delivered.minus(stored);
    List<Caveat> own = new ArrayList<>(List.of(METER));
    if (loss.bounds().high() < 0) {
      own.add(
          new Caveat(
              Caveat.Kind.METER,
              "The car counted more energy than the station, which cannot be: one of the two is"
                  + " off, or they did not count the same time."));
    }
    collector.measured(LOSS, loss, rows, own);
    collector.measured(EFFICIENCY, stored.over(delivered).times(100), rows, own);
  }

  private void withholdCharging(String reason) {
    collector.withheld(LOSS, reason);
    collector.withheld(EFFICIENCY, reason);
  }

  private void driving() {
    if (driven.withheld().isPresent()) {
      collector.withheld(DRIVE_SHARE, driven.withheld().get());
      return;
    }
    if (line.isEmpty()) {
      collector.withheld(DRIVE_SHARE, CapacityMetrics.whyNoFit(recording));
      return;
    }
    Estimate intoFull = line.get().perPercent().times(100);
    List<RowRef> rows = new ArrayList<>(driven.rows());
    rows.addAll(line.get().rows());
    collector.covered(
        DRIVE_SHARE,
        driven.estimate().orElseThrow().over(intoFull).times(100),
        EnergyFit.COVERAGE,
        rows,
        List.of(TWO_DAYS));
  }
}
