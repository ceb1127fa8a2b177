package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Compares the search with an exhaustive search over breakpoints, each solved as a linear problem.
 */
final class KnotSearchTest {
  private static final int POINTS = 13;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void no_other_set_of_breakpoints_at_readings_is_better(long seed) {
    Random random = new Random(seed);
    double[] soc = new double[POINTS];
    double[] power = new double[POINTS];
    double at = 5;
    for (int i = 0; i < POINTS; i++) {
      at += 1 + random.nextInt(6);
      soc[i] = at;
      power[i] = 100 + 40 * Math.sin(at / 9) + 8 * random.nextGaussian();
    }
    KnotSearch search = new KnotSearch(soc, power, true);
    for (int parameters = 0; parameters <= 6; parameters++) {
      double least = least(soc, power, new ArrayList<>(), parameters, 0);
      Optional<List<Break>> found = search.next();
      assertThat(found.isPresent()).as("%d", parameters).isEqualTo(Double.isFinite(least));
      if (found.isPresent()) {
        double sum = sum(soc, power, found.get());
        // The lower bound is evaluated at a finite number of heights, which may cost a little.
        assertThat(sum).isGreaterThan(least * (1 - 1e-9)).isCloseTo(least, within(0.002 * least));
      }
    }
  }

  private static double sum(double[] soc, double[] power, List<Break> breaks) {
    return PiecewiseLine.through(soc, power, breaks).orElseThrow().residualSumOfSquares();
  }

  /**
   * The least sum over all placements of knots at readings and steps between them, from the reading
   * at which the current segment starts.
   */
  private static double least(
      double[] soc, double[] power, List<Break> breaks, int parameters, int begin) {
    double least = parameters == 0 ? sum(soc, power, breaks) : Double.POSITIVE_INFINITY;
    for (int i = begin + 1; i < soc.length - 1; i++) {
      if (parameters >= 2) {
        breaks.add(new Break(soc[i], false));
        least = Math.min(least, least(soc, power, breaks, parameters - 2, i));
        breaks.remove(breaks.size() - 1);
      }
      if (parameters >= 3 && i + 2 < soc.length) {
        breaks.add(new Break((soc[i] + soc[i + 1]) / 2, true));
        least = Math.min(least, least(soc, power, breaks, parameters - 3, i + 1));
        breaks.remove(breaks.size() - 1);
      }
    }
    return least;
  }
}
