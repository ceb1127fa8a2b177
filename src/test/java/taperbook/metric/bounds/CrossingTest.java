package taperbook.metric.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import taperbook.session.RowRef;
import taperbook.session.Trace;

final class CrossingTest {
  private static final Trace TRACE =
      new Trace(
          "r",
          new double[] {0, 100, 200, 300},
          new double[] {10, 20, 16, 26},
          new int[] {2, 3, 4, 5},
          0.5,
          0);

  @Test
  void a_value_between_two_readings_is_interpolated_linearly() {
    Crossing crossing = Crossing.first(TRACE, 12.5).orElseThrow();
    assertThat(crossing.second()).isEqualTo(25);
    assertThat(crossing.rows()).containsExactly(new RowRef("r", 2), new RowRef("r", 3));
  }

  @Test
  void a_recorded_value_is_reached_at_its_reading() {
    Crossing crossing = Crossing.first(TRACE, 20).orElseThrow();
    assertThat(crossing.second()).isEqualTo(100);
    assertThat(crossing.rows()).containsExactly(new RowRef("r", 3));
    assertThat(Crossing.first(TRACE, 10).orElseThrow().second()).isZero();
  }

  @Test
  void a_fall_after_the_first_crossing_is_ignored() {
    assertThat(Crossing.first(TRACE, 18).orElseThrow().second()).isEqualTo(80);
    assertThat(Crossing.first(TRACE, 21).orElseThrow().second()).isEqualTo(250);
  }

  @Test
  void nothing_is_extrapolated() {
    assertThat(Crossing.first(TRACE, 9.9)).isEmpty();
    assertThat(Crossing.first(TRACE, 26)).isPresent();
    assertThat(Crossing.first(TRACE, 26.1)).isEmpty();
  }
}
