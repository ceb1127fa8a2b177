package taperbook.output.data;

import java.util.List;

/**
 * Rows of CSV as RFC 4180 has them. Texts that a spreadsheet would carry out as a formula get an
 * apostrophe in front.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc4180#section-2">RFC 4180, section 2</a>
 */
public final class CsvWriter {
  private static final String FORMULA_STARTS = "=+-@\t\r";

  private final StringBuilder csv = new StringBuilder();

  /** A text that no spreadsheet takes for a formula. */
  public static String harmless(String text) {
    return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }

  /** Adds a row. */
  public CsvWriter row(List<String> cells) {
    csv.append(String.join(",", cells.stream().map(CsvWriter::quoted).toList())).append("\r\n");
    return this;
  }

  /** The rows so far, each ended by CR and LF. */
  public String text() {
    return csv.toString();
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
