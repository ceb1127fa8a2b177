package taperbook.format;

import taperbook.quantity.Unit;
import taperbook.session.Review.Misread;

/** Readings that do not fit the others, in words. */
public final class MisreadText {
  /** More digits than a display has. */
  private static final int SIGNIFICANT = 7;

  private static final char NBSP = '\u00a0';

  private MisreadText() {}

  /** A reading with its place, such as {@code the power of 62 kW in readings.csv:14}. */
  public static String reading(Misread misread, NumberFormatter wording) {
    return "the "
        + misread.name()
        + (misread.channel().isEmpty() ? " " : " of ")
        + shown(misread, wording)
        + " in "
        + misread.row();
  }

  /** What was read, with its unit. */
  public static String shown(Misread misread, NumberFormatter wording) {
    return misread.unit() == Unit.SECOND
        ? wording.reading(misread.read(), misread.halfStep(), Unit.SECOND)
        : PlainDigits.of(misread.read(), SIGNIFICANT) + NBSP + NumberFormatter.name(misread.unit());
  }

  /** What would fit, such as {@code between 25 and 27 kW (26: digits swapped?)}. */
  public static String fitting(Misread misread, NumberFormatter wording) {
    return wording.between(misread.fitting(), misread.unit())
        + misread.slip().map(s -> " (" + s + ")").orElse("");
  }
}
