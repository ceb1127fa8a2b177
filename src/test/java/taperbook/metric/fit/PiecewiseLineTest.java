package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines through points on a known line, so that the fit returns its coefficients. */
final class PiecewiseLineTest {
  private static final double[] SOC = {0, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20};
  private static final List<Break> BREAKS = List.of(new Break(7, true), new Break(13, false));

  /** 90 + q up to 7, constant 20 lower after it, and falling by 2 per 1 % from 13. */
  private static double power(double q) {
    return q <= 7 ? 90 + q : 77 - 2 * Math.max(0, q - 13);
  }

  private static PiecewiseLine line() {
    double[] power = Arrays.stream(SOC).map(PiecewiseLineTest::power).toArray();
    return PiecewiseLine.through(SOC, power, BREAKS).orElseThrow();
  }

  @Test
  void slopes_bends_and_heights_are_those_of_the_points() {
    PiecewiseLine line = line();
    assertThat(line.segments()).isEqualTo(3);
    check(line.slope(0), 1);
    check(line.slope(1), 0);
    check(line.slope(2), -2);
    check(line.bend(0), -1);
    check(line.bend(1), -2);
    check(line.height(0), -20);
    check(line.height(1), 0);
    check(line.residualSumOfSquares(), 0);
    assertThat(line.at(0)).isEqualTo(7);
    assertThat(line.isStep(0)).isTrue();
    assertThat(line.isStep(1)).isFalse();
  }

  @Test
  void power_follows_each_segment_and_its_continuation() {
    PiecewiseLine line = line();
    check(line.power(0, 5), 95);
    check(line.power(0, 9), 99);
    check(line.power(1, 9), 77);
    check(line.power(1, 20), 77);
    check(line.power(2, 20), 63);
    check(line.withoutSteps(5), 95);
    check(line.withoutSteps(9), 97);
    check(line.withoutSteps(20), 83);
  }

  @Test
  void the_column_of_a_step_follows_those_of_all_slopes() {
    assertThat(line().coefficients()).isEqualTo(5);
    assertThat(line().stepColumn(0)).isEqualTo(4);
    List<double[]> columns =
        PiecewiseLine.columns(
            new double[] {6, 7, 8}, List.of(new Break(7, true), new Break(7.5, false)));
    assertThat(columns).hasSize(5);
    assertThat(columns.get(0)).containsExactly(1, 1, 1);
    assertThat(columns.get(1)).containsExactly(6, 7, 8);
    assertThat(columns.get(2)).containsExactly(0, 0, 1);
    assertThat(columns.get(3)).containsExactly(0, 0, 0.5);
    assertThat(columns.get(4)).containsExactly(0, 0, 1);
  }

  /** The least squares line through (0, 0), (1, 3), (2, 3), (3, 6): 0.3 + 1.8 q, by hand. */
  @Test
  void points_off_the_line_have_a_residual_sum_of_squares() {
    PiecewiseLine line =
        PiecewiseLine.through(new double[] {0, 1, 2, 3}, new double[] {0, 3, 3, 6}, List.of())
            .orElseThrow();
    check(line.power(0, 0), 0.3);
    check(line.slope(0), 1.8);
    check(line.residualSumOfSquares(), 0.09 + 0.81 + 0.81 + 0.09);
  }

  @Test
  void points_that_do_not_determine_a_line_have_no_fit() {
    assertThat(
            PiecewiseLine.through(
                new double[] {0, 1, 2}, new double[] {1, 1, 1}, List.of(new Break(2, false))))
        .isEmpty();
  }

  private static void check(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(1e-9));
  }
}
