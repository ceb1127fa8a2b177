package taperbook.output.data;

import java.util.List;
import java.util.Optional;
import taperbook.session.InputFile;
import taperbook.session.InputHash;

/**
 * A published table.
 *
 * @param title its title
 * @param file its path in the report's folder, hash and length
 * @param content the file's content, if the package writes it
 * @param encoding name of its encoding in lower case, such as {@code utf-8}
 * @param delimiter the cell separator
 * @param columns its columns, in order
 * @param key headings of the columns that identify its rows; empty if none do
 */
record TableResource(
    String title,
    InputHash file,
    Optional<InputFile> content,
    String encoding,
    char delimiter,
    List<ColumnSchema> columns,
    List<String> key) {
  TableResource {
    columns = List.copyOf(columns);
    key = List.copyOf(key);
  }

  /** Describes a table that the program writes itself. */
  static TableResource generated(
      String title, InputHash file, List<ColumnSchema> columns, List<String> key) {
    return new TableResource(title, file, Optional.empty(), "utf-8", ',', columns, key);
  }

  /** Returns its path without extension as a name: lower-case letters, digits, dots and hyphens. */
  String name() {
    return DataPackage.name(file.path().replaceFirst("^data/", "").replaceFirst("\\.csv$", ""));
  }
}
