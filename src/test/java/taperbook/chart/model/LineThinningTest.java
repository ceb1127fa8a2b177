package taperbook.chart.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.result.Curve;

final class LineThinningTest {
  private static final PlotArea FRAME =
      new PlotArea(
          new Box(0, 0, 600, 300),
          new Axis("x", "kW", 0, 600, 100),
          new Axis("y", "kW", 0, 300, 100));

  static IntStream seeds() {
    return IntStream.rangeClosed(1, 50);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void no_omitted_point_is_farther_from_the_line_than_the_tolerance(int seed) {
    Random random = new Random(seed);
    int n = 500;
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = 600.0 * i / n;
      y[i] = 200 - x[i] / 4 + random.nextInt(3);
    }
    PlotLine line = new PlotLine(new Curve(x, y, y, y, new boolean[n]), v -> v, v -> v);
    List<Integer> kept = LineThinning.keep(line, new PlotLine.Run(0, n - 1), FRAME, 0.8);
    assertThat(kept).startsWith(0).endsWith(n - 1).isSorted().hasSizeLessThan(n);
    for (int k = 0; k + 1 < kept.size(); k++) {
      for (int i = kept.get(k); i <= kept.get(k + 1); i++) {
        assertThat(distance(x, y, kept.get(k), kept.get(k + 1), i)).isLessThanOrEqualTo(0.8);
      }
    }
  }

  private static double distance(double[] x, double[] y, int from, int to, int i) {
    return Line2D.ptSegDist(x[from], y[from], x[to], y[to], x[i], y[i]);
  }
}
