package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * A course by hand: cells of 100 s at 36, 72, 72, and 18 kW, which are 1, 2, 2, and 0.5 kWh, into
 * 50 kWh, so that 1 kWh is 2 %.
 */
final class CourseTest {
  private static final double[] SECONDS = {0, 100, 200, 300, 400};
  private static final double[] ENERGY = {0, 1, 3, 5, 5.5};
  private static final double[] CHARGE = {10, 12, 16, 20, 21};
  private static final Course COURSE =
      new Course(SECONDS, ENERGY, CHARGE, new double[] {36, 72, 72, 18});

  @Test
  void energy_and_charge_are_linear_within_a_cell() {
    assertThat(COURSE.energyAt(50)).isCloseTo(0.5, within(1e-12));
    assertThat(COURSE.energyAt(250)).isCloseTo(4, within(1e-12));
    assertThat(COURSE.chargeAt(150)).isCloseTo(14, within(1e-12));
    assertThat(COURSE.chargeAt(400)).isCloseTo(21, within(1e-12));
    assertThat(COURSE.firstSecond()).isZero();
    assertThat(COURSE.lastSecond()).isEqualTo(400);
  }

  @Test
  void times_are_the_inverse_of_charge_and_energy() {
    assertThat(COURSE.timeOfCharge(11)).isCloseTo(50, within(1e-9));
    assertThat(COURSE.timeOfCharge(16)).isCloseTo(200, within(1e-9));
    assertThat(COURSE.timeOfEnergy(5.25)).isCloseTo(350, within(1e-9));
    for (double second = 0; second <= 400; second += 12.5) {
      assertThat(COURSE.timeOfCharge(COURSE.chargeAt(second))).isCloseTo(second, within(1e-9));
      assertThat(COURSE.timeOfEnergy(COURSE.energyAt(second))).isCloseTo(second, within(1e-9));
    }
  }

  @Test
  void beyond_an_end_the_adjacent_rate_is_extrapolated() {
    // 1 % in the last 100 s, 2 % in the first.
    assertThat(COURSE.timeOfCharge(21.5)).isCloseTo(450, within(1e-9));
    assertThat(COURSE.timeOfCharge(9)).isCloseTo(-50, within(1e-9));
    assertThat(COURSE.chargeAt(450)).isCloseTo(21.5, within(1e-9));
    assertThat(COURSE.energyAt(-50)).isCloseTo(-0.5, within(1e-9));
  }

  @Test
  void a_charge_that_is_never_reached_has_no_time() {
    Course flat =
        new Course(SECONDS, new double[5], new double[] {10, 10, 10, 10, 10}, new double[4]);
    assertThat(flat.timeOfCharge(11)).isInfinite();
    assertThat(flat.timeOfCharge(10)).isBetween(0.0, 400.0);
  }

  @Test
  void a_pause_is_over_when_the_display_first_shows_the_charge() {
    Course paused =
        new Course(
            SECONDS,
            new double[] {0, 1, 1, 1, 2},
            new double[] {10, 12, 12, 12, 14},
            new double[] {36, 0, 0, 36});
    assertThat(paused.timeOfCharge(12)).isCloseTo(100, within(1e-9));
    assertThat(paused.timeOfCharge(12 + 1e-9)).isCloseTo(300, within(1e-3));
  }

  @Test
  void power_is_linear_between_the_middles_of_the_cells() {
    assertThat(COURSE.powerAt(50)).isCloseTo(36, within(1e-9));
    assertThat(COURSE.powerAt(100)).isCloseTo(54, within(1e-9));
    assertThat(COURSE.powerAt(150)).isCloseTo(72, within(1e-9));
    assertThat(COURSE.powerAt(325)).isCloseTo(72 - 0.75 * 54, within(1e-9));
    assertThat(COURSE.powerAt(0)).isCloseTo(36, within(1e-9));
    assertThat(COURSE.powerAt(400)).isCloseTo(18, within(1e-9));
  }

  @Test
  void mean_power_over_charge_weighs_each_cell_by_its_charge() {
    // Mean weighted by the charge of each cell, with the power at its centre: (36 * 2 + 72 * 4 + 72
    // * 4 + 18 * 1) / 11.
    assertThat(COURSE.meanPowerOverCharge(10, 21)).isCloseTo(666.0 / 11, within(1e-9));
  }

  @Test
  void the_longest_time_above_a_power_is_between_the_crossings() {
    // From 36 kW at 50 s to 72 at 150: 54 at 100 s. From 72 at 250 s to 18 at 350: 54 at 283.3 s.
    assertThat(COURSE.longestAbove(54))
        .containsExactly(new double[] {100, 850.0 / 3}, within(1e-9));
    assertThat(COURSE.lastAbove(54)).isCloseTo(850.0 / 3, within(1e-9));
    assertThat(COURSE.longestAbove(10)).containsExactly(0, 400);
    assertThat(COURSE.lastAbove(10)).isEqualTo(400);
    assertThat(COURSE.longestAbove(100)).containsExactly(0, 0);
    assertThat(COURSE.lastAbove(100)).isZero();
  }

