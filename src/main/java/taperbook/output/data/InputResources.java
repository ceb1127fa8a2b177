package taperbook.output.data;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import taperbook.i18n.Texts;
import taperbook.session.InputFile;
import taperbook.session.InputTable;

/** The tester's tables as published: unchanged, under {@code data/}. */
final class InputResources {
  private static final Pattern HEAD = Pattern.compile("([^\\[]*?) *\\[(.*)\\]");

  private static final Map<String, String> TITLES =
      Map.of(
          "readings.csv", Texts.of("data.input_resources.readings_of_charging_session"),
          "conditions.csv", Texts.of("data.input_resources.what_was_known_about_charging"),
          "range-test.csv", Texts.of("data.input_resources.record_of_range_test"),
          "legs.csv", Texts.of("data.input_resources.legs_of_range_test"));

  private static final Map<String, String> MEANINGS =
      Map.ofEntries(
          Map.entry("elapsed", Texts.of("data.input_resources.time_since_plugging_in")),
          Map.entry("clock", Texts.of("data.input_resources.time_of_day_of_reading")),
          Map.entry("soc", Texts.of("data.input_resources.state_of_charge_as_displayed")),
          Map.entry("power", Texts.of("data.input_resources.charging_power_as_displayed")),
          Map.entry(
              "energy added", Texts.of("data.input_resources.energy_added_since_plugging_in")),
          Map.entry("battery temperature", Texts.of("data.input_resources.temperature_of_battery")),
          Map.entry("voltage", Texts.of("data.input_resources.voltage")),
          Map.entry("current", Texts.of("data.input_resources.current")),
          Map.entry(
              "station energy",
              Texts.of("data.input_resources.energy_delivered_since_plugging_in")),
          Map.entry("station power", Texts.of("data.input_resources.power_delivered_by_station")),
          Map.entry("range shown", Texts.of("data.input_resources.range_that_car_shows")),
          Map.entry("leg", Texts.of("data.input_resources.name_of_leg")),
          Map.entry("distance", Texts.of("data.input_resources.distance_driven")),
          Map.entry("duration", Texts.of("data.input_resources.time_driven")),
          Map.entry("energy used", Texts.of("data.input_resources.energy_used")),
          Map.entry("start soc", Texts.of("data.input_resources.state_of_charge_at_start")),
          Map.entry("end soc", Texts.of("data.input_resources.state_of_charge_at_end")),
          Map.entry("item", Texts.of("data.input_resources.what_is_stated")),
          Map.entry("value", Texts.of("data.input_resources.value_as_written_empty_if")),
          Map.entry("unit", Texts.of("data.input_resources.symbol_of_value_s_unit")),
          Map.entry("give or take", Texts.of("data.input_resources.what_value_may_be_off")),
          Map.entry("how known", Texts.of("data.input_resources.how_tester_came_by_value")),
          Map.entry("note", Texts.of("data.input_resources.remark_of_tester_s")));

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
    InputFile copy = table.file().at("data/" + folder + "/" + file);
    return new TableResource(
        TITLES.getOrDefault(file, Texts.of("data.input_resources.table")) + folder,
        copy.withoutContent(),
        Optional.of(copy),
        table.encoding(),
        table.delimiter(),
        columns,
        key);
  }

  private static ColumnSchema column(InputTable table, int index) {
    String head = table.head().get(index);
    String meaning =
        MEANINGS.getOrDefault(plain(head), Texts.of("data.input_resources.column_of_tester_s_own"));
    return new ColumnSchema(
        head, ColumnSchema.typeOf(() -> cells(table, index)), meaning + unit(head));
  }

  private static String unit(String head) {
    Matcher match = HEAD.matcher(head.strip());
    if (!match.matches()) {
      return "";
    }
    return switch (match.group(2)) {
      case "min:s" -> Texts.of("data.input_resources.in_minutes_and_seconds");
      case "h:min:s" -> Texts.of("data.input_resources.in_hours_minutes_and_seconds");
      case "ISO 8601" -> Texts.of("data.input_resources.as_iso_8601_writes_it");
      case "Cel" -> Texts.of("data.input_resources.in_degrees_celsius");
      case "degF" -> Texts.of("data.input_resources.in_degrees_fahrenheit");
      default -> Texts.of("data.input_resources.in", match.group(2));
    };
  }

  private static String plain(String head) {
    Matcher match = HEAD.matcher(head.strip());
    return match.matches() ? match.group(1) : head.strip();
  }

  private static Stream<String> cells(InputTable table, int index) {
    return table.rows().get().map(r -> index < r.size() ? r.get(index) : "");
  }

  private static boolean isUnique(Stream<String> cells) {
    String[] sorted = cells.sorted().toArray(String[]::new);
    return Arrays.stream(sorted).noneMatch(String::isBlank)
        && IntStream.range(1, sorted.length).noneMatch(i -> sorted[i].equals(sorted[i - 1]));
  }
}
