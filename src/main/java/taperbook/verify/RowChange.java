package taperbook.verify;

/**
 * A line of an input file that was changed, added or taken away.
 *
 * @param file path of the file
 * @param lineBefore number of the line in the version before, 0 if it is new
 * @param lineAfter number of the line now, 0 if it was taken away
 * @param before what it said, empty if it is new
 * @param after what it says, empty if it was taken away
 */
public record RowChange(String file, int lineBefore, int lineAfter, String before, String after) {
  /** The change in words, such as {@code readings.csv:9: "6:38,39,160" became "6:38,39,166"}. */
  public String words() {
    if (lineBefore == 0) {
      return file + ":" + lineAfter + ": new, \u201c" + after + "\u201d";
    }
    if (lineAfter == 0) {
      return file + ":" + lineBefore + ": taken away, \u201c" + before + "\u201d";
    }
    return file + ":" + lineAfter + ": " + became(before, after);
  }

  /** That one text was replaced by another. */
  static String became(String before, String after) {
    return (before.isEmpty() ? "nothing" : "\u201c" + before + "\u201d")
        + " became "
        + (after.isEmpty() ? "nothing" : "\u201c" + after + "\u201d");
  }
}
