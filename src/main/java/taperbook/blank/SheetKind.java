package taperbook.blank;

import java.util.Arrays;
import java.util.Optional;

/** Kinds of recording sheets. */
public enum SheetKind {
  /** A charging session. */
  SESSION("session"),
  /** A range test. */
  RANGE_TEST("range-test");

  private final String word;

  SheetKind(String word) {
    this.word = word;
  }

  /** Returns the word used on the command line and in the file name. */
  public String word() {
    return word;
  }

  /** Returns the kind with this word. */
  public static Optional<SheetKind> ofWord(String word) {
    return Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst();
  }
}
