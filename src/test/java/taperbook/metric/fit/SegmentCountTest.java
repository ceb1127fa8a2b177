package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Compares the choice with the criterion of every line with one breakpoint, computed here by the
 * formulas of Schwarz and of Hurvich and Tsai.
 */
final class SegmentCountTest {
  /** A scatter without a trend: its mean and its correlation with the place are zero. */
  private static final double[] SCATTER = {1, -1, -1, 1, 1, -1, -1, 1};

  private static double[] soc(int n) {
    return IntStream.range(0, n).mapToDouble(i -> 10 + 3.0 * i).toArray();
  }

  private static TaperPoints points(int n, DoubleUnaryOperator power, double half) {
    double[] soc = soc(n);
    return new TaperPoints(soc, Arrays.stream(soc).map(power).toArray(), 0, half);
  }

  /** A bend in the middle of n points with a scatter of 1 kW. */
  private static TaperPoints bent(int n, double bend) {
    double[] soc = soc(n);
    double middle = (soc[0] + soc[n - 1]) / 2;
    double[] power = new double[n];
    for (int i = 0; i < n; i++) {
      power[i] = 100 - bend * Math.max(0, soc[i] - middle) + SCATTER[i % 8];
    }
    return new TaperPoints(soc, power, 0, 0.5);
  }

  private static double criterion(TaperPoints points, PiecewiseLine line) {
    int n = points.size();
    int p = 3;
    for (Break at : line.breaks()) {
      p += at.step() ? 3 : 2;
    }
    // The display of power rounds by half a kW, that of the charge does not round.
    double rounding = n * (0.25 / 3 + Math.pow(1e-6 * points.scale(), 2));
    double sum = Math.max(line.residualSumOfSquares(), rounding);
    double bayes = p * Math.log(n);
    double akaike = 2.0 * p * n / (n - p - 1);
    return n * Math.log(sum / n) + Math.max(bayes, akaike);
  }

  private static PiecewiseLine line(TaperPoints points, List<Break> breaks) {
    return PiecewiseLine.through(points.socs(), points.powers(), breaks).orElseThrow();
  }

  /** The least criterion of lines with one knot anywhere. */
  private static double leastWithAKnot(TaperPoints points) {
    double least = Double.POSITIVE_INFINITY;
    for (double at = points.soc(1); at <= points.soc(points.size() - 2); at += 0.15) {
      least = Math.min(least, criterion(points, line(points, List.of(new Break(at, false)))));
    }
    return least;
  }

