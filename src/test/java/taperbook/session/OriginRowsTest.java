package taperbook.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows of an origin are stored as runs; a sorted set of the JDK gives the expected rows. */
final class OriginRowsTest {
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void rows_are_sorted_and_distinct(int seed) {
    Random random = new Random(seed);
    List<RowRef> rows = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      rows.add(new RowRef("f" + random.nextInt(3), 1 + random.nextInt(90)));
    }
    List<RowRef> kept = new Origin("s", rows).rows();
    assertThat(kept).containsExactlyElementsOf(new TreeSet<>(rows));
    assertThat(new Origin("t", kept).rows()).isSameAs(kept);
  }

  @Test
  void there_may_be_no_rows() {
    List<RowRef> none = new Origin("s", List.of()).rows();
    assertThat(none).isEmpty();
    assertThatThrownBy(() -> none.get(0)).isInstanceOf(IndexOutOfBoundsException.class);
  }
}
