package taperbook.input.facts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
import taperbook.input.cell.CellNumber;
import taperbook.input.cell.Column;
import taperbook.input.cell.ColumnSpec;
import taperbook.input.cell.Columns;
import taperbook.input.cell.ElapsedParser;
import taperbook.input.cell.GroupedDigits;
import taperbook.input.cell.NumberParser;
import taperbook.input.cell.QuantityRange;
import taperbook.input.cell.ShortRows;
import taperbook.input.csv.CsvRow;
import taperbook.input.csv.CsvTable;
import taperbook.quantity.Estimate;
import taperbook.quantity.Quantity;
import taperbook.quantity.Unit;
import taperbook.session.Leg;
import taperbook.session.RowRef;

/** Parses {@code legs.csv}: the legs of a range test. */
public final class LegsParser {
  public static final String LEG = "leg";
  public static final String DISTANCE = "distance";
  public static final String DURATION = "duration";
  public static final String ENERGY_USED = "energy used";
  public static final String START_SOC = "start soc";
  public static final String END_SOC = "end soc";
  public static final String NOTE = "note";
  public static final List<ColumnSpec> SPECS =
      List.of(
          ColumnSpec.plain(LEG),
          ColumnSpec.of(DISTANCE, Quantity.DISTANCE),
          ColumnSpec.elapsed(DURATION),
          ColumnSpec.of(ENERGY_USED, Quantity.ENERGY),
          ColumnSpec.of(START_SOC, Quantity.SHARE),
          ColumnSpec.of(END_SOC, Quantity.SHARE),
          ColumnSpec.plain(NOTE));

  private final CsvTable table;
  private final ProblemLog log;
  private final Columns columns;
  private final NumberParser numbers;
  private final Map<String, GroupedDigits> grouped = new LinkedHashMap<>();

  private LegsParser(CsvTable table, ProblemLog log) {
    this.table = table;
    this.log = log;
    this.columns = Columns.of(table, SPECS, log);
    this.numbers = NumberParser.forCells(table.takesDecimalComma(), log);
  }

  public static List<Leg> check(CsvTable table, ProblemLog log) {
    LegsParser check = new LegsParser(table, log);
    check.columns.require(LEG);
    check.columns.require(DISTANCE);
    ShortRows.report(table, log);
    List<Leg> legs = new ArrayList<>();
    table.rows().forEach(row -> check.leg(row).ifPresent(legs::add));
    check.grouped.values().forEach(digits -> digits.finish(log));
    return legs;
  }

  private Optional<Leg> leg(CsvRow row) {
    Optional<Estimate> distance = amount(row, DISTANCE, QuantityRange.above(0, 3000));
    if (columns.find(DISTANCE).isPresent() && isBlank(row, DISTANCE)) {
      reportEmpty(row, DISTANCE, Texts.of("input.legs_parser.distance_of_leg"));
    }
    Optional<Estimate> energy = amount(row, ENERGY_USED, QuantityRange.from(-100, 1000));
    Optional<Leg.Span> soc = span(row);
    Optional<Estimate> duration = duration(row);
    String name = text(row, LEG);
    String shown = name.isEmpty() ? Texts.of("input.legs_parser.line", row.line()) : name;
    RowRef ref = new RowRef(table.file(), row.line());
    String note = text(row, NOTE);
    return distance.map(d -> new Leg(shown, d, duration, energy, soc, note, ref));
  }

  private Optional<Leg.Span> span(CsvRow row) {
    QuantityRange range = QuantityRange.from(0, 100);
    Optional<Estimate> start = amount(row, START_SOC, range);
    Optional<Estimate> end = amount(row, END_SOC, range);
    if (isBlank(row, START_SOC) && !isBlank(row, END_SOC)) {
      reportEmpty(row, START_SOC, Texts.of("input.legs_parser.state_of_charge_at_start"));
    } else if (isBlank(row, END_SOC) && !isBlank(row, START_SOC)) {
      reportEmpty(row, END_SOC, Texts.of("input.legs_parser.state_of_charge_at_end"));
    }
    return start.flatMap(s -> end.map(e -> new Leg.Span(s, e)));
  }

  private Optional<Estimate> amount(CsvRow row, String name, QuantityRange range) {
    Optional<Column> column = filled(row, name);
    if (column.isEmpty()) {
      return Optional.empty();
    }
    Unit unit = Unit.ofSymbol(column.get().unit()).orElseThrow();
    String cell = row.cell(column.get().index());
    String expected = Texts.of("input.common.number", range.words(unit));
    return numbers
        .read(cell, row.line(), column.get().number(), expected)
        .filter(
            n -> {
              boolean inRange = range.contains(unit.toBase(n.value()));
              if (!inRange) {
                log.add(
                    ProblemCode.CELL_OUT_OF_RANGE,
                    row.line(),
                    column.get().number(),
                    Quoted.of(cell),
                    expected,
                    Texts.of("input.common.correct_value_or_unit_in"));
              }
              return inRange;
            })
        .map(n -> taken(n, row, column.get(), range))
        .map(n -> n.toBase(unit));
  }

  /** Registers the number for the detection of thousands separators and returns it. */
  private CellNumber taken(CellNumber number, CsvRow row, Column column, QuantityRange range) {
    GroupedDigits digits = grouped.computeIfAbsent(column.name(), n -> new GroupedDigits(column));
    if (numbers.isAmbiguous()) {
      Unit unit = Unit.ofSymbol(column.unit()).orElseThrow();
      digits.alike(row, range.contains(unit.toBase(1000 * number.value())));
    } else if (number.lastPlace() < 0) {
      digits.other(number.lastPlace());
    }
    return number;
  }

  private Optional<Estimate> duration(CsvRow row) {
    return filled(row, DURATION)
        .flatMap(
            column ->
                new ElapsedParser(column.unit(), numbers, log)
                    .read(row.cell(column.index()), row.line(), column.number()))
        .map(t -> Estimate.around(t.seconds(), t.stepSeconds() / 2));
  }

  /** Returns a column if its cell is not blank. */
  private Optional<Column> filled(CsvRow row, String name) {
    return columns.find(name).filter(column -> !column.isBlankIn(row));
  }

  private String text(CsvRow row, String name) {
    return columns.find(name).map(c -> row.cell(c.index())).orElse("");
  }

  private boolean isBlank(CsvRow row, String name) {
    return filled(row, name).isEmpty();
  }

  private void reportEmpty(CsvRow row, String name, String expected) {
    log.add(
        ProblemCode.CELL_NOT_A_NUMBER,
        row.line(),
        columns.find(name).map(Column::number).orElse(0),
        Texts.of("input.common.empty_cell"),
        expected,
        Texts.of("input.legs_parser.write_number_or_take_row"));
  }
}
