package taperbook.output.pdf;

import java.util.Locale;

/**
 * A file that a PDF carries.
 *
 * <p>A final class and not a record because it keeps bytes.
 */
public final class PdfAttachment {
  private final String path;
  private final byte[] bytes;

  /**
   * Copies the bytes.
   *
   * @param path path relative to the project folder, with {@code /}
   * @param bytes the content
   */
  public PdfAttachment(String path, byte[] bytes) {
    this.path = path;
    this.bytes = bytes.clone();
  }

  String path() {
    return path;
  }

  byte[] bytes() {
    return bytes.clone();
  }

  /**
   * How the file relates to the document: {@code Source} for what its text was written in, {@code
   * Data} for what its numbers came from.
   *
   * @see <a href="https://www.iso.org/standard/57229.html">ISO 19005-3:2012, annex E</a>
   */
  String relationship() {
    return switch (ending()) {
      case "md", "ftlh", "css", "js" -> "Source";
      default -> "Data";
    };
  }

  /** Media type by the ending of the name. */
  String mediaType() {
    return switch (ending()) {
      case "csv" -> "text/csv";
      case "json" -> "application/json";
      case "md" -> "text/markdown";
      case "css" -> "text/css";
      case "js" -> "text/javascript";
      default -> "text/plain";
    };
  }

  private String ending() {
    return path.substring(path.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }
}
