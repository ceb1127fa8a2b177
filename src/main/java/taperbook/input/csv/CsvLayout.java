package taperbook.input.csv;

import java.util.Optional;

/**
 * How a CSV file that another program wrote is laid out.
 *
 * @param leadingLines lines above the column heads, not negative
 * @param rowsOfUnits rows right below the heads that hold no readings, not negative
 * @param delimiter what parts the cells; found out from the heads if empty
 * @param encoding how its text is encoded
 */
public record CsvLayout(
    int leadingLines, int rowsOfUnits, Optional<Character> delimiter, TextEncoding encoding) {
  /** Heads in the first line and readings right below them, in UTF-8. */
  public static final CsvLayout PLAIN = new CsvLayout(0, 0, Optional.empty(), TextEncoding.UTF_8);

  /** Checks the counts. */
  public CsvLayout {
    if (leadingLines < 0 || rowsOfUnits < 0) {
      throw new IllegalArgumentException("counts of lines must not be negative");
    }
  }

  /** The text with nothing left of its leading lines but their ends, so that lines keep numbers. */
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
