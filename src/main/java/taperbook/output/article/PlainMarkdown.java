package taperbook.output.article;

/** Texts as Markdown prints them letter by letter. */
public final class PlainMarkdown {
  private PlainMarkdown() {}

  /** The text in one line, with ordinary spaces, in which Markdown reads no meaning. */
  public static String of(String text) {
    return text.replaceAll("([\\\\`*_\\[\\]<>#|~])", "\\\\$1")
        .replaceAll("[\\r\\n]+", " ")
        .replace('\u00a0', ' ');
  }
}
