package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.metric.course.Courses;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.result.Numbers;
import taperbook.session.Channel;
import taperbook.session.Session;

/** Compares integrals, averages, and times with SciPy; see {@code reference/scipy/SOURCE.md}. */
final class ScipyReferenceTest {
  private static final double[] SECONDS =
      IntStream.rangeClosed(0, 62).mapToDouble(i -> 30 * i).toArray();

  private static final Map<String, Double> EXPECTED = expected();
  private static final Session SESSION = session();
  private static final Numbers NUMBERS =
      Sessions.measure(SESSION, new SocWindow(10, 80), new SocWindow(20, 60), new SocWindow(45, 73))
          .main()
          .numbers();

  private static Session session() {
    return Sessions.session()
        .channel(Channel.SOC, 0, SECONDS, read("soc"))
        .channel(Channel.POWER, 0, SECONDS, read("power"))
        .build();
  }

  private static double[] read(String channel) {
    return Arrays.stream(SECONDS)
        .map(t -> value(String.format(Locale.ROOT, "%s_at_%.0f_s", channel, t)))
        .toArray();
  }

  private static double value(String quantity) {
    return EXPECTED.getOrDefault(quantity, Double.NaN);
  }

  private static Map<String, Double> expected() {
    try (InputStream in =
        ScipyReferenceTest.class.getResourceAsStream("/reference/scipy/expected.csv")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(line -> line.split(",", -1))
          .collect(Collectors.toMap(cells -> cells[0], cells -> Double.parseDouble(cells[1])));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
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
  void numbers_match_scipy(String id, String quantity) {
    Estimate estimate = NUMBERS.get(id).estimate().orElseThrow();
    double expected = value(quantity);
    // Readings are exact, but the power between them is unknown: a time may be off by a hundredth
    // of the 30 s between two rows.
    double between = id.startsWith("time") ? 0.3 : 0;
    assertThat(estimate.value()).isCloseTo(expected, within(1e-3 * expected + between));
    assertThat(estimate.bounds().contains(expected)).as(id + " " + estimate).isTrue();
    assertThat(estimate.bounds().width()).isLessThan(0.01 * expected + 3);
  }

  @Test
  void the_time_of_an_energy_is_the_root_of_the_integral() {
    Estimate time =
        new Courses(SESSION, Optional.empty(), Courses.FOR_REPORT)
            .estimate(d -> d.course().timeOfEnergy(25))
            .orElseThrow();
    double expected = value("time_of_25_kwh_s");
    assertThat(time.value()).isCloseTo(expected, within(1e-3 * expected + 0.3));
    assertThat(time.bounds().contains(expected)).as(time.toString()).isTrue();
  }
}
