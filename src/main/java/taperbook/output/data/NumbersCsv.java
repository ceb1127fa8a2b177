package taperbook.output.data;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import taperbook.i18n.Texts;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.result.Results;
import taperbook.session.InputHash;

/** Writes {@code numbers.csv}: one row per number. */
public final class NumbersCsv implements StreamedFile {
  private static final List<ColumnSchema> COLUMNS =
      List.of(
          ColumnSchema.text("id", Texts.of("data.generated_resources.name_of_number_same_in")),
          ColumnSchema.text("label", Texts.of("data.generated_resources.number_in_words")),
          ColumnSchema.number(
              "value", Texts.of("data.generated_resources.value_in_unit_of_column")),
          ColumnSchema.text("unit", Texts.of("data.generated_resources.symbol_of_unit_1_for")),
          ColumnSchema.number("low", Texts.of("data.generated_resources.lower_end_of_interval_in")),
          ColumnSchema.number(
              "high", Texts.of("data.generated_resources.upper_end_of_interval_in")),
          ColumnSchema.number(
              "coverage", Texts.of("data.generated_resources.probability_that_interval_holds_1")),
          ColumnSchema.text("basis", Texts.of("data.generated_resources.what_number_rests_on")),
          ColumnSchema.text(
              "session", Texts.of("data.generated_resources.session_that_number_is_about")),
          ColumnSchema.text(
              "against", Texts.of("data.generated_resources.session_that_it_is_held")),
          ColumnSchema.text(
              "rows", Texts.of("data.generated_resources.rows_of_input_behind_number")),
          ColumnSchema.text(
              "caveats", Texts.of("data.generated_resources.what_reader_must_know_in")),
          ColumnSchema.text(
              "withheld", Texts.of("data.generated_resources.why_there_is_no_value")));

  private final Results results;

  /** Creates the file of a report or library. */
  public NumbersCsv(Results results) {
    this.results = results;
  }

  /** Writes the file as UTF-8, session by session, and closes the stream. */
  @Override
  public void writeTo(OutputStream out) throws IOException {
    try (Writer text = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8))) {
      text.write(new CsvWriter().row(COLUMNS.stream().map(ColumnSchema::name).toList()).text());
      for (Numbers numbers : results.numbers()) {
        CsvWriter rows = new CsvWriter();
        numbers.all().forEach(n -> rows.row(cells(n, results.cautions(n))));
        text.write(rows.text());
      }
    }
  }

  /** Describes the file, given its hash and length. */
  TableResource described(InputHash file) {
    List<ReportNumber> all = results.numbers().stream().flatMap(n -> n.all().stream()).toList();
    Set<List<String>> named = new HashSet<>();
    all.forEach(n -> named.add(List.of(n.id(), n.origin().session())));
    return TableResource.generated(
        Texts.of("data.generated_resources.every_number_of_report"),
        file,
        COLUMNS,
        named.size() == all.size() ? List.of("id", "session") : List.of());
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
