package taperbook.input.cell;

import java.util.OptionalInt;
import taperbook.diagnostics.Quoted;
import taperbook.input.csv.CsvRow;

/**
 * A column that a file has.
 *
 * @param name its name
 * @param index number of its cell in each row, from 0
 * @param unit its unit symbol; empty if it takes none
 * @param scale how its numbers become amounts of the unit
 * @param clock how its clock times are written, if it holds any
 * @param dateIndex the column that holds the dates of its times, if that is another one
 */
public record Column(
    String name,
    int index,
    String unit,
    LinearConversion scale,
    ClockFormat clock,
    OptionalInt dateIndex) {
  /** A column that is written as this program's own files are. */
  Column(String name, int index, String unit) {
    this(name, index, unit, LinearConversion.NONE, ClockFormat.ISO, OptionalInt.empty());
  }

  /** Its cell in a row, after that of its date if there is one; empty if there is no time. */
  public String cellIn(CsvRow row) {
    String own = row.cell(index);
    return own.isEmpty() || dateIndex.isEmpty() ? own : row.cell(dateIndex.getAsInt()) + " " + own;
  }

  /** Its cell in a row, and that in the row before, with its line, as problems tell of a fall. */
  public String foundAfter(CsvRow row, CsvRow previous) {
    return Quoted.of(cellIn(row))
        + " after "
        + Quoted.of(cellIn(previous))
        + " on line "
        + previous.line();
  }

  /** True if there is nothing in its cell. */
  public boolean isBlankIn(CsvRow row) {
    return row.isBlankAt(index);
  }

  /** Number of its cell from 1, as problems give it. */
  public int number() {
    return index + 1;
  }
}
