package taperbook.output.data;

import java.util.List;
import java.util.Optional;
import taperbook.session.InputFile;
import taperbook.session.InputHash;

/**
 * A published table.
 *
 * @param title what it is
 * @param file its path in the report's folder, hash and length
 * @param content the file itself, if the package has to write it
 * @param encoding name of its encoding in lower case, such as {@code utf-8}
 * @param delimiter what parts its cells
 * @param columns its columns, in order
 * @param key heads of the columns that tell its rows apart; empty if none do
 */
record TableResource(
    String title,
    InputHash file,
    Optional<InputFile> content,
    String encoding,
    char delimiter,
    List<ColumnSchema> columns,
    List<String> key) {
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
