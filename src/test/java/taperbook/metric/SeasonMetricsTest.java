package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.metric.ReportMetrics.Again;
import taperbook.plan.Basis;
import taperbook.plan.ReportPlan;
import taperbook.plan.ReportPlan.Season;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Contribution;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.Role;
import taperbook.result.UncertaintySource;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.HowKnown;
import taperbook.session.Origin;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/** Cold over warm in closed form: sessions at constant power, drives of stated energy. */
@Tag("slow")
final class SeasonMetricsTest {
  private static final ReportPlan PLAN =
      Sessions.plan(
          List.of(new SocWindow(10, 80)),
          List.of(new WantedDistance(100, Unit.KILOMETRE)),
          Unit.KILOMETRE,
          Basis.DRIVEN);

  /** A session at constant power of a 50 kWh battery, over 80 %, with a row every 30 s. */
  private static Session run(String name, double kilowatts, double degrees, double start) {
    int rows = (int) (40 * 3600 / kilowatts / 30) + 1;
    double[] seconds = new double[rows];
    double[] soc = new double[rows];
    double[] power = new double[rows];
    for (int i = 0; i < rows; i++) {
      seconds[i] = 30.0 * i;
      soc[i] = Math.rint(start + seconds[i] * kilowatts / 36 / 50);
      power[i] = kilowatts;
    }
    return Sessions.session()
        .named(name)
        .clockHalfStep(0.5)
        .amount(ConditionItem.AMBIENT_TEMPERATURE, degrees, 0.5)
        .text(ConditionItem.PRECONDITIONED, degrees < 0 ? "no" : "yes")
        .channel(Channel.SOC, 0.5, seconds, soc)
        .channel(Channel.POWER, 0.5, seconds, power)
        .build();
  }

  private static RangeTest drive(String name, double kilowattHours, double degrees, double speed) {
    Map<RangeItem, Estimate> facts = new EnumMap<>(RangeItem.class);
    facts.put(RangeItem.DISTANCE, Estimate.around(300, 0.5));
    facts.put(RangeItem.ENERGY_USED, Estimate.around(kilowattHours, 0.05));
    facts.put(RangeItem.START_SOC, Estimate.around(95, 0.5));
    facts.put(RangeItem.END_SOC, Estimate.around(15, 0.5));
    facts.put(RangeItem.AMBIENT_TEMPERATURE, Estimate.around(degrees, 0.5));
    facts.put(RangeItem.AVERAGE_SPEED, Estimate.around(speed, 0.5));
    return Sessions.rangeTest(name, "Northmoor Finch", facts, HowKnown.DISPLAYED);
  }

  private static ReportResult measured(List<Session> sessions, List<RangeTest> drives) {
    return ReportMetrics.measure(
        PLAN,
        new ReportMetrics.Sessions(
            run("main", 100, 24, 5),
            List.of(),
            List.of(),
            List.of(),
            new Season<>(sessions, drives)),
        List.of(drive("drive", 48, 20, 110)),
        Again.NO);
  }

  private static final ReportResult PAIR =
      measured(
          List.of(run("main", 100, 24, 5), run("cold", 80, -3, 5)),
          List.of(drive("june", 48, 22, 110), drive("january", 60, -4, 98)));

  private static ReportNumber number(ReportResult result, String id) {
    return result.find(id, "main").orElseThrow();
  }

  private static Estimate estimate(ReportResult result, String id) {
    return number(result, id).estimate().orElseThrow();
  }

  /** 80 kW instead of 100 kW: 5/4 of the time for the same charge, 4/5 of the power. */
  @Test
  void a_pair_has_the_ratio_of_cold_to_warm() {
    Estimate time = estimate(PAIR, "season_time_soc_10_80_ratio");
    assertThat(time.value()).isCloseTo(1.25, within(0.01));
    assertThat(time.bounds().contains(1.25)).isTrue();
    assertThat(time.bounds().width()).isLessThan(0.1);
    assertThat(estimate(PAIR, "season_average_power_10_80_ratio").value())
        .isCloseTo(0.8, within(0.005));
    assertThat(estimate(PAIR, "season_time_to_add_100_km_ratio").value())
        .isCloseTo(1.25, within(0.01));
    assertThat(estimate(PAIR, "season_consumption_ratio").value()).isCloseTo(1.25, within(0.001));
    assertThat(estimate(PAIR, "season_driven_range_full_ratio").value())
        .isCloseTo(1, within(0.001));
  }

