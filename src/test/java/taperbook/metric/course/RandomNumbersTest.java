package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Compares random numbers with published quantiles and the moments of their distributions. */
final class RandomNumbersTest {
  private static final int DRAWS = 200_000;

  /** Five standard deviations of the mean of the draws at variance 1. */
  private static final double CHANCE = 5 / Math.sqrt(DRAWS);

  /** Percentage points as commonly tabulated (NIST/SEMATECH e-Handbook, 1.3.6.7.1). */
  @ParameterizedTest
  @CsvSource({
    "0.5, 0",
    "0.75, 0.674489750",
    "0.9, 1.281551566",
    "0.95, 1.644853627",
    "0.975, 1.959963985",
    "0.99, 2.326347874",
    "0.995, 2.575829304",
    "0.9995, 3.290526731",
    "0.999999, 4.753424309"
  })
  void quantiles_are_the_tabulated_ones_on_both_sides(double p, double z) {
    // AS 241, PPND7: about one part in ten million.
    assertThat(RandomNumbers.quantile(p)).isCloseTo(z, within(1e-6));
    assertThat(RandomNumbers.quantile(1 - p)).isCloseTo(-z, within(1e-6));
  }

  @Test
  void uniform_numbers_have_the_moments_of_a_rectangle() {
    checkMoments(new RandomNumbers(1)::uniform, 0.5, 1.0 / 12);
  }

  @Test
  void normal_numbers_have_their_moments_and_tails() {
    RandomNumbers random = new RandomNumbers(2);
    checkMoments(random::normal, 0, 1);
    int beyond = 0;
    double fourth = 0;
    for (int i = 0; i < DRAWS; i++) {
      double x = random.normal();
      beyond += Math.abs(x) > 1.959963985 ? 1 : 0;
      fourth += x * x * x * x / DRAWS;
    }
    assertThat((double) beyond / DRAWS).isCloseTo(0.05, within(Math.sqrt(0.05 * 0.95) * CHANCE));
    // The eighth moment is 105, so that the fourth power has a variance of 105 - 9.
    assertThat(fourth).isCloseTo(3, within(Math.sqrt(96) * CHANCE));
  }

  @ParameterizedTest
  @CsvSource({"0.5", "1", "2", "4.5", "80"})
  void gamma_numbers_have_mean_and_variance_of_their_shape(double shape) {
    RandomNumbers random = new RandomNumbers(3);
    checkMoments(() -> random.gamma(shape), shape, shape);
  }

  @ParameterizedTest
  @CsvSource({"2, 2", "2, 9", "30, 4", "0.5, 0.5"})
  void beta_numbers_have_mean_and_variance_of_their_shapes(double a, double b) {
    RandomNumbers random = new RandomNumbers(4);
    double sum = a + b;
    checkMoments(() -> random.beta(a, b), a / sum, a * b / (sum * sum * (sum + 1)));
  }

  @Test
  void equal_seeds_give_equal_numbers_and_different_seeds_do_not() {
    assertThat(new RandomNumbers(7).normal()).isEqualTo(new RandomNumbers(7).normal());
    assertThat(new RandomNumbers(7).normal()).isNotEqualTo(new RandomNumbers(8).normal());
  }

  private static void checkMoments(DoubleSupplier draws, double mean, double variance) {
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < DRAWS; i++) {
      double off = (draws.getAsDouble() - mean) / Math.sqrt(variance);
      sum += off / DRAWS;
      squares += off * off / DRAWS;
    }
    assertThat(sum).isCloseTo(0, within(CHANCE));
    // The largest kurtosis here is 15, that of the gamma distribution of shape 1/2.
    assertThat(squares).isCloseTo(1, within(Math.sqrt(14) * CHANCE));
  }
}
