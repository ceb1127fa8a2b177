package taperbook.session;

import java.util.List;

/**
 * A table among the input files.
 *
 * @param file the file
 * @param encoding name of its encoding in lower case, such as {@code utf-8}
 * @param delimiter what parts its cells
 * @param head its column heads as written
 * @param rows its cells as written; a row may be shorter than the head
 */
public record InputTable(
    InputFile file, String encoding, char delimiter, List<String> head, List<List<String>> rows) {
  /** Copies the lists. */
  public InputTable {
    head = List.copyOf(head);
    rows = rows.stream().map(List::copyOf).toList();
  }
}
