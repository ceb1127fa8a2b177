package taperbook.write.data;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import taperbook.model.LibraryResult;
import taperbook.model.LibraryRow;
import taperbook.model.Numbers;
import taperbook.model.Outcome;
import taperbook.model.ReportNumber;
import taperbook.model.ReportResult;
import taperbook.model.SessionResult;

/**
 * Writes {@code numbers.csv}: one row for each number, as RFC 4180 has it.
 *
 * <p>Texts that a spreadsheet would carry out as a formula get an apostrophe in front.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc4180#section-2">RFC 4180, section 2</a>
 */
public final class NumbersCsv {
  private static final String FORMULA_STARTS = "=+-@\t\r";
  private static final List<String> HEAD =
      List.of(
          "id",
          "label",
          "value",
          "unit",
          "low",
          "high",
          "coverage",
          "basis",
          "session",
          "rows",
          "caveats",
          "withheld");

  private NumbersCsv() {}

  /** The file as UTF-8. */
  public static byte[] bytes(ReportResult result) {
    return bytes(result.sessions().stream().map(SessionResult::numbers).toList());
  }

  /** The file of a library as UTF-8. */
  public static byte[] bytes(LibraryResult result) {
    return bytes(result.rows().stream().map(LibraryRow::numbers).toList());
  }

  private static byte[] bytes(List<Numbers> sessions) {
    StringBuilder csv = new StringBuilder();
    row(csv, HEAD);
    for (Numbers session : sessions) {
      session.all().forEach(number -> row(csv, cells(number)));
    }
    return csv.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> cells(ReportNumber number) {
    List<String> cells = new ArrayList<>();
    cells.add(text(number.id()));
    cells.add(text(number.label()));
    List<String> amounts =
        number.outcome().fold(NumbersCsv::amounts, (Outcome.Withheld w) -> List.of("", "", "", ""));
    cells.add(amounts.get(0));
    cells.add(text(number.unit().symbol()));
    cells.addAll(amounts.subList(1, 4));
    cells.add(text(number.origin().basis().words()));
    cells.add(text(number.origin().session()));
    cells.add(text(String.join(" ", RowRuns.listed(number.origin().rows()))));
    cells.add(text(String.join(" ", number.caveats().stream().map(c -> c.sentence()).toList())));
    cells.add(text(number.withheld().orElse("")));
    return cells;
  }

  private static List<String> amounts(Outcome.Measured measured) {
    return List.of(
        Digits.plain(measured.estimate().value()),
        Digits.plain(measured.estimate().bounds().low()),
        Digits.plain(measured.estimate().bounds().high()),
        Digits.plain(measured.coverage()));
  }

  private static String text(String text) {
    return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }

  private static void row(StringBuilder csv, List<String> cells) {
    csv.append(String.join(",", cells.stream().map(NumbersCsv::quoted).toList())).append("\r\n");
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
