package taperbook.check.foreign;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import taperbook.check.cell.ClockForm;
import taperbook.check.cell.EpochWriting;
import taperbook.check.cell.IsoWriting;
import taperbook.check.cell.PatternWriting;
import taperbook.check.cell.Scale;
import taperbook.check.readings.Readings;
import taperbook.check.readings.TimeColumn;
import taperbook.check.spelling.Label;
import taperbook.check.spelling.UnitSpelling;
import taperbook.check.table.ColumnSpec;
import taperbook.problem.ProblemCode;
import taperbook.problem.Quoted;

/** Reads one row of {@code columns.csv} that is about a column. */
final class EntryReader {
  static final String LESS_FIRST = "less first";
  private static final String ISO = "iso 8601";
  private static final String EPOCH_SECONDS = "epoch s";
  private static final String EPOCH_MILLISECONDS = "epoch ms";

  private final MapSheet sheet;
  private final String item;

  EntryReader(MapSheet sheet, String item) {
    this.sheet = sheet;
    this.item = item;
  }

  /** What the row says; none if one of its cells is not understood. */
  Optional<ColumnMap.Entry> read(Optional<ColumnMap.Whole> whole) {
    String source = cell(MapSheet.SOURCE);
    if (source.isEmpty()) {
      sheet.tell(
          ProblemCode.COLUMN_MISSING,
          item,
          MapSheet.SOURCE,
          "the head of a column in the file of readings, or its number as in #3",
          "write the head, or take the row away");
    }
    Optional<String> unit = unit();
    Optional<Scale> scale = scale(unit.orElse(""));
    Optional<ClockForm.Writing> writing = writing(whole);
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
            WholeFileItems.marks(cell(MapSheet.MISSING))));
  }

  private String cell(String head) {
    return sheet.cell(item, head);
  }

  private boolean hasUnit() {
    return !spec().units().isEmpty() && !item.equals(TimeColumn.CLOCK);
  }

  private ColumnSpec spec() {
    return Readings.specs().stream()
        .filter(s -> s.name().equals(item))
        .findFirst()
        .orElse(ColumnSpec.plain(item));
  }

  private Optional<String> unit() {
    String unit = cell(MapSheet.UNIT);
    List<String> units = hasUnit() ? spec().units() : List.of();
    if (units.isEmpty() ? unit.isEmpty() : units.contains(unit)) {
      return Optional.of(unit);
    }
    sheet.tell(
        ProblemCode.UNIT_NOT_UNDERSTOOD,
        item,
        MapSheet.UNIT,
        units.isEmpty() ? "no unit for " + item : "one of the units " + String.join(", ", units),
        units.isEmpty()
            ? "leave the unit empty"
            : UnitSpelling.suggest(unit, units)
                .map(u -> "write " + Quoted.of(u))
                .orElse("write the unit that the numbers have once factor and offset are applied"));
    return Optional.empty();
  }

  private Optional<Scale> scale(String unit) {
    String offset = cell(MapSheet.OFFSET);
    boolean lessFirst = Label.of(offset).equals(LESS_FIRST);
    Optional<BigDecimal> factor = number(MapSheet.FACTOR, cell(MapSheet.FACTOR), BigDecimal.ONE);
    Optional<BigDecimal> added = number(MapSheet.OFFSET, lessFirst ? "" : offset, BigDecimal.ZERO);
    if (factor.isEmpty() || added.isEmpty()) {
      return Optional.empty();
    }
    Scale scale = new Scale(factor.get(), added.get(), lessFirst);
    boolean colons = unit.contains(":");
    if (!hasUnit() && !scale.isNone()) {
      refuseScale(offset.isEmpty() ? MapSheet.FACTOR : MapSheet.OFFSET);
      return Optional.empty();
    }
    if (colons && factor.get().compareTo(BigDecimal.ONE) != 0) {
      refuseScale(MapSheet.FACTOR);
      return Optional.empty();
    }
    return Optional.of(
        scale.factor().compareTo(BigDecimal.ONE) == 0 && scale.offset().signum() == 0 && !lessFirst
            ? Scale.NONE
            : scale);
  }

  private void refuseScale(String head) {
    sheet.tell(
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
      if (number.signum() != 0 || head.equals(MapSheet.OFFSET)) {
        return Optional.of(number);
      }
    }
    sheet.tell(
        ProblemCode.VALUE_NOT_UNDERSTOOD,
        item,
        head,
        head.equals(MapSheet.OFFSET)
            ? "a number to add, in the unit, or the words " + LESS_FIRST
            : "a number to multiply by, not zero",
        "write a plain number, as in -1 or 0.001, or leave the cell empty");
    return Optional.empty();
  }

  private Optional<ClockForm.Writing> writing(Optional<ColumnMap.Whole> whole) {
    String format = cell(MapSheet.FORMAT);
    if (item.equals(ColumnMapCheck.DATE) || !item.equals(TimeColumn.CLOCK)) {
      if (!format.isEmpty() && !item.equals(ColumnMapCheck.DATE)) {
        refuseFormat(
            "no format for " + item, "leave the format empty; times have one of their own");
        return Optional.empty();
      }
      return Optional.of(new IsoWriting());
    }
    String date = sheet.cell(ColumnMapCheck.DATE, MapSheet.FORMAT);
    boolean dated = sheet.present().contains(ColumnMapCheck.DATE);
    Optional<ClockForm.Writing> writing = named(format, date, dated);
    if (writing.isEmpty()) {
      refuseFormat(
          "ISO 8601, epoch s, epoch ms, or a pattern with a time and a whole date or none, of the"
              + " letters "
              + PatternWriting.LETTERS,
          "write the pattern of the times, as in dd.MM.yyyy HH:mm:ss");
    } else if (writing.get() instanceof PatternWriting p
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

  private static Optional<ClockForm.Writing> named(String format, String date, boolean dated) {
    String label = Label.of(format);
    boolean iso = label.isEmpty() || label.equals(ISO);
    if (dated) {
      boolean isoDate = date.isEmpty() || Label.of(date).equals(ISO);
      return iso && isoDate
          ? Optional.of(new IsoWriting())
          : PatternWriting.of((isoDate ? "yyyy-MM-dd" : date) + " " + (iso ? "HH:mm:ss" : format))
              .map(w -> w);
    }
    if (iso) {
      return Optional.of(new IsoWriting());
    }
    if (label.equals(EPOCH_SECONDS) || label.equals(EPOCH_MILLISECONDS)) {
      return Optional.of(new EpochWriting(label.equals(EPOCH_MILLISECONDS)));
    }
    return PatternWriting.of(format).map(w -> w);
  }

  private void refuseFormat(String expected, String remedy) {
    sheet.tell(ProblemCode.VALUE_NOT_UNDERSTOOD, item, MapSheet.FORMAT, expected, remedy);
  }
}
