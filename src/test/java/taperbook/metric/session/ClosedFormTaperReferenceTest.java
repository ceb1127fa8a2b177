package taperbook.metric.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.metric.Sessions;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.result.Numbers;
import taperbook.session.Channel;
import taperbook.session.Session;

/**
 * Charging curves with an exact solution. For a battery of C kWh and a power of a - k s kW at s %:
 *
 * <pre>
 *   t(s1, s2) = 3600 C / (100 k) ln((a - k s1) / (a - k s2))   [s],   energy = C (s2 - s1) / 100
 * </pre>
 *
 * and constant power is the limit k = 0. The numbers were computed by hand from the formula.
 */
@Tag("slow")
final class ClosedFormTaperReferenceTest {
  private static final double FULL = 60;

  static Stream<Arguments> windows() {
    return Stream.of(
        // a, k, from, to, seconds, time average kW, mean over state of charge kW
        Arguments.of(150.0, 1.2, 10, 80, 1688.8853, 89.52650, 96.0),
        Arguments.of(150.0, 1.2, 0, 32, 532.2856, 129.8553, 130.8),
        Arguments.of(150.0, 1.2, 20, 80, 1525.1361, 84.97602, 90.0),
        Arguments.of(120.0, 0.0, 10, 80, 1260.0, 120.0, 120.0),
        Arguments.of(50.0, 0.0, 20, 60, 1728.0, 50.0, 50.0));
  }

  @ParameterizedTest
  @MethodSource("windows")
  void dense_exact_rows_give_the_solution_within_a_tenth_of_a_per_cent(
      double a, double k, int from, int to, double seconds, double timeAverage, double socAverage) {
    Numbers numbers = measure(session(a, k, 0.25, 0), from, to);
    String id = from + "_" + to;
    assertClose(numbers, "time_soc_" + id, seconds);
    assertClose(numbers, "energy_soc_" + id, FULL * (to - from) / 100);
    assertClose(numbers, "average_power_" + id, timeAverage);
    assertClose(numbers, "soc_average_power_" + id, socAverage);
  }

  @ParameterizedTest
  @MethodSource("windows")
  void rows_every_five_per_cent_bound_the_solution(
      double a, double k, int from, int to, double seconds, double timeAverage, double socAverage) {
    Numbers numbers = measure(session(a, k, 5, 0.5), from, to);
    String id = from + "_" + to;
    // A display that rounds to nearest first shows a mark half a per cent below it; a window that
    // starts with the session starts at its start.
    double first = Math.max(0, from - 0.5);
    double last = to - 0.5;
    assertContains(numbers, "time_soc_" + id, seconds(a, k, last) - seconds(a, k, first));
    assertContains(numbers, "energy_soc_" + id, FULL * (last - first) / 100);
    assertContains(numbers, "average_power_" + id, timeAverage);
    assertContains(numbers, "soc_average_power_" + id, socAverage);
    // The bounds must be informative: less than a fifth of the time either way.
    Estimate time = numbers.estimate("time_soc_" + id).orElseThrow();
    assertThat(time.bounds().width()).isLessThan(0.4 * seconds);
  }

  private static void assertClose(Numbers numbers, String id, double expected) {
    assertThat(numbers.estimate(id).orElseThrow().value())
        .as(id)
        .isCloseTo(expected, within(0.001 * expected));
  }

  private static void assertContains(Numbers numbers, String id, double expected) {
    Estimate estimate = numbers.estimate(id).orElseThrow();
    assertThat(estimate.bounds().contains(expected))
        .as(id + " " + estimate + " holds " + expected)
        .isTrue();
  }

  private static Numbers measure(Session session, int from, int to) {
    return Sessions.measure(session, new SocWindow(from, to)).main().numbers();
  }

  /** Rows at each {@code step} per cent, rounded as displays do unless {@code halfStep} is zero. */
  private static Session session(double a, double k, double step, double halfStep) {
    int n = (int) Math.round(100 / step);
    double[] seconds = new double[n];
    double[] soc = new double[n];
    double[] power = new double[n];
    for (int i = 0; i < n; i++) {
      soc[i] = i * step;
      seconds[i] = seconds(a, k, soc[i]);
      power[i] = a - k * soc[i];
    }
    double clock = 0;
    if (halfStep > 0) {
      clock = 0.5;
      seconds = Arrays.stream(seconds).map(Math::rint).toArray();
      // Read inside the gap and not at the mark; otherwise rounding would have no effect.
      for (int i = 1; i < n; i++) {
        double late = soc[i] + 1.3 * Math.sin(7.0 * i);
        seconds[i] = Math.rint(seconds(a, k, late));
        soc[i] = Math.rint(late);
        power[i] = Math.rint(a - k * late);
      }
    }
    return Sessions.session()
        .clockHalfStep(clock)
        .channel(Channel.SOC, halfStep, seconds, soc)
        .channel(Channel.POWER, halfStep, seconds, power)
        .build();
  }

  private static double seconds(double a, double k, double soc) {
    double hours = k == 0 ? FULL * soc / 100 / a : FULL / (100 * k) * Math.log(a / (a - k * soc));
    return hours * 3600;
  }
}
