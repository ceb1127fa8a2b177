package taperbook.model;

import java.util.Arrays;

/** How a display turns the true state of charge into the figure that it shows. */
public enum DisplayRounding {
  /** To the nearest step: 41.5 to 42.5 % show as 42 %. */
  NEAREST("nearest"),
  /** Truncated: 42 % shows from 42 % until just below 43 %. */
  DOWN("down"),
  /** Rounded up: 42 % shows from just above 41 % to 42 %. */
  UP("up"),
  /** Not declared: any of the three. */
  NOT_KNOWN("not known");

  private final String words;

  DisplayRounding(String words) {
    this.words = words;
  }

  /** The rounding that a cell names; {@link #NOT_KNOWN} for any other text. */
  public static DisplayRounding ofWords(String words) {
    return Arrays.stream(values()).filter(r -> r.words.equals(words)).findFirst().orElse(NOT_KNOWN);
  }

  /** The rounding as it is written in files. */
  public String words() {
    return words;
  }
}
