package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.metric.course.Courses;
import taperbook.metric.course.ReadByHand;
import taperbook.metric.course.TrueCurve;

/**
 * Compares the band with its definition by counting trials: it contains 95 % of them at every
 * point, and the next narrower band contains fewer.
 */
final class BandTest {
  private static final double[] GRID =
      IntStream.rangeClosed(80, 280).mapToDouble(i -> i / 4.0).toArray();

  private final Courses one = courses("one", 3);
  private final Courses other = courses("other", 4);
  private final SampledPair pair = new SampledPair(one, other, GRID, 0);
  private final Band band = new Band(GRID, pair);

  private static Courses courses(String name, long seed) {
    TrueCurve curve = TrueCurve.random(new Random(seed), 10);
    return new Courses(
        ReadByHand.session(name, curve, new Random(seed)), Optional.empty(), Courses.FEW);
  }

  /** From two points, close to the quantiles of 2.5 %, to so many that only extremes count. */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4, 20, 201})
  void it_contains_95_percent_of_the_trials_at_every_point_and_no_narrower_band_does(int points) {
    double[] grid = Arrays.copyOf(GRID, points);
    SampledPair some = new SampledPair(one, other, grid, 0);
    int depth = new Band(grid, some).depth();
    assertThat(share(some, grid.length, depth)).isGreaterThanOrEqualTo(0.95);
    assertThat(share(some, grid.length, depth + 1)).isLessThan(0.95);
    assertThat(depth).isBetween(points <= 4 ? 5 : 1, some.trials() / 40);
  }

  /** Share of the trials between the d-th smallest and d-th largest at every point. */
  private static double share(SampledPair pair, int points, int depth) {
    boolean[] outside = new boolean[pair.trials()];
    for (int i = 0; i < points; i++) {
      double[] drawn = pair.kilowatts(i);
      double[] sorted = drawn.clone();
      Arrays.sort(sorted);
      for (int k = 0; k < drawn.length; k++) {
        outside[k] |= drawn[k] < sorted[depth - 1] || drawn[k] > sorted[drawn.length - depth];
      }
    }
    long inside = IntStream.range(0, outside.length).filter(k -> !outside[k]).count();
    return (double) inside / outside.length;
  }

  @Test
  void each_edge_is_a_sampled_difference_and_the_value_is_their_mean() {
    assertThat(band.size()).isEqualTo(GRID.length);
    for (int i = 0; i < GRID.length; i++) {
      double[] sorted = pair.kilowatts(i);
      Arrays.sort(sorted);
      double mean = Arrays.stream(sorted).average().orElseThrow();
      assertThat(band.percent(i)).isEqualTo(GRID[i]);
      assertThat(band.value(i)).isCloseTo(mean, within(1e-9));
      assertThat(band.low(i)).isEqualTo(sorted[band.depth() - 1]).isLessThan(band.value(i));
      assertThat(band.high(i))
          .isEqualTo(sorted[sorted.length - band.depth()])
          .isGreaterThan(band.value(i));
    }
  }

  @Test
  void the_band_of_a_session_against_itself_is_symmetric() {
    Courses session = courses("one", 3);
    Band mirrored = new Band(GRID, new SampledPair(session, session, GRID, 0));
    for (int i = 0; i < GRID.length; i++) {
      assertThat(mirrored.value(i)).isZero();
      assertThat(mirrored.low(i)).isEqualTo(-mirrored.high(i)).isNegative();
    }
  }
}
