package taperbook.metric.road;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.bounds.EnergyCounter;
import taperbook.metric.bounds.EnergyOverTime;
import taperbook.metric.recording.Finding;
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
import taperbook.session.Trace;

/** Computes the cost of the session in total, per kWh and per distance. */
final class CostMetrics {
  private static final int HUNDRED = 100;
  private static final int SECONDS_PER_MINUTE = 60;

  private static final Caveat NO_STATION_ENERGY =
      new Caveat(
          Caveat.Kind.COST, Message.of("metric.cost_metrics.at_least_what_station_delivered"));

  private static final Caveat COUNTED_FROM_FIRST_READING =
      new Caveat(Caveat.Kind.COST, Message.of("metric.cost_metrics.station_s_counter_is_taken"));

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
        metric("cost_session", Texts.of("number.cost_session"), Basis.READINGS, Input.CHARGING);
    Metric perEnergy =
        metric(
            "cost_per_kwh_battery",
            Texts.of("number.cost_per_kwh_battery"),
            Basis.READINGS,
            Input.CHARGING);
    Metric perWay =
        metric(
            "cost_per_" + way.idPart(),
            Texts.of("number.cost_per_distance", way.words()),
            Basis.DRIVEN,
            Input.ROAD);
    Finding<Estimate> cost = prices.whyNone().map(Finding::<Estimate>missing).orElseGet(this::cost);
    collector.measured(session, cost, caveats());
    perEnergy(perEnergy, cost);
    perWay(perWay, cost, way);
  }

  /** The label contains the currency, as no unit covers every currency. */
  private Metric metric(String id, String label, Basis basis, Set<Input> inputs) {
    String currency = prices.currency();
    String priced = currency.isEmpty() ? label : Texts.of("label.in_currency", label, currency);
    String full = isAtLeast() ? Texts.of("label.at_least", priced) : priced;
    return new Metric(id, full, Unit.CURRENCY, Method.COST, basis, inputs, Set.of(Role.COST));
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

  private Optional<Trace> station() {
    return recording.session().trace(Channel.STATION_ENERGY).filter(t -> t.size() > 1);
  }

  /** Returns the energy that is billed, kWh; zero if the price does not depend on it. */
  private Finding<Estimate> energy() {
    if (!prices.areByEnergy()) {
      return Finding.of(Estimate.exactly(0), List.of());
    }
    Finding<EnergyOverTime> energy =
        station()
            .<EnergyOverTime>map(EnergyCounter::new)
            .map(e -> Finding.of(e, List.of()))
            .orElseGet(recording::energy);
    return energy
        .from(e -> e.rows(e.span().low(), e.span().high()))
        // A station's meter may show any value at plugging in; the car's counter starts at zero.
        .map(
            e ->
                e.between(
                    station().map(Trace::firstSecond).orElse(e.span().low()), e.span().high()));
  }

  private Finding<Estimate> cost() {
    Finding<Estimate> time = Finding.of(collector.numbers().get("session_time"));
    return energy()
        .from(e -> prices.rows())
        .flatMap(
            energy ->
                time.map(
                    seconds ->
                        energy
                            .times(prices.perKilowattHour())
                            .minus(
                                seconds.times(1.0 / SECONDS_PER_MINUTE).times(-prices.perMinute()))
                            .minus(Estimate.exactly(-prices.fee()))));
  }

  private List<Caveat> caveats() {
    if (isAtLeast()) {
      return List.of(NO_STATION_ENERGY);
    }
    return prices.areByEnergy() && station().isPresent()
        ? List.of(COUNTED_FROM_FIRST_READING)
        : List.of();
  }

  private void perEnergy(Metric metric, Finding<Estimate> cost) {
    Finding<Estimate> added =
        Finding.of(
                collector
                    .numbers()
                    .find("energy_added")
                    .filter(n -> n.estimate().filter(e -> e.bounds().low() > 0).isPresent()),
                Recording.NO_ENERGY)
            .flatMap(Finding::of);
    // Otherwise it would repeat the station's own price, without the losses.
    boolean repeats = prices.areByEnergy() && station().isEmpty();
    collector.measured(
        metric,
        cost.flatMap(
            c ->
                added
                    .filter(
                        e -> !repeats,
                        Message.of("metric.cost_metrics.what_station_delivered_was_not"))
                    .map(c::over)),
        caveats());
  }

  private void perWay(Metric metric, Finding<Estimate> cost, WantedDistance way) {
    Finding<Estimate> gain =
        recording
            .charge()
            .from(soc -> List.of(soc.row(0), soc.row(soc.size() - 1)))
            .map(
                soc ->
                    Estimate.around(soc.lastValue(), soc.halfStep())
                        .minus(Estimate.around(soc.firstValue(), soc.halfStep())))
            .filter(g -> g.bounds().low() > 0, Recording.NO_GAIN);
    collector.measured(
        metric,
        cost.flatMap(
            c ->
                range
                    .fullRange()
                    .flatMap(full -> gain.map(g -> full.times(g).times(0.01)))
                    .map(added -> c.times(way.kilometres()).over(added))),
        caveats());
  }
}
