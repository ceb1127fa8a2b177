package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import taperbook.quantity.Estimate;
import taperbook.session.Trace;

final class TimeShareTest {
  private static Trace power(double halfStep, double clockHalfStep) {
    return new Trace(
        "readings.csv",
        new double[] {0, 100, 200, 300, 400},
        new double[] {80, 120, 120, 80, 40},
        new int[] {2, 3, 4, 5, 6},
        halfStep,
        clockHalfStep);
  }

  @Test
  void the_line_between_readings_is_divided_at_the_level() {
    Estimate share = new TimeShare(power(0, 0), 400).atLeast(100);
    // 50 s of the first gap, all of the second, 50 s of the third: 200 s of 400 s.
    assertThat(share.value()).isCloseTo(50, within(1e-9));
    // Certainly only the second gap; possibly the first three.
    assertThat(share.bounds().low()).isCloseTo(25, within(1e-9));
    assertThat(share.bounds().high()).isCloseTo(75, within(1e-9));
  }

  @Test
  void a_reading_at_the_level_is_undecided_within_its_rounding() {
    Estimate share = new TimeShare(power(0.5, 0), 400).atLeast(120);
    assertThat(share.value()).isCloseTo(25, within(1e-9));
    assertThat(share.bounds().low()).isZero();
    assertThat(share.bounds().high()).isCloseTo(75, within(1e-9));
  }

  @Test
  void a_level_that_is_never_reached_has_a_share_of_zero() {
    Estimate share = new TimeShare(power(0.5, 1), 400).atLeast(150);
    assertThat(share.value()).isZero();
    assertThat(share.bounds().width()).isZero();
  }

  @Test
  void time_without_readings_may_be_above_the_level() {
    Estimate share = new TimeShare(power(0, 0), 500).atLeast(100);
    assertThat(share.value()).isCloseTo(50, within(1e-9));
    assertThat(share.bounds().low()).isCloseTo(20, within(1e-9));
    assertThat(share.bounds().high()).isCloseTo(80, within(1e-9));
  }

  @Test
  void the_clock_step_shifts_each_crossing_and_both_ends() {
    Estimate share = new TimeShare(power(0, 1), 400).atLeast(100);
    // At least 100 s minus 1 s at each end; the remainder is 100 s and 200 s, plus 1 s at each end.
    assertThat(share.bounds().low()).isCloseTo(100 * 98 / 402.0, within(1e-9));
    // At most the first 300 s and 2 s; the remainder is 100 s minus 2 s.
    assertThat(share.bounds().high()).isCloseTo(100 * 302 / 400.0, within(1e-9));
  }

  @Test
  void a_session_entirely_above_the_level_does_not_depend_on_the_clock() {
    Estimate share = new TimeShare(power(0.5, 1), 400).atLeast(30);
    assertThat(share.value()).isEqualTo(100);
    assertThat(share.bounds().low()).isEqualTo(100);
    assertThat(share.bounds().high()).isEqualTo(100);
  }

  @Test
  void a_session_shorter_than_its_readings_is_refused() {
    assertThatThrownBy(() -> new TimeShare(power(0, 0), 399))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("400.0 s of power in 399.0 s");
  }

  @Test
  void readings_that_begin_later_count_from_their_first() {
    Trace later =
        new Trace(
            "readings.csv",
            new double[] {100, 200, 300, 400, 500},
            new double[] {80, 120, 120, 80, 40},
            new int[] {2, 3, 4, 5, 6},
            0,
            0);
    Estimate share = new TimeShare(later, 400).atLeast(100);
    assertThat(share.value()).isCloseTo(50, within(1e-9));
    assertThat(share.bounds().low()).isCloseTo(25, within(1e-9));
    assertThat(share.bounds().high()).isCloseTo(75, within(1e-9));
    assertThatThrownBy(() -> new TimeShare(later, 399))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void readings_without_duration_are_refused() {
    double[] once = {0, 0};
    Trace none = new Trace("readings.csv", once, new double[] {80, 80}, new int[] {2, 3}, 0, 0);
    assertThatThrownBy(() -> new TimeShare(none, 10)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_constant_power_at_the_level_is_at_or_above_it() {
    double[] seconds = {0, 100};
    Trace flat = new Trace("readings.csv", seconds, new double[] {80, 80}, new int[] {2, 3}, 0, 0);
    assertThat(new TimeShare(flat, 100).atLeast(80)).isEqualTo(Estimate.exactly(100));
    assertThat(new TimeShare(flat, 100).atLeast(80.1)).isEqualTo(Estimate.exactly(0));
  }
}
