package taperbook.cli;

/**
 * Colours text on a terminal: uses the eight colours of ECMA-48, whose shades each terminal
 * defines.
 *
 * @param used false to leave text unchanged
 */
record Colour(boolean used) {
  private static final String PLAIN = "\u001b[0m";

  /** Formats the subject of a line. */
  String emphasized(String text) {
    return set("\u001b[1m", text);
  }

  /** Formats an error. */
  String error(String text) {
    return set("\u001b[31m", text);
  }

  /** Formats a warning. */
  String warning(String text) {
    return set("\u001b[33m", text);
  }

  private String set(String begin, String text) {
    return used ? begin + text + PLAIN : text;
  }
}
