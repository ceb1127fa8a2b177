package taperbook.output.data;

import java.util.List;

/**
 * Writes CSV rows according to RFC 4180. Prefixes text that a spreadsheet would execute as a
 * formula with an apostrophe.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc4180#section-2">RFC 4180, section 2</a>
 */
public final class CsvWriter {
  private static final String FORMULA_STARTS = "=+-@\t\r";

  private final StringBuilder csv = new StringBuilder();

  /** Returns text that no spreadsheet treats as a formula. */
  public static String escapeFormula(String text) {
    return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }

  /** Adds a row. */
  public CsvWriter row(List<String> cells) {
    csv.append(String.join(",", cells.stream().map(CsvWriter::quoted).toList())).append("\r\n");
    return this;
  }

  /** Returns the rows so far, each terminated by CR and LF. */
  public String text() {
    return csv.toString();
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
