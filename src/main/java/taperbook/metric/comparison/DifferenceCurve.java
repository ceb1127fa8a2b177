package taperbook.metric.comparison;

import java.util.stream.IntStream;
import taperbook.result.Curve;

/** Builds the curve of the difference of two power curves with its band: kW over %. */
final class DifferenceCurve {
  private static final int MOST_POINTS = 400;

  private DifferenceCurve() {}

  static Curve of(Pair pair) {
    Band band = pair.band();
    int step = (band.size() + MOST_POINTS - 1) / MOST_POINTS;
    int last = band.size() - 1;
    int[] kept = IntStream.rangeClosed(0, last).filter(i -> i % step == 0 || i == last).toArray();
    int n = kept.length;
    double[] x = new double[n];
    double[] y = new double[n];
    double[] low = new double[n];
    double[] high = new double[n];
    boolean[] wide = new boolean[n];
    for (int k = 0; k < n; k++) {
      int i = kept[k];
      x[k] = band.percent(i);
      y[k] = band.value(i);
      low[k] = band.low(i);
      high[k] = band.high(i);
      wide[k] = k + 1 < n && pair.isInWideGap((x[k] + band.percent(kept[k + 1])) / 2);
    }
    return new Curve(x, y, low, high, wide);
  }
}
