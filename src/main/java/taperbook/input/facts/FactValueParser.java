package taperbook.input.facts;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
import taperbook.input.cell.CellNumber;
import taperbook.input.cell.ClockFormat;
import taperbook.input.cell.ColumnSpec;
import taperbook.input.cell.ElapsedParser;
import taperbook.input.cell.Grouping;
import taperbook.input.cell.NormalizedName;
import taperbook.input.cell.NumberParser;
import taperbook.input.cell.QuantityRange;
import taperbook.input.cell.Suggestion;
import taperbook.input.cell.UnitSpelling;
import taperbook.quantity.Estimate;
import taperbook.quantity.Quantity;
import taperbook.quantity.Unit;
import taperbook.session.ItemKind;

/** Parses the value of a fact in the form of its item. */
final class FactValueParser {
  private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");
  private static final QuantityRange FACTOR = QuantityRange.from(0.8, 1.2);
  private static final QuantityRange EXCESS_PERCENT = QuantityRange.from(-20, 20);
  private static final QuantityRange PRICE = QuantityRange.from(0, 1000);

  private final NumberParser numbers;
  private final ToleranceParser halves;
  private final ProblemLog log;

  FactValueParser(boolean commaAllowed, ProblemLog log) {
    this.numbers =
        NumberParser.forFacts(
            commaAllowed, log, Texts.of("input.number_parser.leave_value_empty_and_write"));
    this.halves = new ToleranceParser(commaAllowed, log);
    this.log = log;
  }

  /** Parses a row whose value is not empty; reports problems and returns empty if it is invalid. */
  Optional<FactValue> read(FactRow row) {
    ItemKind kind = row.item().kind();
    return switch (kind.form()) {
      case DATE -> withoutAmount(row).flatMap(v -> date(row));
      case TEXT -> withoutAmount(row).map(FactValue::text);
      case WORD -> withoutAmount(row).flatMap(v -> word(row, kind.words()));
      case AMOUNT -> amount(row, kind.quantity().orElseThrow());
      case AMOUNT_OR_WORD ->
          kind.words().contains(NormalizedName.of(row.value()))
              ? withoutAmount(row).flatMap(v -> word(row, kind.words()))
              : amount(row, kind.quantity().orElseThrow());
      case CORRECTION -> correction(row);
      case MOMENT -> moment(row);
      case PRICE -> price(row, kind.words().get(0));
    };
  }

  private Optional<String> withoutAmount(FactRow row) {
    halves.refuse(row);
    if (row.unit().isEmpty()) {
      return Optional.of(row.value());
    }
    row.problemOfUnit(
        log,
        Quoted.of(row.unit()),
        Texts.of("input.common.no_unit"),
        Texts.of("input.fact_value_parser.empty_unit_cell"));
    return Optional.empty();
  }

  /**
   * Parses an elapsed time to seconds; a clock time has no amount before the readings are known.
   */
  private Optional<FactValue> moment(FactRow row) {
    halves.refuse(row);
    if (row.unit().equals(ColumnSpec.CLOCK_UNIT)) {
      if (ClockFormat.ISO.writing().parse(row.value()).isPresent()) {
        return Optional.of(FactValue.text(row.value()));
      }
      row.problemOfValue(
          log,
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          Quoted.of(row.value()),
          ClockFormat.ISO.writing().words(),
          Texts.of("input.common.write_time_in_one_of"));
      return Optional.empty();
    }
    if (!ColumnSpec.ELAPSED_UNITS.contains(row.unit())) {
      List<String> units = new ArrayList<>(ColumnSpec.ELAPSED_UNITS);
      units.add(ColumnSpec.CLOCK_UNIT);
      unitProblem(row, units);
      return Optional.empty();
    }
    boolean before = row.value().startsWith("-") || row.value().startsWith("\u2212");
    return new ElapsedParser(row.unit(), numbers, log)
        .read(row.value().substring(before ? 1 : 0), row.line(), row.numbers().value())
        .map(t -> Estimate.around(before ? -t.seconds() : t.seconds(), t.stepSeconds() / 2))
        .map(e -> FactValue.amount(row.value(), e));
  }

  private Optional<FactValue> date(FactRow row) {
    try {
      return Optional.of(FactValue.text(LocalDate.parse(row.value()).toString()));
    } catch (DateTimeException e) {
      row.problemOfValue(
          log,
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          Quoted.of(row.value()),
          Texts.of("input.fact_value_parser.day_in_iso_8601_as"),
          Texts.of("input.common.write_year_month_and_day"));
      return Optional.empty();
    }
  }

  private Optional<FactValue> word(FactRow row, List<String> words) {
    String label = NormalizedName.of(row.value());
    if (words.contains(label)) {
      return Optional.of(FactValue.text(label));
    }
    row.problemOfValue(
        log,
        ProblemCode.VALUE_NOT_UNDERSTOOD,
        Quoted.of(row.value()),
        Texts.of("input.fact_value_parser.one_of_words_unknown", String.join(", ", words)),
        Suggestion.of(label, words)
            .map(w -> Texts.of("input.common.write", w))
            .orElse(Texts.of("input.common.write_one_of_these_words")));
    return Optional.empty();
  }

