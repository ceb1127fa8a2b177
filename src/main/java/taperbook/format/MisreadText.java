package taperbook.format;

import taperbook.i18n.Texts;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.session.Review.Misread;

/** Formats readings that do not fit the others. */
public final class MisreadText {
  /** More digits than any display shows. */
  private static final int SIGNIFICANT = 7;

  private static final char NBSP = '\u00a0';

  private MisreadText() {}

  /** Returns a reading with its place, such as {@code the power of 62 kW in readings.csv:14}. */
  public static String reading(Misread misread, NumberFormatter wording) {
    return Texts.of(
        "format.misread_text.in",
        misread.name(),
        misread.channel().isEmpty() ? " " : Texts.of("format.misread_text.of"),
        shown(misread, wording),
        misread.row());
  }

  /** Returns the reading with its unit. */
  public static String shown(Misread misread, NumberFormatter wording) {
    return misread.unit() == Unit.SECOND
        ? wording.value(Estimate.around(misread.read(), misread.halfStep()), Unit.SECOND)
        : PlainDigits.of(misread.read(), SIGNIFICANT) + NBSP + NumberFormatter.name(misread.unit());
  }

  /**
   * Returns the values that would fit, such as {@code between 25 and 27 kW (26: digits swapped?)}.
   */
  public static String fitting(Misread misread, NumberFormatter wording) {
    return wording.between(misread.fitting(), misread.unit())
        + misread.slip().map(s -> " (" + s + ")").orElse("");
  }
}
