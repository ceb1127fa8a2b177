package taperbook.metric.bounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Times at which the energy P t + (dP/dt) t^2 / 2 is that of the row. */
final class LinearPowerTest {
  @ParameterizedTest
  @CsvSource({
    "100, 0, 3600, 36",
    "100, -1, 4800, 80",
    "100, 1, 4800, 40",
    "0, 1, 50, 10",
    "0, 0, 50, 0",
    "100, 0.5, 0, 0",
  })
  void the_time_is_the_root_of_the_energy_equation(
      double start, double slope, double energy, double seconds) {
    double found = LinearPower.secondsFor(start, slope, energy);
    assertThat(found).isCloseTo(seconds, within(1e-6));
    if (seconds > 0) {
      assertThat(start * found + slope * found * found / 2).isCloseTo(energy, within(1e-6));
    }
  }
}
