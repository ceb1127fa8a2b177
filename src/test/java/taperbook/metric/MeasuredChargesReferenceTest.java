package taperbook.metric;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.diagnostics.Checked;
import taperbook.input.SessionParser;
import taperbook.input.csv.CsvParser;
import taperbook.input.mapping.ColumnMapParser;
import taperbook.quantity.Estimate;
import taperbook.result.Numbers;
import taperbook.session.InputFile;
import taperbook.session.Session;

/**
 * Compares measured charges of three cells with NumPy; see {@code reference/nasa-cccv/SOURCE.md}.
 */
final class MeasuredChargesReferenceTest {
  private static final Map<String, Map<String, Double>> REFERENCE = new HashMap<>();
  private static final Map<String, Numbers> NUMBERS = new HashMap<>();

  @BeforeAll
  static void measure() {
    List<String[]> lines =
        new String(file("reference.csv").bytes(), StandardCharsets.UTF_8)
            .lines()
            .map(line -> line.split(",", -1))
            .toList();
    for (String[] cells : lines.subList(1, lines.size())) {
      Map<String, Double> quantities = new HashMap<>();
      for (int i = 1; i < cells.length; i++) {
        quantities.put(lines.get(0)[i], Double.parseDouble(cells[i]));
      }
      REFERENCE.put(cells[0], quantities);
      NUMBERS.put(cells[0], Sessions.measure(session(cells[0])).main().numbers());
    }
  }

  private static InputFile file(String name) {
    try (InputStream in =
        MeasuredChargesReferenceTest.class.getResourceAsStream("/reference/nasa-cccv/" + name)) {
      return new InputFile(name, in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }

  private static Session session(String name) {
    Checked<Session> session =
        CsvParser.read(file("columns.csv"))
            .then(ColumnMapParser::check)
            .then(
                map ->
                    SessionParser.check(
                        name,
                        map,
                        CsvParser.read(file(name + ".csv"), map.layout()),
                        CsvParser.read(file("conditions.csv"))));
    assertThat(session.problems()).isEmpty();
    return session.value().orElseThrow();
  }

  private static Stream<String> charges() {
    return REFERENCE.keySet().stream().sorted();
  }

  /**
   * Asserts that the interval contains the reference within its own uncertainty, and that the value
   * is close to it.
   */
  private static void assertContains(String id, String quantity, double open, double tolerance) {
    assertThat(charges())
        .hasSize(3)
        .allSatisfy(
            charge -> {
              double expected =
                  requireNonNull(REFERENCE.get(charge)).getOrDefault(quantity, Double.NaN);
              Estimate measured = requireNonNull(NUMBERS.get(charge)).estimate(id).orElseThrow();
              assertThat(
                      measured
                          .bounds()
                          .hull(measured.bounds().low() - open)
                          .hull(measured.bounds().high() + open)
                          .contains(expected))
                  .as("%s of %s: %s has %s in its interval", id, charge, measured, expected)
                  .isTrue();
              assertThat(measured.value()).isCloseTo(expected, within(tolerance));
            });
  }

  /**
   * The reference is the first row that shows a charge; the display changed up to 45 s earlier, and
   * a duration is off by up to twice that.
   */
  @ParameterizedTest
  @CsvSource({
    "time_to_soc_10, t_at_10_s, 45",
    "time_to_soc_20, t_at_20_s, 45",
    "time_to_soc_30, t_at_30_s, 45",
    "time_to_soc_40, t_at_40_s, 45",
    "time_to_soc_50, t_at_50_s, 45",
    "time_to_soc_60, t_at_60_s, 45",
    "time_to_soc_70, t_at_70_s, 45",
    "time_to_soc_80, t_at_80_s, 45",
    "time_to_soc_90, t_at_90_s, 45",
    "time_soc_10_80, t10_80_s, 90",
  })
  void times_are_those_of_numpy(String id, String quantity, double seconds) {
    assertContains(id, quantity, seconds, seconds);
  }

  /**
   * Half a per cent at either end of the window is 0.8 kWh, or 1.4 % of it, and powers change by
   * less than that: the tolerance is the effect of a row of 45 s at either end. The reference of
   * the energy is the integral of power, which may differ by half a step of the counter.
   */
  @ParameterizedTest
  @CsvSource({
    "energy_soc_10_80, e10_80_kwh, 0.8, 0.8",
    "average_power_10_80, avg10_80_kw, 0.3, 0.8",
    "soc_average_power_10_80, socavg10_80_kw, 0.3, 0.8",
    "energy_added, energy_kwh, 0.05, 0.1",
    "peak_power, peak_kw, 0, 0.05",
  })
  void energies_and_powers_are_those_of_numpy(
      String id, String quantity, double open, double tolerance) {
    assertContains(id, quantity, open, tolerance);
  }

  /**
   * The charges range from 0 to 100 %, so that the energy of a full charge is the energy charged.
   */
  @ParameterizedTest
  @CsvSource({"implied_full_energy, 0.8", "implied_full_energy_fitted, 0.3"})
  void the_energy_of_a_full_charge_is_the_energy_charged(String id, double tolerance) {
    assertContains(id, "energy_kwh", 0, tolerance);
  }

  /** Power is continuous at the change from constant current to constant voltage. */
  @Test
  void no_step_of_power_is_detected() {
    assertThat(charges())
        .hasSize(3)
        .noneMatch(
            charge ->
                requireNonNull(NUMBERS.get(charge)).ids().stream()
                    .anyMatch(i -> i.startsWith("taper_step")));
  }
}
