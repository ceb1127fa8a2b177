package taperbook.output.article;

/** Escapes text so that Markdown prints it literally. */
public final class PlainMarkdown {
  private PlainMarkdown() {}

  /** Returns the text on one line with ordinary spaces, escaped for Markdown. */
  public static String of(String text) {
    return text.replaceAll("([\\\\`*_\\[\\]<>#|~])", "\\\\$1")
        .replaceAll("[\\r\\n]+", " ")
        .replace('\u00a0', ' ');
  }
}
