package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Properties of the straight line for any points. */
@Tag("slow")
final class YorkLinePropertyTest {
  static IntStream seeds() {
    return IntStream.rangeClosed(1, 200);
  }

  private static List<LinePoint> random(int seed) {
    Random random = new Random(seed);
    double slope = 0.3 + random.nextDouble();
    List<LinePoint> points = new ArrayList<>();
    int n = 5 + random.nextInt(40);
    for (int i = 0; i < n; i++) {
      double x = 10 + 70.0 * i / n;
      double xHalf = 0.1 + random.nextDouble();
      double yHalf = 0.05 + random.nextDouble();
      points.add(
          LinePoint.rounded(
              x + xHalf * (2 * random.nextDouble() - 1),
              slope * x + yHalf * (2 * random.nextDouble() - 1),
              xHalf,
              yHalf));
    }
    return points;
  }

  private static YorkLine through(List<LinePoint> points, UnaryOperator<LinePoint> change) {
    return YorkLine.through(points.stream().map(change).toList());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void another_unit_of_energy_scales_slope_and_error_equally(int seed) {
    YorkLine line = YorkLine.through(random(seed));
    YorkLine inWattHours =
        through(
            random(seed),
            p -> new LinePoint(p.x(), 1000 * p.y(), p.xVariance(), 1e6 * p.yVariance()));
    assertThat(inWattHours.slope()).isCloseTo(1000 * line.slope(), within(1e-8));
    assertThat(inWattHours.slopeError()).isCloseTo(1000 * line.slopeError(), within(1e-8));
    assertThat(inWattHours.chiSquare()).isCloseTo(line.chiSquare(), within(1e-8));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void a_shift_of_either_display_keeps_the_slope(int seed) {
    YorkLine line = YorkLine.through(random(seed));
    YorkLine shifted =
        through(
            random(seed), p -> new LinePoint(p.x() + 0.5, p.y() - 3, p.xVariance(), p.yVariance()));
    assertThat(shifted.slope()).isCloseTo(line.slope(), within(1e-10));
    assertThat(shifted.slopeError()).isCloseTo(line.slopeError(), within(1e-10));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void exchanged_axes_give_the_same_line(int seed) {
    YorkLine line = YorkLine.through(random(seed));
    YorkLine exchanged =
        through(random(seed), p -> new LinePoint(p.y(), p.x(), p.yVariance(), p.xVariance()));
    assertThat(exchanged.slope()).isCloseTo(1 / line.slope(), within(1e-9));
    assertThat(exchanged.chiSquare()).isCloseTo(line.chiSquare(), within(1e-7));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void the_order_of_the_points_does_not_matter(int seed) {
    List<LinePoint> shuffled = new ArrayList<>(random(seed));
    Collections.shuffle(shuffled, new Random(seed));
    assertThat(YorkLine.through(shuffled).slope())
        .isCloseTo(YorkLine.through(random(seed)).slope(), within(1e-12));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void doubled_errors_double_the_uncertainty_and_keep_the_line(int seed) {
    YorkLine line = YorkLine.through(random(seed));
    YorkLine coarser =
        through(
            random(seed), p -> new LinePoint(p.x(), p.y(), 4 * p.xVariance(), 4 * p.yVariance()));
    assertThat(coarser.slope()).isCloseTo(line.slope(), within(1e-11));
    assertThat(coarser.slopeError()).isCloseTo(2 * line.slopeError(), within(1e-10));
    assertThat(coarser.chiSquare()).isCloseTo(line.chiSquare() / 4, within(1e-8));
  }

  @Test
  void a_line_through_two_points_is_exact_and_includes_both_roundings() {
    YorkLine line =
        YorkLine.through(
            List.of(LinePoint.rounded(10, 0, 0.5, 0.05), LinePoint.rounded(80, 52.5, 0.5, 0.05)));
    assertThat(line.slope()).isCloseTo(0.75, within(1e-12));
    assertThat(line.reducedChiSquare()).isZero();
    // By hand: first-order variance of the quotient of two differences.
    double variance = (2 * 0.05 * 0.05 / 3 + 0.75 * 0.75 * 2 * 0.25 / 3) / (70 * 70);
    assertThat(line.slopeError()).isCloseTo(Math.sqrt(variance), within(1e-10));
  }

  @Test
  void points_without_a_line_are_refused() {
    LinePoint point = LinePoint.rounded(10, 1, 0.5, 0.05);
    assertThatThrownBy(() -> YorkLine.through(List.of(point)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> YorkLine.through(List.of(point, point)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new LinePoint(1, 1, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new LinePoint(1, Double.NaN, 1, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Quantiles.student95(0)).isInstanceOf(IllegalArgumentException.class);
  }
}
