package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.quantity.Interval;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/** Points by hand from readings of power over a charge that rises by 1 % in 100 s. */
final class TaperPointsTest {
  private static Trace trace(double halfStep, double[] seconds, double... values) {
    int[] lines = IntStream.range(0, values.length).map(i -> i + 2).toArray();
    return new Trace("r", seconds, values, lines, halfStep, 0);
  }

  private static Trace soc(double... values) {
    return trace(
        0.5, IntStream.range(0, values.length).mapToDouble(i -> 100.0 * i).toArray(), values);
  }

  @Test
  void readings_within_a_step_are_merged_at_their_means() {
    Trace power = trace(0.5, new double[] {0, 20, 40, 100, 120}, 100, 98, 96, 94, 92);
    TaperPoints points = TaperPoints.of(soc(10, 11, 12), power);
    assertThat(points.size()).isEqualTo(2);
    assertThat(points.soc(0)).isCloseTo(10.2, within(1e-9));
    assertThat(points.power(0)).isCloseTo(98, within(1e-9));
    assertThat(points.soc(1)).isCloseTo(11.1, within(1e-9));
    assertThat(points.power(1)).isCloseTo(93, within(1e-9));
    assertThat(points.firstSoc()).isEqualTo(points.soc(0));
    assertThat(points.lastSoc()).isEqualTo(points.soc(1));
    assertThat(points.scale()).isEqualTo(points.power(0));
    assertThat(points.rows(10.2, 10.3))
        .containsExactly(new RowRef("r", 2), new RowRef("r", 3), new RowRef("r", 4));
    assertThat(points.rows(11.2, 20)).isEmpty();
  }

  @Test
  void power_outside_the_time_of_the_charge_is_omitted() {
    Trace power = trace(0.5, new double[] {-10, 0, 200, 210}, 50, 60, 70, 80);
    TaperPoints points = TaperPoints.of(soc(10, 11, 12), power);
    assertThat(points.powers()).containsExactly(60, 70);
    assertThat(points.socs()).containsExactly(10, 12);
  }

  @Test
  void a_jump_while_the_charge_rises_gives_two_points_at_the_readings() {
    Trace power = trace(0.5, new double[] {0, 10, 20, 30}, 100, 100, 60, 60);
    TaperPoints points = TaperPoints.of(soc(10, 11), power);
    assertThat(points.powers()).containsExactly(100, 60);
    assertThat(points.soc(0)).isCloseTo(10.05, within(1e-9));
    assertThat(points.soc(1)).isCloseTo(10.25, within(1e-9));
  }

  @Test
  void a_jump_at_a_constant_display_is_separated_within_its_rounding() {
    Trace power = trace(0.5, new double[] {0, 10, 20, 30}, 100, 100, 60, 60);
    TaperPoints points = TaperPoints.of(soc(10, 10, 11), power);
    assertThat(points.socs()).containsExactly(9.75, 10.25);
    assertThat(points.powers()).containsExactly(100, 60);
  }

  @Test
  void a_fall_that_is_not_a_jump_is_one_point() {
    double[] seconds = {0, 10, 20, 30};
    // At most 4 steps of the display, or 5 % of the peak,
    assertThat(TaperPoints.of(soc(10, 11), trace(0.5, seconds, 50, 50, 46, 46)).size()).isOne();
    assertThat(TaperPoints.of(soc(10, 11), trace(0.5, seconds, 200, 200, 190, 190)).size()).isOne();
    // or less than three times the next greatest change.
    assertThat(TaperPoints.of(soc(10, 11), trace(0.5, seconds, 100, 86, 46, 46)).size()).isOne();
    assertThat(TaperPoints.of(soc(10, 11), trace(0.5, seconds, 100, 87, 46, 46)).size())
        .isEqualTo(2);
  }

  @Test
  void a_gap_is_between_the_readings_around_a_breakpoint_and_their_rounding() {
    double[] seconds = {0, 20, 200, 400};
    TaperPoints points =
        TaperPoints.of(soc(10, 11, 12, 13, 14), trace(0.5, seconds, 100, 98, 60, 50));
    // The points are at 10.1, 12, and 14 %; the last reading of the first one is at 10.2 %.
    assertThat(points.socs()[0]).isCloseTo(10.1, within(1e-9));
    Interval gap = points.gap(11);
    assertThat(gap.low()).isCloseTo(9.7, within(1e-9));
    assertThat(gap.high()).isCloseTo(12.5, within(1e-9));
    assertThat(points.rowsBeside(11)).containsExactly(new RowRef("r", 3), new RowRef("r", 4));
  }

  @Test
  void a_charge_without_steps_is_divided_into_120_parts() {
    double[] seconds = IntStream.rangeClosed(0, 1200).asDoubleStream().toArray();
    double[] charge = IntStream.rangeClosed(0, 1200).mapToDouble(i -> i / 20.0).toArray();
    double[] kilowatts = IntStream.rangeClosed(0, 1200).mapToDouble(i -> 100).toArray();
    TaperPoints points = TaperPoints.of(trace(0, seconds, charge), trace(0, seconds, kilowatts));
    assertThat(points.size()).isEqualTo(121);
    assertThat(points.halfSoc()).isZero();
    assertThat(points.halfPower()).isZero();
  }

  @Test
  void a_place_at_a_reading_belongs_to_the_gap_above_it() {
    double[] seconds = {0, 200, 400, 600};
    TaperPoints points =
        TaperPoints.of(soc(10, 11, 12, 13, 14, 15, 16), trace(0.5, seconds, 100, 98, 60, 50));
    assertThat(points.socs()).containsExactly(10, 12, 14, 16);
    assertThat(points.gap(12)).isEqualTo(new Interval(11.5, 14.5));
    assertThat(points.gap(11.9)).isEqualTo(new Interval(9.5, 12.5));
    assertThat(points.rows(12, 14)).containsExactly(new RowRef("r", 3), new RowRef("r", 4));
    assertThat(points.rows(12.1, 14)).containsExactly(new RowRef("r", 4));
    assertThat(points.rows(12, 13.9)).containsExactly(new RowRef("r", 3));
  }

  @Test
  void points_without_readings_have_the_gap_between_them_and_no_rows() {
    double[] soc = {10, 20, 30, 40};
    TaperPoints points = new TaperPoints(soc, new double[] {-5, 3, 2, 1}, 0.5, 0.5);
    assertThat(points.gap(25)).isEqualTo(new Interval(19.5, 30.5));
    assertThat(points.rowsBeside(25)).isEmpty();
    assertThat(points.rows(0, 100)).isEmpty();
    assertThat(points.scale()).isEqualTo(5);
    assertThat(points.halfSoc()).isEqualTo(0.5);
    assertThat(points.halfPower()).isEqualTo(0.5);
  }

  @Test
  void traces_without_a_common_time_have_no_points() {
    assertThat(TaperPoints.of(soc(10, 11), trace(0.5, new double[] {200, 300}, 50, 60)).size())
        .isZero();
  }

  @Test
  void a_jump_at_a_display_without_steps_is_not_divided() {
    double[] seconds = {0, 10, 20, 100};
    TaperPoints points =
        TaperPoints.of(
            trace(0, new double[] {0, 50, 100}, 10, 10, 20), trace(0.5, seconds, 100, 60, 60, 50));
    // Without a step the place of a jump at one charge is not known.
    assertThat(points.size()).isEqualTo(2);
  }
}
