package taperbook.output.data;

import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A column of a published table, as a field of Table Schema.
 *
 * @param name its heading
 * @param type type of its cells
 * @param description its meaning, with the unit
 */
record ColumnSchema(String name, Type type, String description) {
  /** The type of the cells of a column. */
  enum Type {
    /** Numbers with a decimal point. */
    NUMBER("number"),
    /** Numbers with a decimal comma. */
    COMMA_NUMBER("number"),
    /** Days in ISO 8601. */
    DATE("date"),
    /** Anything else. */
    STRING("string");

    private final String word;

    Type(String word) {
      this.word = word;
    }

    /** Returns the name in Table Schema. */
    String word() {
      return word;
    }
  }

  private static final Pattern POINT = Pattern.compile("[+-]?[0-9]+(\\.[0-9]+)?([eE][+-]?[0-9]+)?");
  private static final Pattern COMMA = Pattern.compile("[+-]?[0-9]+(,[0-9]+)?");
  private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

  static ColumnSchema text(String name, String description) {
    return new ColumnSchema(name, Type.STRING, description);
  }

  static ColumnSchema number(String name, String description) {
    return new ColumnSchema(name, Type.NUMBER, description);
  }

  static ColumnSchema date(String name, String description) {
    return new ColumnSchema(name, Type.DATE, description);
  }

  /** Returns the narrowest type that fits all cells of a column, ignoring empty ones. */
  static Type typeOf(Supplier<Stream<String>> cells) {
    Supplier<Stream<String>> filled = () -> cells.get().filter(c -> !c.isEmpty());
    if (filled.get().findAny().isEmpty()) {
      return Type.STRING;
    }
    if (all(filled, POINT)) {
      return Type.NUMBER;
    }
    if (all(filled, COMMA)) {
      return Type.COMMA_NUMBER;
    }
    return all(filled, DAY) ? Type.DATE : Type.STRING;
  }

  private static boolean all(Supplier<Stream<String>> cells, Pattern pattern) {
    return cells.get().allMatch(c -> pattern.matcher(c).matches());
  }
}
