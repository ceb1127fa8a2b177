package taperbook.metric.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.i18n.Message;
import taperbook.metric.bounds.EnergyCounter;
import taperbook.metric.fit.EnergyFit;
import taperbook.metric.recording.DrivenEnergy;
import taperbook.metric.recording.Finding;
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
import taperbook.session.Trace;

/** Computes the losses between station and battery, and between charging and driving. */
public final class LossMetrics {
  private static final Metric LOSS =
      Metric.charging("charging_loss", Unit.KILOWATT_HOUR, Method.CHARGING_LOSS).in(Role.ENERGY);
  private static final Metric EFFICIENCY =
      Metric.charging("charging_efficiency", Unit.PERCENT, Method.CHARGING_LOSS).in(Role.ENERGY);
  private static final Metric DRIVE_SHARE =
      Metric.of("drive_energy_share", Unit.PERCENT, Method.DRIVE_SHARE, Basis.ENERGY, Input.ROAD)
          .in(Role.ENERGY);

  /** Tolerances of a few per cent by class of meter: NIST Handbook 44, 3.40, from memory. */
  private static final Caveat METER =
      new Caveat(Caveat.Kind.METER, Message.of("metric.loss_metrics.station_s_meter_may_be"));

  private static final Caveat TWO_DAYS =
      new Caveat(Caveat.Kind.RANGE_TEST, Message.of("metric.loss_metrics.energy_out_of_per_cent"));

  private final Recording recording;
  private final Finding<Estimate> driven;
  private final Finding<EnergyFit> line;
  private final MetricCollector collector;

  public LossMetrics(
      Recording recording,
      Optional<RangeTest> test,
      Finding<EnergyFit> line,
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
    // Differences of readings only: a station's meter may show any value at plugging in.
    charging(
        read(Channel.STATION_ENERGY, Message.of("metric.loss_metrics.station_s_energy_was_not"))
            .flatMap(
                station ->
                    read(
                            Channel.ENERGY_ADDED,
                            Message.of("metric.loss_metrics.energy_added_to_battery_was"))
                        .flatMap(battery -> both(station, battery))));
  }

  private Finding<Trace> read(Channel channel, Message otherwise) {
    return Finding.of(recording.session().trace(channel).filter(t -> t.size() > 1), otherwise);
  }

  /** Energy over the time that both were read. */
  private record Both(Estimate delivered, Estimate stored) {}

  private static Finding<Both> both(Trace stationTrace, Trace batteryTrace) {
    double from = Math.max(batteryTrace.firstSecond(), stationTrace.firstSecond());
    double to = Math.min(batteryTrace.lastSecond(), stationTrace.lastSecond());
    if (from >= to) {
      return Finding.missing(Message.of("metric.loss_metrics.station_s_energy_and_battery"));
    }
    EnergyCounter station = new EnergyCounter(stationTrace);
    EnergyCounter battery = new EnergyCounter(batteryTrace);
    return Finding.of(
            new Both(station.between(from, to), battery.between(from, to)), station.rows(from, to))
        .from(b -> battery.rows(from, to))
        .filter(
            b -> b.delivered().bounds().low() > 0,
            Message.of("metric.loss_metrics.station_delivered_less_over_common"));
  }

  private void charging(Finding<Both> both) {
    Finding<Estimate> loss = both.map(b -> b.delivered().minus(b.stored()));
    List<Caveat> own = new ArrayList<>(List.of(METER));
    if (loss.value().filter(l -> l.bounds().high() < 0).isPresent()) {
      own.add(
          new Caveat(
              Caveat.Kind.METER, Message.of("metric.loss_metrics.car_counted_more_energy_than")));
    }
    collector.measured(LOSS, loss, own);
    collector.measured(EFFICIENCY, both.map(b -> b.stored().over(b.delivered()).times(100)), own);
  }

  private void driving() {
    collector.covered(
        DRIVE_SHARE,
        driven.flatMap(d -> line.map(l -> d.over(l.perPercent().times(100)).times(100))),
        EnergyFit.COVERAGE,
        List.of(TWO_DAYS));
  }
}
