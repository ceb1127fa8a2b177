package taperbook.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.model.Channel;
import taperbook.model.Estimate;
import taperbook.model.Numbers;
import taperbook.model.ReportNumber;
import taperbook.model.Session;
import taperbook.model.SocWindow;

/** Laws that hold whatever the session. */
final class MeasuringPropertyTest {
  static IntStream seeds() {
    return IntStream.rangeClosed(1, 100);
  }

  private record Row(double second, double soc, double power) {}

  private record Readings(List<Row> rows) {
    Session session(double socHalfStep) {
      double[] seconds = rows.stream().mapToDouble(Row::second).toArray();
      return Sessions.session()
          .clockHalfStep(0.5)
          .channel(Channel.SOC, socHalfStep, seconds, rows.stream().mapToDouble(Row::soc).toArray())
          .channel(Channel.POWER, 0.5, seconds, rows.stream().mapToDouble(Row::power).toArray())
          .build();
    }

    Readings withTwiceThePower() {
      return new Readings(
          rows.stream().map(r -> new Row(r.second(), r.soc(), 2 * r.power())).toList());
    }
  }

  private static Readings random(int seed) {
    Random random = new Random(seed);
    int n = 6 + random.nextInt(40);
    List<Row> rows = new ArrayList<>();
    double s = random.nextInt(9);
    double t = 0;
    for (int i = 0; i < n; i++) {
      double soc = i == n - 1 ? Math.max(Math.rint(s), 85) : Math.rint(s);
      rows.add(new Row(t, soc, Math.rint(30 + 140 * random.nextDouble())));
      s = Math.min(100, s + 90.0 / n * (0.4 + 1.2 * random.nextDouble()));
      t += 10 + random.nextInt(120);
    }
    return new Readings(rows);
  }

  /** Bounds, not coverage intervals: these laws are exact, a simulation is not. */
  private static Numbers numbers(Session session) {
    return ReportMeasuring.bounded(
        Sessions.plan(
            List.of(new SocWindow(10, 80), new SocWindow(10, 40), new SocWindow(40, 80)),
            List.of()),
        session,
        List.of());
  }

  private static double value(Numbers numbers, String id) {
    return numbers.estimate(id).orElseThrow().value();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void times_and_energies_of_parts_add_up_to_the_whole(int seed) {
    Numbers numbers = numbers(random(seed).session(0.5));
    assertThat(value(numbers, "time_soc_10_40") + value(numbers, "time_soc_40_80"))
        .isCloseTo(value(numbers, "time_soc_10_80"), within(1e-9));
    assertThat(value(numbers, "energy_soc_10_40") + value(numbers, "energy_soc_40_80"))
        .isCloseTo(value(numbers, "energy_soc_10_80"), within(1e-9));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void twice_the_power_is_twice_the_energy_and_the_same_time(int seed) {
    Readings readings = random(seed);
    Numbers once = numbers(readings.session(0.5));
    Numbers twice = numbers(readings.withTwiceThePower().session(0.5));
    assertThat(value(twice, "energy_added"))
        .isCloseTo(2 * value(once, "energy_added"), within(1e-9));
    assertThat(value(twice, "average_power_10_80"))
        .isCloseTo(2 * value(once, "average_power_10_80"), within(1e-9));
    assertThat(value(twice, "time_soc_10_80")).isEqualTo(value(once, "time_soc_10_80"));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void a_coarser_display_never_narrows_an_interval(int seed) {
    Readings readings = random(seed);
    Numbers fine = numbers(readings.session(0.25));
    Numbers coarse = numbers(readings.session(0.5));
    for (String id :
        new String[] {
          "time_soc_10_80",
          "time_to_soc_50",
          "energy_soc_10_80",
          "average_power_10_80",
          "soc_average_power_10_80"
        }) {
      Estimate narrow = fine.estimate(id).orElseThrow();
      Estimate wide = coarse.estimate(id).orElseThrow();
      assertThat(wide.bounds().width())
          .as(id)
          .isGreaterThanOrEqualTo(narrow.bounds().width() - 1e-9);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void every_interval_contains_its_value_and_marks_come_in_order(int seed) {
    Numbers numbers = numbers(random(seed).session(0.5));
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
