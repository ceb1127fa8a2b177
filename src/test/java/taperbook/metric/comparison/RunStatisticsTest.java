package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import taperbook.metric.fit.Quantiles;
import taperbook.quantity.Estimate;

/** Compares with SciPy ({@code reference/runs/SOURCE.md}) and closed forms. */
final class RunStatisticsTest {
  private static final List<Double> TWO = List.of(21.5, 22.1);
  private static final List<Double> THREE = List.of(117.2, 119.6, 115.5);
  private static final List<Double> FIVE = List.of(6.48, 6.31, 6.6, 6.42, 6.55);

  @ParameterizedTest
  @CsvFileSource(resources = "/reference/runs/expected.csv", numLinesToSkip = 1)
  void quantiles_and_intervals_are_those_of_scipy(
      String what, int degrees, double share, double value) {
    if (what.equals("t")) {
      assertThat(Quantiles.student95(degrees)).isCloseTo(value, within(1e-9 * value));
    } else if (what.equals("chi2")) {
      assertThat(Quantiles.chiSquare(share, degrees)).isCloseTo(value, within(1e-9 * value));
    } else {
      List<Double> group = what.endsWith("two") ? TWO : what.endsWith("three") ? THREE : FIVE;
      RunStatistics runs = exact(group);
      double ours =
          what.startsWith("spread")
              ? runs.spread().value()
              : what.startsWith("mean_low")
                  ? runs.meanOfAll().bounds().low()
                  : runs.meanOfAll().bounds().high();
      assertThat(ours).isCloseTo(value, within(1e-9 * value));
    }
  }

  /** For two values, s is their distance over the root of 2, and t(1) = tan(0.475 pi). */
  @Test
  void two_runs_agree_with_the_closed_form() {
    double s = 0.6 / Math.sqrt(2);
    double t = Math.tan(0.475 * Math.PI);
    RunStatistics runs = exact(TWO);

    assertThat(runs.spread().value()).isCloseTo(s, within(1e-12));
    assertThat(half(runs.meanOfAll())).isCloseTo(t * s / Math.sqrt(2), within(1e-9));
    assertThat(half(runs.nextRun())).isCloseTo(t * s * Math.sqrt(1.5), within(1e-9));
    assertThat(runs.halfBeyondReadings()).isCloseTo(t * s, within(1e-9));
  }

  @Test
  void the_variance_due_to_readings_is_subtracted_from_the_spread() {
    RunStatistics runs = new RunStatistics(THREE, List.of(1.0, 1.0, 2.0), 0, 0);
    double squared = Math.pow(runs.spread().value(), 2);

    assertThat(runs.beyondReadings().value()).isCloseTo(Math.sqrt(squared - 2), within(1e-12));
    assertThat(new RunStatistics(THREE, List.of(3.0, 3.0, 3.0), 0, 0).beyondReadings().value())
        .isZero();
  }

  @Test
  void equal_values_have_the_interval_of_a_step() {
    RunStatistics runs = new RunStatistics(List.of(5.0, 5.0), List.of(0.29, 0.29), 0, 0.5);

    assertThat(half(runs.meanOfAll())).isEqualTo(0.5);
    assertThat(runs.halfBeyondReadings()).isZero();
  }

  @Test
  void the_common_uncertainty_of_all_runs_is_added_in_quadrature() {
    RunStatistics runs = new RunStatistics(FIVE, Collections.nCopies(5, 0.0), 0.1, 0);

    assertThat(half(runs.meanOfAll()))
        .isCloseTo(Math.hypot(half(exact(FIVE).meanOfAll()), 0.1959964), within(1e-6));
  }

  @Test
  void an_interval_does_not_reach_below_zero() {
    assertThat(exact(List.of(1.0, 9.0)).nextRun().bounds().low()).isZero();
  }

  @Test
  void an_interval_of_zero_does_not_reach_below_it_but_one_of_a_loss_does() {
    assertThat(exact(List.of(-1.0, 1.0)).nextRun().bounds().low()).isZero();
    // The mean -2, with s = root of 2 and t(1) = tan(0.475 pi).
    assertThat(exact(List.of(-3.0, -1.0)).meanOfAll().bounds().low())
        .isCloseTo(-2 - Math.tan(0.475 * Math.PI), within(1e-9));
  }

  @Test
  void a_single_run_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> exact(List.of(1.0)));
  }

  private static RunStatistics exact(List<Double> values) {
    return new RunStatistics(values, Collections.nCopies(values.size(), 0.0), 0, 0);
  }

  private static double half(Estimate estimate) {
    return estimate.bounds().width() / 2;
  }
}
