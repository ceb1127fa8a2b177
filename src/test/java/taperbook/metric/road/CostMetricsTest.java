package taperbook.metric.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import taperbook.metric.ReportMetrics;
import taperbook.metric.Sessions;
import taperbook.plan.RoadTopic;
import taperbook.plan.RoadWishes;
import taperbook.quantity.Estimate;
import taperbook.result.Numbers;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.HowKnown;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;
import taperbook.session.Session;

/** Cost by hand: price times amount, common practice. */
final class CostMetricsTest {
  private static final double[] SECONDS = {0, 600, 1200};
  private static final double[] SOC = {10, 40, 60};

  /** 4 km per 1 %: the 50 % of the session are 200 km. */
  private static final RangeTest DRIVE =
      Sessions.rangeTest(
          Map.of(
              RangeItem.DISTANCE, Estimate.exactly(400),
              RangeItem.START_SOC, Estimate.exactly(100),
              RangeItem.END_SOC, Estimate.exactly(0)));

  private static Sessions session() {
    return Sessions.session()
        .channel(Channel.SOC, 0, SECONDS, SOC)
        .channel(Channel.ENERGY_ADDED, 0, SECONDS, new double[] {0, 18, 30});
  }

  private static Sessions withStation() {
    return session().channel(Channel.STATION_ENERGY, 0, SECONDS, new double[] {7, 26, 39});
  }

  private static Session priced(Sessions session, Map<ConditionItem, String> prices) {
    Session plain = session.build();
    Map<ConditionItem, Fact> facts = new EnumMap<>(ConditionItem.class);
    facts.putAll(plain.conditions().all());
    prices.forEach(
        (item, written) -> {
          String[] parts = written.split(" ", -1);
          Estimate amount = Estimate.around(Double.parseDouble(parts[0]), 0.005);
          facts.put(
              item,
              new Fact(
                  parts[0],
                  parts[1],
                  Optional.of(amount),
                  HowKnown.DISPLAYED,
                  new RowRef("conditions.csv", 9)));
        });
    return new Session(
        plain.name(),
        new Facts<>("conditions.csv", ConditionItem.class, facts),
        plain.traces(),
        plain.notes(),
        plain.recorded());
  }

  private static Numbers measure(Session session) {
    RoadWishes road = new RoadWishes(Set.of(RoadTopic.COST), Optional.empty());
    return ReportMetrics.measure(
            Sessions.roadPlan(List.of(), road), session, List.of(), List.of(DRIVE))
        .main()
        .numbers();
  }

  private static double value(Numbers numbers, String id) {
    return numbers.estimate(id).orElseThrow(() -> new AssertionError(id)).value();
  }

  @Test
  void cost_is_energy_time_and_fee_for_the_energy_of_the_station() {
    Numbers numbers =
        measure(
            priced(
                withStation(),
                Map.of(
                    ConditionItem.PRICE_PER_KWH, "0.50 EUR/kWh",
                    ConditionItem.PRICE_PER_MINUTE, "0.10 EUR/min",
                    ConditionItem.SESSION_FEE, "1.00 EUR")));
    // 32 kWh x 0.50 + 20 min x 0.10 + 1.00 = 19.00; per 30 kWh, and per 200 km.
    assertThat(value(numbers, "cost_session")).isCloseTo(19.00, within(1e-3));
    assertThat(value(numbers, "cost_per_kwh_battery")).isCloseTo(19.0 / 30, within(1e-3));
    assertThat(value(numbers, "cost_per_100_km")).isCloseTo(9.50, within(1e-2));
    assertThat(numbers.get("cost_session").label()).isEqualTo("Cost of the session in EUR");
  }

  @Test
  void without_station_energy_the_cost_uses_battery_energy_and_states_it() {
    Numbers numbers =
        measure(priced(session(), Map.of(ConditionItem.PRICE_PER_KWH, "0.50 EUR/kWh")));
    assertThat(value(numbers, "cost_session")).isCloseTo(15.00, within(1e-9));
    assertThat(numbers.get("cost_session").caveats().get(0).sentence())
        .startsWith("At least: what the station delivered was not recorded");
    assertThat(numbers.get("cost_session").label())
        .isEqualTo("Cost of the session in EUR, at least");
    assertThat(numbers.get("cost_per_kwh_battery").withheld())
        .contains("what the station delivered was not recorded, nor so the losses");
  }

  @Test
  void energy_counted_at_the_station_is_billed() {
    Numbers numbers =
        measure(
            priced(
                session().text(ConditionItem.ENERGY_COUNTED_AT, "station"),
                Map.of(ConditionItem.PRICE_PER_KWH, "0.50 EUR/kWh")));
    assertThat(numbers.get("cost_session").label()).isEqualTo("Cost of the session in EUR");
    assertThat(numbers.get("cost_session").caveats())
        .noneMatch(c -> c.sentence().startsWith("At least"));
  }

  @Test
  void a_price_for_time_only_requires_no_energy() {
    Session session =
        priced(
            Sessions.session().channel(Channel.SOC, 0, SECONDS, SOC),
            Map.of(ConditionItem.PRICE_PER_MINUTE, "0.30 GBP/min"));
    assertThat(value(measure(session), "cost_session")).isCloseTo(6.00, within(1e-9));
  }

  @Test
  void a_missing_price_and_prices_in_two_currencies_withhold_the_cost() {
    assertThat(measure(session().build()).get("cost_session").withheld())
        .contains("no price is stated");
    Session mixed =
        priced(
            session(),
            Map.of(
                ConditionItem.PRICE_PER_KWH, "0.50 EUR/kWh",
                ConditionItem.SESSION_FEE, "1.00 CHF"));
    assertThat(measure(mixed).get("cost_per_100_km").withheld())
        .contains("the prices are in EUR and CHF");
  }
}
