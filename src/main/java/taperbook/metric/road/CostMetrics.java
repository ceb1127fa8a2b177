package taperbook.metric.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.format.Labels;
import taperbook.metric.bounds.EnergyCounter;
import taperbook.metric.bounds.EnergyOverTime;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Input;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/** Computes the cost of the session in total, per kWh and per distance. */
final class CostMetrics {
  private static final int HUNDRED = 100;
  private static final int SECONDS_PER_MINUTE = 60;

  private static final Caveat NO_STATION_ENERGY =
      new Caveat(
          Caveat.Kind.COST,
          "At least: what the station delivered was not recorded, so the cost rests on what the car"
              + " counted. A station bills what it delivers, which is more by the losses while charging:"
              + " usually by a few per cent (assumed, not tested).");

  private static final Caveat COUNTED_FROM_FIRST_READING =
      new Caveat(
          Caveat.Kind.COST,
          "The station's counter is taken from its first reading to its last; what it counted before"
              + " is not in the cost.");

  private final Recording recording;
  private final RangeFigures range;
  private final MetricCollector collector;
  private final Prices prices;

  CostMetrics(Recording recording, RangeFigures range, MetricCollector collector) {
    this.recording = recording;
    this.range = range;
    this.collector = collector;
    this.prices = new Prices(recording.session().conditions());
  }

  void measure(Unit units) {
    WantedDistance way = new WantedDistance(HUNDRED, units);
    Metric session =
        metric("cost_session", Labels.of("number.cost_session"), Basis.READINGS, Input.CHARGING);
    Metric perEnergy =
        metric(
            "cost_per_kwh_battery",
            Labels.of("number.cost_per_kwh_battery"),
            Basis.READINGS,
            Input.CHARGING);
    Metric perWay =
        metric(
            "cost_per_" + way.idPart(),
            Labels.of("number.cost_per_distance", way.words()),
            Basis.DRIVEN,
            Input.ROAD);
    Optional<String> none = prices.whyNone().or(this::whyNoEnergy);
    if (none.isPresent()) {
      List.of(session, perEnergy, perWay).forEach(metric -> collector.withheld(metric, none.get()));
      return;
    }
    Estimate cost = cost();
    collector.measured(session, cost, rows(), caveats());
    perEnergy(perEnergy, cost);
    perWay(perWay, cost, way);
  }

  /** The label contains the currency, as no unit covers every currency. */
  private Metric metric(String id, String label, Basis basis, Set<Input> inputs) {
    String currency = prices.currency();
    String priced = currency.isEmpty() ? label : Labels.of("label.in_currency", label, currency);
    String full = isAtLeast() ? Labels.of("label.at_least", priced) : priced;
    return new Metric(id, full, Unit.CURRENCY, Method.COST, basis, inputs, Set.of(Role.COST));
  }

  private Optional<String> whyNoEnergy() {
    return prices.areByEnergy() && energy().isEmpty()
        ? Optional.of(Recording.NO_ENERGY)
        : Optional.empty();
  }

  /** Returns true if the energy was counted after the losses that a station also bills. */
  private boolean isAtLeast() {
    return prices.areByEnergy() && station().isEmpty() && !isCountedAtStation();
  }

  private boolean isCountedAtStation() {
    return recording.counter().isPresent()
        && recording
            .session()
            .conditions()
            .text(ConditionItem.ENERGY_COUNTED_AT)
            .filter("station"::equals)
            .isPresent();
  }

  private Optional<EnergyOverTime> station() {
    return recording
        .session()
        .trace(Channel.STATION_ENERGY)
        .filter(t -> t.size() > 1)
        .map(EnergyCounter::new);
  }

  private Optional<EnergyOverTime> energy() {
    return station().or(recording::energy);
  }

  private Estimate energyOver(EnergyOverTime energy) {
    // A station's meter may show any value at plugging in; the car's counter starts at zero.
    double from = station().isPresent() ? stationTrace().firstSecond() : energy.span().low();
    return energy.between(from, energy.span().high());
  }

  private Trace stationTrace() {
    return recording.session().trace(Channel.STATION_ENERGY).orElseThrow();
  }

  private Estimate cost() {
    Estimate energy =
        prices.areByEnergy() ? energyOver(energy().orElseThrow()) : Estimate.exactly(0);
    Estimate minutes =
        collector.numbers().estimate("session_time").orElseThrow().times(1.0 / SECONDS_PER_MINUTE);
    return energy
        .times(prices.perKilowattHour())
        .minus(minutes.times(-prices.perMinute()))
        .minus(Estimate.exactly(-prices.fee()));
  }

  private List<RowRef> rows() {
    List<RowRef> rows = new ArrayList<>(prices.rows());
    rows.addAll(collector.numbers().get("session_time").origin().rows());
    if (prices.areByEnergy()) {
      EnergyOverTime energy = energy().orElseThrow();
      rows.addAll(energy.rows(energy.span().low(), energy.span().high()));
    }
    return rows;
  }

  private List<Caveat> caveats() {
    if (isAtLeast()) {
      return List.of(NO_STATION_ENERGY);
    }
    return prices.areByEnergy() && station().isPresent()
        ? List.of(COUNTED_FROM_FIRST_READING)
        : List.of();
  }

  private void perEnergy(Metric metric, Estimate cost) {
    Optional<Estimate> added =
        collector.numbers().estimate("energy_added").filter(e -> e.bounds().low() > 0);
    if (added.isEmpty()) {
      collector.withheld(metric, Recording.NO_ENERGY);
      return;
    }
    if (prices.areByEnergy() && station().isEmpty()) {
      // Otherwise it would repeat the station's own price, without the losses.
      collector.withheld(metric, "what the station delivered was not recorded, nor so the losses");
      return;
    }
    List<RowRef> rows = new ArrayList<>(rows());
    rows.addAll(collector.numbers().get("energy_added").origin().rows());
    collector.measured(metric, cost.over(added.get()), rows, caveats());
  }

  private void perWay(Metric metric, Estimate cost, WantedDistance way) {
    Optional<Estimate> full = range.fullRange().estimate();
    if (full.isEmpty() || recording.soc().isEmpty()) {
      collector.withheld(
          metric, full.isEmpty() ? range.fullRange().withheld().orElseThrow() : Recording.NO_SOC);
      return;
    }
    Trace soc = recording.soc().get();
    Estimate gain =
        Estimate.around(soc.lastValue(), soc.halfStep())
            .minus(Estimate.around(soc.firstValue(), soc.halfStep()));
    if (gain.bounds().low() <= 0) {
      collector.withheld(
          metric, "the state of charge gained is not more than its display can tell");
      return;
    }
    Estimate added = full.get().times(gain).times(0.01);
    List<RowRef> rows = new ArrayList<>(rows());
    rows.addAll(List.of(soc.row(0), soc.row(soc.size() - 1)));
    rows.addAll(range.fullRange().rows());
    collector.measured(metric, cost.times(way.kilometres()).over(added), rows, caveats());
  }
}
