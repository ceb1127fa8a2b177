package taperbook.output.data;

import java.util.List;
import java.util.regex.Pattern;

/**
 * A column of a published table, as Table Schema describes a field.
 *
 * @param name its head
 * @param type what its cells hold
 * @param description what it means, with the unit
 */
record ColumnSchema(String name, Type type, String description) {
  /** What the cells of a column hold. */
  enum Type {
    /** Numbers with a decimal point. */
    NUMBER("number"),
    /** Numbers with a decimal comma. */
    COMMA_NUMBER("number"),
    /** Days as ISO 8601 has them. */
    DATE("date"),
    /** Anything else. */
    STRING("string");

    private final String word;

    Type(String word) {
      this.word = word;
    }

    /** The word that Table Schema has for it. */
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

  /** The narrowest type that all cells of a column are of, empty ones excepted. */
  static Type typeOf(List<String> cells) {
    List<String> filled = cells.stream().filter(c -> !c.isEmpty()).toList();
    if (filled.isEmpty()) {
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

  private static boolean all(List<String> cells, Pattern pattern) {
    return cells.stream().allMatch(c -> pattern.matcher(c).matches());
  }
}
