package taperbook.check.foreign;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.check.readings.Readings;
import taperbook.check.readings.TimeColumn;
import taperbook.model.Channel;
import taperbook.problem.Checked;
import taperbook.problem.ProblemCode;
import taperbook.problem.ProblemLog;
import taperbook.read.CsvTable;

/** Checks {@code columns.csv} by itself; whether its columns exist is seen with the readings. */
public final class ColumnMapCheck {
  static final String DATE = "date";
  private static final List<Channel> NEEDED =
      List.of(Channel.SOC, Channel.POWER, Channel.ENERGY_ADDED);

  private final MapSheet sheet;
  private final ProblemLog log;

  private ColumnMapCheck(CsvTable table, ProblemLog log) {
    this.sheet = new MapSheet(table, items(), log);
    this.log = log;
  }

  /** The map, or every problem of it. */
  public static Checked<ColumnMap> check(CsvTable table) {
    ProblemLog log = new ProblemLog(table.file());
    ColumnMapCheck check = new ColumnMapCheck(table, log);
    if (!check.sheet.isUsable()) {
      return Checked.refused(log.list());
    }
    Optional<ColumnMap.Whole> whole = new WholeFileItems(check.sheet).read();
    List<ColumnMap.Entry> entries = check.entries(whole);
    check.completeness();
    return log.hasErrors() || whole.isEmpty()
        ? Checked.refused(log.list())
        : Checked.of(
            new ColumnMap(table, check.sheet.number(MapSheet.SOURCE), whole.get(), entries),
            log.list());
  }

  private static List<String> items() {
    return Stream.concat(columnItems().stream(), WholeFileItems.ITEMS.stream()).toList();
  }

  /** The items that stand for a column. */
  static List<String> columnItems() {
    List<String> items = new ArrayList<>(List.of(TimeColumn.ELAPSED, TimeColumn.CLOCK, DATE));
    Arrays.stream(Channel.values()).map(Channel::columnName).forEach(items::add);
    items.add(Readings.NOTE);
    return items;
  }

  private List<ColumnMap.Entry> entries(Optional<ColumnMap.Whole> whole) {
    List<ColumnMap.Entry> entries = new ArrayList<>();
    for (String item : sheet.present()) {
      if (columnItems().contains(item)) {
        new EntryReader(sheet, item).read(whole).ifPresent(entries::add);
      }
    }
    return entries;
  }

  private void completeness() {
    List<String> present = sheet.present();
    boolean elapsed = present.contains(TimeColumn.ELAPSED);
    boolean clock = present.contains(TimeColumn.CLOCK);
    if (!elapsed && !clock) {
      log.add(
          ProblemCode.ITEM_MISSING,
          "no row for elapsed and none for clock",
          "one row for the time",
          "add a row for elapsed times, or one for clock times");
    } else if (elapsed && clock) {
      sheet.tell(
          ProblemCode.ITEM_TWICE,
          TimeColumn.CLOCK,
          MapSheet.ITEM,
          "one row for the time, and there is one for elapsed",
          "take one of the two rows away");
    }
    if (present.contains(DATE) && !clock) {
      sheet.tell(
          ProblemCode.ITEM_MISSING,
          DATE,
          MapSheet.ITEM,
          "a row for clock beside one for date",
          "add the row for clock, or take this one away");
    }
    if (NEEDED.stream().map(Channel::columnName).noneMatch(present::contains)) {
      log.add(
          ProblemCode.ITEM_MISSING,
          "no row for soc, power or energy added",
          "a row for at least one of them",
          "add one of them");
    }
  }
}
