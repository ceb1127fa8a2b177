package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.CrossCheck.Compared;
import taperbook.result.Numbers;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/** Arithmetic that practitioners do by hand: common practice, no source. */
final class TradeArithmeticTest {
  private static final double MILE = 1.609344;
  private static final List<WantedDistance> MILES =
      List.of(new WantedDistance(100, Unit.MILE), new WantedDistance(200, Unit.MILE));

  @Test
  void distances_are_shares_of_the_driven_range() {
    SessionResult result = onDrive(drive(310.3, 73, 234), MILES);
    assertThat(value(result, "driven_range_full") / MILE).isCloseTo(310.3, within(1e-9));
    assertThat(value(result, "soc_for_100_mi")).isCloseTo(32.2, within(0.05));
    assertThat(value(result, "soc_for_200_mi")).isCloseTo(64.5, within(0.05));
  }

  @Test
  void a_rated_range_requires_a_smaller_share() {
    // 100 mi of 353 mi rated are 28.3 %: 28.3 minutes at 1 % per minute.
    SessionResult result = onDrive(drive(310.3, 73, 234), MILES);
    assertThat(value(result, "time_to_add_100_mi_rated") / 60).isCloseTo(28.3, within(0.05));
    assertThat(value(result, "time_to_add_100_mi") / 60).isCloseTo(32.2, within(0.05));
  }

  @Test
  void consumption_times_distance_is_the_energy_needed() {
    // 234 Wh/mi over 100 mi are 23.4 kWh, which take 46.8 minutes at 30 kW.
    RangeTest displayedOnly =
        Sessions.rangeTest(
            Map.of(
                RangeItem.DISTANCE, Estimate.around(310.3 * MILE, 0.05 * MILE),
                RangeItem.START_SOC, Estimate.exactly(100),
                RangeItem.END_SOC, Estimate.exactly(0),
                RangeItem.CONSUMPTION_DISPLAYED, Estimate.around(234 / MILE, 0.5 / MILE)));
    SessionResult result = onDrive(displayedOnly, MILES);
    assertThat(result.numbers().get("consumption").metric().basis()).isEqualTo(Basis.DISPLAYED);
    assertThat(value(result, "time_to_add_100_mi_by_energy") / 60).isCloseTo(46.8, within(0.05));
    assertThat(result.numbers().get("time_to_add_100_mi_by_energy").caveats().get(0).sentence())
        .startsWith("How much is lost between charging and driving is not known.")
        .endsWith("a lower limit, without losses.");
  }

  @Test
  void the_energy_basis_states_the_measured_ratio_of_energies() {
    // 30 kW at one minute per 1 % are 50 kWh for a full battery; the drive used 47.5 kWh: 95 %.
    RangeTest test =
        Sessions.rangeTest(
            Map.of(
                RangeItem.DISTANCE, Estimate.exactly(300),
                RangeItem.START_SOC, Estimate.exactly(100),
                RangeItem.END_SOC, Estimate.exactly(0),
                RangeItem.ENERGY_USED, Estimate.exactly(47.5)));
    SessionResult result = onDrive(test, MILES);
    assertThat(
            result
                .numbers()
                .get("time_to_add_100_mi_by_energy")
                .caveats()
                .get(0)
                .sentence()
                .replace('\u00a0', ' '))
        .contains("By session and range test 95 % (");
  }

  @Test
  void rounding_of_73_kwh_makes_the_consumption_agree_with_the_display() {
    SessionResult result = onDrive(drive(310.3, 73, 234), MILES);
    Compared check = compared(result, "check_consumption_displayed");
    assertThat(check.first().estimate().value() * MILE).isCloseTo(235.3, within(0.05));
    assertThat(check.second().estimate().value() * MILE).isCloseTo(234, within(1e-9));
    assertThat(check.agrees()).isTrue();
  }

  @Test
  void a_display_that_is_off_by_more_than_rounding_differs() {
    SessionResult result = onDrive(drive(310.3, 73, 228), MILES);
    Compared check = compared(result, "check_consumption_displayed");
    assertThat(check.agrees()).isFalse();
    assertThat(check.difference().value() * MILE).isCloseTo(7.3, within(0.05));
    assertThat(result.caveats())
        .anySatisfy(c -> assertThat(c.sentence()).contains("differ by").contains("Wh/mi"));
  }

  @Test
  void energy_per_soc_compares_sessions_over_unequal_windows() {
    // A third of a step of the display relative to 80 %, which is 1.25 %, would be detected.
    assertThat(energyPerSoc(5, 85, 60)).isCloseTo(0.750, within(1e-3));
    assertThat(energyPerSoc(6, 84, 58)).isCloseTo(0.744, within(1e-3));
  }

