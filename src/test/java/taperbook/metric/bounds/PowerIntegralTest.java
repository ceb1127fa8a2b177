package taperbook.metric.bounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Method;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * Energy of a power that falls from 100 kW to 60 kW in half an hour and is constant for another
 * half hour: trapezoids of 40 kWh and 30 kWh. Bounds are the rectangles of the lower and the higher
 * reading of each gap, each with half a step.
 */
final class PowerIntegralTest {
  private static final double STEP = 0.5;

  private static PowerIntegral integral(double clockHalfStep) {
    double[] seconds = {0, 1800, 3600};
    double[] kilowatts = {100, 60, 60};
    return new PowerIntegral(
        new Trace("r", seconds, kilowatts, new int[] {2, 3, 5}, STEP, clockHalfStep));
  }

  @Test
  void energy_is_the_sum_of_trapezoids_bounded_by_the_sums_of_rectangles() {
    check(integral(0).between(0, 3600), 70, 0.5 * (59.5 + 59.5), 0.5 * (100.5 + 60.5));
  }

  @Test
  void a_stretch_within_a_gap_has_its_fraction_of_the_rectangles() {
    // From 80 kW, halfway down, to 60 kW in a quarter of an hour.
    check(integral(0).between(900, 1800), 17.5, 59.5 / 4, 100.5 / 4);
    check(integral(0).between(900, 2700), 17.5 + 15, (59.5 + 59.5) / 4, (100.5 + 60.5) / 4);
  }

  @Test
  void each_end_may_be_off_by_half_a_clock_step_at_the_highest_nearby_power() {
    double clock = 2 * 9 * 100.5 / 3600;
    check(integral(9).between(0, 3600), 70, 59.5 - clock, 80.5 + clock);
    // 9 s after half an hour the power may be that of the first gap.
    double hours = 1795 / 3600.0;
    check(integral(9).between(1805, 3600), 60 * hours, 59.5 * hours - clock, 60.5 * hours + clock);
    double calm = 2 * 9 * 60.5 / 3600;
    check(integral(9).between(2700, 3600), 15, 14.875 - calm, 15.125 + calm);
  }

  @Test
  void a_stretch_of_zero_length_has_zero_energy() {
    check(integral(0).between(1800, 1800), 0, 0, 0);
  }

  @Test
  void the_origin_is_the_rows_around_the_stretch() {
    PowerIntegral integral = integral(0);
    assertThat(integral.rows(900, 1800)).containsExactly(row(2), row(3));
    assertThat(integral.rows(900, 1801)).containsExactly(row(2), row(3), row(5));
    assertThat(integral.rows(1800, 3600)).containsExactly(row(3), row(5));
  }

  @Test
  void it_covers_the_time_between_its_readings() {
    PowerIntegral integral = integral(0);
    assertThat(integral.method()).isEqualTo(Method.ENERGY_INTEGRAL);
    assertThat(integral.span()).isEqualTo(new Interval(0, 3600));
    assertThat(integral.covers(0, 3600)).isTrue();
    assertThat(integral.covers(-1, 3600)).isFalse();
    assertThat(integral.covers(0, 3601)).isFalse();
    assertThat(integral.clamp(-1)).isZero();
    assertThat(integral.clamp(1700)).isEqualTo(1700);
    assertThat(integral.clamp(3601)).isEqualTo(3600);
  }

  @Test
  void a_single_reading_is_refused() {
    Trace one = new Trace("r", new double[] {0}, new double[] {50}, new int[] {2}, 0, 0);
    assertThatIllegalArgumentException().isThrownBy(() -> new PowerIntegral(one));
  }

  private static RowRef row(int line) {
    return new RowRef("r", line);
  }

  private static void check(Estimate estimate, double value, double low, double high) {
    assertThat(estimate.value()).isCloseTo(value, within(1e-9));
    assertThat(estimate.bounds().low()).isCloseTo(low, within(1e-9));
    assertThat(estimate.bounds().high()).isCloseTo(high, within(1e-9));
  }
}
