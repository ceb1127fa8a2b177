package taperbook.input.facts;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
import taperbook.input.cell.Column;
import taperbook.input.cell.ColumnSpec;
import taperbook.input.cell.Columns;
import taperbook.input.cell.NormalizedName;
import taperbook.input.cell.ShortRows;
import taperbook.input.cell.Suggestion;
import taperbook.input.csv.CsvRow;
import taperbook.input.csv.CsvTable;
import taperbook.quantity.Unit;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.HowKnown;
import taperbook.session.Item;
import taperbook.session.RowRef;

/**
 * Parses a file of facts, one per row: {@code conditions.csv} or {@code range-test.csv}.
 *
 * @param <I> the items that it can contain
 */
public final class FactsParser<I extends Enum<I> & Item> {
  public static final String ITEM = "item";
  public static final String VALUE = "value";
  public static final String UNIT = "unit";
  public static final String HOW_KNOWN = "how known";
  public static final String GIVE_OR_TAKE = "give or take";
  public static final List<String> COLUMN_NAMES =
      List.of(ITEM, VALUE, UNIT, HOW_KNOWN, GIVE_OR_TAKE);
  private static final List<String> REQUIRED = COLUMN_NAMES.subList(0, 4);

  private final CsvTable table;
  private final Class<I> itemClass;
  private final List<I> items;
  private final ProblemLog log;
  private final Columns columns;
  private final FactValueParser values;
  private final HowKnownParser howKnown;
  private final Map<I, Integer> lines = new HashMap<>();
  private final Map<I, Fact> facts;

  public FactsParser(CsvTable table, Class<I> itemClass, ProblemLog log) {
    this.table = table;
    this.itemClass = itemClass;
    this.items = List.copyOf(EnumSet.allOf(itemClass));
    this.log = log;
    this.columns = Columns.of(table, COLUMN_NAMES.stream().map(ColumnSpec::plain).toList(), log);
    this.values = new FactValueParser(table.takesDecimalComma(), log);
    this.howKnown = new HowKnownParser(log);
    this.facts = new EnumMap<>(itemClass);
  }

  /** Returns the valid facts and reports all others. */
  public Facts<I> check() {
    REQUIRED.forEach(columns::require);
    if (REQUIRED.stream().allMatch(n -> columns.find(n).isPresent())) {
      ShortRows.report(table, REQUIRED.stream().mapToInt(this::number).max().orElseThrow(), log);
      table.rows().forEach(this::read);
      items.stream()
          .filter(i -> i.required() && !lines.containsKey(i))
          .forEach(this::reportMissing);
    }
    return new Facts<>(table.file(), itemClass, facts);
  }

  /**
   * Returns the unit in the row of an item, whether or not it has a value; empty if it is not a
   * valid symbol.
   */
  public Optional<Unit> unit(I item) {
    if (columns.find(ITEM).isEmpty() || columns.find(UNIT).isEmpty()) {
      return Optional.empty();
    }
    return table.rows().stream()
        .filter(row -> NormalizedName.of(cell(row, ITEM)).equals(NormalizedName.of(item.words())))
        .findFirst()
        .flatMap(row -> Unit.ofSymbol(cell(row, UNIT)));
  }

  /** Returns the number of the value cell; there must be a fact. */
  public int valueNumber() {
    return number(VALUE);
  }

  /** Returns the number of the unit cell; there must be a fact. */
  int unitNumber() {
    return number(UNIT);
  }

  private void read(CsvRow row) {
    String name = NormalizedName.of(cell(row, ITEM));
    Optional<I> item =
        items.stream().filter(i -> NormalizedName.of(i.words()).equals(name)).findFirst();
    if (item.isEmpty()) {
      reportUnknown(row, name);
      return;
    }
    int firstLine = lines.getOrDefault(item.get(), 0);
    if (firstLine > 0) {
      log.add(
          ProblemCode.ITEM_TWICE,
          row.line(),
          number(ITEM),
          Texts.of("input.common.as_on_line", Quoted.of(cell(row, ITEM)), firstLine),
          Texts.of("input.common.each_item_once"),
          Texts.of("input.common.take_one_of_two_rows"));
      return;
    }
    lines.put(item.get(), row.line());
    fact(factRow(row, item.get())).ifPresent(f -> facts.put(item.get(), f));
  }

