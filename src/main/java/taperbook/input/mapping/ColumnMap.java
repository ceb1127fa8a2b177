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
 * What {@code columns.csv} says: which file holds the readings of a session, how it is laid out,
 * and which of its columns is which channel.
 */
public final class ColumnMap {
  /** Name of the file in a session's folder. */
  public static final String FILE_NAME = "columns.csv";

  /** Name of the file with the readings, if the map names no other. */
  public static final String USUAL_READINGS = "readings.csv";

  /**
   * What is said of the file as a whole.
   *
   * @param fileName its name in the session's folder
   * @param layout how it is laid out
   * @param decimalMark point or comma, if it is stated
   * @param thousands what groups digits, if anything does
   * @param zone where its clock stands, if it is stated
   * @param marks what stands for a missing value in any column
   */
  record Whole(
      String fileName,
      CsvLayout layout,
      Optional<Character> decimalMark,
      Optional<Grouping> thousands,
      Optional<ZoneId> zone,
      Set<String> marks) {}

  /**
   * What is said of one column.
   *
   * @param item the channel, or elapsed, clock, date or note
   * @param source its head in the foreign file, or its number after {@code #}
   * @param line line of the map
   * @param unit unit symbol of the scaled numbers; empty if it has none
   * @param scale how its numbers become amounts
   * @param writing how clock times are written
   * @param marks what stands for a missing value
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

  /** Name of the file with the readings, in the session's folder. */
  public String readingsName() {
    return whole.fileName();
  }

  /** How that file is laid out. */
  public CsvLayout layout() {
    return whole.layout();
  }

  /** Path of the map itself. */
  public String path() {
    return table.file();
  }

  /** Number of the cell of the map that names columns. */
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