  private Optional<FactValue> amount(FactRow row, Quantity quantity) {
    List<String> symbols = Unit.of(quantity).stream().map(Unit::symbol).toList();
    Optional<Unit> unit = Unit.ofSymbol(row.unit()).filter(u -> u.quantity() == quantity);
    if (unit.isEmpty()) {
      unitProblem(row, symbols);
    }
    QuantityRange range = ItemRange.of(row.item());
    String expected =
        Texts.of("input.common.number", range.words(unit.orElse(Unit.base(quantity))));
    Optional<CellNumber> number = number(row, expected + wordsToo(row.item().kind()));
    if (unit.isEmpty() || number.isEmpty()) {
      return Optional.empty();
    }
    if (Grouping.isAlike(row.value())
        && range.contains(unit.get().toBase(number.get().value()))
        && range.contains(unit.get().toBase(1000 * number.get().value()))) {
      row.problemOfValue(
          log,
          ProblemCode.NUMBER_AMBIGUOUS,
          Quoted.of(row.value()),
          Texts.of("input.fact_value_parser.number_that_can_be_read"),
          Grouping.remedy(row.value()));
      return Optional.empty();
    }
    if (!range.contains(unit.get().toBase(number.get().value()))) {
      outOfRange(row, expected);
      return Optional.empty();
    }
    return Optional.of(
        FactValue.amount(row.value(), halves.around(row, number.get(), range, unit.get())));
  }

  private static String wordsToo(ItemKind kind) {
    return kind.words().isEmpty()
        ? ""
        : Texts.of("input.fact_value_parser.or_one_of_words", String.join(", ", kind.words()));
  }

  private Optional<FactValue> correction(FactRow row) {
    boolean percent = row.unit().equals(Unit.PERCENT.symbol());
    if (!percent && !row.unit().equals(Unit.ONE.symbol())) {
      unitProblem(row, List.of(Unit.ONE.symbol(), Unit.PERCENT.symbol()));
      return Optional.empty();
    }
    QuantityRange range = percent ? EXCESS_PERCENT : FACTOR;
    String expected =
        percent
            ? Texts.of("input.fact_value_parser.excess", range.words(Unit.PERCENT))
            : Texts.of("input.fact_value_parser.factor_from_0_8_to");
    Optional<CellNumber> number = number(row, expected);
    if (number.isPresent() && !range.contains(number.get().value())) {
      outOfRange(row, expected);
      return Optional.empty();
    }
    return number
        .map(n -> halves.around(row, n, range, percent ? Unit.PERCENT : Unit.ONE))
        .map(e -> percent ? factorOf(e) : e)
        .filter(e -> !row.giveOrTake().isEmpty() || halves.isFineEnough(row, e))
        .map(e -> FactValue.amount(row.value(), e));
  }

  private static Estimate factorOf(Estimate percent) {
    return new Estimate(1 + percent.value() / 100, percent.bounds().mapMonotone(p -> 1 + p / 100));
  }

  private Optional<FactValue> price(FactRow row, String per) {
    String unit = row.unit();
    boolean understood =
        unit.endsWith(per)
            && CURRENCY.matcher(unit.substring(0, unit.length() - per.length())).matches();
    if (!understood) {
      row.problemOfUnit(
          log,
          unit.isEmpty() ? Texts.of("input.common.no_unit") : Quoted.of(unit),
          Texts.of(
              "input.fact_value_parser.three_capitals_of_iso_4217",
              per.isEmpty() ? "" : Texts.of("input.fact_value_parser.and", per),
              per),
          Texts.of("input.fact_value_parser.write_unit_in_that_form"));
    }
    String expected = Texts.of("input.fact_value_parser.price_from_0_to_1000");
    Optional<CellNumber> number = number(row, expected);
    if (number.isPresent() && !PRICE.contains(number.get().value())) {
      outOfRange(row, expected);
      return Optional.empty();
    }
    return number
        .filter(n -> understood)
        .map(n -> FactValue.amount(row.value(), halves.around(row, n, PRICE, Unit.CURRENCY)));
  }

  private Optional<CellNumber> number(FactRow row, String expected) {
    return numbers.read(
        row.value(),
        row.line(),
        row.numbers().value(),
        Texts.of("input.common.for", expected, row.item().words()));
  }

  private void outOfRange(FactRow row, String expected) {
    row.problemOfValue(
        log,
        ProblemCode.VALUE_OUT_OF_RANGE,
        Quoted.of(row.value()),
        expected,
        Texts.of("input.fact_value_parser.correct_value_or_its_unit"));
  }

  private void unitProblem(FactRow row, List<String> symbols) {
    String all = String.join(", ", symbols);
    row.problemOfUnit(
        log,
        row.unit().isEmpty() ? Texts.of("input.common.no_unit") : Quoted.of(row.unit()),
        symbols.size() == 1
            ? Texts.of("input.common.unit", all)
            : Texts.of("input.common.one_of_units", all),
        UnitSpelling.suggest(row.unit(), symbols)
            .map(u -> Texts.of("input.common.write", u))
            .orElse(
                symbols.size() == 1
                    ? Texts.of("input.fact_value_parser.write_in_unit_cell", all)
                    : Texts.of("input.fact_value_parser.write_one_that_value_is")));
  }
}
