package taperbook.output.pdf;

import java.time.LocalDate;

/**
 * What a PDF says of itself.
 *
 * @param title its title
 * @param author who answers for it; may be empty
 * @param subject what it is about; may be empty
 * @param program name and version of the program that made it
 * @param made the day that it bears
 */
public record PdfMetadata(
    String title, String author, String subject, String program, LocalDate made) {
  /** All of it as one text. */
  String words() {
    return String.join("\n", title, author, subject, program, made.toString());
  }
}