  private Optional<Fact> fact(FactRow row) {
    if (HowKnownParser.isEmptyOrUnknown(row.value()) && !row.giveOrTake().isEmpty()) {
      row.problemOfGiveOrTake(
          log,
          ProblemCode.KNOWN_CONTRADICTION,
          Texts.of("input.facts_parser.empty_cell_as_there_is"),
          Texts.of("input.facts_parser.write_value_or_empty_cell"));
    }
    if (row.value().isEmpty() && row.howKnown().isEmpty()) {
      if (row.item().required()) {
        reportUnfilled(row);
      }
      return Optional.empty();
    }
    Optional<HowKnown> how = howKnown.read(row);
    if (how.isPresent() && how.get() == HowKnown.UNKNOWN) {
      return Optional.of(new Fact("", row.unit(), Optional.empty(), HowKnown.UNKNOWN, rowRef(row)));
    }
    if (HowKnownParser.isEmptyOrUnknown(row.value())) {
      return Optional.empty();
    }
    Optional<FactValue> value = values.read(row);
    return how.flatMap(
        h ->
            value.map(
                v ->
                    new Fact(
                        v.written(), row.unit(), v.amount(), row.giveOrTake(), h, rowRef(row))));
  }

  private FactRow factRow(CsvRow row, I item) {
    return new FactRow(
        item,
        row.line(),
        cell(row, VALUE),
        cell(row, UNIT),
        NormalizedName.of(cell(row, HOW_KNOWN)),
        columns.find(GIVE_OR_TAKE).map(c -> row.cell(c.index())).orElse(""),
        new FactRow.CellNumbers(
            number(VALUE),
            number(UNIT),
            number(HOW_KNOWN),
            columns.find(GIVE_OR_TAKE).map(Column::number).orElse(0)));
  }

  private void reportUnknown(CsvRow row, String name) {
    List<String> names = items.stream().map(Item::words).toList();
    Set<String> used =
        table.rows().stream()
            .map(r -> NormalizedName.of(cell(r, ITEM)))
            .collect(Collectors.toSet());
    String unused =
        names.stream()
            .filter(n -> !used.contains(NormalizedName.of(n)))
            .collect(Collectors.joining(", "));
    log.add(
        ProblemCode.ITEM_UNKNOWN,
        row.line(),
        number(ITEM),
        name.isEmpty() ? Texts.of("input.common.row_without_item") : Quoted.of(cell(row, ITEM)),
        Texts.of("input.common.item_of_this_file"),
        Suggestion.remedy(
            name,
            names,
            Texts.of(
                "input.facts_parser.take_row_away_or_write",
                unused.isEmpty() ? Texts.of("input.facts_parser.none_is_left") : unused)));
  }

  private void reportMissing(I item) {
    log.add(
        ProblemCode.ITEM_MISSING,
        Texts.of("input.facts_parser.no_row_for", item.words()),
        Texts.of("input.facts_parser.row_for_each_item_that"),
        Texts.of("input.facts_parser.add_row_or_value_instead", Quoted.of(exampleRow(item))));
  }

  private void reportUnfilled(FactRow row) {
    log.add(
        ProblemCode.ITEM_MISSING,
        row.line(),
        row.numbers().value(),
        Texts.of("input.facts_parser.no_value_and_no_word"),
        Texts.of("input.facts_parser.value_for_or_word_unknown", row.item().words()),
        Texts.of("input.facts_parser.write_value_and_how_it"));
  }

  /** Returns a row that states that an item is unknown, in this file's column order. */
  private String exampleRow(I item) {
    int cells = REQUIRED.stream().mapToInt(this::number).max().orElseThrow();
    String[] row = new String[cells];
    Arrays.fill(row, "");
    row[number(ITEM) - 1] = item.words();
    row[number(UNIT) - 1] =
        item.kind().quantity().map(q -> ColumnSpec.of("", q).units().get(0)).orElse("");
    row[number(HOW_KNOWN) - 1] = HowKnown.UNKNOWN.words();
    return String.join(Character.toString(table.delimiter()), row);
  }

  private RowRef rowRef(FactRow row) {
    return new RowRef(table.file(), row.line());
  }

  private String cell(CsvRow row, String column) {
    return row.cell(number(column) - 1);
  }

  private int number(String column) {
    return columns.find(column).orElseThrow().number();
  }
}
