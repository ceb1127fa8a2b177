package taperbook.input.mapping;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.input.csv.CsvTable;
import taperbook.input.readings.ReadingsParser;
import taperbook.input.readings.TimeColumn;
import taperbook.session.Channel;

/**
 * Parses {@code columns.csv} independently of the readings; whether its columns exist is checked
 * later.
 */
public final class ColumnMapParser {
  static final String DATE = "date";
  private static final List<Channel> NEEDED =
      List.of(Channel.SOC, Channel.POWER, Channel.ENERGY_ADDED);

  private final ColumnMapItems sheet;
  private final ProblemLog log;

  private ColumnMapParser(CsvTable table, ProblemLog log) {
    this.sheet = new ColumnMapItems(table, items(), log);
    this.log = log;
  }

  /** Returns the map, or all its problems. */
  public static Checked<ColumnMap> check(CsvTable table) {
    ProblemLog log = new ProblemLog(table.file());
    ColumnMapParser check = new ColumnMapParser(table, log);
    if (!check.sheet.isUsable()) {
      return Checked.refused(log.list());
    }
    Optional<ColumnMap.Whole> whole = new WholeFileItems(check.sheet).read();
    List<ColumnMap.Entry> entries = check.entries(whole);
    check.completeness();
    return log.hasErrors() || whole.isEmpty()
        ? Checked.refused(log.list())
        : Checked.of(
            new ColumnMap(table, check.sheet.number(ColumnMapItems.SOURCE), whole.get(), entries),
            log.list());
  }

  private static List<String> items() {
    return Stream.concat(columnItems().stream(), WholeFileItems.ITEMS.stream()).toList();
  }

  /** Returns the items that represent a column. */
  static List<String> columnItems() {
    List<String> items = new ArrayList<>(List.of(TimeColumn.ELAPSED, TimeColumn.CLOCK, DATE));
    Arrays.stream(Channel.values()).map(Channel::columnName).forEach(items::add);
    items.add(ReadingsParser.NOTE);
    return items;
  }

  private List<ColumnMap.Entry> entries(Optional<ColumnMap.Whole> whole) {
    List<ColumnMap.Entry> entries = new ArrayList<>();
    for (String item : sheet.present()) {
      if (columnItems().contains(item)) {
        new ColumnEntryParser(sheet, item).read(whole).ifPresent(entries::add);
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
      sheet.report(
          ProblemCode.ITEM_TWICE,
          TimeColumn.CLOCK,
          ColumnMapItems.ITEM,
          "one row for the time, and there is one for elapsed",
          "take one of the two rows away");
    }
    if (present.contains(DATE) && !clock) {
      sheet.report(
          ProblemCode.ITEM_MISSING,
          DATE,
          ColumnMapItems.ITEM,
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
