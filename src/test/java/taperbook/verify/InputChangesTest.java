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

final class InputChangesTest {
  private static final String READINGS = "sessions/finch/readings.csv";
  private static final String FACTS = "sessions/finch/conditions.csv";

  @Test
  void a_changed_cell_is_named_by_its_column_and_reverted_individually() {
    List<InputChange> changes =
        changes(
            READINGS,
            "elapsed [s],power [kW],note\n0,100,\n60,160,\"a, b\"\n",
            "elapsed [s],power [kW],note\n0,100,\n61,166,\"a, b\"\n");
    assertThat(changes)
        .extracting(InputChange::words)
        .containsExactly(
            READINGS + ":3, elapsed [s]: “60” became “61”",
            READINGS + ":3, power [kW]: “160” became “166”");
    assertThat(text(changes.get(0)))
        .isEqualTo("elapsed [s],power [kW],note\n0,100,\n60,166,\"a, b\"\n");
    assertThat(text(changes.get(1)))
        .isEqualTo("elapsed [s],power [kW],note\n0,100,\n61,160,\"a, b\"\n");
  }

  @Test
  void a_fact_is_named_by_its_item() {
    List<InputChange> changes =
        changes(
            FACTS,
            "item;value;unit;how known\nodometer;12;km;measured\n",
            "item;value;unit;how known\nodometer;;km;measured\n");
    assertThat(changes.get(0).words())
        .isEqualTo(FACTS + ":2, odometer, value: “12” became nothing");
  }

  @Test
  void changed_rows_and_heads_are_reverted_as_a_whole() {
    List<InputChange> changes = changes(READINGS, "a,b\n1,2\n3,4\n5,6\n", "a,c\n1,2\n5,6\n7,8\n");
    assertThat(changes)
        .extracting(InputChange::words)
        .containsExactly(
            READINGS + ":1: “a,b” became “a,c”",
            READINGS + ":3: removed, “3,4”",
            READINGS + ":4: new, “7,8”");
    assertThat(text(changes.get(0))).isEqualTo("a,b\n1,2\n5,6\n7,8\n");
    assertThat(text(changes.get(1))).isEqualTo("a,c\n1,2\n3,4\n5,6\n7,8\n");
    assertThat(text(changes.get(2))).isEqualTo("a,c\n1,2\n5,6\n");
  }

  @Test
  void many_cells_are_grouped_by_row_and_many_rows_by_file() {
    StringBuilder before = new StringBuilder("a,b\n");
    StringBuilder after = new StringBuilder("a,b\n");
    for (int i = 0; i < 5; i++) {
      before.append(i).append(",1\n");
      after.append(i + 10).append(",2\n");
    }
    Map<String, InputFile> one = Map.of(READINGS, file(READINGS, before.toString()));
    Map<String, InputFile> other = Map.of(READINGS, file(READINGS, after.toString()));
    assertThat(InputChanges.between(one, other, 10)).hasSize(10);
    assertThat(InputChanges.between(one, other, 5))
        .extracting(InputChange::words)
        .hasSize(5)
        .contains(READINGS + ":2: “0,1” became “10,2”");
    assertThat(InputChanges.between(one, other, 4))
        .extracting(InputChange::words)
        .containsExactly(READINGS + ": 5 changed rows");
    assertThat(text(InputChanges.between(one, other, 4).get(0))).isEqualTo(before.toString());
  }

  @Test
  void an_added_or_removed_file_is_one_change() {
    Map<String, InputFile> one = Map.of(READINGS, file(READINGS, "a\n1\n"));
    Map<String, InputFile> other = Map.of(FACTS, file(FACTS, "item\nx\n"));
    List<InputChange> changes = InputChanges.between(one, other, 10);
    assertThat(changes)
        .extracting(InputChange::words)
        .containsExactly(FACTS + ": a new file", READINGS + ": removed");
    assertThat(changes.get(0).undone()).isEmpty();
    assertThat(changes.get(1).undone()).containsOnlyKeys(READINGS, FACTS);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void reverting_every_change_gives_the_old_file(int seed) {
    Random random = new Random(seed * 104729L);
    List<String> old = new ArrayList<>(List.of("head,of it"));
    for (int i = 0; i < 20; i++) {
      old.add("line," + random.nextInt(12));
    }
    List<String> now = new ArrayList<>(old);
    for (int k = 0; k < 5; k++) {
      int at = 1 + random.nextInt(now.size() - 1);
      switch (random.nextInt(3)) {
        case 0 -> now.set(at, "changed," + random.nextInt(4));
        case 1 -> now.add(at, "added," + random.nextInt(4));
        default -> now.remove(at);
      }
    }
    InputFile before = file(READINGS, String.join("\n", old) + "\n");
    InputFile after = file(READINGS, String.join("\n", now) + "\n");
    for (int left = 50; !after.sha256().equals(before.sha256()); left--) {
      assertThat(left).as("changes left").isPositive();
      List<InputChange> changes =
          InputChanges.between(Map.of(READINGS, before), Map.of(READINGS, after), 100);
      InputChange one = changes.get(random.nextInt(changes.size()));
      after = one.undone().getOrDefault(READINGS, before);
    }
    assertThat(after.bytes()).isEqualTo(before.bytes());
  }

  private static List<InputChange> changes(String path, String before, String after) {
    return InputChanges.between(
        Map.of(path, file(path, before)), Map.of(path, file(path, after)), 20);
  }

  private static String text(InputChange change) {
    return change.undone().values().iterator().next().decoded(StandardCharsets.UTF_8);
  }

  private static InputFile file(String path, String text) {
    return new InputFile(path, text.getBytes(StandardCharsets.UTF_8));
  }
}
