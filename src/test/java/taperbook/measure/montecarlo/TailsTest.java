package taperbook.measure.montecarlo;

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
    int count = 1 + random.nextInt(seed % 3 == 0 ? n : 1 + n / 10);
    Tails tails = new Tails();
    for (int block = 0; block < 4; block++) {
      // The last one is unlike the others, so that what they told of the tails is wrong.
      int shift = block == 3 ? random.nextInt(2 * kinds) - kinds : 0;
      double[] samples = random.doubles(n).map(x -> Math.rint(x * kinds) + shift).toArray();
      if (seed % 10 == 0) {
        samples[random.nextInt(n)] = seed % 20 == 0 ? Double.NaN : Double.NEGATIVE_INFINITY;
      }
      double[] sorted = samples.clone();
      Arrays.sort(sorted);
      tails.part(samples, count);
      assertThat(Arrays.copyOf(samples, count)).containsExactly(Arrays.copyOf(sorted, count));
      assertThat(Arrays.copyOfRange(samples, n - count, n))
          .containsExactly(Arrays.copyOfRange(sorted, n - count, n));
      Arrays.sort(samples);
      assertThat(samples).containsExactly(sorted);
    }
  }
}