  @Test
  void a_distance_in_kilometres_takes_its_share_and_its_energy() {
    // 150 of 412 km are 36.4 %; 171 Wh/km over 150 km are 25.65 kWh, which take 51.3 min at 30 kW.
    RangeTest test =
        Sessions.rangeTest(
            Map.of(
                RangeItem.DISTANCE, Estimate.around(412, 0.5),
                RangeItem.START_SOC, Estimate.exactly(100),
                RangeItem.END_SOC, Estimate.exactly(0),
                RangeItem.CONSUMPTION_DISPLAYED, Estimate.around(171, 0.5)));
    SessionResult result = onDrive(test, List.of(new WantedDistance(150, Unit.KILOMETRE)));
    assertThat(value(result, "soc_for_150_km")).isCloseTo(36.4, within(0.05));
    assertThat(value(result, "time_to_add_150_km_by_energy") / 60).isCloseTo(51.3, within(0.05));
  }

  @Test
  void a_partial_drive_scales_to_a_full_battery_and_states_it() {
    RangeTest test =
        Sessions.rangeTest(
            Map.of(
                RangeItem.DISTANCE, Estimate.around(324, 0.5),
                RangeItem.START_SOC, Estimate.around(92, 0.5),
                RangeItem.END_SOC, Estimate.around(11, 0.5)));
    SessionResult result = onDrive(test, MILES);
    assertThat(value(result, "driven_range_full")).isCloseTo(400, within(0.1));
    // The bounds are for the worst combination of roundings; the 95 % interval is within them.
    Estimate bounded =
        ReportMetrics.measureSession(
                Sessions.plan(List.of(new SocWindow(10, 80)), MILES),
                steadySession(),
                List.of(test))
            .estimate("driven_range_full")
            .orElseThrow();
    // All values that the displays allow; the interval excludes the outermost twentieth.
    assertThat(bounded.bounds().low()).isBetween(323.5 / 82 * 100, 400.0);
    assertThat(bounded.bounds().high()).isBetween(400.0, 324.5 / 80 * 100);
    Estimate full = result.numbers().estimate("driven_range_full").orElseThrow();
    assertThat(full.bounds().low()).isBetween(bounded.bounds().low(), 400.0);
    assertThat(full.bounds().high()).isBetween(400.0, bounded.bounds().high());
    assertThat(result.numbers().get("driven_range_full").caveats())
        .anySatisfy(c -> assertThat(c.sentence()).contains("from 92\u00a0% to 11\u00a0%"));
  }

  private static Compared compared(SessionResult result, String id) {
    return (Compared)
        result.checks().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow().outcome();
  }

  private static double value(SessionResult result, String id) {
    return result.numbers().estimate(id).orElseThrow().value();
  }

  private static double energyPerSoc(double from, double to, double energy) {
    Session session =
        Sessions.session()
            .text(ConditionItem.DISPLAY_ROUNDS, "nearest")
            .text(ConditionItem.ROWS_WRITTEN, "at set times")
            .channel(Channel.SOC, 0.5, new double[] {0, 1800}, new double[] {from, to})
            .channel(Channel.ENERGY_ADDED, 0.5, new double[] {0, 1800}, new double[] {0, energy})
            .build();
    Numbers numbers = Sessions.measure(session).main().numbers();
    return numbers.estimate("energy_per_soc").orElseThrow().value();
  }

  private static RangeTest drive(double miles, double energy, double displayedPerMile) {
    return Sessions.rangeTest(
        Map.of(
            RangeItem.DISTANCE, Estimate.around(miles * MILE, 0.05 * MILE),
            RangeItem.START_SOC, Estimate.exactly(100),
            RangeItem.END_SOC, Estimate.exactly(0),
            RangeItem.ENERGY_USED, Estimate.around(energy, 0.5),
            RangeItem.CONSUMPTION_DISPLAYED, Estimate.around(displayedPerMile / MILE, 0.5 / MILE),
            RangeItem.RATED_RANGE, Estimate.around(353 * MILE, 0.5 * MILE)));
  }

  /** A session that gains 1 % per minute from 5 % at 30 kW, combined with a drive. */
  private static SessionResult onDrive(RangeTest test, List<WantedDistance> distances) {
    ReportResult result =
        ReportMetrics.measure(
            Sessions.plan(List.of(new SocWindow(10, 80)), distances),
            steadySession(),
            List.of(),
            List.of(test));
    return result.main();
  }

  private static Session steadySession() {
    double[] seconds = new double[91];
    double[] soc = new double[91];
    double[] power = new double[91];
    for (int i = 0; i <= 90; i++) {
      seconds[i] = 60 * i;
      soc[i] = 5 + i;
      power[i] = 30;
    }
    return Sessions.session()
        .channel(Channel.SOC, 0.5, seconds, soc)
        .channel(Channel.POWER, 0.5, seconds, power)
        .build();
  }
}
