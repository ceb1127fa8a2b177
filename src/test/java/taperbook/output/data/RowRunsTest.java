package taperbook.output.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.session.RowRef;

final class RowRunsTest {
  @Test
  void joins_consecutive_lines_of_a_file() {
    assertThat(RowRuns.words(rows("b.csv", 3, 4, 5, 9))).containsExactly("b.csv:3\u20135, 9");
  }

  @Test
  void separates_files() {
    List<RowRef> rows = List.of(new RowRef("b.csv", 2), new RowRef("a.csv", 1));
    assertThat(RowRuns.words(rows)).containsExactly("a.csv:1", "b.csv:2");
  }

  @Test
  void abbreviates_many_short_runs_to_their_span_and_number() {
    assertThat(RowRuns.words(rows("a.csv", 2, 4, 6, 8, 10, 12, 14)))
        .containsExactly("a.csv:2\u201314 (7 rows of these)");
  }

  @Test
  void lists_up_to_a_hundred_rows_in_data_files() {
    int[] hundred = IntStream.rangeClosed(1, 100).toArray();
    int[] more = IntStream.rangeClosed(1, 101).toArray();
    assertThat(RowRuns.listed(rows("a.csv", hundred))).hasSize(100).startsWith("a.csv:1");
    assertThat(RowRuns.listed(rows("a.csv", more))).containsExactly("a.csv:1-101");
  }

  @Test
  void no_rows_give_empty_text() {
    assertThat(RowRuns.words(List.of())).isEmpty();
  }

  private static List<RowRef> rows(String file, int... lines) {
    return IntStream.of(lines).mapToObj(line -> new RowRef(file, line)).toList();
  }
}
