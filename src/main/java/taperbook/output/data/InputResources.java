package taperbook.output.data;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import taperbook.session.InputFile;
import taperbook.session.InputTable;

/** The tester's tables as published: unchanged, under {@code data/}. */
final class InputResources {
  private static final Pattern HEAD = Pattern.compile("([^\\[]*?) *\\[(.*)\\]");

  private static final Map<String, String> TITLES =
      Map.of(
          "readings.csv", "Readings of the charging session ",
          "conditions.csv", "What was known about the charging session ",
          "range-test.csv", "Record of the range test ",
          "legs.csv", "Legs of the range test ");

  private static final Map<String, String> MEANINGS =
      Map.ofEntries(
          Map.entry("elapsed", "Time since plugging in"),
          Map.entry("clock", "Time of day of the reading"),
          Map.entry("soc", "State of charge as displayed"),
          Map.entry("power", "Charging power as displayed"),
          Map.entry("energy added", "Energy added since plugging in, as displayed by the car"),
          Map.entry("battery temperature", "Temperature of the battery"),
          Map.entry("voltage", "Voltage"),
          Map.entry("current", "Current"),
          Map.entry("station energy", "Energy delivered since plugging in, by the station"),
          Map.entry("station power", "Power delivered, by the station"),
          Map.entry("range shown", "Range that the car shows"),
          Map.entry("leg", "Name of the leg"),
          Map.entry("distance", "Distance driven"),
          Map.entry("duration", "Time driven"),
          Map.entry("energy used", "Energy used"),
          Map.entry("start soc", "State of charge at the start, as displayed"),
          Map.entry("end soc", "State of charge at the end, as displayed"),
          Map.entry("item", "What is stated"),
          Map.entry("value", "The value as written; empty if it is not known"),
          Map.entry("unit", "Symbol of the value's unit; empty if it has none"),
          Map.entry("give or take", "What the value may be off by, in its unit"),
          Map.entry("how known", "How the tester came by the value"),
          Map.entry("note", "Remark of the tester's"));

  /** Headings of the columns that may serve as key, if their values are unique. */
  private static final List<String> KEYS = List.of("elapsed", "clock", "item", "leg");

  private InputResources() {}

  /** Describes a table of {@code sessions/NAME/} as published. */
  static TableResource of(InputTable table) {
    String path = table.file().path();
    String[] parts = path.split("/", -1);
    String file = parts[parts.length - 1];
    String folder = parts[parts.length - 2];
    List<ColumnSchema> columns = new ArrayList<>();
    List<String> key = List.of();
    for (int i = 0; i < table.head().size(); i++) {
      ColumnSchema column = column(table, i);
      columns.add(column);
      if (key.isEmpty() && KEYS.contains(plain(column.name())) && isUnique(cells(table, i))) {
        key = List.of(column.name());
      }
    }
    InputFile copy = new InputFile("data/" + folder + "/" + file, table.file().bytes());
    return new TableResource(
        TITLES.getOrDefault(file, "Table ") + folder,
        copy.withoutContent(),
        Optional.of(copy),
        table.encoding(),
        table.delimiter(),
        columns,
        key);
  }

  private static ColumnSchema column(InputTable table, int index) {
    String head = table.head().get(index);
    String meaning = MEANINGS.getOrDefault(plain(head), "Column of the tester's own");
    return new ColumnSchema(head, ColumnSchema.typeOf(cells(table, index)), meaning + unit(head));
  }

  private static String unit(String head) {
    Matcher match = HEAD.matcher(head.strip());
    if (!match.matches()) {
      return "";
    }
    return switch (match.group(2)) {
      case "min:s" -> ", in minutes and seconds";
      case "h:min:s" -> ", in hours, minutes and seconds";
      case "ISO 8601" -> ", as ISO 8601 writes it";
      case "Cel" -> ", in degrees Celsius";
      case "degF" -> ", in degrees Fahrenheit";
      default -> ", in " + match.group(2);
    };
  }

  private static String plain(String head) {
    Matcher match = HEAD.matcher(head.strip());
    return match.matches() ? match.group(1) : head.strip();
  }

  private static List<String> cells(InputTable table, int index) {
    return table.rows().stream().map(r -> index < r.size() ? r.get(index) : "").toList();
  }

  private static boolean isUnique(List<String> cells) {
    Set<String> all = new HashSet<>(cells);
    return all.size() == cells.size() && cells.stream().noneMatch(String::isBlank);
  }
}
