package taperbook.diagnostics;

/**
 * Something wrong or noteworthy in the input, told so that the tester can mend it.
 *
 * @param code stable kind of the problem
 * @param place where it is
 * @param found what stands there, quoted, or that something is missing
 * @param expected what would be right, with range and unit
 * @param remedy an instruction that mends it
 */
public record Problem(
    ProblemCode code, SourceLocation place, String found, String expected, String remedy) {
  /** Checks that no part of the message is empty. */
  public Problem {
    if (found.isBlank() || expected.isBlank() || remedy.isBlank()) {
      throw new IllegalArgumentException("a problem needs found, expected and remedy: " + code);
    }
  }

  /** How much it matters: fixed by its code. */
  public Severity severity() {
    return code.severity();
  }

  /** The problem in one line: place, found, expected, remedy, code. */
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
