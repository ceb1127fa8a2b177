package taperbook.measure.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import taperbook.model.Trace;

/** The definition of the hold, by hand on small cases. */
final class HoldTest {
  private static Trace power(double halfStep, double... values) {
    double[] seconds = new double[values.length];
    int[] lines = new int[values.length];
    for (int i = 0; i < values.length; i++) {
      seconds[i] = 60 * i;
      lines[i] = i + 2;
    }
    return new Trace("r", seconds, values, lines, halfStep, 0);
  }

  @Test
  void two_per_cent_of_the_peak_counts_where_the_display_is_finer() {
    // Peak 150, threshold 147. In at 60 s (crossing 100 -> 150 at 94 % of the gap) and out on the
    // way from 150 to 130 after 15 % of the gap that begins at 180 s.
    Hold hold = Hold.longest(power(0.5, 100, 150, 149, 150, 130));
    assertThat(hold.from().value()).isCloseTo(60 * 0.94, within(1e-9));
    assertThat(hold.to().value()).isCloseTo(180 + 60 * 0.15, within(1e-9));
    assertThat(hold.duration().value()).isCloseTo(189 - 56.4, within(1e-9));
  }

  @Test
  void one_display_step_counts_where_it_is_coarser_than_two_per_cent() {
    // Steps of 10 kW: threshold 140. The whole of 140, 150, 140 is inside.
    Hold hold = Hold.longest(power(5, 120, 140, 150, 140, 120));
    assertThat(hold.from().value()).isEqualTo(60);
    assertThat(hold.to().value()).isEqualTo(180);
  }

  @Test
  void the_least_is_between_readings_surely_inside_and_the_most_between_those_surely_outside() {
    Hold hold = Hold.longest(power(0.5, 100, 150, 149, 150, 130));
    // Surely inside means at least 147 + 1 kW: readings at 60, 120 and 180 s.
    assertThat(hold.duration().bounds().low()).isEqualTo(120);
    // Surely outside means below 147 - 1 kW: readings at 0 and 240 s.
    assertThat(hold.duration().bounds().high()).isEqualTo(240);
  }

  @Test
  void a_dip_breaks_the_hold_and_the_longer_part_counts() {
    Hold hold = Hold.longest(power(0.5, 150, 150, 120, 150, 150, 150, 90));
    assertThat(hold.from().value()).isGreaterThan(120);
    assertThat(hold.duration().bounds().low()).isEqualTo(120);
  }

  @Test
  void a_single_reading_at_the_peak_may_have_been_held_for_no_time() {
    Hold hold = Hold.longest(power(0.5, 100, 150, 100));
    assertThat(hold.duration().bounds().low()).isZero();
    assertThat(hold.duration().bounds().high()).isEqualTo(120);
    assertThat(hold.duration().value()).isCloseTo(7.2, within(1e-9));
  }

  @Test
  void a_session_at_one_power_holds_it_throughout() {
    Hold hold = Hold.longest(power(0.5, 50, 50, 50));
    assertThat(hold.duration().value()).isEqualTo(120);
    assertThat(hold.rows()).hasSize(3);
  }
}
