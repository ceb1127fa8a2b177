package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Breakpoints of exact lines, and minima by an exhaustive search of noisy ones. */
final class BreakRefinementTest {
  private static final double[] SOC =
      IntStream.rangeClosed(0, 20).mapToDouble(i -> 4.0 * i).toArray();

  private static double[] powers(DoubleUnaryOperator power) {
    return Arrays.stream(SOC).map(power).toArray();
  }

  private static PiecewiseLine line(double[] power, double... knots) {
    List<Break> breaks = Arrays.stream(knots).mapToObj(k -> new Break(k, false)).toList();
    return PiecewiseLine.through(SOC, power, breaks).orElseThrow();
  }

  @Test
  void the_meeting_point_of_two_lines_is_found_in_its_gap() {
    double[] power = powers(q -> 150 - 2 * Math.max(0, q - 33.7));
    for (double start : new double[] {32, 34, 36}) {
      PiecewiseLine near = BreakRefinement.nearby(SOC, power, line(power, start));
      PiecewiseLine found = BreakRefinement.of(SOC, power, line(power, start));
      assertThat(near.at(0)).as("from %s", start).isCloseTo(33.7, within(1e-6));
      assertThat(found.at(0)).as("from %s", start).isCloseTo(33.7, within(1e-6));
      assertThat(found.residualSumOfSquares()).isCloseTo(0, within(1e-9));
    }
  }

  @Test
  void breakpoints_that_start_in_other_gaps_are_found() {
    double[] power = powers(q -> 100 + 2 * Math.min(q, 21.5) - 3 * Math.max(0, q - 54.2));
    for (double[] start : new double[][] {{12, 44}, {32, 68}, {28, 60}, {16, 66}}) {
      PiecewiseLine found = BreakRefinement.of(SOC, power, line(power, start));
      assertThat(found.at(0)).isCloseTo(21.5, within(1e-6));
      assertThat(found.at(1)).isCloseTo(54.2, within(1e-6));
    }
  }

  /** With one breakpoint in a noisy line, no other within two gaps has a smaller sum of squares. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void no_breakpoint_nearby_is_better(long seed) {
    Random random = new Random(seed);
    double bend = 20 + 40 * random.nextDouble();
    double[] power = powers(q -> 120 - Math.max(0, q - bend) + 2 * random.nextGaussian());
    double start = SOC[(int) Math.rint(bend / 4)];
    PiecewiseLine found = BreakRefinement.of(SOC, power, line(power, start));
    double least = found.residualSumOfSquares();
    assertThat(least).isLessThanOrEqualTo(line(power, start).residualSumOfSquares());
    for (double at = found.at(0) - 6; at <= found.at(0) + 6; at += 0.01) {
      if (at > 5 && at < 75) {
        assertThat(line(power, at).residualSumOfSquares()).isGreaterThan(least * (1 - 1e-7));
      }
    }
    PiecewiseLine near = BreakRefinement.nearby(SOC, power, line(power, start));
    assertThat(near.residualSumOfSquares())
        .isBetween(least * (1 - 1e-7), line(power, start).residualSumOfSquares());
  }

  @Test
  void a_drop_between_two_readings_keeps_its_breakpoints() {
    double[] power = powers(q -> q <= 40 ? 150 : 110 - (q - 44));
    PiecewiseLine start = line(power, 40, 44);
    for (PiecewiseLine found :
        List.of(BreakRefinement.of(SOC, power, start), BreakRefinement.nearby(SOC, power, start))) {
      assertThat(found.at(0)).isEqualTo(40);
      assertThat(found.at(1)).isEqualTo(44);
    }
  }

  @Test
  void a_step_stays_while_a_knot_beside_it_moves() {
    double[] power = powers(q -> 150 - 2 * Math.max(0, q - 53.3) - (q > 26 ? 30 : 0));
    List<Break> breaks = List.of(new Break(26, true), new Break(60, false));
    PiecewiseLine start = PiecewiseLine.through(SOC, power, breaks).orElseThrow();
    PiecewiseLine found = BreakRefinement.of(SOC, power, start);
    assertThat(found.at(0)).isEqualTo(26);
    assertThat(found.isStep(0)).isTrue();
    assertThat(found.at(1)).isCloseTo(53.3, within(1e-6));
    assertThat(found.isStep(1)).isFalse();
    assertThat(found.height(0)).isCloseTo(-30, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void breakpoints_stay_in_order_and_within_the_readings(long seed) {
    Random random = new Random(seed);
    double[] power = powers(q -> 100 + 20 * Math.sin(q / 9) + 6 * random.nextGaussian());
    PiecewiseLine start = line(power, 12, 32, 56);
    PiecewiseLine found = BreakRefinement.of(SOC, power, start);
    List<Double> places = new ArrayList<>(List.of(0.0));
    for (int j = 0; j < 3; j++) {
      places.add(found.at(j));
    }
    places.add(80.0);
    assertThat(places).isSorted().doesNotHaveDuplicates();
    assertThat(found.residualSumOfSquares()).isLessThanOrEqualTo(start.residualSumOfSquares());
    // Every segment still has two readings of its own.
    assertThat(new UnresolvedBreaks(SOC).of(found.breaks())).containsOnly(false);
  }

  @Test
  void points_on_a_line_do_not_move_a_breakpoint() {
    double[] power = powers(q -> 100 - q / 3);
    assertThat(BreakRefinement.of(SOC, power, line(power, 40)).at(0)).isEqualTo(40);
  }
}
