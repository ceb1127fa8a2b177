package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Compares Student's factors, means, and weighted lines with SciPy and JCGM 100:2008. */
final class DrivesReferenceTest {
  private static final Path EXPECTED = Path.of("src/test/resources/reference/drives/expected.csv");

  private static List<double[]> expected(String kind) {
    try {
      return Files.readAllLines(EXPECTED).stream()
          .filter(line -> line.startsWith(kind + ";"))
          .map(line -> line.substring(kind.length() + 1).split(";"))
          .map(cells -> Arrays.stream(cells).mapToDouble(Double::parseDouble).toArray())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static YorkLine line(double[] x, double[] y, double[] u) {
    return YorkLine.through(
        IntStream.range(0, x.length)
            .mapToObj(i -> new LinePoint(x[i], y[i], 0, u[i] * u[i]))
            .toList());
  }

  @Test
  void student_is_that_of_scipy() {
    for (double[] row : expected("t")) {
      assertThat(Quantiles.student95((int) row[0])).isCloseTo(row[1], within(1e-9 * row[1]));
      assertThat(Quantiles.student(0.98, (int) row[0])).isCloseTo(row[2], within(1e-9 * row[2]));
    }
  }

  /** JCGM 100:2008, table G.2, from memory. */
  @ParameterizedTest
  @CsvSource({"1, 12.71", "2, 4.30", "3, 3.18", "6, 2.45", "10, 2.23", "20, 2.09", "50, 2.01"})
  void student_is_that_of_the_gum(int degrees, double factor) {
    assertThat(Quantiles.student95(degrees)).isCloseTo(factor, within(0.0051));
  }

  @Test
  void mean_of_repeats_is_that_of_scipy() {
    SampleMean mean = SampleMean.of(List.of(171.2, 176.9, 168.4, 173.0));
    double[] row = expected("mean").get(0);
    assertThat(mean.value()).isCloseTo(row[0], within(1e-9));
    assertThat(mean.deviation()).isCloseTo(row[1], within(1e-9));
    assertThat(mean.half95()).isCloseTo(row[2], within(1e-8));
    assertThat(SampleMean.of(List.of(5.0)).half95()).isZero();
  }

  @Test
  void weighted_line_and_its_interval_are_those_of_scipy() {
    double[] speeds = {80, 90, 100, 110, 120, 130};
    YorkLine line =
        line(
            Arrays.stream(speeds).map(v -> v * v).toArray(),
            new double[] {131.0, 147.5, 160.2, 178.9, 196.1, 217.0},
            new double[] {1.2, 1.5, 0.9, 2.0, 1.4, 1.8});
    double[] fit = expected("wls").get(0);
    assertThat(line.intercept()).isCloseTo(fit[0], within(1e-4));
    assertThat(line.slope()).isCloseTo(fit[1], within(1e-8));
    assertThat(line.chiSquare()).isCloseTo(fit[2], within(1e-6));
    for (double[] at : expected("at")) {
      double x = at[0] * at[0];
      assertThat(line.at(x)).isCloseTo(at[1], within(1e-4));
      assertThat(line.errorAt(x)).isCloseTo(at[2], within(1e-5));
      assertThat(line.half95At(x)).isCloseTo(at[3], within(1e-5));
    }
  }

  @Test
  void slope_over_the_odometer_is_that_of_scipy() {
    YorkLine line =
        line(
            new double[] {0.42, 1.86, 3.31, 6.18},
            new double[] {61.9, 61.2, 60.9, 59.1},
            new double[] {0.4, 0.3, 0.5, 0.35});
    double[] slope = expected("slope").get(0);
    assertThat(line.slope()).isCloseTo(slope[0], within(1e-7));
    assertThat(line.slopeHalf95()).isCloseTo(slope[1], within(1e-6));
  }
}
