package taperbook.format;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import taperbook.result.LibraryRow;

/**
 * Display names of the sessions of a library: the car; if a car has several sessions, also the day;
 * if a day has several, also the place; and a number if that is still ambiguous. Folder names are
 * never used, because they mean nothing to a reader.
 */
public final class RowNames {
  private final Map<String, String> details;

  private RowNames(Map<String, String> details) {
    this.details = details;
  }

  /** Creates names for all sessions of a library. */
  public static RowNames of(List<LibraryRow> rows) {
    Map<String, List<LibraryRow>> cars =
        rows.stream().collect(Collectors.groupingBy(r -> r.about().vehicle()));
    Map<String, String> details = new HashMap<>();
    cars.values().forEach(sessions -> disambiguate(sessions, details));
    return new RowNames(details);
  }

  private static void disambiguate(List<LibraryRow> sessions, Map<String, String> details) {
    List<Function<LibraryRow, String>> ways =
        List.of(row -> "", RowNames::day, row -> joined(Stream.of(day(row), place(row))));
    List<LibraryRow> left = sessions;
    for (Function<LibraryRow, String> way : ways) {
      Map<String, Long> counts =
          sessions.stream().collect(Collectors.groupingBy(way, Collectors.counting()));
      List<LibraryRow> alike = new ArrayList<>();
      for (LibraryRow row : left) {
        details.put(row.session(), way.apply(row));
        if (counts.getOrDefault(way.apply(row), 0L) > 1) {
          alike.add(row);
        }
      }
      left = alike;
    }
    Map<String, Integer> counted = new HashMap<>();
    for (LibraryRow row : left) {
      String words = details.getOrDefault(row.session(), "");
      String count = Labels.of("label.session_count", counted.merge(words, 1, Integer::sum));
      details.put(row.session(), joined(Stream.of(words, count)));
    }
  }

  private static String day(LibraryRow row) {
    return row.about().date().map(NumberFormatter::dateOrAsIs).orElse("");
  }

  private static String place(LibraryRow row) {
    return row.about().place().orElse("");
  }

  private static String joined(Stream<String> parts) {
    return parts.filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
  }

  /**
   * Returns what distinguishes a session from the others of its car; empty if the car has no other.
   */
  public String detail(LibraryRow row) {
    return Optional.ofNullable(details.get(row.session()))
        .orElseThrow(() -> new IllegalArgumentException("not a session: " + row.session()));
  }

  /** Returns the full name, such as {@code Northmoor Finch, 14 March 2026}. */
  public String name(LibraryRow row) {
    return joined(Stream.of(row.about().vehicle(), detail(row)));
  }

  /**
   * Returns sessions grouped by car, such as {@code Northmoor Finch (14 March 2026, 15 March
   * 2026)}.
   */
  public List<String> byCar(List<LibraryRow> rows) {
    Map<String, List<String>> cars = new LinkedHashMap<>();
    for (LibraryRow row : rows) {
      List<String> known = cars.computeIfAbsent(row.about().vehicle(), car -> new ArrayList<>());
      if (!detail(row).isEmpty()) {
        known.add(detail(row));
      }
    }
    return cars.entrySet().stream()
        .map(
            e ->
                e.getValue().isEmpty()
                    ? e.getKey()
                    : e.getKey() + " (" + String.join(", ", e.getValue()) + ")")
        .toList();
  }
}
