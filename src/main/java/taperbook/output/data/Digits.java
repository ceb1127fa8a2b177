package taperbook.output.data;

import taperbook.format.PlainDigits;

/** Formats numbers for data files. */
final class Digits {
  /** Digits beyond the tenth are floating-point noise. */
  private static final int SIGNIFICANT = 10;

  private Digits() {}

  static String plain(double value) {
    return PlainDigits.of(value, SIGNIFICANT);
  }
}
