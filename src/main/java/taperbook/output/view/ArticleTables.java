package taperbook.output.view;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import taperbook.i18n.Texts;
import taperbook.output.view.ArticleTable.Cell;
import taperbook.output.view.NumberTable.RowView;
import taperbook.result.ReportResult;
import taperbook.result.Role;

/** The tables of a report by the names that an article uses: those of the page. */
public final class ArticleTables {
  private final Map<String, ArticleTable> tables = new LinkedHashMap<>();

  private ArticleTables() {}

  /** Returns every table that a report of a session can have; missing ones are empty. */
  public static Map<String, ArticleTable> of(ReportResult result) {
    NumberViews views = new NumberViews(result);
    Tables tables = new Tables(views);
    ArticleTables all = new ArticleTables();
    all.grid("milestones", tables.milestones());
    EventTables events = new EventTables(views);
    all.add(
        "events",
        Texts.all("head.when", "head.soc", "head.what", "head.row"),
        events.events(),
        e -> texts(e.when(), e.charge(), e.what(), e.row()));
    all.numbers("interruptions", events.interrupted());
    all.grid("distances", tables.distances());
    all.grid("stops", tables.stops());
    all.add(
        "segments",
        Texts.all("head.stretch", "head.from", "head.until", "head.mean_power", "head.slope"),
        tables.segments(),
        ArticleTables::segment);
    all.numbers("curve", views.measured(result.main(), Role.CURVE));
    all.numbers("energy", views.measured(result.main(), Role.ENERGY));
    all.add(
        "checks",
        Texts.all("head.quantity", "head.one_way", "head.another_way", "head.verdict"),
        tables.checks(),
        c ->
            List.of(
                Cell.text(c.title()), side(c.first()), side(c.second()), Cell.text(c.verdict())));
    all.range(new RangeBasis(views).view());
    all.facts("conditions", FactTexts.table(result.main().session().conditions()));
    all.comparison(new ComparisonPart(views).view());
    return all.tables;
  }

  /** Returns the cells of a segment of the curve; a step between segments has none of them. */
  private static List<Cell> segment(Record row) {
    return row instanceof Tables.Segment s
        ? List.of(
            Cell.text(s.kind()),
            Cell.of(s.from()),
            Cell.of(s.to()),
            Cell.of(s.power()),
            Cell.of(s.slope()))
        : Collections.nCopies(5, Cell.DASH);
  }

  private static Cell side(Optional<Tables.Side> side) {
    return side.map(s -> new Cell(s.value(), s.range())).orElse(Cell.DASH);
  }

  private void range(RangeBasis.Range range) {
    numbers("range", range.numbers());
    facts("range test", range.test().map(RangeBasis.TestView::facts).orElse(List.of()));
    add(
        "legs",
        Texts.all(
            "head.leg",
            "head.distance",
            "head.time",
            "head.energy_used",
            "column.start_soc",
            "column.end_soc",
            "head.note"),
        range.test().map(RangeBasis.TestView::legs).orElse(List.of()),
        l -> texts(l.name(), l.distance(), l.duration(), l.energy(), l.start(), l.end(), l.note()));
  }

  /** Adds one column per session, headed by its letter and name. */
  private void comparison(ComparisonPart.Comparison comparison) {
    List<String> head = new ArrayList<>(Texts.all("head.number"));
    comparison.sessions().forEach(s -> head.add(s.letter() + " " + s.words()));
    compared("comparison", head, comparison.common());
    compared(Texts.of("page.article_tables.as_recorded"), head, comparison.recorded());
  }

  private void compared(String name, List<String> head, ComparisonPart.ComparedTable table) {
    rows(name, head, table.rows().stream().map(ComparisonPart.ComparedRow::row).toList());
  }

  private void grid(String name, NumberTable<RowView> table) {
    List<String> head = new ArrayList<>(List.of(table.first()));
    table
        .heads()
        .forEach(
            h -> head.add(withUnit(h.label(), table.unit().isEmpty() ? h.unit() : table.unit())));
    rows(name, head, table.rows());
  }

  private static String withUnit(String label, String unit) {
    return unit.isEmpty() ? label : label + " (" + unit + ")";
  }

  private void rows(String name, List<String> head, List<RowView> rows) {
    add(
        name,
        head,
        rows,
        row ->
            Stream.concat(
                    Stream.of(Cell.text(withUnit(row.head().label(), row.head().unit()))),
                    row.cells().stream().map(Cell::of))
                .toList());
  }

  private void numbers(String name, List<NumberView> numbers) {
    add(
        name,
        Texts.all("head.number", "head.value"),
        numbers,
        n -> List.of(Cell.text(n.label()), Cell.of(n)));
  }

  private void facts(String name, List<FactTexts.Stated> facts) {
    add(
        name,
        Texts.all("head.item", "head.as_stated", "head.how_known"),
        facts,
        f -> texts(f.item(), f.value(), f.known()));
  }

  private <R> void add(
      String name, List<String> head, List<R> rows, Function<R, List<Cell>> cells) {
    tables.put(name, new ArticleTable(head, rows.stream().map(cells).toList()));
  }

  private static List<Cell> texts(String... texts) {
    return Stream.of(texts).map(Cell::text).toList();
  }
}
