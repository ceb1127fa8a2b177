package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.quantity.Interval;

/**
 * Compares with JCGM 100:2008, H.3, and closed forms. Two straight lines that meet between readings
 * are two independent lines: with a variance v of each point, the line through n points at x has
 * the variance v (1/n + (x - mean)^2 / Sxx), and their intersection has that of both over the
 * squared change of slope.
 */
final class FitUncertaintyTest {
  /** 0 to 9 and 11 to 20: on either side of 10, Sxx = 82.5 about 4.5 and 15.5. */
  private static final double[] SOC =
      IntStream.range(0, 21).filter(i -> i != 10).asDoubleStream().toArray();

  private static FitUncertainty of(
      double[] soc, DoubleUnaryOperator power, double halfSoc, double halfPower, Break... breaks) {
    double[] kilowatts = Arrays.stream(soc).map(power).toArray();
    TaperPoints points = new TaperPoints(soc, kilowatts, halfSoc, halfPower);
    return new FitUncertainty(
        points, PiecewiseLine.through(soc, kilowatts, List.of(breaks)).orElseThrow());
  }

  @Test
  void scatter_gives_the_uncertainties_of_the_thermometer_of_the_gum() {
    double[] above20 = {
      1.521, 2.012, 2.512, 3.003, 3.507, 3.999, 4.513, 5.002, 5.503, 6.010, 6.511
    };
    double[] corrections = {
      -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
    };
    FitUncertainty uncertainty =
        new FitUncertainty(
            new TaperPoints(above20, corrections, 0, 0),
            PiecewiseLine.through(above20, corrections, List.of()).orElseThrow());
    assertThat(uncertainty.ofSlope(0)).isCloseTo(0.00067, within(5e-6));
    // At 20 degrees, the intercept; at 30 degrees, H.3.4.
    assertThat(uncertainty.ofMeanPower(0, 0, 0)).isCloseTo(0.0029, within(5e-5));
    assertThat(uncertainty.ofMeanPower(0, 10, 10)).isCloseTo(0.0041, within(5e-5));
  }

  /** Eleven points on 100 - 2 q: v = (0.1^2 + (2 * 0.5)^2) / 3, and Sxx = 110 about 5. */
  @Test
  void points_without_scatter_have_the_uncertainty_of_both_displays() {
    double[] soc = IntStream.rangeClosed(0, 10).asDoubleStream().toArray();
    FitUncertainty fine = of(soc, q -> 100 - 2 * q, 0.5, 0.1);
    double v = 1.01 / 3;
    assertThat(fine.ofSlope(0)).isCloseTo(Math.sqrt(v / 110), within(1e-7));
    assertThat(fine.ofMeanPower(0, 0, 10)).isCloseTo(Math.sqrt(v / 11), within(1e-7));
    assertThat(fine.ofMeanPower(0, 10, 10))
        .isCloseTo(Math.sqrt(v * (1 / 11.0 + 25 / 110.0)), within(1e-7));
  }

  @Test
  void a_mean_is_no_more_certain_than_one_reading() {
    double[] soc = IntStream.rangeClosed(0, 10).asDoubleStream().toArray();
    assertThat(of(soc, q -> 100, 0.5, 0.5).ofMeanPower(0, 0, 10))
        .isCloseTo(0.5 / Math.sqrt(3), within(1e-9));
  }

  @Test
  void a_breakpoint_has_an_interval_of_two_standard_uncertainties() {
    FitUncertainty uncertainty =
        of(SOC, q -> 100 - 4 * Math.max(0, q - 10), 0, 0.5, new Break(10, false));
    double v = 0.25 / 3 + Math.pow(1e-6 * 100, 2);
    double atBreak = 2 * v * (0.1 + 5.5 * 5.5 / 82.5);
    double half = 2 * Math.sqrt(atBreak) / 4;
    assertThat(uncertainty.ofBreak(0).low()).isCloseTo(10 - half, within(1e-6));
    assertThat(uncertainty.ofBreak(0).high()).isCloseTo(10 + half, within(1e-6));
    assertThat(uncertainty.ofSlope(0)).isCloseTo(Math.sqrt(v / 82.5), within(1e-6));
    assertThat(uncertainty.ofSlope(1)).isCloseTo(Math.sqrt(v / 82.5), within(1e-6));
    assertThat(uncertainty.isSlopeSeen(1)).isTrue();
  }

