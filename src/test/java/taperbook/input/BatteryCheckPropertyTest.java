package taperbook.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;

/**
 * Sessions of new and old, small and large batteries, with losses, heating, and a display that is
 * recalibrated while charging: none is refused, and each is refused if its values are divided by
 * 1,000.
 */
final class BatteryCheckPropertyTest {
  private final StringBuilder energies = new StringBuilder();
  private final StringBuilder powers = new StringBuilder();
  private double gained;
  private double usable;

  static List<Integer> seeds() {
    return IntStream.rangeClosed(1, 300).boxed().toList();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void true_sessions_are_accepted_and_thousandths_are_not(int seed) {
    write(new Random(seed), 1);
    assertThat(reported(energies)).isEmpty();
    assertThat(reported(powers)).isEmpty();
    write(new Random(seed), 0.001);
    if (gained >= 20) {
      assertThat(reported(energies)).containsExactly(ProblemCode.BATTERY_CONTRADICTED);
      assertThat(reported(powers)).containsExactly(ProblemCode.BATTERY_CONTRADICTED);
    }
  }

  private List<ProblemCode> reported(StringBuilder readings) {
    String stated =
        String.format(Locale.ROOT, "battery usable energy,%.1f,kWh,from the maker%n", usable);
    return Given.session(readings.toString(), Given.CONDITIONS + stated).problems().stream()
        .map(Problem::code)
        .filter(code -> code == ProblemCode.BATTERY_CONTRADICTED)
        .toList();
  }

  private void write(Random random, double slip) {
    usable = 20 + 100 * random.nextDouble();
    double held = usable * (0.67 + 0.36 * random.nextDouble());
    double start = 2 + 60 * random.nextDouble();
    gained = 3 + (93 - start) * random.nextDouble();
    double power = 2 + 250 * random.nextDouble();
    double lost = 1 + 0.3 * random.nextDouble();
    double heating = 8 * random.nextDouble();
    int rows = 3 + random.nextInt(10);
    int correctedAt = random.nextInt(rows);
    double correction = 5 * random.nextDouble() - 1;
    double hours = gained / 100 * held / power;
    energies.setLength(0);
    energies.append("elapsed [s],soc [%],energy added [kWh]\n");
    powers.setLength(0);
    powers.append("elapsed [s],soc [%],power [kW]\n");
    for (int i = 0; i <= rows; i++) {
      double share = (double) i / rows;
      double corrected = i > correctedAt ? correction : 0;
      long soc = Math.round(Math.min(100, Math.max(0, start + share * gained + corrected)));
      double energy = share * (gained / 100 * held * lost + heating * hours);
      double shown = power * (0.7 + 0.6 * random.nextDouble());
      line(energies, share * hours, soc, energy * slip);
      line(powers, share * hours, soc, shown * slip);
    }
  }

  private static void line(StringBuilder to, double hours, long soc, double value) {
    to.append(String.format(Locale.ROOT, "%.0f,%d,%.4f%n", 3600 * hours, soc, value));
  }
}
