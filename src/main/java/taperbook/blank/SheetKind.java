package taperbook.blank;

import java.util.Arrays;
import java.util.Optional;

/** What a recording sheet is for. */
public enum SheetKind {
  /** A charging session. */
  SESSION("session"),
  /** A range test. */
  RANGE_TEST("range-test");

  private final String word;

  SheetKind(String word) {
    this.word = word;
  }

  /** The word on the command line and in the name of the file. */
  public String word() {
    return word;
  }

  /** The kind with this word. */
  public static Optional<SheetKind> ofWord(String word) {
    return Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst();
  }
}
