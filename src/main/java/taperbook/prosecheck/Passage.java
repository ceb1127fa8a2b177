package taperbook.prosecheck;

/**
 * A run of prose from the article without its markup: a paragraph, a list item, a heading, a row of
 * a table. Each character knows its place in the file.
 *
 * <p>A final class and not a record because it keeps arrays, which it never gives out.
 */
final class Passage {
  /** Stands in the text for a call such as {@code ${number("peak_power")}}. */
  static final char CALL = '\ufffc';

  /** What kind of text a passage is. */
  enum Kind {
    /** A paragraph, a list item or a row of a table. */
    TEXT,
    /** A heading: what stands below it is about it. */
    HEADING,
    /** Somebody else's words, or a table whose columns are not told apart. */
    FOREIGN
  }

  private final String text;
  private final Kind kind;
  private final int[] lines;
  private final int[] columns;

  private Passage(String text, Kind kind, int[] lines, int[] columns) {
    this.text = text;
    this.kind = kind;
    this.lines = lines;
    this.columns = columns;
  }

  String text() {
    return text;
  }

  Kind kind() {
    return kind;
  }

  /** Line in the file of the character at an index, from 1. */
  int line(int index) {
    return lines[index];
  }

  /** Column in its line of the character at an index, from 1. */
  int column(int index) {
    return columns[index];
  }

  /** Collects the characters of a passage. */
  static final class Builder {
    private final StringBuilder text = new StringBuilder();
    private final java.util.List<int[]> places = new java.util.ArrayList<>();

    Builder add(char c, int line, int column) {
      text.append(c);
      places.add(new int[] {line, column});
      return this;
    }

    boolean isEmpty() {
      return text.toString().isBlank();
    }

    Passage build(Kind kind) {
      int[] lines = places.stream().mapToInt(p -> p[0]).toArray();
      int[] columns = places.stream().mapToInt(p -> p[1]).toArray();
      return new Passage(text.toString(), kind, lines, columns);
    }
  }
}
