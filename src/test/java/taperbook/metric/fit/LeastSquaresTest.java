package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The thermometer calibration of JCGM 100:2008, H.3: a straight line with its uncertainties. */
final class LeastSquaresTest {
  private static final double[] TEMPERATURES = {
    21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
  };
  private static final double[] CORRECTIONS = {
    -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
  };

  private final LeastSquares fit = fit();

  private static LeastSquares fit() {
    double[] ones = new double[TEMPERATURES.length];
    Arrays.fill(ones, 1);
    double[] above20 = Arrays.stream(TEMPERATURES).map(t -> t - 20).toArray();
    return LeastSquares.solve(List.of(ones, above20), CORRECTIONS).orElseThrow();
  }

  @Test
  void intercept_and_slope_are_those_of_the_gum() {
    assertThat(fit.coefficient(0)).isCloseTo(-0.1712, within(5e-5));
    assertThat(fit.coefficient(1)).isCloseTo(0.00218, within(5e-6));
    assertThat(fit.residualSumOfSquares()).isCloseTo(0.000110096583109, within(1e-14));
  }

  @Test
  void standard_uncertainties_are_those_of_the_gum() {
    double[] variances = new double[TEMPERATURES.length];
    Arrays.fill(variances, fit.residualSumOfSquares() / (TEMPERATURES.length - 2));
    assertThat(Math.sqrt(fit.variance(new double[] {1, 0}, variances)))
        .isCloseTo(0.0029, within(5e-5));
    assertThat(Math.sqrt(fit.variance(new double[] {0, 1}, variances)))
        .isCloseTo(0.00067, within(5e-6));
    // H.3.4: the correction at 30 degrees, with the correlation of both.
    assertThat(Math.sqrt(fit.variance(new double[] {1, 10}, variances)))
        .isCloseTo(0.0041, within(5e-5));
  }

  @Test
  void dependent_columns_have_no_solution() {
    double[] column = {1, 2, 3};
    double[] twice = {2, 4, 6};
    assertThat(LeastSquares.solve(List.of(column, twice), new double[] {1, 1, 2})).isEmpty();
  }

  @Test
  void more_columns_than_values_have_no_solution() {
    assertThat(LeastSquares.solve(List.of(new double[] {1}, new double[] {2}), new double[] {3}))
        .isEmpty();
  }

  /** The mean of two values and the slope of a line, by hand. */
  @Test
  void values_with_different_variances_are_propagated_each() {
    LeastSquares mean =
        LeastSquares.solve(List.of(new double[] {1, 1}), new double[] {3, 5}).orElseThrow();
    assertThat(mean.coefficient(0)).isCloseTo(4, within(1e-12));
    assertThat(mean.residualSumOfSquares()).isCloseTo(2, within(1e-12));
    assertThat(mean.variance(new double[] {1}, new double[] {1, 4})).isCloseTo(1.25, within(1e-12));
    // The slope through 0, 1 and 2 is (y[2] - y[0]) / 2.
    LeastSquares line =
        LeastSquares.solve(
                List.of(new double[] {1, 1, 1}, new double[] {0, 1, 2}), new double[] {1, 3, 5})
            .orElseThrow();
    assertThat(line.variance(new double[] {0, 1}, new double[] {3, 100, 9}))
        .isCloseTo(3, within(1e-9));
    // The value at 1 is the mean of all three.
    assertThat(line.variance(new double[] {1, 1}, new double[] {3, 6, 9}))
        .isCloseTo(2, within(1e-9));
  }

  @Test
  void as_many_columns_as_values_have_an_exact_solution() {
    LeastSquares exact =
        LeastSquares.solve(List.of(new double[] {1, 1}, new double[] {2, 4}), new double[] {5, 11})
            .orElseThrow();
    assertThat(exact.coefficient(0)).isCloseTo(-1, within(1e-9));
    assertThat(exact.coefficient(1)).isCloseTo(3, within(1e-9));
    assertThat(exact.residualSumOfSquares()).isCloseTo(0, within(1e-18));
  }
}
