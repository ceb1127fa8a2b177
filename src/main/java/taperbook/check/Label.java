package taperbook.check;

import java.util.Locale;

/** The plain form in which names written by hand are compared. */
final class Label {
  private Label() {}

  /** Lower case, no spaces around, single spaces inside. */
  static String of(String written) {
    return written.replaceAll("[\\s\\u00a0]+", " ").strip().toLowerCase(Locale.ROOT);
  }
}
