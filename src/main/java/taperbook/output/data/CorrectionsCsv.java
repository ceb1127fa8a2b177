package taperbook.output.data;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.result.Correction;
import taperbook.result.MovedNumber;

/** Writes {@code corrections.csv}: the changes after publication, one row per number. */
public final class CorrectionsCsv {
  private CorrectionsCsv() {}

  /** Returns the file as UTF-8; a correction that changed no number has a row without one. */
  public static byte[] bytes(List<Correction> corrections) {
    CsvWriter csv = new CsvWriter().row(Correction.COLUMNS);
    for (Correction correction : corrections) {
      if (correction.moved().isEmpty()) {
        List<String> cells = new ArrayList<>(beginning(correction));
        while (cells.size() < Correction.COLUMNS.size()) {
          cells.add("");
        }
        csv.row(cells);
      }
      correction.moved().forEach(moved -> csv.row(cells(correction, moved)));
    }
    return csv.text().getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> beginning(Correction correction) {
    return List.of(
        correction.day().toString(),
        correction.since().toString(),
        CsvWriter.escapeFormula(correction.reason()));
  }

  private static List<String> cells(Correction correction, MovedNumber moved) {
    List<String> cells = new ArrayList<>(beginning(correction));
    List.of(moved.id(), moved.session(), moved.against(), moved.label())
        .forEach(text -> cells.add(CsvWriter.escapeFormula(text)));
    cells.add(moved.unit().symbol());
    cells.addAll(amounts(moved.before()));
    cells.addAll(amounts(moved.after()));
    cells.add(moved.isOutsideInterval() ? "yes" : "no");
    cells.add(CsvWriter.escapeFormula(String.join("; ", moved.causes())));
    return cells;
  }

  private static List<String> amounts(Optional<Estimate> estimate) {
    return estimate
        .map(
            e ->
                List.of(
                    NumbersJson.digits(e.value()),
                    NumbersJson.digits(e.bounds().low()),
                    NumbersJson.digits(e.bounds().high())))
        .orElse(List.of("", "", ""));
  }
}
