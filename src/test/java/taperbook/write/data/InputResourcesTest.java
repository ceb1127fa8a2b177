package taperbook.write.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.check.KnownColumn;
import taperbook.check.KnownColumns;
import taperbook.model.InputFile;
import taperbook.model.InputTable;

final class InputResourcesTest {
  @Test
  void every_column_of_facts_has_its_meaning() {
    List<String> heads = KnownColumns.facts().stream().map(KnownColumn::name).toList();
    List<Column> columns = columns("range-test.csv", heads, List.of("0.8", "1.25"));
    assertThat(heads).hasSize(5).endsWith("give or take");
    assertThat(columns)
        .extracting(Column::description)
        .doesNotContain("Column of the tester's own")
        .endsWith("What the value may be off by, in its unit");
  }

  private static List<Column> columns(String file, List<String> heads, List<String> last) {
    List<List<String>> rows =
        last.stream()
            .map(
                cell -> {
                  String[] row = new String[heads.size()];
                  Arrays.fill(row, "");
                  row[heads.size() - 1] = cell;
                  return List.of(row);
                })
            .toList();
    InputFile input = new InputFile("sessions/ring/" + file, "".getBytes(StandardCharsets.UTF_8));
    return InputResources.of(new InputTable(input, "utf-8", ',', heads, rows)).columns();
  }
}
