package taperbook.diagnostics;

/** Severity of a {@link Problem}. */
public enum Severity {
  /** The input cannot be used as it is. */
  ERROR("error"),
  /** The input can be used; the user should know. */
  NOTICE("notice");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  /** Returns the word printed before a problem. */
  public String word() {
    return word;
  }
}
