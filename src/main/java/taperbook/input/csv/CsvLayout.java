package taperbook.input.csv;

import java.util.Optional;

/**
 * Layout of a CSV file from another program.
 *
 * @param leadingLines number of lines above the column headers, not negative
 * @param rowsOfUnits number of rows directly below the headers that contain no readings, not
 *     negative
 * @param delimiter the cell delimiter; detected from the headers if empty
 * @param encoding text encoding
 */
public record CsvLayout(
    int leadingLines, int rowsOfUnits, Optional<Character> delimiter, TextEncoding encoding) {
  /** Headers in the first line, followed by readings, in UTF-8. */
  public static final CsvLayout PLAIN = new CsvLayout(0, 0, Optional.empty(), TextEncoding.UTF_8);

  /** Checks the counts. */
  public CsvLayout {
    if (leadingLines < 0 || rowsOfUnits < 0) {
      throw new IllegalArgumentException("counts of lines must not be negative");
    }
  }

  /** Returns the text with its leading lines emptied, so that line numbers stay the same. */
  String withoutLeadingLines(String text) {
    if (leadingLines == 0) {
      return text;
    }
    StringBuilder ends = new StringBuilder();
    int lines = 0;
    int place = 0;
    while (lines < leadingLines && place < text.length()) {
      if (LineCounter.isLineEnd(text.charAt(place))) {
        ends.append(text.charAt(place));
      }
      lines += LineCounter.endsLine(text, place) ? 1 : 0;
      place++;
    }
    return ends + text.substring(place);
  }
}
