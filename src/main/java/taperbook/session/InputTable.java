package taperbook.session;

import java.util.List;

/**
 * A table read from an input file.
 *
 * @param file the file
 * @param encoding name of its encoding in lower case, such as {@code utf-8}
 * @param delimiter the character that separates cells
 * @param head its column headers as entered
 * @param rows its cells as entered; a row may be shorter than the header
 */
public record InputTable(
    InputFile file, String encoding, char delimiter, List<String> head, List<List<String>> rows) {
  /** Copies the lists. */
  public InputTable {
    head = List.copyOf(head);
    rows = rows.stream().map(List::copyOf).toList();
  }
}
