package taperbook.output.data;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import taperbook.result.LibraryResult;
import taperbook.result.LibraryRow;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;

/** Writes {@code numbers.csv}: one row per number. */
public final class NumbersCsv {
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
          "against",
          "rows",
          "caveats",
          "withheld");

  private NumbersCsv() {}

  /** Returns the file as UTF-8. */
  public static byte[] bytes(ReportResult result) {
    return bytes(result.numbers(), result::cautions);
  }

  /** Returns the file of a library as UTF-8. */
  public static byte[] bytes(LibraryResult result) {
    return bytes(result.rows().stream().map(LibraryRow::numbers).toList(), ReportNumber::cautions);
  }

  /** Writes the file of a library as UTF-8, row by row, and closes the stream. */
  public static void write(LibraryResult result, OutputStream out) throws IOException {
    try (Writer text = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8))) {
      text.write(new CsvWriter().row(HEAD).text());
      for (LibraryRow row : result.rows()) {
        CsvWriter rows = new CsvWriter();
        row.numbers().all().forEach(n -> rows.row(cells(n, n.cautions())));
        text.write(rows.text());
      }
    }
  }

  private static byte[] bytes(List<Numbers> all, Function<ReportNumber, List<String>> cautions) {
    CsvWriter csv = new CsvWriter().row(HEAD);
    for (Numbers numbers : all) {
      numbers.all().forEach(number -> csv.row(cells(number, cautions.apply(number))));
    }
    return csv.text().getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> cells(ReportNumber number, List<String> cautions) {
    List<String> cells = new ArrayList<>();
    cells.add(CsvWriter.escapeFormula(number.id()));
    cells.add(CsvWriter.escapeFormula(number.label()));
    List<String> amounts =
        number.outcome().fold(NumbersCsv::amounts, (Outcome.Withheld w) -> List.of("", "", "", ""));
    cells.add(amounts.get(0));
    cells.add(CsvWriter.escapeFormula(number.unit().symbol()));
    cells.addAll(amounts.subList(1, 4));
    cells.add(CsvWriter.escapeFormula(number.metric().basis().words()));
    cells.add(CsvWriter.escapeFormula(number.origin().session()));
    cells.add(CsvWriter.escapeFormula(number.origin().against()));
    cells.add(CsvWriter.escapeFormula(String.join(" ", RowRuns.listed(number.origin().rows()))));
    cells.add(CsvWriter.escapeFormula(String.join(" ", cautions)));
    cells.add(CsvWriter.escapeFormula(number.withheld().orElse("")));
    return cells;
  }

  private static List<String> amounts(Outcome.Measured measured) {
    return List.of(
        Digits.plain(measured.estimate().value()),
        Digits.plain(measured.estimate().bounds().low()),
        Digits.plain(measured.estimate().bounds().high()),
        Digits.plain(measured.coverage()));
  }
}
