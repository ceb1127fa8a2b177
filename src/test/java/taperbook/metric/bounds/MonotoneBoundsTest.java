package taperbook.metric.bounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import taperbook.quantity.Interval;

/** Bounds by hand, by the two rules of the class. */
final class MonotoneBoundsTest {
  private static MonotoneBounds bounds(double clockHalfStep, double[] seconds, double... values) {
    return new MonotoneBounds(seconds, values, 0.5, clockHalfStep);
  }

  /** 10, 20, and 30 in steps of 1: 9 to 11 per 100 s in each gap. */
  private static MonotoneBounds steady(double clockHalfStep) {
    return bounds(clockHalfStep, new double[] {0, 100, 200}, 10, 20, 30);
  }

  @Test
  void at_a_reading_the_true_value_is_within_half_a_step() {
    check(steady(0).at(0), 9.5, 10.5);
    check(steady(0).at(100), 19.5, 20.5);
    check(steady(0).at(200), 29.5, 30.5);
  }

  @Test
  void in_a_gap_it_is_bounded_by_the_slowest_and_the_fastest_rate_from_both_ends() {
    // 50 s after 9.5 to 10.5 at 4.5 to 5.5 per 50 s, and the same time before 19.5 to 20.5.
    check(steady(0).at(50), 14, 16);
    check(steady(0).at(25), 9.5 + 2.25, 10.5 + 2.75);
    check(steady(0).at(75), 19.5 - 2.75, 20.5 - 2.25);
  }

  @Test
  void outside_the_readings_it_is_that_of_the_nearest_reading() {
    check(steady(0).at(-10), 9.5, 10.5);
    check(steady(0).at(300), 29.5, 30.5);
  }

  @Test
  void a_coarse_clock_shifts_each_time_and_widens_each_rate() {
    // At 45 s and 55 s, at 9 per 110 s and 11 per 90 s.
    check(steady(5).at(50), 9.5 + 45 * 9 / 110.0, 20.5 - 45 * 9 / 110.0);
    check(steady(5).at(-4), 9.5, 10.5 + 11 / 90.0);
  }

  @Test
  void rates_are_those_of_the_gap_and_both_adjacent_gaps() {
    // Slowest 9, 19, and 0 per 100 s, fastest 11, 21, and 2 per 100 s.
    MonotoneBounds bounds = bounds(0, new double[] {0, 100, 200, 300}, 0, 10, 30, 31);
    check(bounds.at(50), -0.5 + 4.5, 10.5 - 4.5);
    check(bounds.at(150), 29.5 - 10.5, 10.5 + 10.5);
    check(bounds.at(250), 29.5, 31.5);
  }

  @Test
  void a_monotone_quantity_is_above_earlier_and_below_later_readings() {
    MonotoneBounds bounds = bounds(0, new double[] {0, 100}, 10, 9.6);
    check(bounds.at(0), 9.5, 10.1);
    check(bounds.at(100), 9.5, 10.1);
  }

  @Test
  void a_fall_of_more_than_a_step_allows_both_readings() {
    MonotoneBounds bounds = bounds(0, new double[] {0, 100}, 10, 8);
    check(bounds.at(0), 8.5, 9.5);
    check(bounds.at(100), 8.5, 9.5);
  }

  @Test
  void the_later_of_two_simultaneous_readings_is_used() {
    MonotoneBounds bounds = bounds(0, new double[] {0, 100, 100, 200}, 10, 20, 21, 30);
    check(bounds.at(100), 20.5, 21.5);
  }

  @Test
  void a_single_reading_bounds_all_times() {
    check(bounds(0, new double[] {5}, 42).at(5), 41.5, 42.5);
    check(bounds(0, new double[] {5}, 42).at(99), 41.5, 42.5);
  }

  private static void check(Interval bounds, double low, double high) {
    assertThat(bounds.low()).isCloseTo(low, within(1e-9));
    assertThat(bounds.high()).isCloseTo(high, within(1e-9));
  }
}
