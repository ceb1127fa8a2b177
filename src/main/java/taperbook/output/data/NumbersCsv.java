package taperbook.output.data;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.result.Results;

/** Writes {@code numbers.csv}: one row per number. */
public final class NumbersCsv implements StreamedFile {
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

  private final Results results;

  /** Creates the file of a report or library. */
  public NumbersCsv(Results results) {
    this.results = results;
  }

  /** Writes the file as UTF-8, session by session, and closes the stream. */
  @Override
  public void writeTo(OutputStream out) throws IOException {
    try (Writer text = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8))) {
      text.write(new CsvWriter().row(HEAD).text());
      for (Numbers numbers : results.numbers()) {
        CsvWriter rows = new CsvWriter();
        numbers.all().forEach(n -> rows.row(cells(n, results.cautions(n))));
        text.write(rows.text());
      }
    }
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
        NumbersJson.digits(measured.estimate().value()),
        NumbersJson.digits(measured.estimate().bounds().low()),
        NumbersJson.digits(measured.estimate().bounds().high()),
        NumbersJson.digits(measured.coverage()));
  }
}
