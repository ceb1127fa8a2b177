package taperbook.diagnostics;

/** How much a {@link Problem} matters. */
public enum Severity {
  /** The input cannot be used as it is. */
  ERROR("error"),
  /** The input can be used; the user should know. */
  NOTICE("notice");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  /** The word that stands before a problem. */
  public String word() {
    return word;
  }
}
