package taperbook.endtoend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import taperbook.cli.Command;
import taperbook.cli.ExitStatus;
import taperbook.cli.Option;
import taperbook.diagnostics.ProblemCode;
import taperbook.format.ItemText;
import taperbook.input.KnownColumn;
import taperbook.input.KnownColumns;
import taperbook.input.plan.ReportKey;
import taperbook.output.article.ArticleFunction;
import taperbook.result.Method;
import taperbook.result.ReportNumber;
import taperbook.session.ConditionItem;
import taperbook.session.Item;
import taperbook.session.RangeItem;

/** The reference in Markdown, generated from the lists of the program. */
final class ReferenceText {
  private final List<String> lines = new ArrayList<>();

  private ReferenceText() {}

  /**
   * Returns the reference.
   *
   * @param numbers the numbers of reports that together contain every kind of number
   */
  static String of(List<ReportNumber> numbers) {
    ReferenceText text = new ReferenceText();
    text.lines.add("# Reference");
    text.lines.add("");
    text.lines.add(
        "Made from the program's own lists by `mvn test -Dtest=ReferenceTest"
            + " -Dreference.update=true`. Do not edit.");
    text.commands();
    text.files();
    text.reports();
    text.problems();
    text.numbers(numbers);
    return String.join("\n", text.lines) + "\n";
  }

  private void commands() {
    table("Commands", "command", "what it does");
    for (Command command : Command.values()) {
      for (Command.Usage usage : command.usages()) {
        row(
            code(("taperbook " + command.word() + " " + usage.arguments()).strip()),
            usage.meaning());
      }
    }
    table("Options", "option", "what it is for");
    for (Option option : Option.values()) {
      row(code(option.usage()), option.meaning());
    }
    table("Exit statuses", "status", "what it tells");
    for (ExitStatus status : ExitStatus.values()) {
      row(Integer.toString(status.code()), status.meaning());
    }
  }

  private void files() {
    columns("Columns of readings.csv", KnownColumns.readings());
    columns("Columns of conditions.csv and range-test.csv", KnownColumns.facts());
    columns("Columns of legs.csv", KnownColumns.legs());
    items("Items of conditions.csv", ConditionItem.values());
    items("Items of range-test.csv", RangeItem.values());
  }

  private void columns(String heading, List<KnownColumn> columns) {
    table(heading, "column", "heads", "what goes into it");
    for (KnownColumn column : columns) {
      List<String> heads =
          column.units().isEmpty()
              ? List.of(code(column.name()))
              : column.units().stream().map(u -> code(column.head(u))).toList();
      row(column.name(), String.join(" ", heads), column.explanation());
    }
  }

  private void items(String heading, Item[] items) {
    table(heading, "item", "must be there", "value", "what it is");
    for (Item item : items) {
      row(
          code(item.words()),
          item.required() ? "yes" : "",
          ItemText.takes(item),
          item.explanation());
    }
  }

  private void reports() {
    table("Keys of a report's front matter", "key", "what goes behind it", "example");
    for (ReportKey key : ReportKey.values()) {
      row(code(key.words()), key.meaning(), code(key.example()));
    }
    table("Functions of the article", "call", "what it prints");
    for (ArticleFunction function : ArticleFunction.values()) {
      row(code(function.call()), function.meaning());
    }
  }

  private void problems() {
    table("Problems", "code", "severity", "what it is");
    for (ProblemCode code : ProblemCode.values()) {
      row(code(code.slug()), code.severity().word(), code.meaning());
    }
  }

  private void numbers(List<ReportNumber> numbers) {
    TreeMap<String, ReportNumber> byPattern = new TreeMap<>();
    numbers.forEach(n -> byPattern.putIfAbsent(NumberPattern.of(n).id(), n));
    table("Numbers", "id", "what it is", "unit", "found by");
    BiConsumer<String, ReportNumber> line =
        (id, number) ->
            row(
                code(id),
                NumberPattern.of(number).label(),
                number.unit().symbol(),
                number.method().title());
    byPattern.forEach(line);
    lines.add("");
    lines.add(
        "AA, BB, NN: whole numbers, as the report asks for them; K: counted from 1; DISTANCE: such"
            + " as `100_km`; SESSION: the name of a session.");
    lines.add("");
    lines.add(
        "[`numbers.schema.json`](numbers.schema.json) describes all fields of `numbers.json` as JSON"
            + " Schema, draft 2020-12. `format` is the version of the format, and rises when a field"
            + " is renamed or removed, or means something else.");
    table("Methods", "method", "definition", "formula");
    Arrays.stream(Method.values()).forEach(m -> row(m.title(), m.definition(), code(m.formula())));
  }

  private void table(String heading, String... heads) {
    lines.add("");
    lines.add("## " + heading);
    lines.add("");
    row(heads);
    lines.add("|" + "---|".repeat(heads.length));
  }

  private void row(String... cells) {
    lines.add(
        "| "
            + String.join(" | ", Arrays.stream(cells).map(c -> c.replace("|", "\\|")).toList())
            + " |");
  }

  private static String code(String text) {
    return text.isEmpty() ? "" : "`" + text + "`";
  }
}
