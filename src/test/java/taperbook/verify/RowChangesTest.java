package taperbook.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.session.InputFile;

final class RowChangesTest {
  private static final String FILE = "sessions/finch/readings.csv";

  @Test
  void a_corrected_reading_is_one_changed_line() {
    assertThat(between("head\na,1\nb,2\nc,3\n", "head\na,1\nb,7\nc,3\n"))
        .containsExactly(new RowChange(FILE, 3, 3, "b,2", "b,7"));
  }

  @Test
  void an_added_line_shifts_the_others_without_changing_them() {
    assertThat(between("head\na,1\nb,2\nc,3\n", "head\na,1\nx,9\nb,2\nc,4\n"))
        .containsExactly(
            new RowChange(FILE, 0, 3, "", "x,9"), new RowChange(FILE, 4, 5, "c,3", "c,4"));
  }

  @Test
  void a_removed_line_is_reported_at_its_old_location() {
    assertThat(between("head\na,1\nb,2\nc,3\n", "head\na,1\nc,3\n"))
        .containsExactly(new RowChange(FILE, 3, 0, "b,2", ""));
    assertThat(new RowChange(FILE, 3, 0, "b,2", "").words())
        .isEqualTo(FILE + ":3: removed, \u201cb,2\u201d");
  }

  @Test
  void a_file_that_a_spreadsheet_saved_again_has_only_the_corrected_line() {
    assertThat(between("head\na,1\nb,2\n", "\ufeffhead\r\na,1\r\nb,7\r\n"))
        .containsExactly(new RowChange(FILE, 3, 3, "b,2", "b,7"));
  }

  @Test
  void files_that_are_not_tables_are_not_compared_by_row() {
    InputFile one = new InputFile("reports/x.md", "a\n".getBytes(StandardCharsets.UTF_8));
    InputFile other = new InputFile("reports/x.md", "b\n".getBytes(StandardCharsets.UTF_8));
    assertThat(RowChanges.between(Map.of("reports/x.md", one), Map.of("reports/x.md", other)))
        .isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void applying_the_changes_gives_the_new_file(int seed) {
    Random random = new Random(seed * 7919L);
    List<String> before = lines(random, 30);
    List<String> after = new ArrayList<>(before);
    for (int k = 0; k < 6; k++) {
      int at = random.nextInt(after.size());
      switch (random.nextInt(3)) {
        case 0 -> after.set(at, "changed " + random.nextInt(4));
        case 1 -> after.add(at, "added " + random.nextInt(4));
        default -> after.remove(at);
      }
    }
    List<RowChange> changes =
        between(String.join("\n", before) + "\n", String.join("\n", after) + "\n");
    List<String> kept = new ArrayList<>(before);
    changes.stream()
        .filter(c -> c.lineBefore() > 0)
        .sorted((a, b) -> Integer.compare(b.lineBefore(), a.lineBefore()))
        .forEach(c -> kept.remove(c.lineBefore() - 1));
    changes.stream()
        .filter(c -> c.lineAfter() > 0)
        .sorted((a, b) -> Integer.compare(a.lineAfter(), b.lineAfter()))
        .forEach(c -> kept.add(c.lineAfter() - 1, c.after()));
    assertThat(kept).isEqualTo(after);
  }

  private static List<String> lines(Random random, int count) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      lines.add("line " + random.nextInt(10));
    }
    return lines;
  }

  private static List<RowChange> between(String before, String after) {
    return RowChanges.between(
        Map.of(FILE, new InputFile(FILE, before.getBytes(StandardCharsets.UTF_8))),
        Map.of(FILE, new InputFile(FILE, after.getBytes(StandardCharsets.UTF_8))));
  }
}
