package taperbook.input.mapping;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.Quoted;
import taperbook.input.cell.ClockFormat;
import taperbook.input.cell.ColumnSpec;
import taperbook.input.cell.EpochFormat;
import taperbook.input.cell.IsoFormat;
import taperbook.input.cell.LinearConversion;
import taperbook.input.cell.NormalizedName;
import taperbook.input.cell.PatternFormat;
import taperbook.input.cell.UnitSpelling;
import taperbook.input.readings.ReadingsParser;
import taperbook.input.readings.TimeColumn;

/** Parses a row of {@code columns.csv} about a single column. */
final class ColumnEntryParser {
  static final String LESS_FIRST = "less first";
  private static final String ISO = "iso 8601";
  private static final String EPOCH_SECONDS = "epoch s";
  private static final String EPOCH_MILLISECONDS = "epoch ms";

  private final ColumnMapItems sheet;
  private final String item;

  ColumnEntryParser(ColumnMapItems sheet, String item) {
    this.sheet = sheet;
    this.item = item;
  }

  /** Returns the entry; empty if one of its cells is invalid. */
  Optional<ColumnMap.Entry> read(Optional<ColumnMap.Whole> whole) {
    String source = cell(ColumnMapItems.SOURCE);
    if (source.isEmpty()) {
      sheet.report(
          ProblemCode.COLUMN_MISSING,
          item,
          ColumnMapItems.SOURCE,
          "the head of a column in the file of readings, or its number as in #3",
          "write the head, or take the row away");
    }
    Optional<String> unit = unit();
    Optional<LinearConversion> scale = scale(unit.orElse(""));
    Optional<ClockFormat.Writing> writing = writing(whole);
    if (source.isEmpty() || unit.isEmpty() || scale.isEmpty() || writing.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new ColumnMap.Entry(
            item,
            source,
            sheet.line(item),
            unit.get(),
            scale.get(),
            writing.get(),
            WholeFileItems.marks(cell(ColumnMapItems.MISSING))));
  }

  private String cell(String head) {
    return sheet.cell(item, head);
  }

  private boolean hasUnit() {
    return !spec().units().isEmpty() && !item.equals(TimeColumn.CLOCK);
  }

  private ColumnSpec spec() {
    return ReadingsParser.specs().stream()
        .filter(s -> s.name().equals(item))
        .findFirst()
        .orElse(ColumnSpec.plain(item));
  }

  private Optional<String> unit() {
    String unit = cell(ColumnMapItems.UNIT);
    List<String> units = hasUnit() ? spec().units() : List.of();
    if (units.isEmpty() ? unit.isEmpty() : units.contains(unit)) {
      return Optional.of(unit);
    }
    sheet.report(
        ProblemCode.UNIT_NOT_UNDERSTOOD,
        item,
        ColumnMapItems.UNIT,
        units.isEmpty() ? "no unit for " + item : "one of the units " + String.join(", ", units),
        units.isEmpty()
            ? "leave the unit empty"
            : UnitSpelling.suggest(unit, units)
                .map(u -> "write " + Quoted.of(u))
                .orElse("write the unit that the numbers have once factor and offset are applied"));
    return Optional.empty();
  }

  private Optional<LinearConversion> scale(String unit) {
    String offset = cell(ColumnMapItems.OFFSET);
    boolean lessFirst = NormalizedName.of(offset).equals(LESS_FIRST);
    Optional<BigDecimal> factor =
        number(ColumnMapItems.FACTOR, cell(ColumnMapItems.FACTOR), BigDecimal.ONE);
    Optional<BigDecimal> added =
        number(ColumnMapItems.OFFSET, lessFirst ? "" : offset, BigDecimal.ZERO);
    if (factor.isEmpty() || added.isEmpty()) {
      return Optional.empty();
    }
    LinearConversion scale = new LinearConversion(factor.get(), added.get(), lessFirst);
    boolean colons = unit.contains(":");
    if (!hasUnit() && !scale.isNone()) {
      refuseScale(offset.isEmpty() ? ColumnMapItems.FACTOR : ColumnMapItems.OFFSET);
      return Optional.empty();
    }
    if (colons && factor.get().compareTo(BigDecimal.ONE) != 0) {
      refuseScale(ColumnMapItems.FACTOR);
      return Optional.empty();
    }
    return Optional.of(
        scale.factor().compareTo(BigDecimal.ONE) == 0 && scale.offset().signum() == 0 && !lessFirst
            ? LinearConversion.NONE
            : scale);
  }

