package taperbook.plan;

import java.util.Arrays;
import java.util.Optional;

/** What a number rests on. */
public enum Basis {
  /** The session's readings alone. */
  READINGS("readings"),
  /** The range really driven: state of charge as a share of it. */
  DRIVEN("driven"),
  /** The energy really used for the distance driven. */
  ENERGY("energy"),
  /** The range that the maker states. */
  RATED("rated"),
  /** A figure that the car displayed, taken over. */
  DISPLAYED("displayed");

  private final String words;

  Basis(String words) {
    this.words = words;
  }

  /** The basis with these words. */
  public static Optional<Basis> ofWords(String words) {
    return Arrays.stream(values()).filter(b -> b.words.equals(words)).findFirst();
  }

  /** The words as they are printed. */
  public String words() {
    return words;
  }
}
