package taperbook.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

final class RowRunTest {
  @Test
  void a_union_sorts_and_joins_runs_that_overlap_or_touch() {
    List<RowRef> one = rows("b", 5, "a", 1, "a", 2, "a", 3, "a", 20);
    List<RowRef> other = rows("a", 3, "a", 4, "a", 6, "a", 2, "a", 5, "c", 1);
    assertThat(RowRun.union(one, other))
        .isEqualTo(rows("a", 1, "a", 2, "a", 3, "a", 4, "a", 5, "a", 6, "a", 20, "b", 5, "c", 1));
    assertThat(RowRun.of(RowRun.union(one, other)))
        .containsExactly(
            new RowRun("a", 1, 6),
            new RowRun("a", 20, 20),
            new RowRun("b", 5, 5),
            new RowRun("c", 1, 1));
  }

  @Test
  void a_run_inside_another_does_not_shorten_it() {
    assertThat(RowRun.of(RowRun.union(rows("a", 1, "a", 2, "a", 3, "a", 4), rows("a", 2))))
        .containsExactly(new RowRun("a", 1, 4));
    assertThat(RowRun.union(List.of(), rows("a", 2))).isEqualTo(rows("a", 2));
  }

  private static List<RowRef> rows(Object... filesAndLines) {
    List<RowRef> rows = new ArrayList<>();
    for (int i = 0; i < filesAndLines.length; i += 2) {
      rows.add(new RowRef((String) filesAndLines[i], (Integer) filesAndLines[i + 1]));
    }
    return rows;
  }
}
