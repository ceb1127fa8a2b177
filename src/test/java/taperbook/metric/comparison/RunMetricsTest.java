package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import taperbook.i18n.Message;
import taperbook.metric.fit.Quantiles;
import taperbook.metric.recording.MetricCollector;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Contribution;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.result.Runs.Spread;
import taperbook.result.UncertaintySource;
import taperbook.session.Caveat;
import taperbook.session.Origin;
import taperbook.session.RowRef;

/**
 * Numbers of two runs, whose statistics have a closed form: s = |x1 - x2| / sqrt(2), and t(1) =
 * tan(0.475 pi).
 */
final class RunMetricsTest {
  private static final String ID = "average_power_10_80";
  private static final double T = Math.tan(0.475 * Math.PI);

  private static ReportNumber number(double value, double half, Contribution... budget) {
    return new ReportNumber(
        Metric.charging(ID, "Average power", Unit.KILOWATT, Method.TIME_AVERAGE),
        new Outcome.Measured(Estimate.around(value, half), 0.95, List.of(budget)),
        new Origin("run", List.of(new RowRef("r", 2))),
        List.of());
  }

  private static ReportNumber bounds(double value, double half) {
    return new ReportNumber(
        number(value, half).metric(),
        new Outcome.Measured(Estimate.around(value, half), 1),
        new Origin("run", List.of()),
        List.of());
  }

  private static MetricCollector entered(ReportNumber... runs) {
    MetricCollector collector = new MetricCollector("run", List.of());
    spread(collector, runs);
    return collector;
  }

  private static Spread spread(MetricCollector collector, ReportNumber... runs) {
    List<Numbers> all = Arrays.stream(runs).map(n -> new Numbers(List.of(n))).toList();
    return new RunMetrics(all, List.of(), collector).add(List.of(ID), ID);
  }

  private static Estimate estimate(MetricCollector collector, String ending) {
    return collector.numbers().estimate(ID + ending).orElseThrow();
  }

  @Test
  void mean_and_next_run_have_students_interval() {
    double s = 6 / Math.sqrt(2);
    MetricCollector collector = entered(number(1000, 1e-6), number(1006, 1e-6));
    check(estimate(collector, "_mean"), 1003, T * s / Math.sqrt(2));
    check(estimate(collector, "_next_run"), 1003, T * s * Math.sqrt(1.5));
  }

  @Test
  void the_spread_has_the_chi_square_interval_with_one_degree_of_freedom() {
    double s = 6 / Math.sqrt(2);
    Estimate spread = estimate(entered(number(1000, 1e-6), number(1006, 1e-6)), "_run_spread");
    assertThat(spread.value()).isCloseTo(s, within(1e-9));
    // With one degree of freedom, chi-square is the square of a normal quantile.
    assertThat(spread.bounds().low()).isCloseTo(s / 2.241402727604947, within(1e-6));
    assertThat(spread.bounds().high()).isCloseTo(s / 0.03133798202142661, within(1e-6));
  }

  @Test
  void the_variance_due_to_readings_is_subtracted() {
    double u = 2;
    double half = u * Quantiles.NORMAL_95;
    MetricCollector collector = entered(number(1000, half), number(1006, half));
    Estimate beyond = estimate(collector, "_run_to_run");
    assertThat(beyond.value()).isCloseTo(Math.sqrt(18 - u * u), within(1e-9));
    // The chi-square interval of the spread, s / 2.24 and s / 0.031, without the variance of the
    // readings.
    assertThat(beyond.bounds().low()).isZero();
    assertThat(beyond.bounds().high())
        .isCloseTo(Math.sqrt(18 / Math.pow(0.03133798202142661, 2) - u * u), within(1e-6));
  }

