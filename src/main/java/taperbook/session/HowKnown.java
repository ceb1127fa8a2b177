package taperbook.session;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How the tester came by a fact. */
public enum HowKnown {
  /** With an instrument of the tester's. */
  MEASURED("measured"),
  /** Read from a display of the car or the station. */
  DISPLAYED("displayed"),
  /** Stated by the maker. */
  FROM_THE_MAKER("from the maker"),
  /** Estimated. */
  ESTIMATED("estimated"),
  /** Written down by the tester, who was there: for words and dates, not for amounts. */
  NOTED("noted"),
  /** The cell is empty; of words and dates alone, and nothing that can be written. */
  NOT_STATED("not stated"),
  /** Not known; the value is empty. */
  UNKNOWN("unknown");

  private final String words;

  HowKnown(String words) {
    this.words = words;
  }

  /** The meaning of a {@code how known} cell. */
  public static Optional<HowKnown> ofWords(String words) {
    return written().stream().filter(h -> h.words.equals(words)).findFirst();
  }

  /** All that can be written in a file. */
  public static List<HowKnown> written() {
    return Arrays.stream(values()).filter(h -> h != NOT_STATED).toList();
  }

  /** The words as they are written in files. */
  public String words() {
    return words;
  }
}
