package taperbook.output.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.input.KnownColumn;
import taperbook.input.KnownColumns;
import taperbook.session.InputFile;
import taperbook.session.InputTable;

final class InputResourcesTest {
  @Test
  void every_column_of_facts_is_described() {
    List<String> heads = KnownColumns.facts().stream().map(KnownColumn::name).toList();
    List<ColumnSchema> columns = columns("range-test.csv", heads, List.of("0.8", "1.25"));
    assertThat(heads).hasSize(5).endsWith("give or take");
    assertThat(columns)
        .extracting(ColumnSchema::description)
        .doesNotContain("Column of the tester's own")
        .endsWith("What the value may be off by, in its unit");
  }

  private static List<ColumnSchema> columns(String file, List<String> heads, List<String> last) {
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
    return InputResources.of(new InputTable(input, "utf-8", ',', heads, rows::stream)).columns();
  }
}
