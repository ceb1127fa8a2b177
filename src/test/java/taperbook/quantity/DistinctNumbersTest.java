package taperbook.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

final class DistinctNumbersTest {
  private final DistinctNumbers numbers =
      DistinctNumbers.of(DoubleStream.of(0, 10, 20, 5, 10, 10, 30));

  @Test
  void numbers_are_sorted_and_distinct() {
    assertThat(numbers.stream().toArray()).containsExactly(0, 5, 10, 20, 30);
    assertThat(numbers.with(7).stream().toArray()).containsExactly(0, 5, 7, 10, 20, 30);
    assertThat(numbers.with(5).size()).isEqualTo(5);
    assertThat(numbers.lowest()).isZero();
    assertThat(numbers.highest()).isEqualTo(30);
  }

  @Test
  void the_numbers_below_and_above_exclude_the_number_itself() {
    assertThat(numbers.below(10)).hasValue(5);
    assertThat(numbers.below(12)).hasValue(10);
    assertThat(numbers.below(0)).isEmpty();
    assertThat(numbers.above(10)).hasValue(20);
    assertThat(numbers.above(12)).hasValue(20);
    assertThat(numbers.above(30)).isEmpty();
  }

  @Test
  void numbers_between_two_others_exclude_both() {
    assertThat(numbers.countBetween(0, 20)).isEqualTo(2);
    assertThat(numbers.countBetween(1, 19)).isEqualTo(2);
    assertThat(numbers.countBetween(10, 20)).isZero();
    assertThat(numbers.countBetween(10, 10)).isZero();
  }
}
