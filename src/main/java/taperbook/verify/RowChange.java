package taperbook.verify;

import taperbook.i18n.Texts;

/**
 * A line of an input file that was changed, added or removed.
 *
 * @param file path of the file
 * @param lineBefore number of the line in the previous version, 0 if it is new
 * @param lineAfter number of the line in the current version, 0 if it was removed
 * @param before its previous content, empty if it is new
 * @param after its current content, empty if it was removed
 */
record RowChange(String file, int lineBefore, int lineAfter, String before, String after) {
  /**
   * Returns a description of the change, such as {@code readings.csv:9: "6:38,39,160" became
   * "6:38,39,166"}.
   */
  public String words() {
    if (lineBefore == 0) {
      return Texts.of("verify.row_change.new", file, lineAfter, after);
    }
    if (lineAfter == 0) {
      return Texts.of("verify.row_change.taken_away", file, lineBefore, before);
    }
    return file + ":" + lineAfter + ": " + describeReplacement(before, after);
  }

  /** Describes the replacement of one text by another. */
  static String describeReplacement(String before, String after) {
    return Texts.of(
        "verify.row_change.became",
        before.isEmpty() ? Texts.of("verify.row_change.nothing") : "\u201c" + before + "\u201d",
        after.isEmpty() ? Texts.of("verify.row_change.nothing") : "\u201c" + after + "\u201d");
  }
}
