package taperbook.session;

import java.util.Arrays;

/** When a tester recorded the rows of a session. */
public enum RowsWritten {
  /** At the moment at which the displayed state of charge changed to the figure of the row. */
  AT_CHANGES("at changes"),
  /** At times that do not depend on the display, such as every minute. */
  AT_SET_TIMES("at set times"),
  /** Some rows at changes and some at other times. */
  MIXED("mixed"),
  /** Not declared: any of the three. */
  NOT_KNOWN("not known");

  private final String words;

  RowsWritten(String words) {
    this.words = words;
  }

  /** Returns the recording method that a cell names; {@link #NOT_KNOWN} for any other text. */
  public static RowsWritten ofWords(String words) {
    return Arrays.stream(values()).filter(r -> r.words.equals(words)).findFirst().orElse(NOT_KNOWN);
  }

  /** Returns the text used in files. */
  public String words() {
    return words;
  }
}
