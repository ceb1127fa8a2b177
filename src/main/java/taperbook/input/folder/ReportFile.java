package taperbook.input.folder;

import java.util.List;

/**
 * A report file, split into front matter and article.
 *
 * @param file path relative to the project folder, with {@code /}
 * @param firstLine line of the mark that opens the front matter
 * @param entries the front matter in order
 * @param body the rest of the file, lines ended by {@code \n}; may be empty
 * @param bodyFirstLine the line that the rest begins on
 */
public record ReportFile(
    String file, int firstLine, List<FrontMatterEntry> entries, String body, int bodyFirstLine) {
  public ReportFile {
    entries = List.copyOf(entries);
  }
}
