package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.metric.bounds.PowerIntegral;
import taperbook.session.Trace;

/** Counters of 0.6 kWh per 1 %, exact or with a known scatter, at every per cent. */
final class EnergyFitTest {
  private static final double X_VARIANCE = 0.25 / 3;
  private static final double Y_VARIANCE = 0.0025 / 3;

  private static Trace trace(double halfStep, int n, IntToDoubleFunction value) {
    return new Trace(
        "r",
        IntStream.range(0, n).mapToDouble(i -> 30 * i).toArray(),
        IntStream.range(0, n).mapToDouble(value).toArray(),
        IntStream.range(0, n).map(i -> i + 2).toArray(),
        halfStep,
        0);
  }

  private static Optional<EnergyFit> counted(int n, IntToDoubleFunction energy) {
    return EnergyFit.of(
        trace(0.5, n, i -> 10 + i), Optional.of(trace(0.05, n, energy)), Optional.empty());
  }

  /**
   * Eleven points: Sxx = 110, and the tabulated orthogonal polynomials of degree 3 and 5, which
   * alone differ at the ends, are -30, ..., 30 with squares of 4290 and a maximum of 30, and -3,
   * ..., 3 with squares of 156 and a maximum of 6.
   */
  @Test
  void exact_points_have_the_uncertainty_of_the_line_and_of_the_curvature() {
    EnergyFit fit = counted(11, i -> 0.6 * i).orElseThrow();
    double weight = 1 / (Y_VARIANCE + 0.36 * X_VARIANCE);
    double ofLine = 1 / (weight * 110);
    double ofCurve = curvature(weight, 4290 / 900.0, 2, 3) + curvature(weight, 156 / 36.0, 1, 5);
    assertThat(fit.perPercent().value()).isCloseTo(0.6, within(1e-9));
    assertThat(fit.perPercent().bounds().width() / 2)
        .isCloseTo(1.959963984540054 * Math.sqrt(ofLine + ofCurve), within(1e-7));
    assertThat(fit.residual()).isCloseTo(0, within(1e-9));
    assertThat(fit.consistency()).isCloseTo(0, within(1e-9));
    assertThat(fit.widening()).isEqualTo(1);
    assertThat(fit.rows()).hasSize(11);
  }

  private static double curvature(double weight, double squares, double rise, int degree) {
    double open = 0.04 / (degree * degree) * 6;
    double slope = rise / 10;
    return slope * slope / (weight * squares + 1 / (open * open));
  }

  /** A scatter that alternates, and one that swings slowly, so that neighbours are correlated. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5, 8})
  void scatter_widens_the_interval_by_chi_square_and_correlation(int run) {
    int n = 48;
    double[] energies =
        IntStream.range(0, n)
            .mapToDouble(i -> 0.6 * i + 5 + (i / run % 2 == 0 ? 0.6 : -0.6))
            .toArray();
    List<LinePoint> points =
        IntStream.range(0, n)
            .mapToObj(i -> new LinePoint(10 + i, energies[i], X_VARIANCE, Y_VARIANCE))
            .toList();
    YorkLine line = YorkLine.through(points);
    Curvature curve = Curvature.about(line, points);
    double[] e = curve.distances().stream().mapToDouble(d -> d).toArray();
    double squares = Arrays.stream(e).map(d -> d * d).sum();
    double products = IntStream.range(1, n).mapToDouble(i -> e[i] * e[i - 1]).sum();
    double correlation = Math.max(0, products / squares);
    double effective = n * (1 - correlation) / (1 + correlation);
    double consistency = curve.chiSquare() / curve.degreesOfFreedom();
    double widening = Math.sqrt(Math.max(1, consistency * n / effective));

    EnergyFit fit = counted(n, i -> energies[i]).orElseThrow();
    assertThat(fit.residual()).isCloseTo(Math.sqrt(squares / n), within(1e-9));
    assertThat(fit.consistency()).isCloseTo(consistency, within(1e-9));
    assertThat(fit.widening()).isCloseTo(widening, within(1e-9)).isGreaterThan(1);
    double t = Quantiles.student95(Math.max(3, (int) effective - 2));
    assertThat(fit.perPercent().value()).isCloseTo(line.slope() + curve.correction(), within(1e-9));
    assertThat(fit.perPercent().bounds().width() / 2)
        .isCloseTo(t * widening * Math.hypot(line.slopeError(), curve.standard()), within(1e-9));
    assertThat(correlation > 0).isEqualTo(run > 1);
  }

  @Test
  void the_scale_of_integrated_power_is_added_in_quadrature() {
    PowerIntegral steady = new PowerIntegral(trace(0.5, 11, i -> 72));
    PowerIntegral exact = new PowerIntegral(trace(0, 11, i -> 72));
    Trace soc = trace(0.5, 11, i -> 10 + i);
    double half = half(EnergyFit.of(soc, Optional.empty(), Optional.of(steady)));
    double without = half(EnergyFit.of(soc, Optional.empty(), Optional.of(exact)));
    double scale = 1.959963984540054 * 0.6 * 0.5 / 72 / Math.sqrt(3);
    assertThat(half).isCloseTo(Math.hypot(without, scale), within(1e-9));
    assertThat(half - without).isGreaterThan(1e-6);
  }

  private static double half(Optional<EnergyFit> fit) {
    return fit.orElseThrow().perPercent().bounds().width() / 2;
  }

  @Test
  void an_interval_that_contains_zero_is_no_fit() {
    assertThat(counted(11, i -> i % 2 == 0 ? 5 : 1)).isEmpty();
    assertThat(counted(4, i -> 0.6 * i)).isEmpty();
    assertThat(counted(5, i -> 0.6 * i)).isPresent();
  }
}
