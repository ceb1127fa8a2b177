package taperbook.words;

import taperbook.model.Review.Misread;

/** Readings that do not fit the others, in words. */
public final class MisreadWords {
  private MisreadWords() {}

  /** A reading with its place, such as {@code the power of 62 kW in readings.csv:14}. */
  public static String reading(Misread misread, Wording wording) {
    return "the "
        + misread.name()
        + (misread.channel().isEmpty() ? " " : " of ")
        + shown(misread, wording)
        + " in "
        + misread.row();
  }

  /** What was read, with its unit. */
  public static String shown(Misread misread, Wording wording) {
    return wording.reading(misread.read(), misread.halfStep(), misread.unit());
  }

  /** What would fit, such as {@code between 25 and 27 kW (26: digits swapped?)}. */
  public static String fitting(Misread misread, Wording wording) {
    return wording.between(misread.fitting(), misread.unit())
        + misread.slip().map(s -> " (" + s + ")").orElse("");
  }
}
