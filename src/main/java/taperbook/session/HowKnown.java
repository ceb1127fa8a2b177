package taperbook.session;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How the tester obtained a fact. */
public enum HowKnown {
  /** Measured with the tester's own instrument. */
  MEASURED("measured"),
  /** Read from a display of the car or the station. */
  DISPLAYED("displayed"),
  /** Stated by the manufacturer. */
  FROM_THE_MAKER("from the maker"),
  /** Estimated. */
  ESTIMATED("estimated"),
  /** Recorded by the tester on site: for words and dates, not for amounts. */
  NOTED("noted"),
  /** The cell is empty; only for words and dates. Cannot be entered in a file. */
  NOT_STATED("not stated"),
  /** Not known; the value is empty. */
  UNKNOWN("unknown");

  private final String words;

  HowKnown(String words) {
    this.words = words;
  }

  /** Returns the meaning of a {@code how known} cell. */
  public static Optional<HowKnown> ofWords(String words) {
    return written().stream().filter(h -> h.words.equals(words)).findFirst();
  }

  /** Returns all values that can be entered in a file. */
  public static List<HowKnown> written() {
    return Arrays.stream(values()).filter(h -> h != NOT_STATED).toList();
  }

  /** Returns the text used in files. */
  public String words() {
    return words;
  }
}