  @Test
  void the_longer_of_two_holds_is_used() {
    Course dip = new Course(SECONDS, ENERGY, CHARGE, new double[] {72, 18, 72, 72});
    // 72 kW at 50 s to 18 at 150 s and back to 72 at 250 s.
    assertThat(dip.longestAbove(45)).containsExactly(new double[] {200, 400}, within(1e-9));
  }

  @Test
  void a_course_of_zero_duration_has_no_numbers() {
    Course none = Course.NONE;
    assertThat(none.timeOfCharge(10)).isNaN();
    assertThat(none.timeOfEnergy(1)).isNaN();
    assertThat(none.chargeAt(0)).isNaN();
    assertThat(none.energyAt(0)).isNaN();
    assertThat(none.powerAt(0)).isNaN();
    assertThat(none.meanPowerOverCharge(10, 20)).isNaN();
    assertThat(none.longestAbove(1)).containsExactly(Double.NaN, Double.NaN);
    assertThat(none.lastAbove(1)).isNaN();
  }

  /** Energies of a counter whose power is a tenth less than that of the display. */
  @Test
  void power_is_that_of_the_display_but_its_mean_is_that_of_the_counter() {
    Course course = new Course(SECONDS, ENERGY, CHARGE, new double[] {36, 72, 72, 18}, 1.1);
    assertThat(course.powerAt(150)).isCloseTo(79.2, within(1e-9));
    assertThat(course.meanPowerOverCharge(10, 21)).isCloseTo(666.0 / 11, within(1e-9));
    assertThat(course.power(0)).isCloseTo(36, within(1e-9));
  }

  @Test
  void a_mean_over_part_of_the_charge_takes_the_power_in_the_middle_of_each_part() {
    // From 14 % at 150 s to 20.5 % at 350 s: 72 kW at 175 s, at 250 s and 45 - 0.25 * 54 at 325 s.
    double last = COURSE.powerAt(325);
    assertThat(last).isCloseTo(31.5, within(1e-9));
    assertThat(COURSE.meanPowerOverCharge(14, 20.5))
        .isCloseTo((72 * 2 + 72 * 4 + last * 0.5) / 6.5, within(1e-9));
    assertThat(COURSE.meanPowerOverCharge(12.5, 13))
        .isCloseTo(COURSE.powerAt(118.75), within(1e-9));
  }

  /** Thirty cells of 100 s, of which the first and last three have 3 % and 1.5 % together. */
  @Test
  void beyond_an_end_the_mean_rate_of_a_tenth_is_extrapolated() {
    double[] seconds = new double[31];
    double[] charge = new double[31];
    double[] energy = new double[31];
    charge[0] = 10;
    for (int i = 1; i <= 30; i++) {
      seconds[i] = 100 * i;
      charge[i] = charge[i - 1] + (i == 1 ? 0 : i <= 3 ? 1.5 : i <= 27 ? 2 : 0.5);
      energy[i] = charge[i] / 2 - 5;
    }
    Course course = new Course(seconds, energy, charge, new double[30]);
    double end = charge[30];
    assertThat(course.timeOfCharge(9)).isCloseTo(-100, within(1e-9));
    assertThat(course.timeOfCharge(end + 1)).isCloseTo(3200, within(1e-9));
    assertThat(course.timeOfEnergy(-1)).isCloseTo(-200, within(1e-9));
  }

  @Test
  void holds_at_the_ends_begin_and_end_with_the_session() {
    Course falls = new Course(SECONDS, ENERGY, CHARGE, new double[] {72, 72, 18, 18});
    // 72 kW at 150 s and 18 kW at 250 s: 45 kW at 200 s.
    assertThat(falls.longestAbove(45)).containsExactly(new double[] {0, 200}, within(1e-9));
    assertThat(falls.lastAbove(45)).isCloseTo(200, within(1e-9));
    assertThat(falls.longestAbove(72)).containsExactly(new double[] {0, 150}, within(1e-9));
    assertThat(falls.lastAbove(72)).isCloseTo(150, within(1e-9));
    Course rises = new Course(SECONDS, ENERGY, CHARGE, new double[] {18, 18, 72, 72});
    assertThat(rises.longestAbove(45)).containsExactly(new double[] {200, 400}, within(1e-9));
    assertThat(rises.lastAbove(72)).isEqualTo(400);
    Course first = new Course(SECONDS, ENERGY, CHARGE, new double[] {72, 18, 18, 18});
    assertThat(first.lastAbove(45)).isCloseTo(100, within(1e-9));
    Course twice = new Course(SECONDS, ENERGY, CHARGE, new double[] {72, 72, 18, 72});
    // From 0 s to 200 s and from 300 s to 400 s.
    assertThat(twice.longestAbove(45)).containsExactly(new double[] {0, 200}, within(1e-9));
  }
}