  @Test
  void the_uncertainty_of_the_drive_is_common_to_all_runs() {
    double u = 2;
    Contribution drive = new Contribution(UncertaintySource.RANGE_DISTANCE, 1.2, 0.36);
    Contribution display = new Contribution(UncertaintySource.POWER_DISPLAY, 1.6, 0.64);
    ReportNumber one = number(1000, u * Quantiles.NORMAL_95, drive, display);
    ReportNumber other = number(1006, u * Quantiles.NORMAL_95, drive, display);
    assertThat(RunMetrics.driveShare(one)).isEqualTo(0.36);
    MetricCollector collector = entered(one, other);
    // 36 % of u^2 is common, and 64 % is independent for each run.
    double half = Math.hypot(T * 3, Quantiles.NORMAL_95 * 0.6 * u);
    check(estimate(collector, "_mean"), 1003, half);
    assertThat(estimate(collector, "_run_to_run").value())
        .isCloseTo(Math.sqrt(18 - 0.64 * u * u), within(1e-9));
  }

  @Test
  void equal_readings_of_a_display_have_an_uncertainty_of_half_its_step() {
    check(estimate(entered(bounds(50, 0.5), bounds(50, 0.5)), "_mean"), 50, 0.5);
  }

  @Test
  void a_standard_uncertainty_is_that_of_its_distribution() {
    assertThat(RunMetrics.standardUncertainty(number(100, 1.959963984540054)))
        .isCloseTo(1, within(1e-12));
    assertThat(RunMetrics.standardUncertainty(bounds(100, Math.sqrt(3))))
        .isCloseTo(1, within(1e-12));
  }

  @Test
  void the_share_of_a_run_is_its_spread_beyond_its_readings() {
    Spread spread =
        spread(new MetricCollector("run", List.of()), number(1000, 1e-6), number(1006, 1e-6));
    assertThat(spread.power()).isCloseTo(T * 6 / Math.sqrt(2) / 1003, within(1e-6));
  }

  @Test
  void a_single_run_has_no_statistics_and_two_runs_have_a_caveat() {
    ReportNumber withheld =
        new ReportNumber(
            number(1, 1).metric(),
            new Outcome.Withheld(Message.verbatim("not read")),
            new Origin("run", List.of()),
            List.of());
    assertThat(entered(number(1000, 1), withheld).numbers().all())
        .hasSize(4)
        .allMatch(n -> n.withheld().isPresent());
    assertThat(entered(number(1000, 1), number(1006, 1)).numbers().all())
        .hasSize(4)
        .allMatch(n -> n.caveats().stream().anyMatch(c -> c.kind() == Caveat.Kind.REPEATS));
    assertThat(entered(number(1000, 1), number(1006, 1), number(1003, 1)).numbers().all())
        .hasSize(4)
        .allMatch(n -> n.caveats().isEmpty());
  }

  @Test
  void without_the_power_the_greatest_spread_counts() {
    MetricCollector collector = new MetricCollector("run", List.of());
    List<Numbers> all =
        List.of(new Numbers(List.of(number(1000, 1e-6))), new Numbers(List.of(number(1006, 1e-6))));
    Spread spread = new RunMetrics(all, List.of(), collector).add(List.of(ID), "not_measured");
    assertThat(spread.power()).isCloseTo(T * 6 / Math.sqrt(2) / 1003, within(1e-6));
  }

  @Test
  void a_mean_of_zero_has_no_share() {
    assertThat(
            spread(new MetricCollector("run", List.of()), number(-1, 0.1), number(1, 0.1)).power())
        .isZero();
  }

  @Test
  void its_numbers_have_the_rows_of_all_runs() {
    assertThat(entered(number(1000, 1), number(1006, 1)).numbers().all())
        .hasSize(4)
        .allMatch(n -> n.origin().rows().contains(new RowRef("r", 2)));
  }

  @Test
  void a_stated_standard_deviation_becomes_half_a_95_percent_interval() {
    Spread spread =
        RunMetrics.stated(Optional.of(new ReportPlan.RunSpread(0.02, "a laboratory")))
            .orElseThrow();
    assertThat(spread.power()).isCloseTo(0.0391992797, within(1e-9));
    assertThat(spread.source()).isEqualTo("a laboratory");
    assertThat(RunMetrics.stated(Optional.empty())).isEmpty();
  }

  private static void check(Estimate estimate, double value, double half) {
    assertThat(estimate.value()).isCloseTo(value, within(1e-9));
    assertThat(estimate.bounds().low()).isCloseTo(value - half, within(1e-6));
    assertThat(estimate.bounds().high()).isCloseTo(value + half, within(1e-6));
  }
}
