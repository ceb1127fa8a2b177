package taperbook.chart.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class AxisTest {
  @Test
  void the_axis_of_state_of_charge_covers_0_to_100_in_tens() {
    assertThat(Axis.stateOfCharge(10).ticks())
        .containsExactly(0.0, 10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0);
  }

  @ParameterizedTest
  @CsvSource({
    "208.6, 6, 50",
    "300, 6, 50",
    "301, 6, 100",
    "27.2, 9, 5",
    "9.1, 9, 2",
    "61.2, 9, 10",
    "119, 6, 20",
    "0.7, 6, 0.2",
    "8, 9, 1",
    "1450, 6, 500"
  })
  void ticks_are_the_smallest_round_step_that_is_not_too_many(
      double max, int most, double expectedStep) {
    assertThat(Axis.upTo("x", "kW", max, most).step()).isEqualTo(expectedStep);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.31, 1, 7.77, 52, 171, 350.5, 999, 123_456})
  void every_axis_starts_at_zero_and_has_round_ticks_within_its_range(double max) {
    Axis axis = Axis.upTo("x", "kW", max, 6);
    assertThat(axis.ticks().get(0)).isZero();
    assertThat(axis.ticks())
        .hasSizeBetween(3, 7)
        .allSatisfy(t -> assertThat(t).isLessThan(max + 1e-6));
    double leading = axis.step() / Math.pow(10, Math.floor(Math.log10(axis.step()) + 1e-9));
    assertThat(Math.rint(leading * 1e6) / 1e6).isIn(1.0, 2.0, 5.0);
  }

  @Test
  void tick_texts_have_the_places_of_their_step() {
    assertThat(Axis.upTo("x", "kW", 0.7, 6).tickText(0.4)).isEqualTo("0.4");
    assertThat(Axis.upTo("x", "kW", 208, 6).tickText(150)).isEqualTo("150");
  }

  @ParameterizedTest
  @CsvSource({
    "-24, 92, 8, 20, -20, 80",
    "-77, 8, 8, 20, -60, 0",
    "-0.5, 1.2, 8, 0.5, -0.5, 1",
    "-40, 40, 8, 10, -40, 40"
  })
  void an_axis_across_zero_has_zero_among_its_ticks(
      double min, double max, int most, double step, double first, double last) {
    Axis axis = Axis.between("x", "kW", min, max, most);
    assertThat(axis.step()).isEqualTo(step);
    assertThat(axis.ticks()).startsWith(first).endsWith(last).contains(0.0);
  }

  @ParameterizedTest
  @CsvSource({"47, 103, 60, 100", "60, 100, 60, 100", "59.9, 100.1, 60, 100"})
  void an_axis_above_zero_has_ticks_within_its_range_only(
      double min, double max, double first, double last) {
    Axis axis = new Axis("x", "kW", min, max, 20);
    assertThat(axis.ticks()).startsWith(first).endsWith(last).contains(80.0);
  }

  @Test
  void negative_ticks_have_a_minus_sign_and_zero_has_none() {
    Axis axis = Axis.between("x", "kW", -24, 92, 8);
    assertThat(axis.ticks().stream().map(axis::tickText))
        .containsExactly("\u221220", "0", "20", "40", "60", "80");
  }

  @Test
  void a_curve_that_never_rises_still_has_an_axis() {
    assertThat(Axis.upTo("x", "kW", 0, 6).max()).isEqualTo(1);
  }

  @Test
  void an_axis_of_zero_length_is_refused() {
    assertThatThrownBy(() -> new Axis("x", "kW", 0, Double.NaN, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no such axis: 0.0 to NaN by 1.0");
  }
}
