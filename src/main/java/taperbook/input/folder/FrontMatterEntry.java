package taperbook.input.folder;

import java.util.List;

/**
 * A key of the front matter with what is written for it.
 *
 * @param key the key as written, without spaces around it
 * @param line line number of the key from 1
 * @param column number of the key's first character in its line, from 1
 * @param values what stands behind the colon, or the items of the list below; may be empty
 */
public record FrontMatterEntry(String key, int line, int column, List<FrontMatterValue> values) {
  /** Copies the values. */
  public FrontMatterEntry {
    values = List.copyOf(values);
  }
}
