package taperbook.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.measure.curve.PowerIntegral;
import taperbook.model.Channel;
import taperbook.model.Numbers;
import taperbook.model.Session;
import taperbook.model.SocWindow;

/** Integration, averages and crossings against SciPy; see {@code reference/scipy/SOURCE.md}. */
final class ScipyReferenceTest {
  private static final double[] SECONDS = {0, 60, 150, 240, 420, 600, 780, 1020, 1260, 1560, 1860};
  private static final double[] SOC = {9, 11, 15, 19.5, 28, 37, 45, 55, 64, 73, 81.5};
  private static final double[] POWER = {72, 118, 141, 150, 149.5, 147, 139, 121, 104, 82, 61.5};

  private static final Map<String, Double> EXPECTED = new HashMap<>();
  private static Numbers numbers = new Numbers(new ArrayList<>());
  private static Session session = session();

  private static Session session() {
    return Sessions.session()
        .channel(Channel.SOC, 0.25, SECONDS, SOC)
        .channel(Channel.POWER, 0.25, SECONDS, POWER)
        .build();
  }

  @BeforeAll
  static void measure() throws IOException {
    try (InputStream in =
        ScipyReferenceTest.class.getResourceAsStream("/reference/scipy/expected.csv")) {
      List<String> lines =
          new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).toList();
      for (String line : lines) {
        String[] cells = line.split(",", -1);
        EXPECTED.put(cells[0], Double.parseDouble(cells[1]));
      }
    }
    numbers =
        Sessions.measure(
                session, new SocWindow(10, 80), new SocWindow(20, 60), new SocWindow(45, 73))
            .main()
            .numbers();
  }

  @ParameterizedTest
  @CsvSource({
    "energy_added, energy_kwh",
    "time_to_soc_10, time_to_soc_10_s",
    "time_to_soc_20, time_to_soc_20_s",
    "time_to_soc_30, time_to_soc_30_s",
    "time_to_soc_40, time_to_soc_40_s",
    "time_to_soc_50, time_to_soc_50_s",
    "time_to_soc_60, time_to_soc_60_s",
    "time_to_soc_70, time_to_soc_70_s",
    "time_to_soc_80, time_to_soc_80_s",
    "energy_soc_10_80, energy_soc_10_80_kwh",
    "average_power_10_80, average_power_10_80_kw",
    "soc_average_power_10_80, soc_average_power_10_80_kw",
    "energy_soc_20_60, energy_soc_20_60_kwh",
    "average_power_20_60, average_power_20_60_kw",
    "soc_average_power_20_60, soc_average_power_20_60_kw",
    "energy_soc_45_73, energy_soc_45_73_kwh",
    "average_power_45_73, average_power_45_73_kw",
    "soc_average_power_45_73, soc_average_power_45_73_kw",
  })
  void a_number_equals_what_scipy_gives(String id, String quantity) {
    double expected = EXPECTED.getOrDefault(quantity, Double.NaN);
    assertThat(numbers.get(id).estimate().orElseThrow().value())
        // Both integrate the same polygon; 1e-8 leaves room for quadrature and twelve digits.
        .isCloseTo(expected, within(1e-8 * Math.abs(expected)));
  }

  @Test
  void the_time_of_an_energy_is_the_root_of_the_integral() {
    PowerIntegral integral = new PowerIntegral(session.trace(Channel.POWER).orElseThrow());
    assertThat(integral.timeOf(25).getAsDouble())
        .isCloseTo(EXPECTED.getOrDefault("time_of_25_kwh_s", Double.NaN), within(1e-6));
  }
}
