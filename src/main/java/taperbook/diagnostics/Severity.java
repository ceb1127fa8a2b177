package taperbook.diagnostics;

import taperbook.i18n.Texts;

/** Severity of a {@link Problem}. */
public enum Severity {
  /** The input cannot be used as it is. */
  ERROR,
  /** The input can be used; the user should know. */
  NOTICE;

  /** Returns the word printed before a problem. */
  public String word() {
    return Texts.of(this == ERROR ? "problem.severity.error" : "problem.severity.notice");
  }
}
