package taperbook.plan;

import java.util.Arrays;
import java.util.Optional;

/** What a number is based on. */
public enum Basis {
  /** Only the session's readings. */
  READINGS("readings"),
  /** The measured range: state of charge as a share of it. */
  DRIVEN("driven"),
  /** The measured energy for the distance driven. */
  ENERGY("energy"),
  /** The manufacturer's range. */
  RATED("rated"),
  /** A figure displayed by the car, used unchanged. */
  DISPLAYED("displayed");

  private final String words;

  Basis(String words) {
    this.words = words;
  }

  /** Returns the basis with this name. */
  public static Optional<Basis> ofWords(String words) {
    return Arrays.stream(values()).filter(b -> b.words.equals(words)).findFirst();
  }

  /** Returns the printed name. */
  public String words() {
    return words;
  }
}