  @Test
  void the_height_of_a_step_covers_the_distance_of_the_lines_within_its_gap() {
    // At an end of the gap, one line is 4.5 and the other 6.5 from the mean of its readings.
    FitUncertainty fine = of(SOC, q -> q < 10 ? 100 : 60, 0.5, 1e-9, new Break(10, true));
    double apart = 2 * 1e-6 * 100 * Math.sqrt(0.2 + (4.5 * 4.5 + 6.5 * 6.5) / 82.5);
    assertThat(fine.ofHeight(0, new Interval(9, 11)).low()).isCloseTo(-40 - apart, within(1e-9));
    assertThat(fine.ofHeight(0, new Interval(9, 11)).high()).isCloseTo(-40 + apart, within(1e-9));

    // Two readings of a coarse display, whose rounding its plateaus do not average out.
    FitUncertainty coarse = of(SOC, q -> q < 10 ? 100 : 60, 0.5, 0.5, new Break(10, true));
    Interval height = coarse.ofHeight(0, new Interval(9, 11));
    double half = 2 * Math.sqrt(2) * 0.5 / Math.sqrt(3);
    assertThat(height.low()).isCloseTo(-40 - half, within(1e-6));
    assertThat(height.high()).isCloseTo(-40 + half, within(1e-6));
    assertThat(coarse.ofBreak(0)).isEqualTo(new Interval(9, 11));
  }

  /**
   * Orthogonal to every line through ten equidistant points: the tabulated polynomial of degree 2,
   * whose squares sum to 132.
   */
  private static final double[] SCATTER = {6, 2, -1, -3, -4, -4, -3, -1, 2, 6};

  /** Thirty points in three groups of ten, with a knot or step in each gap between them. */
  private static FitUncertainty scattered(DoubleUnaryOperator power, Break... breaks) {
    int n = 10 * (breaks.length + 1);
    double[] soc = IntStream.range(0, n).mapToDouble(i -> i + Math.floorDiv(i, 10)).toArray();
    double[] kilowatts = new double[n];
    for (int i = 0; i < n; i++) {
      kilowatts[i] = power.applyAsDouble(soc[i]) + SCATTER[i % 10];
    }
    return new FitUncertainty(
        new TaperPoints(soc, kilowatts, 0, 0),
        PiecewiseLine.through(soc, kilowatts, List.of(breaks)).orElseThrow());
  }

  /** Variance of one line at a distance from the middle of its ten points. */
  private static double atDistance(double v, double distance) {
    return v * (0.1 + distance * distance / 82.5);
  }

  @Test
  void the_mean_of_a_segment_is_as_certain_as_its_own_points_make_it() {
    FitUncertainty two = scattered(q -> 200 - 4 * Math.max(0, q - 10), new Break(10, false));
    double v = 2 * 132 / 16.0;
    assertThat(two.ofMeanPower(0, 0, 10)).isCloseTo(Math.sqrt(atDistance(v, 0.5)), within(1e-6));
    assertThat(two.ofMeanPower(1, 12, 18)).isCloseTo(Math.sqrt(atDistance(v, 0.5)), within(1e-6));
    // From the breakpoint on: the left line there and the right one at its end.
    assertThat(two.ofMeanPower(1, 10, 20))
        .isCloseTo(Math.sqrt(atDistance(v, 5.5) + atDistance(v, 4.5)) / 2, within(1e-6));
  }

