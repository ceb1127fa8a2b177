package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Session;

/** Properties of the metrics of any session. */
@Tag("slow")
final class SessionMetricsPropertyTest {
  private static final int SEEDS = 100;

  /**
   * Maximum distance of two samples of 600 draws, in half-widths of the interval. The mean of 300
   * independent pairs has a standard deviation of 0.03, that of correlated draws about twice as
   * much, and the test compares about a hundred pairs of samples.
   */
  private static final double CHANCE = 0.3;

  static IntStream seeds() {
    return IntStream.rangeClosed(1, SEEDS);
  }

  /**
   * A session whose power is a polygon with random corners at its rows, and whose charge is the
   * integral of the power.
   */
  private static final class Truth {
    private final double[] seconds;
    private final double[] power;
    private final double[] soc;

    private Truth(double[] seconds, double[] power, double[] soc) {
      this.seconds = seconds;
      this.power = power;
      this.soc = soc;
    }

    static Truth random(int seed) {
      Random random = new Random(seed);
      int n = 6 + random.nextInt(40);
      double[] seconds = new double[n];
      double[] power = new double[n];
      double[] energy = new double[n];
      double start = 9 * random.nextDouble();
      for (int i = 0; i < n; i++) {
        power[i] = 30 + 140 * random.nextDouble();
        if (i > 0) {
          double gap = 10 + random.nextInt(120);
          seconds[i] = seconds[i - 1] + gap;
          energy[i] = energy[i - 1] + (power[i - 1] + power[i]) / 2 * gap / 3600;
        }
      }
      double gain = (85 + 10 * random.nextDouble() - start) / energy[n - 1];
      return new Truth(seconds, power, Arrays.stream(energy).map(e -> start + gain * e).toArray());
    }

    /** The session on displays with the given steps. */
    Session read(double socStep, double powerStep) {
      return Sessions.session()
          .text(ConditionItem.DISPLAY_ROUNDS, "nearest")
          .text(ConditionItem.ROWS_WRITTEN, "at set times")
          .clockHalfStep(0.5)
          .channel(Channel.SOC, socStep / 2, seconds, rounded(soc, socStep))
          .channel(Channel.POWER, powerStep / 2, seconds, rounded(power, powerStep))
          .build();
    }

    private static double[] rounded(double[] values, double step) {
      return Arrays.stream(values).map(v -> Math.floor(v / step + 0.5) * step).toArray();
    }

    Truth withTwiceThePower() {
      return new Truth(seconds, Arrays.stream(power).map(p -> 2 * p).toArray(), soc);
    }

    Truth later(double shift) {
      return new Truth(Arrays.stream(seconds).map(t -> t + shift).toArray(), power, soc);
    }
  }

  private static Numbers numbers(Session session) {
    return ReportMetrics.measureSession(
        Sessions.plan(
            List.of(new SocWindow(10, 80), new SocWindow(10, 40), new SocWindow(40, 80)),
            List.of()),
        session,
        List.of());
  }

  private static Numbers numbers(int seed) {
    return numbers(Truth.random(seed).read(1, 1));
  }

  private static double value(Numbers numbers, String id) {
    return numbers.estimate(id).orElseThrow().value();
  }

  private static double width(Numbers numbers, String id) {
    return numbers.estimate(id).orElseThrow().bounds().width();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void times_and_energies_of_parts_add_up_to_the_whole(int seed) {
    Numbers numbers = numbers(seed);
    assertThat(value(numbers, "time_soc_10_40") + value(numbers, "time_soc_40_80"))
        .isCloseTo(value(numbers, "time_soc_10_80"), within(1e-9));
    assertThat(value(numbers, "energy_soc_10_40") + value(numbers, "energy_soc_40_80"))
        .isCloseTo(value(numbers, "energy_soc_10_80"), within(1e-9));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void twice_the_power_is_twice_the_energy_and_the_same_time(int seed) {
    Truth truth = Truth.random(seed);
    Numbers once = numbers(truth.read(1, 1));
    Numbers twice = numbers(truth.withTwiceThePower().read(1, 2));
    assertTimes(2, once, twice, "energy_added");
    assertTimes(2, once, twice, "average_power_10_80");
    assertTimes(1, once, twice, "time_soc_10_80");
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void a_time_shift_changes_only_the_times(int seed) {
    Truth truth = Truth.random(seed);
    Numbers now = numbers(truth.read(1, 1));
    Numbers later = numbers(truth.later(1800).read(1, 1));
    assertTimes(1, now, later, "energy_added");
    assertTimes(1, now, later, "time_soc_10_80");
    assertTimes(1, now, later, "energy_soc_10_80");
  }

  /** Asserts that value and interval of a number are a multiple of those of another session. */
  private static void assertTimes(double factor, Numbers one, Numbers other, String id) {
    Estimate here = one.estimate(id).orElseThrow();
    Estimate there = other.estimate(id).orElseThrow();
    double half = factor * here.bounds().width() / 2;
    assertThat(there.value()).as(id).isCloseTo(factor * here.value(), within(CHANCE * half));
    assertThat(there.bounds().width() / 2).as(id).isCloseTo(half, within(2 * CHANCE * half));
  }

  /** Readings depend on the step, so that a single session may have a narrow interval by chance. */
  @Test
  void a_coarser_display_widens_intervals_on_average() {
    for (String id :
        List.of("time_soc_10_80", "time_to_soc_50", "energy_soc_10_80", "average_power_10_80")) {
      double sum = 0;
      for (int seed = 1; seed <= SEEDS; seed++) {
        Truth truth = Truth.random(seed);
        double ratio =
            width(numbers(truth.read(1, 1)), id) / width(numbers(truth.read(0.5, 1)), id);
        sum += Math.log(ratio);
      }
      assertThat(sum / SEEDS).as(id).isPositive();
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void every_interval_contains_its_value_and_marks_are_in_order(int seed) {
    Numbers numbers = numbers(seed);
    for (ReportNumber number : numbers.all()) {
      number
          .estimate()
          .ifPresent(e -> assertThat(e.bounds().contains(e.value())).as(number.id()).isTrue());
    }
    double last = 0;
    for (int mark = 10; mark <= 80; mark += 10) {
      double second = value(numbers, "time_to_soc_" + mark);
      assertThat(second).isGreaterThanOrEqualTo(last);
      last = second;
    }
  }
}
