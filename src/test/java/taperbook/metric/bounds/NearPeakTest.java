package taperbook.metric.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.session.Trace;

/** A step of the display or 2 % of the peak, whichever is greater. */
final class NearPeakTest {
  @ParameterizedTest
  @CsvSource({"150, 0.5, 3", "40, 0.5, 1", "100, 2, 4"})
  void the_tolerance_is_the_greater_of_both(double peak, double halfStep, double tolerance) {
    double[] kilowatts = {peak / 2, peak, peak / 3};
    Trace power =
        new Trace("r", new double[] {0, 1, 2}, kilowatts, new int[] {2, 3, 4}, halfStep, 0);
    assertThat(NearPeak.tolerance(power)).isEqualTo(tolerance);
  }

  /** A tolerance of 2 kW, which is eight times 0.25 kW. */
  @ParameterizedTest
  @CsvSource({"0, true", "0.2, true", "0.3, false"})
  void a_log_is_steady_if_its_fluctuation_is_an_eighth_of_the_tolerance(
      double noise, boolean steady) {
    assertThat(NearPeak.isSteady(RowScatterTest.log(t -> 100, noise))).isEqualTo(steady);
  }
}
