package taperbook.metric.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.quantity.Interval;
import taperbook.session.Trace;

/**
 * Compares the bounds with true values in closed form: P(s) = a - k s kW into C kWh gives s(t) = (a
 * - (a - k s0) exp(-100 k t / (3600 C))) / k. Read at random times, rounded, and thinned.
 */
final class MonotoneBoundsPropertyTest {
  private static final double FULL = 60;

  static IntStream seeds() {
    return IntStream.rangeClosed(1, 200);
  }

  private record Truth(double a, double k, double start) {
    double soc(double second) {
      double rate = 100 * k / (3600 * FULL);
      return (a - (a - k * start) * Math.exp(-rate * second)) / k;
    }

    double second(double soc) {
      return 3600 * FULL / (100 * k) * Math.log((a - k * start) / (a - k * soc));
    }
  }

  private static Truth truth(Random random) {
    return new Truth(
        100 + 100 * random.nextDouble(), 0.4 + 0.6 * random.nextDouble(), 15 * random.nextDouble());
  }

  private static Trace readings(Truth truth, Random random) {
    double end = truth.second(85);
    int n = 8 + random.nextInt(60);
    double[] seconds = new double[n];
    double[] soc = new double[n];
    int[] lines = new int[n];
    for (int i = 0; i < n; i++) {
      double jitter = i == 0 || i == n - 1 ? 0 : 0.6 * (random.nextDouble() - 0.5);
      double true_ = end * (i + jitter) / (n - 1);
      seconds[i] = Math.rint(true_);
      soc[i] = Math.rint(truth.soc(true_));
      lines[i] = i + 2;
    }
    return new Trace("r", seconds, soc, lines, 0.5, 0.5);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void the_true_curve_is_within_the_bounds(int seed) {
    Random random = new Random(seed);
    Truth truth = truth(random);
    Trace trace = readings(truth, random);
    MonotoneBounds monotoneBounds = new MonotoneBounds(trace);
    for (int i = 0; i < 300; i++) {
      double second = trace.lastSecond() * i / 300;
      Interval bounds = monotoneBounds.at(second);
      assertThat(bounds.contains(truth.soc(second)))
          .as(second + " s: " + truth.soc(second) + " in " + bounds)
          .isTrue();
    }
  }
}
