package taperbook.prosecheck;

/**
 * A section of the article's prose without markup: a paragraph, a list item, a heading, a row of a
 * table. Maps each character to its location in the file.
 *
 * <p>A final class and not a record because it contains arrays, which it never exposes.
 */
final class Passage {
  /** Replaces a call such as {@code ${number("peak_power")}} in the text. */
  static final char CALL = '\ufffc';

  /** Kinds of passages. */
  enum Kind {
    /** A paragraph, a list item or a row of a table. */
    TEXT,
    /** A heading, which describes the text below it. */
    HEADING,
    /** A quotation, or a table whose columns are not interpreted. */
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

  /** Returns the line in the file of the character at an index, from 1. */
  int line(int index) {
    return lines[index];
  }

  /** Returns the column in its line of the character at an index, from 1. */
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
