package taperbook.output.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.session.RowRef;

final class RowRunsTest {
  @Test
  void joinsUnbrokenLinesOfAFile() {
    assertThat(RowRuns.words(rows("b.csv", 3, 4, 5, 9))).containsExactly("b.csv:3\u20135, 9");
  }

  @Test
  void keepsFilesApart() {
    List<RowRef> rows = List.of(new RowRef("b.csv", 2), new RowRef("a.csv", 1));
    assertThat(RowRuns.words(rows)).containsExactly("a.csv:1", "b.csv:2");
  }

  @Test
  void givesTheSpanAndTheCountOfManyShortRuns() {
    assertThat(RowRuns.words(rows("a.csv", 2, 4, 6, 8, 10, 12, 14)))
        .containsExactly("a.csv:2\u201314 (7 rows of these)");
  }

  @Test
  void listsUpToAHundredRowsForPrograms() {
    int[] hundred = IntStream.rangeClosed(1, 100).toArray();
    int[] more = IntStream.rangeClosed(1, 101).toArray();
    assertThat(RowRuns.listed(rows("a.csv", hundred))).hasSize(100).startsWith("a.csv:1");
    assertThat(RowRuns.listed(rows("a.csv", more))).containsExactly("a.csv:1-101");
  }

  @Test
  void hasNothingToSayOfNoRows() {
    assertThat(RowRuns.words(List.of())).isEmpty();
  }

  private static List<RowRef> rows(String file, int... lines) {
    return IntStream.of(lines).mapToObj(line -> new RowRef(file, line)).toList();
  }
}
