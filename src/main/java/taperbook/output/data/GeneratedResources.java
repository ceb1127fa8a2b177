package taperbook.output.data;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
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
        "Every number of the report",
        csv,
        Optional.empty(),
        "utf-8",
        ',',
        List.of(
            ColumnSchema.text("id", "Name of the number, the same in every report"),
            ColumnSchema.text("label", "The number in words"),
            ColumnSchema.number(
                "value", "Value, in the unit of the column unit; empty if withheld"),
            ColumnSchema.text("unit", "Symbol of the unit; 1 for a pure number"),
            ColumnSchema.number("low", "Lower end of the interval, in the same unit"),
            ColumnSchema.number("high", "Upper end of the interval, in the same unit"),
            ColumnSchema.number("coverage", "Probability that the interval holds; 1 for bounds"),
            ColumnSchema.text("basis", "What the number rests on"),
            ColumnSchema.text("session", "Session that the number is about"),
            ColumnSchema.text("against", "Session that it is held against; empty if none"),
            ColumnSchema.text("rows", "Rows of input behind the number, as file:line"),
            ColumnSchema.text("caveats", "What a reader must know, in sentences"),
            ColumnSchema.text("withheld", "Why there is no value; empty if there is one")),
        named.size() == numbers.size() ? List.of("id", "session") : List.of());
  }

  /** Describes {@code share/table.csv}, which has the texts of the page. */
  static TableResource milestones(byte[] csv, List<String> columns, List<List<String>> rows) {
    return new TableResource(
        "Time, power, energy and distance at each state of charge, rounded as printed",
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
        "What was put right after publication",
        new InputFile("corrections.csv", csv).withoutContent(),
        Optional.empty(),
        "utf-8",
        ',',
        Correction.COLUMNS.stream().map(GeneratedResources::ofCorrections).toList(),
        List.of());
  }

  private static ColumnSchema ofCorrections(String head) {
    return switch (head) {
      case "corrected" -> new ColumnSchema(head, ColumnSchema.Type.DATE, "Day of the correction");
      case "since" ->
          new ColumnSchema(head, ColumnSchema.Type.DATE, "Day of the version that was corrected");
      case "reason" -> ColumnSchema.text(head, "Why, in the tester's words");
      case "id" -> ColumnSchema.text(head, "Name of the number that moved; empty if none did");
      case "session" -> ColumnSchema.text(head, "Session that the number is about");
      case "against" -> ColumnSchema.text(head, "Session that it is held against; empty if none");
      case "label" -> ColumnSchema.text(head, "The number in words");
      case "unit" -> ColumnSchema.text(head, "Symbol of the unit of all amounts in the row");
      case "causes" -> ColumnSchema.text(head, "Rows of input that changed");
      case "beyond the old interval" ->
          ColumnSchema.text(head, "yes if the new value lies outside the interval printed before");
      default -> ColumnSchema.number(head, "Value or end of its interval " + head.split(" ", 2)[0]);
    };
  }
}
