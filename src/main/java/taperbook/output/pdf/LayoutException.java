package taperbook.output.pdf;

/** A page that a template gave cannot be laid out, for a reason that lies in the template. */
final class LayoutException extends RuntimeException {
  private static final long serialVersionUID = 1;

  LayoutException(String words) {
    super(words);
  }

  /** What is wrong, in words. */
  String words() {
    return String.valueOf(getMessage());
  }
}