  private static double leastWithAStep(TaperPoints points) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i + 2 < points.size(); i++) {
      double gap = points.soc(i + 1) - points.soc(i);
      double at = points.soc(i) + gap / 2;
      PiecewiseLine line = line(points, List.of(new Break(at, true)));
      double slope = Math.max(Math.abs(line.slope(0)), Math.abs(line.slope(1)));
      if (Math.abs(line.height(0)) >= Math.max(0.02 * points.scale(), slope * gap)) {
        least = Math.min(least, criterion(points, line));
      }
    }
    return least;
  }

  @ParameterizedTest
  @ValueSource(ints = {8, 10, 12, 16, 24})
  void a_bend_is_chosen_where_its_criterion_is_less_than_that_of_a_straight_line(int n) {
    List<Integer> counts = new ArrayList<>();
    for (double bend = 0; bend < 60.0 / n; bend += 2.0 / n) {
      TaperPoints points = bent(n, bend);
      double straight = criterion(points, line(points, List.of()));
      double knot = leastWithAKnot(points);
      double one = Math.min(knot, leastWithAStep(points));
      SegmentCount count = new SegmentCount(points);
      double chosen = criterion(points, count.chosen());
      assertThat(chosen).isLessThanOrEqualTo(Math.min(straight, one) + 0.01);
      if (count.chosen().segments() == 1) {
        assertThat(chosen).isCloseTo(straight, within(1e-9));
      } else {
        assertThat(chosen).isLessThan(straight);
      }
      double fewest = count.plausibleCounts().low();
      if (Math.abs(straight - chosen - 6) > 0.01) {
        assertThat(fewest == 1).as("bend %s", bend).isEqualTo(straight <= chosen + 6);
      }
      // With few points the search ends where even an exact line would be ruled out.
      if (count.chosen().segments() == 1 && knot < straight + 5.9) {
        assertThat(count.plausibleCounts().high()).isGreaterThanOrEqualTo(2);
      }
      counts.add(count.chosen().segments());
    }
    assertThat(counts).startsWith(1).contains(1).endsWith(2);
  }

  @ParameterizedTest
  @CsvSource({"100, 98.2, false", "100, 97.8, true", "60, 58.9, false", "60, 58.7, true"})
  void a_step_is_at_least_two_per_cent_of_the_greatest_power(
      double before, double after, boolean isStep) {
    TaperPoints points = points(30, q -> q < 54 ? before : after, 0.01);
    PiecewiseLine line = new SegmentCount(points).chosen();
    assertThat(line.breaks().stream().anyMatch(Break::step)).isEqualTo(isStep);
    if (isStep) {
      assertThat(line.segments()).isEqualTo(2);
      assertThat(line.at(0)).isBetween(52.0, 55.0);
      assertThat(line.height(0)).isCloseTo(after - before, within(1e-6));
    }
  }

  @ParameterizedTest
  @CsvSource({"5, false", "7, true"})
  void a_step_falls_by_more_than_the_segments_beside_it_do_in_its_gap(double fall, boolean isStep) {
    // 2 kW per 1 % over a gap of 3 % are 6 kW.
    TaperPoints points = points(30, q -> 200 - 2 * q - (q > 53 ? fall : 0), 0.01);
    PiecewiseLine line = new SegmentCount(points).chosen();
    assertThat(line.breaks().stream().anyMatch(Break::step)).isEqualTo(isStep);
  }

  @Test
  void a_line_rounded_by_its_display_is_not_divided() {
    TaperPoints rounded = points(30, q -> Math.rint(10 - 0.02 * q), 0.5);
    assertThat(new SegmentCount(rounded).chosen().segments()).isEqualTo(1);
    assertThat(new SegmentCount(rounded).plausibleCounts().low()).isEqualTo(1);
    // Without the rounding, its two stairs are steps.
    TaperPoints exact = new TaperPoints(rounded.socs(), rounded.powers(), 0, 1e-6);
    assertThat(new SegmentCount(exact).chosen().breaks()).hasSize(2).allMatch(Break::step);
  }

  @Test
  void four_segments_and_two_steps_are_found() {
    DoubleUnaryOperator knots =
        q -> 100 + 3 * Math.min(q, 22) - 2 * Math.max(0, q - 41) + 1.5 * Math.max(0, q - 67);
    assertThat(new SegmentCount(points(32, knots, 0.05)).chosen().segments()).isEqualTo(4);
    DoubleUnaryOperator steps = q -> q < 36 ? 150 : q < 66 ? 120 : 80;
    PiecewiseLine line = new SegmentCount(points(32, steps, 0.05)).chosen();
    assertThat(line.breaks()).hasSize(2).allMatch(Break::step);
  }

  @Test
  void a_drop_at_a_reading_within_a_slope_is_a_knot_and_no_step() {
    // Straight on both sides of a bend at a reading: a knot has one parameter less than a step.
    TaperPoints points = points(25, q -> 150 - 2 * Math.max(0, q - 46), 0.05);
    PiecewiseLine line = new SegmentCount(points).chosen();
    assertThat(line.breaks()).containsExactly(new Break(line.at(0), false));
    assertThat(line.at(0)).isCloseTo(46, within(1e-6));
    assertThat(new SegmentCount(points).plausibleCounts().low()).isEqualTo(2);
  }
}