  @Test
  void the_mean_of_a_segment_after_a_step_is_that_of_its_own_line() {
    FitUncertainty two = scattered(q -> q < 10 ? 200 : 150, new Break(10, true));
    double v = 2 * 132 / 16.0;
    assertThat(two.ofMeanPower(1, 10, 20)).isCloseTo(Math.sqrt(atDistance(v, 0.5)), within(1e-6));
    assertThat(two.ofSlope(1)).isCloseTo(Math.sqrt(v / 82.5), within(1e-6));
  }

  @Test
  void three_segments_between_readings_are_three_independent_lines() {
    DoubleUnaryOperator power = q -> 200 - 4 * Math.max(0, q - 10) + 3 * Math.max(0, q - 21);
    FitUncertainty knots = scattered(power, new Break(10, false), new Break(21, false));
    double v = 3 * 132 / 24.0;
    assertThat(knots.ofMeanPower(1, 12, 18)).isCloseTo(Math.sqrt(atDistance(v, 0.5)), within(1e-6));
    assertThat(knots.ofMeanPower(2, 24, 30)).isCloseTo(Math.sqrt(atDistance(v, 0.5)), within(1e-6));
    assertThat(knots.ofSlope(2)).isCloseTo(Math.sqrt(v / 82.5), within(1e-6));
    double both = 2 * atDistance(v, 5.5);
    assertThat(knots.ofBreak(0).width()).isCloseTo(4 * Math.sqrt(both) / 4, within(1e-6));
    assertThat(knots.ofBreak(1).width()).isCloseTo(4 * Math.sqrt(both) / 3, within(1e-6));
    // With a step first, the columns of the knot follow it.
    FitUncertainty step =
        scattered(
            q -> (q < 10 ? 200 : 150) + 3 * Math.max(0, q - 21),
            new Break(10, true),
            new Break(21, false));
    assertThat(step.ofBreak(0)).isEqualTo(new Interval(9, 11));
    assertThat(step.ofBreak(1).width()).isCloseTo(4 * Math.sqrt(both) / 3, within(1e-6));
    assertThat(step.ofMeanPower(2, 24, 30)).isCloseTo(Math.sqrt(atDistance(v, 0.5)), within(1e-6));
  }

  @Test
  void the_height_of_a_step_between_sloping_lines_depends_on_its_place() {
    FitUncertainty two = scattered(q -> q < 10 ? 200 : 160 - 2 * (q - 10), new Break(10, true));
    double v = 2 * 132 / 16.0;
    double half = 2 * Math.sqrt(atDistance(v, 4.5) + atDistance(v, 6.5));
    Interval height = two.ofHeight(0, new Interval(9, 11));
    assertThat(height.low()).isCloseTo(-42 - half, within(1e-6));
    assertThat(height.high()).isCloseTo(-38 + half, within(1e-6));
  }

  @Test
  void only_a_short_segment_between_others_hides_its_slope() {
    FitUncertainty drop =
        of(
            SOC,
            q -> q <= 5 ? 100 : q >= 7 ? 60 : 80,
            0,
            0.5,
            new Break(5, false),
            new Break(7, false));
    assertThat(drop.isSlopeSeen(0)).isTrue();
    assertThat(drop.isSlopeSeen(1)).isFalse();
    assertThat(drop.isSlopeSeen(2)).isTrue();
    FitUncertainty ends =
        of(SOC, q -> 100 - q, 0, 0.5, new Break(0.5, false), new Break(19.5, false));
    assertThat(ends.isSlopeSeen(0)).isTrue();
    assertThat(ends.isSlopeSeen(2)).isTrue();
  }

  @Test
  void a_knot_without_a_bend_is_known_within_its_gap_only() {
    FitUncertainty none = of(SOC, q -> 0, 0, 0.5, new Break(10, false));
    assertThat(none.ofBreak(0)).isEqualTo(new Interval(9, 11));
  }
}
