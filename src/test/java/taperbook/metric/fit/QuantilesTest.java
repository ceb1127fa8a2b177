package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Closed forms: Student's quantile is tan(pi (p - 1/2)) for one degree of freedom and (2 p - 1) /
 * sqrt(2 p (1 - p)) for two; that of chi-square is -2 ln(1 - p) for two.
 */
final class QuantilesTest {
  @Test
  void students_quantiles_have_the_closed_forms() {
    for (double p : new double[] {0.01, 0.3, 0.5, 0.9, 0.975}) {
      double one = Math.tan(Math.PI * (p - 0.5));
      assertThat(Quantiles.student(p, 1)).isCloseTo(one, within(1e-9 * (1 + Math.abs(one))));
      assertThat(Quantiles.student(p, 2))
          .isCloseTo((2 * p - 1) / Math.sqrt(2 * p * (1 - p)), within(1e-9));
    }
    assertThat(Quantiles.student95(1)).isCloseTo(Math.tan(0.475 * Math.PI), within(1e-9));
    assertThat(Quantiles.student95(2)).isCloseTo(0.95 / Math.sqrt(2 * 0.975 * 0.025), within(1e-9));
  }

  @Test
  void quantiles_of_chi_square_have_the_closed_form() {
    for (double p : new double[] {0.025, 0.5, 0.975}) {
      assertThat(Quantiles.chiSquare(p, 2)).isCloseTo(-2 * Math.log(1 - p), within(1e-9));
    }
  }

  @Test
  void probabilities_outside_zero_to_one_are_refused() {
    for (double p : new double[] {0, 1, -0.1, 1.1, Double.NaN}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Quantiles.student(p, 3))
          .withMessage("no quantile of the probability " + p);
      assertThatIllegalArgumentException().isThrownBy(() -> Quantiles.chiSquare(p, 3));
    }
    assertThatIllegalArgumentException().isThrownBy(() -> Quantiles.student95(0));
  }
}
