package taperbook.input.cell;

import java.util.regex.Pattern;

/**
 * Digits that are grouped by thousands: the mark between the groups, and numbers such as {@code
 * 82.400}, whose mark may group thousands or be the decimal mark.
 */
public enum Grouping {
  POINT("point", "[.]"),
  COMMA("comma", "[,]"),
  SPACE("space", "[ \\u00a0\\u2009\\u202f]"),
  APOSTROPHE("apostrophe", "['\\u2019]");

  /** How to write numbers such as 82,400 where no comma can be a decimal mark. */
  static final String REMEDY =
      "write 82,400 as 82400 if the comma groups thousands, as 82.4 if it is the decimal mark";

  /** Digits of a group. */
  static final int DIGITS = 3;

  /** Longer cells are not looked at for groups, as matching them would need a deep stack. */
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

  /** The word that {@code columns.csv} states it by. */
  public String word() {
    return word;
  }

  /** The number without the marks between its groups; any other text as it is. */
  String without(String text) {
    return text.length() <= LONGEST && grouped.matcher(text).matches()
        ? mark.matcher(text).replaceAll("")
        : text;
  }

  /** True for digits in groups, by whatever mark. */
  static boolean isGrouped(String text) {
    return text.length() <= LONGEST && ANY.matcher(text).matches();
  }

  /** True for a number with one mark and three digits behind it, which can be read in two ways. */
  public static boolean isAlike(String text) {
    return ALIKE.matcher(text).matches();
  }

  /** How to write such a number so that it can be read in one way only. */
  public static String remedy(String text) {
    String mark = text.contains(",") ? "comma" : "point";
    return "write "
        + text.replaceAll("[.,]", "")
        + " if the "
        + mark
        + " groups thousands, "
        + text.replace(',', '.')
        + "0 if it is the decimal mark";
  }
}
