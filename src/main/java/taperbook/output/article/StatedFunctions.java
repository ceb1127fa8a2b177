package taperbook.output.article;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import taperbook.output.view.ArticleTable;

/** The functions of an article that print tables, stated facts and dates. */
final class StatedFunctions {
  private static final String VALUE = "value";
  private static final String RANGE = "range";
  private static final String BOTH = "both";
  private static final String NOT_KNOWN = "not known";

  private final ArticleSource source;
  private final Unknown unknown;

  StatedFunctions(ArticleSource source, Unknown unknown) {
    this.source = source;
    this.unknown = unknown;
  }

  /** Receives each name that does not exist. */
  @FunctionalInterface
  interface Unknown {
    void report(String name, String expected, List<String> known);
  }

  /**
   * Returns a table in Markdown.
   *
   * @param name its name
   * @param shown which part of each number: {@code value}, {@code range}, or {@code both}; empty
   *     means {@code both}
   */
  String table(String name, String shown) {
    List<String> choices = List.of(VALUE, RANGE, BOTH);
    if (!shown.isEmpty() && !choices.contains(shown)) {
      unknown.report(shown, "what a table shows of each number", choices);
      return "";
    }
    Map<String, ArticleTable> tables = source.stated().tables();
    ArticleTable table = tables.get(name);
    if (table == null) {
      unknown.report(name, "the name of a table of this report", List.copyOf(tables.keySet()));
      return "";
    }
    return table.rows().isEmpty()
        ? "(No table: the report has no rows for it.)"
        : text(table, shown);
  }

  private static String text(ArticleTable table, String shown) {
    List<String> lines = new ArrayList<>();
    lines.add(line(table.head().stream().map(ArticleFunctions::escaped).toList()));
    lines.add(line(table.head().stream().map(h -> "---").toList()));
    for (List<ArticleTable.Cell> row : table.rows()) {
      lines.add(line(row.stream().map(c -> ArticleFunctions.escaped(cell(c, shown))).toList()));
    }
    return "\n\n" + String.join("\n", lines) + "\n\n";
  }

  private static String line(List<String> cells) {
    return cells.stream().collect(Collectors.joining(" | ", "| ", " |"));
  }

  private static String cell(ArticleTable.Cell cell, String shown) {
    if (cell.range().isEmpty() || shown.equals(VALUE)) {
      return cell.value();
    }
    return shown.equals(RANGE) ? cell.range() : cell.value() + " (" + cell.range() + ")";
  }

  /**
   * Returns a stated fact.
   *
   * @param item an item of conditions or of a range test
   * @param of session or range test; empty for the reported session
   */
  String fact(String item, String of) {
    Map<String, Map<String, String>> facts = source.stated().facts();
    String name = of.isEmpty() ? source.mainSession() : of;
    Map<String, String> items = facts.get(name);
    if (items == null) {
      unknown.report(name, "a session or range test of this report", List.copyOf(facts.keySet()));
      return "";
    }
    String fact = items.get(item);
    if (fact == null) {
      unknown.report(item, "an item that is stated of " + name, List.copyOf(items.keySet()));
      return "";
    }
    return ArticleFunctions.escaped(fact);
  }

  /**
   * Returns a formatted date.
   *
   * @param what {@code published}, {@code session} or {@code drive}
   * @param of the session of the date or range test; empty for the reported one
   */
  String date(String what, String of) {
    return switch (what) {
      case "published" ->
          source.stated().published().isEmpty() ? NOT_KNOWN : source.stated().published();
      case "session" -> fact("date", of);
      case "drive" -> drive(of);
      default -> {
        unknown.report(what, "the name of a date", List.of("published", "session", "drive"));
        yield "";
      }
    };
  }

  private String drive(String of) {
    String session = of.isEmpty() ? source.mainSession() : of;
    String test = source.stated().rangeTests().get(session);
    if (test == null) {
      List<String> known = List.copyOf(source.stated().rangeTests().keySet());
      unknown.report(session, "a session with a range test of its vehicle", known);
      return "";
    }
    return fact("date", test);
  }
}