  /** Bounds of 300 km within 0.5 and of 48 and 60 kWh within 0.05: JCGM 100, 4.3.7 and 5.1.6. */
  @Test
  void relative_variances_add() {
    double relative = Math.hypot(0.5 / 300 + 0.05 / 48, 0.5 / 300 + 0.05 / 60) / Math.sqrt(3);
    assertThat(estimate(PAIR, "season_consumption_ratio").bounds().width() / 2)
        .isCloseTo(1.96 * relative * 1.25, within(2e-5));
  }

  /** Drives of known consumption and range, read from displays that round to nearest. */
  @Test
  void intervals_contain_the_ratio_of_drives_in_at_least_95_per_cent() {
    Random random = new Random(11);
    Session main = run("main", 100, 24, 5);
    int count = 4000;
    int consumption = 0;
    int range = 0;
    for (int i = 0; i < count; i++) {
      List<RangeTest> pair = new ArrayList<>();
      double[] use = {150 + 30 * random.nextDouble(), 180 + 80 * random.nextDouble()};
      for (double wattHours : use) {
        double kilometres = 40 + 200 * random.nextDouble();
        double start = 85 + 14 * random.nextDouble();
        double used = kilometres * wattHours / 600;
        Map<RangeItem, Estimate> facts = new EnumMap<>(RangeItem.class);
        facts.put(RangeItem.DISTANCE, Estimate.around(Math.rint(kilometres), 0.5));
        facts.put(
            RangeItem.ENERGY_USED,
            Estimate.around(Math.rint(kilometres * wattHours / 100) / 10, 0.05));
        facts.put(RangeItem.START_SOC, Estimate.around(Math.rint(start), 0.5));
        facts.put(RangeItem.END_SOC, Estimate.around(Math.rint(start - used), 0.5));
        facts.put(RangeItem.AMBIENT_TEMPERATURE, Estimate.around(20 - 20 * pair.size(), 0.5));
        pair.add(
            Sessions.rangeTest(
                "drive" + pair.size(), "Northmoor Finch", facts, HowKnown.DISPLAYED));
      }
      Numbers numbers =
          new SeasonMetrics(PLAN, main, List.of(), 0, 0).measure(new Season<>(List.of(), pair));
      double truth = use[1] / use[0];
      consumption += inside(numbers, "season_consumption_ratio", truth);
      range += inside(numbers, "season_driven_range_full_ratio", 1 / truth);
    }
    assertThat((double) consumption / count).as("consumption").isBetween(0.95, 0.999);
    assertThat((double) range / count).as("range").isBetween(0.95, 0.999);
  }

  private static int inside(Numbers numbers, String id, double truth) {
    return numbers.estimate(id).orElseThrow().bounds().contains(truth) ? 1 : 0;
  }

  private static double sq(double x) {
    return x * x;
  }

  @Test
  void temperatures_and_other_differing_conditions_are_stated() {
    ReportNumber time = number(PAIR, "season_time_soc_10_80_ratio");
    assertThat(time.label()).endsWith("-3\u00a0\u00b0C over 24\u00a0\u00b0C");
    assertThat(time.cautions())
        .containsExactly(
            "cold at -3\u00a0\u00b0C over main at 24\u00a0\u00b0C; they differ in preconditioned.",
            "How much runs differ by themselves was not measured and is not in the intervals.");
    assertThat(number(PAIR, "season_consumption_ratio").cautions().get(0))
        .isEqualTo(
            "january at -4\u00a0\u00b0C over june at 22\u00a0\u00b0C; they differ in average speed.");
    assertThat(time.origin().rows()).isNotEmpty();
    assertThat(PAIR.main().numbers().with(Role.SEASON)).hasSize(5);
  }

