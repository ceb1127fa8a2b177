package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import taperbook.quantity.Interval;

/** A course of 1 % in 30 s and a drive of 400 km, rated at 500 km. */
final class DrawTest {
  private static final Draw DRAW =
      new Draw(
          new Course(
              new double[] {0, 600, 1200},
              new double[] {0, 12, 24},
              new double[] {10, 30, 50},
              new double[] {72, 72}),
          new Drive(400, 160, 500, 0.25),
          0.5,
          0.5);

  @Test
  void the_true_charge_is_lower_by_the_offset_of_the_display() {
    assertThat(DRAW.trueChargeAt(300)).isCloseTo(19.5, within(1e-9));
  }

  @Test
  void a_time_between_two_charges_is_never_negative() {
    assertThat(DRAW.seconds(20, 45)).isCloseTo(750, within(1e-9));
    assertThat(DRAW.seconds(45, 20)).isZero();
    assertThat(DRAW.seconds(40, 60)).isCloseTo(600, within(1e-9));
  }

  @Test
  void a_distance_is_a_share_of_the_driven_or_rated_range() {
    assertThat(DRAW.share(100)).isEqualTo(25);
    assertThat(DRAW.ratedShare(100)).isEqualTo(20);
  }

  @Test
  void a_speed_is_drawn_within_its_bounds() {
    assertThat(DRAW.drive().speedWithin(new Interval(100, 104))).isEqualTo(101);
  }
}
