package taperbook.output.pdf;

import java.time.LocalDate;

/**
 * The metadata of a PDF.
 *
 * @param title its title
 * @param author its author; may be empty
 * @param subject its subject; may be empty
 * @param program name and version of the program that made it
 * @param date its date
 */
public record PdfMetadata(
    String title, String author, String subject, String program, LocalDate date) {
  /** Returns all metadata as one text. */
  String words() {
    return String.join("\n", title, author, subject, program, date.toString());
  }
}
