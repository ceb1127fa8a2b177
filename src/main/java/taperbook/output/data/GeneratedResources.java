package taperbook.output.data;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import taperbook.i18n.Texts;
import taperbook.result.Correction;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.session.InputFile;
import taperbook.session.InputHash;

/** Describes the tables that the program generates. */
final class GeneratedResources {
  private GeneratedResources() {}

  /** Describes {@code numbers.csv}. */
  static TableResource numbers(InputHash csv, List<Numbers> all) {
    List<ReportNumber> numbers = all.stream().flatMap(n -> n.all().stream()).toList();
    Set<List<String>> named = new HashSet<>();
    numbers.forEach(n -> named.add(List.of(n.id(), n.origin().session())));
    return new TableResource(
        Texts.of("data.generated_resources.every_number_of_report"),
        csv,
        Optional.empty(),
        "utf-8",
        ',',
        List.of(
            ColumnSchema.text("id", Texts.of("data.generated_resources.name_of_number_same_in")),
            ColumnSchema.text("label", Texts.of("data.generated_resources.number_in_words")),
            ColumnSchema.number(
                "value", Texts.of("data.generated_resources.value_in_unit_of_column")),
            ColumnSchema.text("unit", Texts.of("data.generated_resources.symbol_of_unit_1_for")),
            ColumnSchema.number(
                "low", Texts.of("data.generated_resources.lower_end_of_interval_in")),
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
                "withheld", Texts.of("data.generated_resources.why_there_is_no_value"))),
        named.size() == numbers.size() ? List.of("id", "session") : List.of());
  }

  /** Describes {@code share/table.csv}, which has the texts of the page. */
  static TableResource milestones(byte[] csv, List<String> columns, List<List<String>> rows) {
    return new TableResource(
        Texts.of("data.generated_resources.time_power_energy_and_distance"),
        new InputFile("share/table.csv", csv).withoutContent(),
        Optional.empty(),
        "utf-8",
        ',',
        IntStream.range(0, columns.size())
            .mapToObj(
                i ->
                    new ColumnSchema(
                        columns.get(i),
                        ColumnSchema.typeOf(rows.stream().map(row -> row.get(i)).toList()),
                        columns.get(i)))
            .toList(),
        List.of(columns.get(0)));
  }

  /** Describes {@code corrections.csv}. */
  static TableResource corrections(byte[] csv) {
    return new TableResource(
        Texts.of("data.generated_resources.what_was_put_right_after"),
        new InputFile("corrections.csv", csv).withoutContent(),
        Optional.empty(),
        "utf-8",
        ',',
        Correction.COLUMNS.stream().map(GeneratedResources::ofCorrections).toList(),
        List.of());
  }

  private static ColumnSchema ofCorrections(String head) {
    return switch (head) {
      case "corrected" ->
          new ColumnSchema(
              head, ColumnSchema.Type.DATE, Texts.of("data.generated_resources.day_of_correction"));
      case "since" ->
          new ColumnSchema(
              head,
              ColumnSchema.Type.DATE,
              Texts.of("data.generated_resources.day_of_version_that_was"));
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
