package taperbook.model;

import java.util.Arrays;
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
  /** Not known; the value is empty. */
  UNKNOWN("unknown");

  private final String words;

  HowKnown(String words) {
    this.words = words;
  }

  /** The meaning of a {@code how known} cell. */
  public static Optional<HowKnown> ofWords(String words) {
    return Arrays.stream(values()).filter(h -> h.words.equals(words)).findFirst();
  }

  /** The words as they are written in files. */
  public String words() {
    return words;
  }
}
