package taperbook.blank;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import taperbook.input.KnownColumn;
import taperbook.input.KnownColumns;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.HowKnown;
import taperbook.session.Item;
import taperbook.session.RangeItem;

/**
 * The start files of a project, by their path in the project folder. Optional values are entered as
 * unknown; required values are left empty, so that the check requests them.
 */
public final class StartFiles {
  private static final List<Channel> USUAL =
      List.of(Channel.SOC, Channel.POWER, Channel.ENERGY_ADDED, Channel.BATTERY_TEMPERATURE);

  /** Optional columns, which start files leave out. */
  private static final List<String> LATER = List.of("clock", "as read");

  private static final String LINE_END = "\n";

  private final StartUnits units;

  /** Creates start files with these units. */
  public StartFiles(StartUnits units) {
    this.units = units;
  }

  /** Returns the files of a charging session. */
  public SortedMap<String, String> session(String name) {
    String folder = "sessions/" + name + "/";
    SortedMap<String, String> files = new TreeMap<>();
    Map<String, List<KnownColumn>> columns = new LinkedHashMap<>();
    columns.put("readings.csv", KnownColumns.readings());
    columns.put("conditions.csv", KnownColumns.facts());
    files.put(folder + "readings.csv", heads(usualReadings()));
    files.put(folder + "conditions.csv", facts(ConditionItem.values()));
    files.put(
        folder + "about-session.txt",
        StartFileGuide.text(columns, "conditions.csv", List.of(ConditionItem.values())));
    return files;
  }

  /**
   * Returns the files of a range test.
   *
   * @param legs true to include a file for its legs
   */
  public SortedMap<String, String> rangeTest(String name, boolean legs) {
    String folder = "sessions/" + name + "/";
    SortedMap<String, String> files = new TreeMap<>();
    files.put(folder + "range-test.csv", facts(RangeItem.values()));
    Map<String, List<KnownColumn>> columns = new LinkedHashMap<>();
    columns.put("range-test.csv", KnownColumns.facts());
    if (legs) {
      files.put(folder + "legs.csv", heads(KnownColumns.legs()));
      columns.put("legs.csv", KnownColumns.legs());
    }
    files.put(
        folder + "about-range-test.txt",
        StartFileGuide.text(columns, "range-test.csv", List.of(RangeItem.values())));
    return files;
  }

  private static List<KnownColumn> usualReadings() {
    List<String> left =
        List.of(Channel.values()).stream()
            .filter(c -> !USUAL.contains(c))
            .map(Channel::columnName)
            .toList();
    return KnownColumns.readings().stream()
        .filter(c -> !left.contains(c.name()) && !LATER.contains(c.name()))
        .toList();
  }

  private String heads(List<KnownColumn> columns) {
    return String.join(",", columns.stream().map(c -> c.head(units.of(c.units()))).toList())
        + LINE_END;
  }

  private String facts(Item[] items) {
    List<String> rows = new ArrayList<>();
    rows.add(String.join(",", KnownColumns.facts().stream().map(KnownColumn::name).toList()));
    for (Item item : items) {
      String howKnown = item.required() ? "" : HowKnown.UNKNOWN.words();
      rows.add(String.join(",", item.words(), "", units.of(item), howKnown, ""));
    }
    return String.join(LINE_END, rows) + LINE_END;
  }
}
