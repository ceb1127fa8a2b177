package taperbook.write.data;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import taperbook.model.Outcome;
import taperbook.model.PairResult;
import taperbook.model.ReportNumber;
import taperbook.model.ReportResult;
import taperbook.model.SessionResult;

/** Writes {@code numbers.csv}: one row for each number. */
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

  /** The file as UTF-8. */
  public static byte[] bytes(ReportResult result) {
    CsvText csv = new CsvText().row(HEAD);
    for (SessionResult session : result.sessions()) {
      session.numbers().all().forEach(number -> csv.row(cells(result, number)));
    }
    for (PairResult pair : result.pairs()) {
      pair.numbers().all().forEach(number -> csv.row(cells(result, number)));
    }
    return csv.text().getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> cells(ReportResult result, ReportNumber number) {
    List<String> cells = new ArrayList<>();
    cells.add(CsvText.harmless(number.id()));
    cells.add(CsvText.harmless(number.label()));
    List<String> amounts =
        number.outcome().fold(NumbersCsv::amounts, (Outcome.Withheld w) -> List.of("", "", "", ""));
    cells.add(amounts.get(0));
    cells.add(CsvText.harmless(number.unit().symbol()));
    cells.addAll(amounts.subList(1, 4));
    cells.add(CsvText.harmless(number.origin().basis().words()));
    cells.add(CsvText.harmless(number.origin().session()));
    cells.add(CsvText.harmless(number.origin().against()));
    cells.add(CsvText.harmless(String.join(" ", RowRuns.listed(number.origin().rows()))));
    cells.add(CsvText.harmless(String.join(" ", result.cautions(number))));
    cells.add(CsvText.harmless(number.withheld().orElse("")));
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
