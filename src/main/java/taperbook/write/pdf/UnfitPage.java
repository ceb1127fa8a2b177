package taperbook.write.pdf;

/** A page that a template gave cannot be laid out, for a reason that lies in the template. */
final class UnfitPage extends RuntimeException {
  private static final long serialVersionUID = 1;

  UnfitPage(String words) {
    super(words);
  }

  /** What is wrong, in words. */
  String words() {
    return String.valueOf(getMessage());
  }
}
