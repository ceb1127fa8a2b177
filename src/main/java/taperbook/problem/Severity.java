package taperbook.problem;

/** How much a {@link Problem} matters. */
public enum Severity {
  /** The input cannot be used as it is. */
  ERROR,
  /** The input can be used; the user should know. */
  NOTICE
}
