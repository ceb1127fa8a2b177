package taperbook.input;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.csv.CsvRow;
import taperbook.input.csv.CsvTable;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Correction;
import taperbook.result.MovedNumber;

/** Parses {@code corrections.csv}, which earlier versions of a report wrote. */
public final class CorrectionsParser {
  private static final String CAUSES_PARTED_BY = "; ";

  private final CsvTable table;
  private final ProblemLog log;
  private final List<Correction> corrections = new ArrayList<>();

  private CorrectionsParser(CsvTable table) {
    this.table = table;
    this.log = new ProblemLog(table.file());
  }

  /** Returns the corrections in order, or all rows that differ from the program's format. */
  public static Checked<List<Correction>> check(CsvTable table) {
    CorrectionsParser check = new CorrectionsParser(table);
    if (check.header()) {
      table.rows().forEach(check::row);
    }
    return Checked.of(check.corrections, check.log.list());
  }

  private boolean header() {
    List<String> found = table.header().cells();
    if (found.equals(Correction.COLUMNS)) {
      return true;
    }
    refuse(table.header().line(), 0, String.join(", ", found), "the columns " + join());
    return false;
  }

  private static String join() {
    return String.join(", ", Correction.COLUMNS);
  }

  private void row(CsvRow row) {
    Optional<LocalDate> day = day(row, 0);
    Optional<LocalDate> since = day(row, 1);
    if (day.isEmpty() || since.isEmpty()) {
      return;
    }
    String reason = withoutApostrophe(cell(row, 2));
    int last = corrections.size() - 1;
    boolean continues = last >= 0 && corrections.get(last).day().equals(day.get());
    List<MovedNumber> moved =
        new ArrayList<>(continues ? corrections.get(last).moved() : List.<MovedNumber>of());
    if (!cell(row, 3).isEmpty()) {
      moved.add(moved(row));
    }
    Correction correction = new Correction(day.get(), since.get(), reason, moved);
    if (continues) {
      corrections.set(last, correction);
    } else {
      corrections.add(correction);
    }
  }

  private MovedNumber moved(CsvRow row) {
    String causes = withoutApostrophe(cell(row, 15));
    return new MovedNumber(
        withoutApostrophe(cell(row, 3)),
        withoutApostrophe(cell(row, 4)),
        withoutApostrophe(cell(row, 5)),
        withoutApostrophe(cell(row, 6)),
        Unit.ofSymbol(cell(row, 7)).orElse(Unit.ONE),
        estimate(row, 8),
        estimate(row, 11),
        causes.isEmpty() ? List.of() : List.of(causes.split(CAUSES_PARTED_BY)));
  }

  private Optional<LocalDate> day(CsvRow row, int column) {
    try {
      return Optional.of(LocalDate.parse(cell(row, column)));
    } catch (DateTimeException e) {
      refuse(row.line(), column + 1, Quoted.of(cell(row, column)), "a day as in 2026-05-02");
      return Optional.empty();
    }
  }

  private Optional<Estimate> estimate(CsvRow row, int column) {
    if (cell(row, column).isEmpty()) {
      return Optional.empty();
    }
    try {
      double value = Double.parseDouble(cell(row, column));
      double low = Double.parseDouble(cell(row, column + 1));
      double high = Double.parseDouble(cell(row, column + 2));
      return Optional.of(new Estimate(value, new Interval(low, high)));
    } catch (IllegalArgumentException e) {
      refuse(
          row.line(),
          column + 1,
          Quoted.of(cell(row, column)),
          "a value with its interval in the three columns from here");
      return Optional.empty();
    }
  }

  /** Removes the apostrophe that prevents a spreadsheet from evaluating a formula. */
  private static String withoutApostrophe(String text) {
    return text.startsWith("'") ? text.substring(1) : text;
  }

  private static String cell(CsvRow row, int column) {
    return column < row.cells().size() ? row.cells().get(column) : "";
  }

  private void refuse(int line, int column, String found, String expected) {
    log.add(
        ProblemCode.PUBLISHED_NOT_UNDERSTOOD,
        line,
        column,
        found,
        expected + ", as the program wrote it",
        "put the file back as it was published");
  }
}