  private void refuseScale(String head) {
    sheet.report(
        ProblemCode.VALUE_NOT_UNDERSTOOD,
        item,
        head,
        "no " + head + " for what is no plain number",
        "leave the cell empty");
  }

  private Optional<BigDecimal> number(String head, String cell, BigDecimal ifEmpty) {
    if (cell.isEmpty()) {
      return Optional.of(ifEmpty);
    }
    boolean comma = sheet.table().takesDecimalComma();
    String plain = comma ? cell.replace(',', '.') : cell;
    if (plain.matches("[+-]?[0-9]{1,12}(?:\\.[0-9]{1,40})?")) {
      BigDecimal number = new BigDecimal(plain);
      if (number.signum() != 0 || head.equals(ColumnMapItems.OFFSET)) {
        return Optional.of(number);
      }
    }
    sheet.report(
        ProblemCode.VALUE_NOT_UNDERSTOOD,
        item,
        head,
        head.equals(ColumnMapItems.OFFSET)
            ? "a number to add, in the unit, or the words " + LESS_FIRST
            : "a number to multiply by, not zero",
        "write a plain number, as in -1 or 0.001, or leave the cell empty");
    return Optional.empty();
  }

  private Optional<ClockFormat.Writing> writing(Optional<ColumnMap.Whole> whole) {
    String format = cell(ColumnMapItems.FORMAT);
    if (item.equals(ColumnMapParser.DATE) || !item.equals(TimeColumn.CLOCK)) {
      if (!format.isEmpty() && !item.equals(ColumnMapParser.DATE)) {
        refuseFormat(
            "no format for " + item, "leave the format empty; times have one of their own");
        return Optional.empty();
      }
      return Optional.of(new IsoFormat());
    }
    String date = sheet.cell(ColumnMapParser.DATE, ColumnMapItems.FORMAT);
    boolean dated = sheet.present().contains(ColumnMapParser.DATE);
    Optional<ClockFormat.Writing> writing = named(format, date, dated);
    if (writing.isEmpty()) {
      refuseFormat(
          "ISO 8601, epoch s, epoch ms, or a pattern with a time and a whole date or none, of the"
              + " letters "
              + PatternFormat.LETTERS,
          "write the pattern of the times, as in dd.MM.yyyy HH:mm:ss");
    } else if (writing.get() instanceof PatternFormat p
        && !p.hasDate()
        && whole.isPresent()
        && whole.get().zone().isPresent()) {
      refuseFormat(
          "a date with the time, as a time zone is stated",
          "add the row for date, or take the row for the time zone away");
      return Optional.empty();
    }
    return writing;
  }

  private static Optional<ClockFormat.Writing> named(String format, String date, boolean dated) {
    String label = NormalizedName.of(format);
    boolean iso = label.isEmpty() || label.equals(ISO);
    if (dated) {
      boolean isoDate = date.isEmpty() || NormalizedName.of(date).equals(ISO);
      return iso && isoDate
          ? Optional.of(new IsoFormat())
          : PatternFormat.of((isoDate ? "yyyy-MM-dd" : date) + " " + (iso ? "HH:mm:ss" : format))
              .map(w -> w);
    }
    if (iso) {
      return Optional.of(new IsoFormat());
    }
    if (label.equals(EPOCH_SECONDS) || label.equals(EPOCH_MILLISECONDS)) {
      return Optional.of(new EpochFormat(label.equals(EPOCH_MILLISECONDS)));
    }
    return PatternFormat.of(format).map(w -> w);
  }

  private void refuseFormat(String expected, String remedy) {
    sheet.report(ProblemCode.VALUE_NOT_UNDERSTOOD, item, ColumnMapItems.FORMAT, expected, remedy);
  }
}
