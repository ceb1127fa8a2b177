package taperbook.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Compares the index of a time with a linear search. */
final class TraceIndexTest {
  static IntStream seeds() {
    return IntStream.rangeClosed(1, 200);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void the_index_is_that_of_the_last_reading_at_or_before_the_time(int seed) {
    Random random = new Random(seed);
    int n = 1 + random.nextInt(40);
    double[] seconds = new double[n];
    int[] lines = new int[n];
    for (int i = 1; i < n; i++) {
      boolean even = seed % 3 == 0;
      seconds[i] = seconds[i - 1] + (even ? 0.1 : random.nextInt(4) * random.nextInt(20));
      lines[i] = i + 2;
    }
    lines[0] = 2;
    Trace trace = new Trace("f", seconds, seconds, lines, 0.5, 0.5);
    for (int k = 0; k < 200; k++) {
      double at =
          k % 3 == 0
              ? seconds[random.nextInt(n)]
              : seconds[n - 1] * (1.2 * random.nextDouble() - 0.1);
      int expected = -1;
      for (int i = 0; i < n; i++) {
        expected = seconds[i] <= at ? i : expected;
      }
      assertThat(trace.indexAtOrBefore(at)).as("at " + at).isEqualTo(expected);
    }
  }
}
