package taperbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class LineWrappingTest {
  @Test
  void continuation_lines_are_indented_to_the_last_column() {
    String row = "  Peak power  withheld  the power was not read often enough";
    assertThat(LineWrapping.lines(row, LineWrapping.hanging(row, 48), 48))
        .containsExactly(
            "  Peak power  withheld  the power was not read",
            "                        often enough");
  }

  @Test
  void a_last_column_that_does_not_fit_starts_on_the_next_line() {
    String row = "  Peak power held for, as shown  4 min 7 s  give or take 14 s";
    assertThat(LineWrapping.lines(row, LineWrapping.hanging(row, 50), 50))
        .containsExactly("  Peak power held for, as shown  4 min 7 s", "    give or take 14 s");
  }

  @Test
  void a_word_that_is_too_long_is_not_broken() {
    assertThat(LineWrapping.lines("see reports/with-a-very-long-name/report.html there", "  ", 24))
        .containsExactly("see", "  reports/with-a-very-long-name/report.html", "  there");
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void no_word_is_lost_and_every_line_fits(long seed) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder("x".repeat(1 + random.nextInt(9)));
    for (int i = 0; i < 200; i++) {
      text.append(' ').append("y".repeat(1 + random.nextInt(12)));
    }
    int width = 40 + random.nextInt(80);
    String hanging = " ".repeat(random.nextInt(20));
    assertThat(LineWrapping.lines(text.toString(), hanging, width))
        .allMatch(line -> line.length() <= width)
        .satisfies(
            lines ->
                assertThat(String.join(" ", lines.stream().map(String::strip).toList()))
                    .isEqualTo(text.toString()));
  }
}
