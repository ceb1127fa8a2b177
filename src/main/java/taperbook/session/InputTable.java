package taperbook.session;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A table read from an input file.
 *
 * @param file the file
 * @param encoding name of its encoding in lower case, such as {@code utf-8}
 * @param delimiter the character that separates cells
 * @param head its column headers as entered
 * @param rows its cells as entered, row by row; a row may be shorter than the header
 */
public record InputTable(
    InputFile file,
    String encoding,
    char delimiter,
    List<String> head,
    Supplier<Stream<List<String>>> rows) {
  /** Copies the headers. */
  public InputTable {
    head = List.copyOf(head);
  }
}
