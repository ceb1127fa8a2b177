package taperbook.session;

import java.util.Arrays;
import java.util.List;
import taperbook.quantity.Interval;

/** How a display rounds the true state of charge. */
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

  /** Returns the rounding that a cell names; {@link #NOT_KNOWN} for any other text. */
  public static DisplayRounding ofWords(String words) {
    return Arrays.stream(values()).filter(r -> r.words.equals(words)).findFirst().orElse(NOT_KNOWN);
  }

  /** Returns the name used in files. */
  public String words() {
    return words;
  }

  /** Returns the roundings that are possible: itself, or all three if it is not known. */
  public List<DisplayRounding> possible() {
    return this == NOT_KNOWN ? List.of(NEAREST, DOWN, UP) : List.of(this);
  }

  /**
   * Returns the true values that are displayed as a figure.
   *
   * @param shown the displayed figure
   * @param step step of the display, not negative
   */
  public Interval allows(double shown, double step) {
    return switch (this) {
      case NEAREST -> Interval.around(shown, step / 2);
      case DOWN -> new Interval(shown, shown + step);
      case UP -> new Interval(shown - step, shown);
      case NOT_KNOWN -> Interval.around(shown, step);
    };
  }
}
