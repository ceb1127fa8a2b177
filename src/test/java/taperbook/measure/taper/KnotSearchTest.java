package taperbook.measure.taper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The search against trying every choice of breakpoints, each solved as a linear problem. */
final class KnotSearchTest {
  private static final int POINTS = 13;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void no_other_choice_of_breakpoints_among_the_readings_is_better(long seed) {
    Random random = new Random(seed);
    double[] soc = new double[POINTS];
    double[] power = new double[POINTS];
    double at = 5;
    for (int i = 0; i < POINTS; i++) {
      at += 1 + random.nextInt(6);
      soc[i] = at;
      power[i] = 100 + 40 * Math.sin(at / 9) + 8 * random.nextGaussian();
    }
    List<double[]> found = new KnotSearch(soc, power).best(4);
    for (int segments = 1; segments <= 4; segments++) {
      double sum = sum(soc, power, found.get(segments - 1));
      double least = least(soc, power, new double[segments - 1], 0, 1);
      // The envelope is compared at a finite number of heights, which may cost a little.
      assertThat(sum).isGreaterThan(least * (1 - 1e-9)).isCloseTo(least, within(0.002 * least));
    }
  }

  private static double sum(double[] soc, double[] power, double[] breaks) {
    return BrokenLine.through(soc, power, breaks).orElseThrow().residualSumOfSquares();
  }

  private static double least(
      double[] soc, double[] power, double[] breaks, int filled, int firstFree) {
    if (filled == breaks.length) {
      return sum(soc, power, breaks);
    }
    double least = Double.POSITIVE_INFINITY;
    for (int i = firstFree; i < soc.length - 1; i++) {
      double[] more = breaks.clone();
      more[filled] = soc[i];
      if (i + breaks.length - filled <= soc.length - 1) {
        least = Math.min(least, least(soc, power, more, filled + 1, i + 1));
      }
    }
    return least;
  }
}
