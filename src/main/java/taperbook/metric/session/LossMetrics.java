package taperbook.metric.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
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
              Texts.of("number.charging_loss"),
              Unit.KILOWATT_HOUR,
              Method.CHARGING_LOSS)
          .in(Role.ENERGY);
  private static final Metric EFFICIENCY =
      Metric.charging(
              "charging_efficiency",
              Texts.of("number.charging_efficiency"),
              Unit.PERCENT,
              Method.CHARGING_LOSS)
          .in(Role.ENERGY);
  private static final Metric DRIVE_SHARE =
      new Metric(
          "drive_energy_share",
          Texts.of("number.drive_energy_share"),
          Unit.PERCENT,
          Method.DRIVE_SHARE,
          Basis.ENERGY,
          Input.ROAD,
          Set.of(Role.ENERGY));

  /** Tolerances of a few per cent by class of meter: NIST Handbook 44, 3.40, from memory. */
  private static final Caveat METER =
      new Caveat(Caveat.Kind.METER, Message.of("metric.loss_metrics.station_s_meter_may_be"));

  private static final Caveat TWO_DAYS =
      new Caveat(Caveat.Kind.RANGE_TEST, Message.of("metric.loss_metrics.energy_out_of_per_cent"));

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
              ? Message.of("metric.loss_metrics.station_s_energy_was_not")
              : Message.of("metric.loss_metrics.energy_added_to_battery_was"));
      return;
    }
    // Differences of readings only: a station's meter may show any value at plugging in.
    double from = Math.max(battery.get().firstSecond(), station.get().firstSecond());
    double to = Math.min(battery.get().lastSecond(), station.get().lastSecond());
    if (from >= to) {
      withholdCharging(Message.of("metric.loss_metrics.station_s_energy_and_battery"));
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
      withholdCharging(Message.of("metric.loss_metrics.station_delivered_less_over_common"));
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
              Caveat.Kind.METER, Message.of("metric.loss_metrics.car_counted_more_energy_than")));
    }
    collector.measured(LOSS, loss, rows, own);
    collector.measured(EFFICIENCY, stored.over(delivered).times(100), rows, own);
  }

  private void withholdCharging(Message reason) {
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
