package taperbook.output.pdf;

import java.util.Locale;

/**
 * A file attached to a PDF.
 *
 * <p>A final class and not a record because it keeps bytes.
 */
public final class PdfAttachment {
  private final String path;
  private final byte[] bytes;

  /**
   * Creates an attachment without copying the bytes.
   *
   * @param path path relative to the project folder, with {@code /}
   * @param bytes the content; the caller must not change it afterwards
   */
  public PdfAttachment(String path, byte[] bytes) {
    this.path = path;
    this.bytes = bytes;
  }

  String path() {
    return path;
  }

  byte[] bytes() {
    return bytes;
  }

  /**
   * Returns the relationship of the file to the document: {@code Source} for the source of its
   * text, {@code Data} for the data of its numbers.
   *
   * @see <a href="https://www.iso.org/standard/57229.html">ISO 19005-3:2012, annex E</a>
   */
  String relationship() {
    return switch (ending()) {
      case "md", "ftlh", "css", "js" -> "Source";
      default -> "Data";
    };
  }

  /** Returns the media type by the file extension. */
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
