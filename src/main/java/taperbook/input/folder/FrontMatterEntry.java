package taperbook.input.folder;

import java.util.List;

/**
 * A key of the front matter with its values.
 *
 * @param key the key as entered, trimmed
 * @param line line number of the key from 1
 * @param column number of the key's first character in its line, from 1
 * @param values the text after the colon, or the items of the list below; may be empty
 */
public record FrontMatterEntry(String key, int line, int column, List<FrontMatterValue> values) {
  public FrontMatterEntry {
    values = List.copyOf(values);
  }
}
