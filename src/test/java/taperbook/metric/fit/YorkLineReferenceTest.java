package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Compares the straight line with published and certified results; see {@code
 * reference/york/SOURCE.md}.
 */
final class YorkLineReferenceTest {
  private static Stream<double[]> rows(String file, int skippedCells) {
    try (InputStream in = YorkLineReferenceTest.class.getResourceAsStream("/reference/" + file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(
              line ->
                  Arrays.stream(line.split(",", -1))
                      .skip(skippedCells)
                      .mapToDouble(Double::parseDouble)
                      .toArray());
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }

  private static YorkLine pearson() {
    return YorkLine.through(
        rows("york/readings.csv", 0)
            .map(r -> new LinePoint(r[0], r[2], 1 / r[1], 1 / r[3]))
            .toList());
  }

  @Test
  void pearsons_data_with_yorks_weights_give_the_published_line() {
    YorkLine line = pearson();
    // Published to eleven and twelve digits.
    assertThat(line.slope()).isCloseTo(-0.48053340745, within(5e-12));
    assertThat(line.intercept()).isCloseTo(5.47991022403, within(5e-12));
    assertThat(line.slopeError()).isCloseTo(0.0579850090, within(5e-11));
    assertThat(line.interceptError()).isCloseTo(0.294970735, within(5e-10));
    assertThat(line.reducedChiSquare()).isCloseTo(1.483294149, within(5e-10));
    double widened = Math.sqrt(line.reducedChiSquare());
    assertThat(widened * line.slopeError()).isCloseTo(0.0706202695, within(5e-11));
    assertThat(widened * line.interceptError()).isCloseTo(0.3592465226, within(5e-11));
  }

  static Stream<double[]> ways() {
    return rows("york/expected.csv", 1);
  }

  @ParameterizedTest
  @MethodSource("ways")
  void it_agrees_with_other_algorithms_of_scipy(double[] expected) {
    YorkLine line = pearson();
    // Both are iterative minimizers, which stop where the sum is stationary: half the digits.
    assertThat(line.slope()).isCloseTo(expected[0], within(5e-9));
    assertThat(line.intercept()).isCloseTo(expected[1], within(5e-8));
    assertThat(line.slopeError()).isCloseTo(expected[2], within(1e-7));
    assertThat(line.interceptError()).isCloseTo(expected[3], within(1e-6));
    assertThat(line.chiSquare()).isCloseTo(expected[4], within(1e-7));
  }

  private static YorkLine exactAbscissae(double[] x, double[] y) {
    List<LinePoint> points = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      points.add(new LinePoint(x[i], y[i], 0, 1));
    }
    return YorkLine.through(points);
  }

  /** NIST Statistical Reference Datasets, linear regression, Norris: certified values. */
  @Test
  void without_error_in_x_it_agrees_with_the_certified_values_of_norris() {
    YorkLine line =
        exactAbscissae(
            new double[] {
              0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6,
              775.5, 666.9, 338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8,
              339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5
            },
            new double[] {
              0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1,
              778.1, 668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6,
              339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2
            });
    double scatter = Math.sqrt(line.reducedChiSquare());
    assertThat(line.slope()).isCloseTo(1.00211681802045, within(1e-12));
    assertThat(line.intercept()).isCloseTo(-0.262323073774029, within(1e-10));
    assertThat(scatter * line.slopeError()).isCloseTo(0.000429796848199937, within(1e-13));
    assertThat(scatter * line.interceptError()).isCloseTo(0.232818234301152, within(1e-10));
  }

  /** JCGM 100:2008, H.3: calibration of a thermometer, temperatures less 20 °C. */
  @Test
  void without_error_in_x_it_agrees_with_the_thermometer_of_the_gum() {
    double[] above20 = {
      1.521, 2.012, 2.512, 3.003, 3.507, 3.999, 4.513, 5.002, 5.503, 6.010, 6.511
    };
    YorkLine line =
        exactAbscissae(
            above20,
            new double[] {
              -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
            });
    double scatter = Math.sqrt(line.reducedChiSquare());
    // The guide prints four and five decimals.
    assertThat(line.intercept()).isCloseTo(-0.1712, within(5e-5));
    assertThat(line.slope()).isCloseTo(0.00218, within(5e-6));
    assertThat(scatter * line.interceptError()).isCloseTo(0.0029, within(5e-5));
    assertThat(scatter * line.slopeError()).isCloseTo(0.00067, within(5e-6));
    assertThat(line.at(10)).isCloseTo(-0.1494, within(5e-5));
  }

  /** NIST Technical Note 1297, table B.1, which equals JCGM 100:2008, table G.2. */
  @ParameterizedTest
  @CsvSource({
    "5, 2.57, 0.005",
    "10, 2.23, 0.005",
    "16, 2.12, 0.005",
    "30, 2.04, 0.005",
    "50, 2.01, 0.005",
    "100, 1.984, 0.0005"
  })
  void the_factor_for_95_per_cent_is_that_of_the_table(int degrees, double factor, double half) {
    assertThat(Quantiles.student95(degrees)).isCloseTo(factor, within(half));
  }
}
