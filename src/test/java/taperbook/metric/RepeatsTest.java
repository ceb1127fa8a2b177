package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.metric.ReportMetrics.Again;
import taperbook.plan.ReportPlan;
import taperbook.quantity.SocWindow;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.Runs;
import taperbook.result.Stretch;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Session;

/** Repeats from sessions to numbers: runs of 100, 102, and 98 kW, compared with one of 103 kW. */
@Tag("slow")
final class RepeatsTest {
  private static final ReportPlan PLAN = Sessions.plan(List.of(new SocWindow(10, 80)), List.of());

  /** A session at constant power of a 50 kWh battery, from 5 to 85 %, with a row every 30 s. */
  private static Session run(String name, double kilowatts, double degrees) {
    int rows = (int) (40 * 3600 / kilowatts / 30) + 1;
    double[] seconds = new double[rows];
    double[] soc = new double[rows];
    double[] power = new double[rows];
    for (int i = 0; i < rows; i++) {
      seconds[i] = 30.0 * i;
      soc[i] = Math.rint(5 + seconds[i] * kilowatts / 36 / 50);
      power[i] = kilowatts;
    }
    return Sessions.session()
        .named(name)
        .clockHalfStep(0.5)
        .amount(ConditionItem.BATTERY_TEMPERATURE_AT_START, degrees, 0.5)
        .channel(Channel.SOC, 0.5, seconds, soc)
        .channel(Channel.POWER, 0.5, seconds, power)
        .build();
  }

  private static ReportResult measured(List<Session> repeats) {
    return ReportMetrics.measure(
        PLAN,
        new ReportMetrics.Sessions(
            run("one", 100, 25),
            List.of(run("other", 103, 25)),
            repeats,
            List.of(),
            ReportPlan.Season.none()),
        List.of(),
        Again.NO);
  }

  private static final ReportResult SINGLE = measured(List.of());
  private static final ReportResult REPEATED =
      measured(List.of(run("two", 102, 25), run("three", 98, 25)));

  /** The mean of 100, 102, and 98 is 100, and their standard deviation is 2; t(2) = 4.3027. */
  @Test
  void the_peak_has_mean_spread_and_next_run() {
    assertThat(number("peak_power_mean").estimate().orElseThrow().value()).isEqualTo(100);
    assertThat(width("peak_power_mean") / 2).isCloseTo(4.3027 * 2 / Math.sqrt(3), within(1e-3));
    assertThat(number("peak_power_run_spread").estimate().orElseThrow().value())
        .isCloseTo(2, within(1e-12));
    assertThat(width("peak_power_next_run") / 2)
        .isCloseTo(4.3027 * 2 * Math.sqrt(4.0 / 3), within(1e-3));
    // A step of 1 kW explains 1/12 of the variance of 4.
    assertThat(number("peak_power_run_to_run").estimate().orElseThrow().value())
        .isCloseTo(Math.sqrt(4 - 1.0 / 12), within(1e-9));
  }

  @Test
  void every_headline_number_has_four_statistics_and_one_number_for_each_run() {
    List<ReportNumber> headline = REPEATED.main().numbers().headline();
    assertThat(headline).hasSizeGreaterThan(3);
    for (String id : headline.stream().map(ReportNumber::id).toList()) {
      for (String ending : List.of("_mean", "_run_spread", "_run_to_run", "_next_run")) {
        assertThat(REPEATED.find(id + ending, "one")).as(id + ending).isPresent();
      }
      assertThat(REPEATED.find(id, "two")).as(id).isPresent();
    }
    assertThat(REPEATED.numbers()).hasSize(5);
  }

  @Test
  void a_lead_within_the_spread_of_runs_is_not_reported() {
    assertThat(leads(SINGLE)).isTrue();
    assertThat(leads(REPEATED)).isFalse();
    ReportNumber one = SINGLE.find("average_power_10_80", "one").orElseThrow();
    ReportNumber other = SINGLE.find("average_power_10_80", "other").orElseThrow();
    Runs.Spread spread = REPEATED.runs().spread();
    double beyond = Math.hypot(spread.halfWidth(one), spread.halfWidth(other));
    assertThat(one.differsSignificantly(other)).isTrue();
    assertThat(one.differsSignificantly(other, beyond)).isFalse();
  }

  private static boolean leads(ReportResult result) {
    return result.pairs().get(0).stretches().stream()
        .anyMatch(s -> s.order() != Stretch.Order.UNDECIDED);
  }

  @Test
  void the_mean_curve_is_that_of_the_runs() {
    assertThat(REPEATED.runs().mean().orElseThrow().y(40)).isCloseTo(100, within(0.5));
  }

  @Test
  void two_runs_and_different_runs_add_caveats() {
    ReportResult two = measured(List.of(run("cold", 101, 12)));
    assertThat(two.cautions(two.find("peak_power_mean", "one").orElseThrow()))
        .anyMatch(c -> c.startsWith("Two runs say little of how runs differ"))
        .anyMatch(c -> c.contains("not alike in battery temperature at start"));
    assertThat(number("peak_power_mean").caveats()).noneMatch(c -> c.kind() == Caveat.Kind.REPEATS);
  }

  @Test
  void different_conditions_of_compared_sessions_are_reported() {
    ReportResult cold =
        ReportMetrics.measure(PLAN, run("one", 100, 25), List.of(run("cold", 103, 12)), List.of());
    assertThat(cold.unlike()).containsExactly(ConditionItem.BATTERY_TEMPERATURE_AT_START);
    assertThat(SINGLE.unlike()).isEmpty();
    assertThat(SINGLE.runs()).isEqualTo(Runs.SINGLE);
  }

  @Test
  void a_stated_spread_is_used() {
    ReportPlan.Subject subject =
        new ReportPlan.Subject(
            "one",
            List.of("other"),
            List.of(),
            List.of(),
            Optional.of(new ReportPlan.RunSpread(0.02, "six runs elsewhere")),
            List.of(),
            ReportPlan.Season.none());
    ReportPlan stated =
        new ReportPlan(
            PLAN.name(), PLAN.heading(), subject, PLAN.wishes(), PLAN.style(), PLAN.article());
    ReportResult result =
        ReportMetrics.measure(
            stated, run("one", 100, 25), List.of(run("other", 103, 25)), List.of());
    assertThat(leads(result)).isFalse();
    assertThat(result.runs().spread().power()).isCloseTo(0.0392, within(1e-4));
  }

  private static ReportNumber number(String id) {
    return REPEATED.find(id, "one").orElseThrow();
  }

  private static double width(String id) {
    return number(id).estimate().orElseThrow().bounds().width();
  }
}
