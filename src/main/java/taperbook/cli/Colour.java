package taperbook.cli;

/**
 * Colour on a terminal, where it is used: by the eight colours of ECMA-48, which each terminal
 * shows in its own shades.
 *
 * @param used false where text stays as it is
 */
record Colour(boolean used) {
  private static final String PLAIN = "\u001b[0m";

  /** What a line is about. */
  String strong(String text) {
    return set("\u001b[1m", text);
  }

  /** What went wrong. */
  String bad(String text) {
    return set("\u001b[31m", text);
  }

  /** What should be looked at. */
  String doubtful(String text) {
    return set("\u001b[33m", text);
  }

  private String set(String begin, String text) {
    return used ? begin + text + PLAIN : text;
  }
}
