package taperbook.words;

import taperbook.model.Review.Misread;
import taperbook.model.Unit;

/** Readings that do not fit the others, in words. */
public final class MisreadWords {
  /** More digits than a display has. */
  private static final int SIGNIFICANT = 7;

  private static final char NBSP = '\u00a0';

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
    return misread.unit() == Unit.SECOND
        ? wording.reading(misread.read(), misread.halfStep(), Unit.SECOND)
        : PlainDigits.of(misread.read(), SIGNIFICANT) + NBSP + Wording.name(misread.unit());
  }

  /** What would fit, such as {@code between 25 and 27 kW (26: digits swapped?)}. */
  public static String fitting(Misread misread, Wording wording) {
    return wording.between(misread.fitting(), misread.unit())
        + misread.slip().map(s -> " (" + s + ")").orElse("");
  }
}
