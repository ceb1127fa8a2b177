package taperbook.input.cell;

import java.util.OptionalInt;
import taperbook.diagnostics.Quoted;
import taperbook.input.csv.CsvRow;

/**
 * A column of a file.
 *
 * @param name its name
 * @param index index of its cell in each row, from 0
 * @param unit its unit symbol; empty if it has none
 * @param scale conversion of its numbers to amounts of the unit
 * @param clock format of its clock times, if it contains any
 * @param dateIndex the column with the dates of its times, if that is another one
 */
public record Column(
    String name,
    int index,
    String unit,
    LinearConversion scale,
    ClockFormat clock,
    OptionalInt dateIndex) {
  /** Creates a column in the format of this program's own files. */
  Column(String name, int index, String unit) {
    this(name, index, unit, LinearConversion.NONE, ClockFormat.ISO, OptionalInt.empty());
  }

  /**
   * Returns its cell in a row, preceded by the date cell if there is one; empty if there is no
   * time.
   */
  public String cellIn(CsvRow row) {
    String own = row.cell(index);
    return own.isEmpty() || dateIndex.isEmpty() ? own : row.cell(dateIndex.getAsInt()) + " " + own;
  }

  /**
   * Returns its cell in a row and in the previous row, with the line, for messages about a
   * decrease.
   */
  public String foundAfter(CsvRow row, CsvRow previous) {
    return Quoted.of(cellIn(row))
        + " after "
        + Quoted.of(cellIn(previous))
        + " on line "
        + previous.line();
  }

  /** Returns true if its cell is blank. */
  public boolean isBlankIn(CsvRow row) {
    return row.isBlankAt(index);
  }

  /** Returns the number of its cell from 1, as used in problems. */
  public int number() {
    return index + 1;
  }
}
