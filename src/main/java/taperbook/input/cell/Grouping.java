package taperbook.input.cell;

import java.util.regex.Pattern;
import taperbook.i18n.Texts;

/**
 * Thousands separators, and numbers such as {@code 82.400}, whose mark may be a thousands separator
 * or a decimal mark.
 */
public enum Grouping {
  POINT("point", "[.]"),
  COMMA("comma", "[,]"),
  SPACE("space", "[ \\u00a0\\u2009\\u202f]"),
  APOSTROPHE("apostrophe", "['\\u2019]");

  /** How to write numbers such as 82,400 if the comma cannot be a decimal mark. */
  static final String REMEDY = Texts.of("input.grouping.write_82_400_as_82400");

  /** Number of digits in a group. */
  static final int DIGITS = 3;

  /** Longer cells are not matched, because the regular expression would need a deep stack. */
  private static final int LONGEST = 40;

  private static final Pattern ANY =
      Pattern.compile(
          "[+-]?[0-9]{1,3}(?:[., '\\u00a0\\u2009\\u202f\\u2019][0-9]{3})+(?:[.,][0-9]+)?");
  private static final Pattern ALIKE = Pattern.compile("[+-]?[1-9][0-9]{0,2}[.,][0-9]{3}");

  private final String word;
  private final Pattern grouped;
  private final Pattern mark;

  Grouping(String word, String mark) {
    this.word = word;
    this.mark = Pattern.compile(mark);
    this.grouped = Pattern.compile("[+-]?[0-9]{1,3}(?:" + mark + "[0-9]{3})+(?:[.,][0-9]+)?");
  }

  /** Returns the word used in {@code columns.csv}. */
  public String word() {
    return word;
  }

  /** Removes the separators from a number; returns any other text unchanged. */
  String without(String text) {
    return text.length() <= LONGEST && grouped.matcher(text).matches()
        ? mark.matcher(text).replaceAll("")
        : text;
  }

  /** Returns true for digits in groups with any separator. */
  static boolean isGrouped(String text) {
    return text.length() <= LONGEST && ANY.matcher(text).matches();
  }

  /** Returns true for a number with one mark followed by three digits, which is ambiguous. */
  public static boolean isAlike(String text) {
    return ALIKE.matcher(text).matches();
  }

  /** Returns instructions for writing such a number unambiguously. */
  public static String remedy(String text) {
    String mark =
        text.contains(",") ? Texts.of("input.grouping.comma") : Texts.of("input.grouping.point");
    return Texts.of(
        "input.grouping.write_if_groups_thousands_0",
        text.replaceAll("[.,]", ""),
        mark,
        text.replace(',', '.'));
  }
}
