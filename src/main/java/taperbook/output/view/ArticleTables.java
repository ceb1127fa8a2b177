package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import taperbook.format.Labels;
import taperbook.format.NumberFormatter;
import taperbook.output.view.ArticleTable.Cell;
import taperbook.result.ReportResult;
import taperbook.result.Role;

/** The tables of a report by the names that an article uses: those of the page. */
public final class ArticleTables {
  private final Map<String, ArticleTable> tables = new LinkedHashMap<>();

  private ArticleTables() {}

  /** Returns every table that a report of a session can have; missing ones are empty. */
  public static Map<String, ArticleTable> of(ReportResult result) {
    NumberFormatter formatter = new NumberFormatter(result.plan().style());
    NumberViews views = new NumberViews(result, formatter, new CaveatMarks(result));
    Tables tables = new Tables(result, views, formatter);
    CurvePart curve = new CurvePart(result.main(), views);
    ArticleTables all = new ArticleTables();
    all.grid("milestones", tables.milestones());
    EventTables events = new EventTables(result, views, formatter);
    all.add(
        "events",
        heads("head.when", "head.soc", "head.what", "head.row"),
        List.of("when", "charge", "what", "row"),
        events.events());
    all.numbers("interruptions", events.interrupted());
    all.grid("distances", tables.distances());
    all.grid("stops", tables.stops());
    all.add(
        "segments",
        heads("head.stretch", "head.from", "head.until", "head.mean_power", "head.slope"),
        List.of("kind", "from", "to", "power", "slope"),
        curve.segments());
    all.numbers("curve", views.measured(result.main(), Role.CURVE));
    all.numbers("energy", views.measured(result.main(), Role.ENERGY));
    all.add(
        "checks",
        heads("head.quantity", "head.one_way", "head.another_way", "head.verdict"),
        List.of("title", "first", "second", "verdict"),
        tables.checks());
    all.range(new RangeBasis(result.main(), views, formatter).map());
    all.facts("conditions", FactTexts.table(result.main().session().conditions()));
    all.comparison(new ComparisonPart(result, views, formatter).map());
    return all.tables;
  }

  private void range(Map<String, Object> range) {
    numbers("range", rows(range.get("numbers")));
    facts("range test", rows(range.get("facts")));
    add(
        "legs",
        heads(
            "head.leg",
            "head.distance",
            "head.time",
            "head.energy_used",
            "column.start_soc",
            "column.end_soc",
            "head.note"),
        List.of("name", "distance", "duration", "energy", "start", "end", "note"),
        rows(range.get("legs")));
  }

  /** Adds one column per session, headed by its letter and name. */
  private void comparison(Map<String, Object> comparison) {
    List<String> head = new ArrayList<>(heads("head.number"));
    rows(comparison.get("sessions")).forEach(s -> head.add(s.get("letter") + " " + s.get("words")));
    compared("comparison", head, (Map<?, ?>) comparison.get("common"));
    compared("as recorded", head, (Map<?, ?>) comparison.get("recorded"));
  }

  private void grid(String name, Map<String, Object> table) {
    List<String> head = new ArrayList<>(List.of(String.valueOf(table.get("first"))));
    String unit = String.valueOf(table.get("unit"));
    rows(table.get("heads"))
        .forEach(h -> head.add(withUnit(h.get("label"), unit.isEmpty() ? h.get("unit") : unit)));
    compared(name, head, table);
  }

  private static String withUnit(@Nullable Object label, @Nullable Object unit) {
    return "".equals(unit) ? "" + label : label + " (" + unit + ")";
  }

  private void compared(String name, List<String> head, @Nullable Map<?, ?> table) {
    List<List<Cell>> cells = new ArrayList<>();
    for (Map<String, Object> row : rows(table == null ? null : table.get("rows"))) {
      List<Cell> line = new ArrayList<>(List.of(cell(withUnit(row.get("label"), row.get("unit")))));
      ((List<?>) row.getOrDefault("cells", List.of())).forEach(c -> line.add(Cell.shown(c)));
      cells.add(line);
    }
    tables.put(name, new ArticleTable(head, cells));
  }

  private void numbers(String name, List<Map<String, Object>> numbers) {
    List<List<Cell>> rows =
        numbers.stream().map(n -> List.of(cell(n.get("label")), Cell.of(n))).toList();
    tables.put(name, new ArticleTable(heads("head.number", "head.value"), rows));
  }

  private void facts(String name, List<Map<String, Object>> facts) {
    add(
        name,
        heads("head.item", "head.as_stated", "head.how_known"),
        List.of("item", "value", "known"),
        facts);
  }

  private void add(
      String name, List<String> head, List<String> parts, List<Map<String, Object>> rows) {
    tables.put(name, new ArticleTable(head, rows.stream().map(r -> cells(r, parts)).toList()));
  }

  private static List<Cell> cells(Map<String, Object> row, List<String> parts) {
    return parts.stream().map(part -> cell(row.get(part))).toList();
  }

  /** Returns a cell; a missing part is a dash, such as one side of an impossible check. */
  private static Cell cell(@Nullable Object part) {
    if (part == null) {
      return Cell.text("\u2013");
    }
    return part instanceof Map ? Cell.of(part) : Cell.text(part);
  }

  @SuppressWarnings("unchecked")
  private static List<Map<String, Object>> rows(@Nullable Object list) {
    return list == null ? List.of() : (List<Map<String, Object>>) list;
  }

  private static List<String> heads(String... keys) {
    return Stream.of(keys).map(key -> Labels.of(key)).toList();
  }
}
