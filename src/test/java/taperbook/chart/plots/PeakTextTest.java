package taperbook.chart.plots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import taperbook.result.Curve;

final class PeakTextTest {
  /** Rises by 1 kW/s to 100 kW at 100 s, is constant until 300 s, falls by 0.5 kW/s. */
  private static final Curve TRAPEZOID =
      curve(new double[] {0, 100, 300, 500}, new double[] {0, 100, 100, 0});

  @Test
  void a_stretch_of_the_length_of_the_plateau_is_the_plateau() {
    assertThat(PeakText.stretchStart(TRAPEZOID, 200)).isEqualTo(100);
  }

  @Test
  void a_longer_stretch_ends_at_equal_powers_on_both_slopes() {
    // 206 s within 2 kW of the peak: 2 s on the rise at 1 kW/s, 4 s on the fall at 0.5 kW/s.
    assertThat(PeakText.stretchStart(TRAPEZOID, 206)).isCloseTo(98, within(1.0));
  }

  @Test
  void a_stretch_as_long_as_the_curve_starts_with_it() {
    assertThat(PeakText.stretchStart(TRAPEZOID, 500)).isZero();
  }

  /** Half a million points and as many places; a pass over all points for each takes hours. */
  @Test
  @Timeout(60)
  void a_log_of_six_days_is_searched_in_one_pass() {
    int points = 500_000;
    double[] x = IntStream.range(0, points).asDoubleStream().toArray();
    double[] y = Arrays.stream(x).map(t -> 100 - Math.abs(t - 300_000) / 1_000).toArray();
    assertThat(PeakText.stretchStart(curve(x, y), 50_000)).isEqualTo(275_000);
  }

  private static Curve curve(double[] x, double[] y) {
    return new Curve(x, y, y, y, new boolean[x.length]);
  }
}