  @Test
  void different_starts_withhold_only_the_time_for_a_distance() {
    ReportResult apart =
        measured(List.of(run("warm", 100, 24, 2), run("cold", 80, -3, 9)), List.of());
    assertThat(number(apart, "season_time_to_add_100_km_ratio").withheld().orElseThrow())
        .startsWith("the sessions did not begin at like states of charge");
    assertThat(number(apart, "season_time_soc_10_80_ratio").estimate()).isPresent();
    assertThat(apart.find("season_consumption_ratio", "main")).isEmpty();
  }

  /**
   * Ratios 1.25, 1.15, and 1.2 have the mean 1.2 and the standard deviation 0.05; t(2) = 4.3027.
   */
  @Test
  void several_pairs_have_a_mean_with_students_interval() {
    ReportResult three =
        measured(
            List.of(),
            List.of(
                drive("w1", 48, 22, 110), drive("c1", 60, -4, 110),
                drive("w2", 48, 20, 110), drive("c2", 55.2, -2, 110),
                drive("w3", 48, 25, 110), drive("c3", 57.6, 1, 110)));
    Estimate mean = estimate(three, "season_consumption_ratio");
    assertThat(mean.value()).isCloseTo(1.2, within(0.001));
    assertThat(mean.bounds().width() / 2).isCloseTo(4.3027 * 0.05 / Math.sqrt(3), within(0.003));
    assertThat(estimate(three, "season_2_consumption_ratio").value())
        .isCloseTo(1.15, within(0.001));
    assertThat(number(three, "season_consumption_ratio").method()).isEqualTo(Method.SEASON_MEAN);
    // Two pairs with ratios 0.1 apart have an uncertainty of 12.7 * 0.05 of their mean.
    ReportResult two =
        measured(
            List.of(),
            List.of(
                drive("w1", 48, 22, 110), drive("c1", 60, -4, 110),
                drive("w2", 48, 20, 110), drive("c2", 55.2, -2, 110)));
    assertThat(number(two, "season_consumption_ratio").withheld().orElseThrow())
        .startsWith("its interval would reach beyond half");
  }

  /**
   * True times of 1200 s and 1500 s with normal errors and, in a second count, spread between runs.
   */
  @Test
  void intervals_contain_the_ratio_of_times_in_95_per_cent() {
    assertThat(share(0.02, 0.05, 0, 0)).isBetween(0.945, 0.955);
    assertThat(share(0.01, 0.01, 0.03, 0)).isBetween(0.945, 0.955);
    // A drive that changes both times by 4 % cancels.
    assertThat(share(0.01, 0.02, 0, 0.04)).isBetween(0.945, 0.955);
    assertThat(share(0.1, 0.1, 0, 0)).isBetween(0.935, 0.96);
  }

  private static double share(double warm, double cold, double run, double drive) {
    Random random = new Random(7);
    int count = 40_000;
    int inside = 0;
    for (int i = 0; i < count; i++) {
      double both = 1 + drive * random.nextGaussian();
      double w = 1200 * both * (1 + Math.hypot(warm, run) * random.nextGaussian());
      double c = 1500 * both * (1 + Math.hypot(cold, run) * random.nextGaussian());
      SeasonMetrics.Ratio ratio =
          SeasonMetrics.ratio(time(w, warm, drive), time(c, cold, drive), 1.96 * run, drive > 0);
      inside += Interval.around(ratio.value(), ratio.half95()).contains(1.25) ? 1 : 0;
    }
    return (double) inside / count;
  }

  private static ReportNumber time(double seconds, double readings, double drive) {
    double relative = Math.hypot(readings, drive);
    Contribution ofDrive =
        new Contribution(UncertaintySource.RANGE_SOC, drive * seconds, sq(drive / relative));
    return new ReportNumber(
        Metric.charging("time", "Time", Unit.SECOND, Method.TIME_TO_ADD_BY_SHARE),
        new Outcome.Measured(
            Estimate.around(seconds, 1.959964 * relative * seconds), 0.95, List.of(ofDrive)),
        new Origin("main", List.of()),
        List.of());
  }
}
