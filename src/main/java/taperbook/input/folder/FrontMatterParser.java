package taperbook.input.folder;

import java.util.ArrayList;
import java.util.List;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;

/**
 * Parses the lines between the marks: {@code key: value}, or {@code key:} with {@code - item} lines
 * below it; blank lines and lines that begin with {@code #} are ignored. A value may contain
 * colons.
 */
final class FrontMatterParser {
  private final ProblemLog log;
  private final List<FrontMatterEntry> entries = new ArrayList<>();

  FrontMatterParser(ProblemLog log) {
    this.log = log;
  }

  List<FrontMatterEntry> entries() {
    return entries;
  }

  void read(String text, int line) {
    String stripped = text.strip();
    if (stripped.isEmpty() || stripped.startsWith("#")) {
      return;
    }
    int indent = text.indexOf(stripped);
    if (stripped.equals("-") || stripped.startsWith("- ")) {
      item(text, line, indent + 1);
    } else if (stripped.indexOf(':') < 1) {
      broken(
          line,
          indent + 1,
          Quoted.of(stripped),
          "a key, a colon and a value, as in title: A first look",
          "write the key and a colon before the value");
    } else {
      int colon = text.indexOf(':');
      String key = text.substring(indent, colon).strip();
      entries.add(new FrontMatterEntry(key, line, indent + 1, values(text, line, colon + 1)));
    }
  }

  private void item(String text, int line, int start) {
    int last = entries.size() - 1;
    FrontMatterEntry key =
        last < 0 ? new FrontMatterEntry("", line, 1, List.of()) : entries.get(last);
    boolean inline = key.values().stream().anyMatch(v -> v.line() == key.line());
    if (last < 0 || inline) {
      broken(
          line,
          start,
          Quoted.of(text.strip()),
          "a list item below a key that has nothing behind its colon",
          "write the list below its key, or behind the colon with commas");
      return;
    }
    List<FrontMatterValue> all = new ArrayList<>(key.values());
    all.addAll(values(text, line, start));
    entries.set(last, new FrontMatterEntry(key.key(), key.line(), key.column(), all));
  }

  /** Returns a list with the text of the line from an index on, or an empty list. */
  private static List<FrontMatterValue> values(String text, int line, int from) {
    String value = text.substring(from).strip();
    if (value.isEmpty()) {
      return List.of();
    }
    int column = text.indexOf(value, from) + 1;
    char first = value.charAt(0);
    boolean quoted = first == '"' || first == '\'';
    if (quoted && value.length() > 1 && value.charAt(value.length() - 1) == first) {
      String inner = value.substring(1, value.length() - 1).strip();
      return inner.isEmpty() ? List.of() : List.of(new FrontMatterValue(inner, line, column + 1));
    }
    return List.of(new FrontMatterValue(value, line, column));
  }

  private void broken(int line, int column, String found, String expected, String remedy) {
    log.add(ProblemCode.FRONT_MATTER_BROKEN, line, column, found, expected, remedy);
  }
}
