package taperbook.diagnostics;

/**
 * An error or a notice about the input, with instructions for fixing it.
 *
 * @param code stable kind of the problem
 * @param place its location
 * @param found the content at that place, quoted, or a note that something is missing
 * @param expected the valid content, with range and unit
 * @param remedy an instruction that fixes the problem
 */
public record Problem(
    ProblemCode code, SourceLocation place, String found, String expected, String remedy) {
  /** Checks that no part of the message is empty. */
  public Problem {
    if (found.isBlank() || expected.isBlank() || remedy.isBlank()) {
      throw new IllegalArgumentException("a problem needs found, expected and remedy: " + code);
    }
  }

  /** Returns the severity, which its code determines. */
  public Severity severity() {
    return code.severity();
  }

  /** Returns the problem as one line: place, found, expected, remedy, code. */
  public String sentence() {
    return place
        + ": found "
        + found
        + "; expected "
        + expected
        + ". To mend: "
        + remedy
        + ". ["
        + code.slug()
        + "]";
  }
}
