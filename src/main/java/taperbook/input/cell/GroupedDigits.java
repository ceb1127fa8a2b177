package taperbook.input.cell;

import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.csv.CsvRow;

/**
 * Interprets the numbers of a column whose mark may be a thousands separator or a decimal mark,
 * such as {@code 82.400}. They are decimals if another number of the column has a different number
 * of digits after its mark, or if one of them would otherwise be too large.
 */
public final class GroupedDigits {
  private static final int THREE_DECIMALS = -3;

  private final Column column;
  private Optional<CsvRow> first = Optional.empty();
  private Optional<CsvRow> firstWithZero = Optional.empty();
  private int alike;
  private int others;
  private int unlike;
  private boolean tooLarge;

  public GroupedDigits(Column column) {
    this.column = column;
  }

  /**
   * Adds an ambiguous number.
   *
   * @param possible true if it could be a thousand times as large
   */
  public void alike(CsvRow row, boolean possible) {
    alike++;
    tooLarge |= !possible;
    if (first.isEmpty()) {
      first = Optional.of(row);
    }
    if (firstWithZero.isEmpty() && row.cell(column.index()).endsWith("0")) {
      firstWithZero = Optional.of(row);
    }
  }

  /**
   * Adds an unambiguous number with decimals.
   *
   * @param lastPlace power of ten of its last digit
   */
  public void other(int lastPlace) {
    others++;
    unlike += lastPlace == THREE_DECIMALS ? 0 : 1;
  }

  /** Reports ambiguous columns, and a number in a different format from all others. */
  public void finish(ProblemLog log) {
    if (others == 0 && !tooLarge) {
      first.ifPresent(row -> reportAmbiguous(row, log));
    } else if (unlike > alike) {
      firstWithZero.ifPresent(row -> reportInconsistent(row, log));
    }
  }

  private void reportAmbiguous(CsvRow row, ProblemLog log) {
    String cell = row.cell(column.index());
    log.add(
        ProblemCode.NUMBER_AMBIGUOUS,
        row.line(),
        column.number(),
        Quoted.of(cell) + (alike == 1 ? "" : ", and " + (alike - 1) + " more like it below"),
        "numbers that can be read in one way only; the mark may group thousands or be the decimal"
            + " mark",
        Grouping.remedy(cell)
            + (log.file().endsWith("legs.csv")
                ? ""
                : "; or state \"thousands mark\" or \"decimal mark\" in a columns.csv"));
  }

  private void reportInconsistent(CsvRow row, ProblemLog log) {
    String cell = row.cell(column.index());
    log.add(
        ProblemCode.NUMBER_WRITTEN_UNLIKE,
        row.line(),
        column.number(),
        Quoted.of(cell) + ", which is taken for a decimal",
        "as many decimals as the other numbers of the column have",
        "write it as the others are, without grouping");
  }
}
