package taperbook.input.mapping;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.input.cell.ClockFormat;
import taperbook.input.cell.Grouping;
import taperbook.input.cell.LinearConversion;
import taperbook.input.csv.CsvLayout;
import taperbook.input.csv.CsvTable;

/**
 * The content of {@code columns.csv}: the file with the readings of a session, its layout, and the
 * channel of each of its columns.
 */
public final class ColumnMap {
  /** Name of the map file in a session's folder. */
  public static final String FILE_NAME = "columns.csv";

  /** Default name of the file with the readings. */
  public static final String DEFAULT_READINGS = "readings.csv";

  /**
   * Properties of the file as a whole.
   *
   * @param fileName its name in the session's folder
   * @param layout its layout
   * @param decimalMark point or comma, if stated
   * @param thousands the thousands separator, if any
   * @param zone time zone of its clock, if stated
   * @param marks texts that represent a missing value in any column
   */
  record Whole(
      String fileName,
      CsvLayout layout,
      Optional<Character> decimalMark,
      Optional<Grouping> thousands,
      Optional<ZoneId> zone,
      Set<String> marks) {}

  /**
   * Properties of one column.
   *
   * @param item the channel, or elapsed, clock, date or note
   * @param source its header in the external file, or its number after {@code #}
   * @param line line of the map
   * @param unit unit symbol of the scaled numbers; empty if it has none
   * @param scale conversion of its numbers to amounts
   * @param writing format of its clock times
   * @param marks texts that represent a missing value
   */
  record Entry(
      String item,
      String source,
      int line,
      String unit,
      LinearConversion scale,
      ClockFormat.Writing writing,
      Set<String> marks) {}

  private final CsvTable table;
  private final int sourceNumber;
  private final Whole whole;
  private final List<Entry> entries;

  ColumnMap(CsvTable table, int sourceNumber, Whole whole, List<Entry> entries) {
    this.table = table;
    this.sourceNumber = sourceNumber;
    this.whole = whole;
    this.entries = List.copyOf(entries);
  }

  /** Returns the name of the file with the readings, in the session's folder. */
  public String readingsName() {
    return whole.fileName();
  }

  /** Returns the layout of that file. */
  public CsvLayout layout() {
    return whole.layout();
  }

  /** Returns the path of the map itself. */
  public String path() {
    return table.file();
  }

  /** Returns the number of the cell of the map that names columns. */
  int sourceNumber() {
    return sourceNumber;
  }

  Whole whole() {
    return whole;
  }

  List<Entry> entries() {
    return entries;
  }
}
