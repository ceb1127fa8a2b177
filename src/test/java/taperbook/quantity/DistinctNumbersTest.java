package taperbook.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class RowTimesTest {
  private final RowTimes times =
      RowTimes.of(Stream.of(trace(0, 10, 20), trace(5, 10, 10), trace(30)));

  @Test
  void the_times_of_all_traces_are_sorted_and_distinct() {
    assertThat(times.stream().toArray()).containsExactly(0, 5, 10, 20, 30);
    assertThat(times.with(7).stream().toArray()).containsExactly(0, 5, 7, 10, 20, 30);
    assertThat(times.with(5).size()).isEqualTo(5);
    assertThat(times.first()).isZero();
    assertThat(times.last()).isEqualTo(30);
  }

  @Test
  void the_times_before_and_after_exclude_the_time_itself() {
    assertThat(times.before(10)).hasValue(5);
    assertThat(times.before(12)).hasValue(10);
    assertThat(times.before(0)).isEmpty();
    assertThat(times.after(10)).hasValue(20);
    assertThat(times.after(12)).hasValue(20);
    assertThat(times.after(30)).isEmpty();
  }

  @Test
  void times_between_two_others_exclude_both() {
    assertThat(times.countBetween(0, 20)).isEqualTo(2);
    assertThat(times.countBetween(1, 19)).isEqualTo(2);
    assertThat(times.countBetween(10, 20)).isZero();
    assertThat(times.countBetween(10, 10)).isZero();
  }

  private static Trace trace(double... seconds) {
    int[] lines = new int[seconds.length];
    for (int i = 0; i < lines.length; i++) {
      lines[i] = i + 2;
    }
    return new Trace("readings.csv", seconds, seconds, lines, 0.5, 0.5);
  }
}
