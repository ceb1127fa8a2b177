package taperbook.output.data;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.i18n.Texts;
import taperbook.quantity.Estimate;
import taperbook.result.Correction;
import taperbook.result.MovedNumber;
import taperbook.session.InputFile;

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

  /** Describes the file. */
  static TableResource described(byte[] csv) {
    return TableResource.generated(
        Texts.of("data.generated_resources.what_was_put_right_after"),
        new InputFile("corrections.csv", csv).withoutContent(),
        Correction.COLUMNS.stream().map(CorrectionsCsv::column).toList(),
        List.of());
  }

  private static ColumnSchema column(String head) {
    return switch (head) {
      case "corrected" ->
          ColumnSchema.date(head, Texts.of("data.generated_resources.day_of_correction"));
      case "since" ->
          ColumnSchema.date(head, Texts.of("data.generated_resources.day_of_version_that_was"));
      case "reason" ->
          ColumnSchema.text(head, Texts.of("data.generated_resources.why_in_tester_s_words"));
      case "id" ->
          ColumnSchema.text(head, Texts.of("data.generated_resources.name_of_number_that_moved"));
      case "session" ->
          ColumnSchema.text(
              head, Texts.of("data.generated_resources.session_that_number_is_about"));
      case "against" ->
          ColumnSchema.text(head, Texts.of("data.generated_resources.session_that_it_is_held"));
      case "label" -> ColumnSchema.text(head, Texts.of("data.generated_resources.number_in_words"));
      case "unit" ->
          ColumnSchema.text(head, Texts.of("data.generated_resources.symbol_of_unit_of_all"));
      case "causes" ->
          ColumnSchema.text(head, Texts.of("data.generated_resources.rows_of_input_that_changed"));
      case "beyond the old interval" ->
          ColumnSchema.text(head, Texts.of("data.generated_resources.yes_if_new_value_lies"));
      default ->
          ColumnSchema.number(
              head,
              Texts.of("data.generated_resources.value_or_end_of_its", head.split(" ", 2)[0]));
    };
  }
}
