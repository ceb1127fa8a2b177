package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Compares fits with R's package segmented; see {@code reference/r-segmented/SOURCE.md}. */
final class SegmentedReferenceTest {
  private static List<String[]> table(String name) throws IOException {
    try (InputStream in =
        SegmentedReferenceTest.class.getResourceAsStream("/reference/r-segmented/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(line -> line.split(",", -1))
          .toList();
    }
  }

  private static Map<String, Double> expected(String name) throws IOException {
    Map<String, Double> values = new HashMap<>();
    for (String[] row : table("expected.csv")) {
      if (row[0].equals(name)) {
        values.put(row[1] + " " + row[2], Double.parseDouble(row[3]));
      }
    }
    return values;
  }

  private static TaperPoints points(String name) throws IOException {
    List<double[]> points = new ArrayList<>();
    for (String[] row : table("data.csv")) {
      if (row[0].equals(name)) {
        points.add(new double[] {Double.parseDouble(row[1]), Double.parseDouble(row[2])});
      }
    }
    // Displays without steps, because R does not model rounding.
    return new TaperPoints(
        points.stream().mapToDouble(p -> p[0]).toArray(),
        points.stream().mapToDouble(p -> p[1]).toArray(),
        0,
        0);
  }

  /**
   * Both programs stop near the same minimum, not at it: breakpoints may differ by a small part of
   * their standard error, and other quantities by a small relative amount.
   */
  @ParameterizedTest
  @CsvSource({
    "plateau-taper, 2",
    "stagnant, 2",
    "climb-plateau-two-tapers, 4",
    "hand-read, 3",
    "steep-drop, 6"
  })
  void breakpoints_slopes_and_standard_errors_are_those_of_r(String name, int segments)
      throws IOException {
    Map<String, Double> expected = expected(name);
    TaperPoints points = points(name);
    PiecewiseLine line = line(points, segments);
    FitUncertainty uncertainty = new FitUncertainty(points, line);
    assertThat(line.residualSumOfSquares())
        .isCloseTo(value(expected, "rss 0"), within(1e-6 * value(expected, "rss 0")));
    for (int k = 1; k < segments; k++) {
      double error = value(expected, "standard_error " + k);
      assertThat(line.at(k - 1))
          .isCloseTo(value(expected, "breakpoint " + k), within(1e-3 * error));
      assertThat(uncertainty.ofBreak(k - 1).width() / 4).isCloseTo(error, within(1e-3 * error));
    }
    for (int k = 1; k <= segments; k++) {
      double error = value(expected, "slope_standard_error " + k);
      assertThat(line.slope(k - 1)).isCloseTo(value(expected, "slope " + k), within(1e-3 * error));
      assertThat(uncertainty.ofSlope(k - 1)).isCloseTo(error, within(1e-3 * error));
    }
  }

  /** The best line with the given number of segments, without steps, which R does not model. */
  private static PiecewiseLine line(TaperPoints points, int segments) {
    KnotSearch search = new KnotSearch(points.socs(), points.powers(), false);
    Optional<List<Break>> breaks = Optional.empty();
    for (int p = 0; p <= KnotSearch.OF_KNOT * (segments - 1); p++) {
      breaks = search.next();
    }
    return BreakRefinement.of(
        points.socs(),
        points.powers(),
        PiecewiseLine.through(points.socs(), points.powers(), breaks.orElseThrow()).orElseThrow());
  }

  /**
   * None of the curves has a step: the lines of R are continuous, and so are the curves of the
   * data.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "plateau-taper",
        "stagnant",
        "climb-plateau-two-tapers",
        "hand-read",
        "steep-drop"
      })
  void a_curve_without_a_step_has_no_step(String name) throws IOException {
    TaperPoints points = points(name);
    assertThat(TaperFit.of(points, points.scale()).steps()).isEmpty();
  }

  private static double value(Map<String, Double> expected, String quantity) {
    return expected.getOrDefault(quantity, Double.NaN);
  }
}
