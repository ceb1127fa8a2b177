package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import taperbook.quantity.Estimate;

final class EnergyChangeTest {
  @Test
  void the_relative_uncertainties_are_added_in_quadrature() {
    // 3 % and 4 % are 5 % of the ratio 0.9.
    Estimate change =
        EnergyChange.percent(Estimate.around(0.54, 0.0162), Estimate.around(0.6, 0.024));
    assertThat(change.value()).isCloseTo(-10, within(1e-9));
    assertThat(change.bounds().low()).isCloseTo(-14.5, within(1e-9));
    assertThat(change.bounds().high()).isCloseTo(-5.5, within(1e-9));
  }

  @Test
  void one_exact_value_leaves_the_uncertainty_of_the_other() {
    Estimate change = EnergyChange.percent(Estimate.exactly(3), Estimate.around(2, 0.2));
    assertThat(change.value()).isCloseTo(50, within(1e-9));
    assertThat(change.bounds().low()).isCloseTo(35, within(1e-9));
    assertThat(change.bounds().high()).isCloseTo(65, within(1e-9));
  }
}
