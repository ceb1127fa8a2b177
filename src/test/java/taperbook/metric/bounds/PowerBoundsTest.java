package taperbook.metric.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import taperbook.metric.bounds.PowerIntegral.PowerBounds;
import taperbook.quantity.Interval;
import taperbook.session.Trace;

/** The lowest and the highest reading around a stretch with half a step, by hand. */
final class PowerBoundsTest {
  private static PowerBounds bounds(double clockHalfStep) {
    double[] seconds = {0, 10, 20, 30};
    double[] kilowatts = {50, 80, 60, 40};
    return new PowerBounds(
        new Trace("r", seconds, kilowatts, new int[] {2, 3, 4, 5}, 0.5, clockHalfStep));
  }

  @Test
  void power_is_between_the_readings_around_a_stretch() {
    assertThat(bounds(0).over(12, 18)).isEqualTo(new Interval(59.5, 80.5));
    assertThat(bounds(0).over(2, 18)).isEqualTo(new Interval(49.5, 80.5));
    assertThat(bounds(0).over(22, 28)).isEqualTo(new Interval(39.5, 60.5));
  }

  @Test
  void a_stretch_is_clipped_to_the_readings() {
    assertThat(bounds(0).over(-5, 100)).isEqualTo(new Interval(39.5, 80.5));
    assertThat(bounds(0).over(-9, -5)).isEqualTo(new Interval(49.5, 80.5));
    assertThat(bounds(0).over(40, 50)).isEqualTo(new Interval(39.5, 40.5));
  }

  @Test
  void half_a_step_of_the_clock_is_added_to_both_ends() {
    assertThat(bounds(5).over(12, 18)).isEqualTo(new Interval(39.5, 80.5));
    assertThat(bounds(1).over(12, 18)).isEqualTo(new Interval(59.5, 80.5));
  }
}
