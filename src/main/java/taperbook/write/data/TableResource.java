package taperbook.write.data;

import java.util.List;
import taperbook.model.InputFile;

/**
 * A published table.
 *
 * @param title what it is
 * @param file its path in the report's folder and its bytes
 * @param delimiter what parts its cells
 * @param columns its columns, in order
 * @param key heads of the columns that tell its rows apart; empty if none do
 */
record TableResource(
    String title, InputFile file, char delimiter, List<Column> columns, List<String> key) {
  /** Copies the lists. */
  TableResource {
    columns = List.copyOf(columns);
    key = List.copyOf(key);
  }

  /** Its path without the ending, as a name: lower-case letters, digits, dots and hyphens. */
  String name() {
    return DataPackage.name(file.path().replaceFirst("^data/", "").replaceFirst("\\.csv$", ""));
  }
}
