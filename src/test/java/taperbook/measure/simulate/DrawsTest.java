package taperbook.measure.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.model.UncertaintySource;

/** The random numbers, held against Java's own. */
final class DrawsTest {
  @ParameterizedTest
  @ValueSource(longs = {0, 1, -1, 42, Long.MIN_VALUE, 0x7a9e_4b00_c0ff_ee11L})
  void draws_are_those_of_a_SplittableRandom_of_the_same_seed(long seed) {
    Draws draws = new Draws(seed, EnumSet.of(UncertaintySource.CLOCK));
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 1000; i++) {
      long before = draws.state();
      assertThat(draws.share(UncertaintySource.SOC_DISPLAY)).isEqualTo(0.5);
      assertThat(draws.state()).isEqualTo(before);
      assertThat(draws.share(UncertaintySource.CLOCK)).isEqualTo(random.nextDouble());
      assertThat(draws.state()).isNotEqualTo(before);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {0, -1, 42})
  void streams_are_those_of_a_SplittableRandom_each_and_leave_each_other_alone(long seed) {
    SplittableRandom root = new SplittableRandom(seed);
    SplittableRandom first = new SplittableRandom(root.nextLong());
    SplittableRandom second = new SplittableRandom(root.nextLong());
    Draws draws = new Draws(seed, EnumSet.of(UncertaintySource.CLOCK));
    for (int i = 0; i < 100; i++) {
      draws.turnTo(2);
      assertThat(draws.share(UncertaintySource.CLOCK)).isEqualTo(second.nextDouble());
      draws.turnTo(1);
      for (int k = 0; k < i % 3; k++) {
        assertThat(draws.share(UncertaintySource.CLOCK)).isEqualTo(first.nextDouble());
      }
    }
  }
}
