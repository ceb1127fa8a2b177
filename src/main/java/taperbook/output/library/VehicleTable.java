package taperbook.output.library;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import taperbook.format.NumberFormatter;
import taperbook.plan.LibraryPlan;
import taperbook.result.LibraryResult;
import taperbook.result.LibraryRow;

/**
 * A large library by vehicle: the number of sessions of each, and minimum, median and maximum of
 * the most important numbers. The median is the number of a session, the lower of two.
 */
final class VehicleTable {
  /** Maximum number of listed vehicles, those with the most sessions. */
  private static final int MOST_VEHICLES = 100;

  private final LibraryResult result;
  private final NumberFormatter formatter;

  VehicleTable(LibraryResult result, NumberFormatter formatter) {
    this.result = result;
    this.formatter = formatter;
  }

  /** Returns a row for each vehicle, by name. */
  List<Map<String, Object>> rows() {
    Map<String, List<LibraryRow>> byVehicle = new TreeMap<>();
    result
        .rows()
        .forEach(
            r -> byVehicle.computeIfAbsent(r.about().vehicle(), v -> new ArrayList<>()).add(r));
    List<String> largest =
        byVehicle.keySet().stream()
            .sorted(Comparator.comparingInt(v -> -byVehicle.getOrDefault(v, List.of()).size()))
            .limit(MOST_VEHICLES)
            .sorted()
            .toList();
    return largest.stream().map(v -> row(v, byVehicle.getOrDefault(v, List.of()))).toList();
  }

  private List<String> ids() {
    LibraryPlan plan = result.plan();
    return List.of(plan.firstTimeToAddId(), plan.windowTimeId(), "peak_power");
  }

  /**
   * Returns the headings of its numbers.
   *
   * @param columns the columns of the table of sessions, each with {@code id} and {@code label}
   */
  List<Object> heads(List<Map<String, Object>> columns) {
    return ids().stream()
        .flatMap(id -> columns.stream().filter(c -> id.equals(c.get("id"))))
        .<Object>map(c -> Objects.requireNonNull(c.get("label")))
        .toList();
  }

  private Map<String, Object> row(String vehicle, List<LibraryRow> rows) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("vehicle", vehicle);
    row.put("sessions", String.valueOf(rows.size()));
    row.put("spreads", ids().stream().map(id -> spread(rows, id)).toList());
    return row;
  }

  private Map<String, Object> spread(List<LibraryRow> rows, String id) {
    List<LibraryRow> rising =
        rows.stream()
            .filter(r -> r.numbers().estimate(id).isPresent())
            .sorted(
                Comparator.comparingDouble(
                        (LibraryRow r) -> r.numbers().estimate(id).orElseThrow().value())
                    .thenComparing(LibraryRow::session))
            .toList();
    if (rising.isEmpty()) {
      return Map.of("least", "", "middle", "", "greatest", "");
    }
    return Map.of(
        "least", value(rising.get(0), id),
        "middle", value(rising.get((rising.size() - 1) / 2), id),
        "greatest", value(rising.get(rising.size() - 1), id));
  }

  private String value(LibraryRow row, String id) {
    return formatter.value(row.numbers().get(id));
  }
}
