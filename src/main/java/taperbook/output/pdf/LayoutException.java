package taperbook.output.pdf;

/** Thrown if the output of a template cannot be laid out, for a reason in the template. */
final class LayoutException extends RuntimeException {
  private static final long serialVersionUID = 1;

  LayoutException(String words) {
    super(words);
  }

  /** Returns the problem text. */
  String words() {
    return String.valueOf(getMessage());
  }
}
