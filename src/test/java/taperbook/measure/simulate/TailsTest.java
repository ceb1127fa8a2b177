package taperbook.measure.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The ends of a sample, held against Java's own sorting of the whole. */
final class TailsTest {
  static Stream<Integer> seeds() {
    return IntStream.rangeClosed(1, 200).boxed();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void tails_are_the_ends_of_the_sorted_samples(int seed) {
    Random random = new Random(seed);
    int n = 2 + random.nextInt(400);
    int kinds = 1 + random.nextInt(n);
    double[] samples = random.doubles(n).map(x -> Math.rint(x * kinds)).toArray();
    if (seed % 10 == 0) {
      samples[random.nextInt(n)] = seed % 20 == 0 ? Double.NaN : Double.NEGATIVE_INFINITY;
    }
    double[] sorted = samples.clone();
    Arrays.sort(sorted);
    int count = 1 + random.nextInt(n);
    assertThat(Tails.lowest(samples, count)).containsExactly(Arrays.copyOf(sorted, count));
    assertThat(Tails.highest(samples, count))
        .containsExactly(Arrays.copyOfRange(sorted, n - count, n));
  }
}
