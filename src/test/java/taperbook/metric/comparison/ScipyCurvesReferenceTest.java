package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.metric.course.Courses;
import taperbook.result.PairResult;
import taperbook.result.Stretch;
import taperbook.session.Channel;
import taperbook.session.Session;

/**
 * Compares area, time, and crossing of two piecewise linear curves with SciPy; see SOURCE.md there.
 */
final class ScipyCurvesReferenceTest {
  private static final String FOLDER = "/reference/scipy-curves/";

  private static List<String[]> rows(String file) throws IOException {
    try (InputStream in = ScipyCurvesReferenceTest.class.getResourceAsStream(FOLDER + file)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(line -> line.split(",", -1))
          .toList();
    }
  }

  private static Session session(String name) throws IOException {
    List<String[]> rows = rows("readings.csv").stream().filter(r -> r[0].equals(name)).toList();
    double[] seconds = column(rows, 1);
    return Sessions.session()
        .named(name)
        .clockHalfStep(0.5)
        .channel(Channel.SOC, 0.5, seconds, column(rows, 2))
        .channel(Channel.POWER, 0.5, seconds, column(rows, 3))
        .build();
  }

  private static Courses courses(String name) throws IOException {
    return new Courses(session(name), Optional.empty(), Courses.FOR_REPORT);
  }

  private static double[] column(List<String[]> rows, int column) {
    return rows.stream().mapToDouble(r -> Double.parseDouble(r[column])).toArray();
  }

  @Test
  void area_time_and_crossing_are_those_of_scipy() throws IOException {
    PairResult pair = CurveComparison.of(courses("one"), courses("other"), "the other", List.of());
    Map<String, Double> expected =
        rows("expected.csv").stream()
            .collect(Collectors.toMap(r -> r[0], r -> Double.parseDouble(r[1])));
    assertThat(expected).hasSize(5);
    // SciPy interpolates linearly; the courses may be curved between readings.
    expected.forEach(
        (id, value) ->
            assertThat(pair.numbers().estimate(id).orElseThrow().value())
                .as(id)
                .isCloseTo(value, within(0.05 * Math.abs(value))));
    assertThat(
            pair.stretches().stream()
                .map(Stretch::order)
                .filter(o -> o != Stretch.Order.UNDECIDED)
                .distinct())
        .containsExactly(Stretch.Order.AHEAD, Stretch.Order.BEHIND);
  }
}
