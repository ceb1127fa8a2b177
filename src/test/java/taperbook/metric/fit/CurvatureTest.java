package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Energies on known polynomials. For exact points, slope plus correction is the rise from the first
 * point to the last over their distance; for four equidistant points the orthogonal polynomials are
 * the tabulated (1, -1, -1, 1) and (-1, 3, -3, 1).
 */
final class CurvatureTest {
  private static final double[] UNEVEN = {10, 14, 15, 23, 31, 40, 44, 58, 66, 71, 80};

  private static List<LinePoint> points(double[] x, DoubleUnaryOperator y, double yHalf) {
    return Arrays.stream(x)
        .mapToObj(at -> LinePoint.rounded(at, y.applyAsDouble(at), 0, yHalf))
        .toList();
  }

  private static Curvature about(List<LinePoint> points) {
    return Curvature.about(YorkLine.through(points), points);
  }

  @Test
  void a_straight_line_needs_no_correction() {
    Curvature curve = about(points(UNEVEN, x -> 3 + 0.6 * x, 0.05));
    assertThat(curve.correction()).isCloseTo(0, within(1e-12));
    assertThat(curve.standard()).isPositive();
    assertThat(curve.chiSquare()).isCloseTo(0, within(1e-12));
    assertThat(curve.distances()).hasSize(UNEVEN.length).allMatch(d -> Math.abs(d) < 1e-9);
  }

  @Test
  void exact_points_give_the_rise_from_the_first_to_the_last() {
    DoubleUnaryOperator energy = x -> 0.6 * x + 1e-3 * x * x - 1e-5 * x * x * x;
    List<LinePoint> points = points(UNEVEN, energy, 1e-6);
    YorkLine line = YorkLine.through(points);
    Curvature curve = Curvature.about(line, points);
    double rise = (energy.applyAsDouble(80) - energy.applyAsDouble(10)) / 70;
    assertThat(line.slope()).isNotCloseTo(rise, within(1e-3));
    assertThat(line.slope() + curve.correction()).isCloseTo(rise, within(1e-9));
    assertThat(curve.chiSquare()).isCloseTo(0, within(1e-6));
    // Six parameters, all of them determined by the readings.
    assertThat(curve.degreesOfFreedom()).isCloseTo(UNEVEN.length - 6, within(1e-6));
  }

  @Test
  void the_uncertainty_of_four_points_is_that_of_the_tabulated_polynomial() {
    double[] x = {0, 10, 20, 30};
    double half = 0.3;
    Curvature curve = about(points(x, at -> 0.5 * at, half));
    // The polynomial of degree 2 has equal ends. That of degree 3, scaled to 1, is (-1, 3, -3, 1) /
    // 3, with a prior of 4 % of 15 kWh over 3 squared.
    double seen = (1 + 9 + 9 + 1) / 9.0 / (half * half / 3);
    double open = 0.04 / 9 * 15;
    double sum = seen + 1 / (open * open);
    assertThat(curve.standard()).isCloseTo(2 / 3.0 / 30 / Math.sqrt(sum), within(1e-9));
    double seenOfSquare = 4 / (half * half / 3);
    double openOfSquare = 0.04 / 4 * 15;
    double spent =
        2 + seen / sum + seenOfSquare / (seenOfSquare + 1 / (openOfSquare * openOfSquare));
    assertThat(curve.degreesOfFreedom()).isCloseTo(4 - spent, within(1e-9));
  }

  @Test
  void the_curvature_of_few_coarse_points_is_removed_in_part() {
    double[] x = {0, 10, 20, 30};
    // 0.09 kWh of the polynomial of degree 3, added to a line.
    double[] on = {-0.03, 0.09, -0.09, 0.03};
    List<LinePoint> points =
        List.of(0, 1, 2, 3).stream()
            .map(i -> LinePoint.rounded(x[i], 0.5 * x[i] + on[i], 0, 0.3))
            .toList();
    // The polynomial is orthogonal to the line, whose slope is unchanged at 0.5.
    Curvature curve = about(points);
    double seen = 20 / 9.0 / 0.03;
    double open = 0.04 / 9 * 15;
    double coefficient = 0.09 * seen / (seen + 1 / (open * open));
    assertThat(curve.correction()).isCloseTo(coefficient * 2 / 3 / 30, within(1e-9));
    // What is left of the polynomial.
    double left = 0.09 - coefficient;
    assertThat(curve.chiSquare()).isCloseTo(left * left * seen, within(1e-9));
    assertThat(curve.distances().get(1)).isCloseTo(left, within(1e-9));
  }
}
