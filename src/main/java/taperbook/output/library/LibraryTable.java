package taperbook.output.library;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import taperbook.format.ColumnFormat;
import taperbook.format.NumberFormatter;
import taperbook.format.PlainDigits;
import taperbook.format.RowNames;
import taperbook.i18n.Texts;
import taperbook.plan.LibraryPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.WantedDistance;
import taperbook.result.LibraryResult;
import taperbook.result.LibraryRow;
import taperbook.result.ReportNumber;
import taperbook.result.Role;

/** The table of a library: one row per session, one column per number. */
final class LibraryTable {
  /** Maximum number of columns beside a car's name on a landscape page. */
  private static final int MOST_ON_PAPER = 12;

  /** Significant digits of sort keys; more would be floating-point noise. */
  private static final int SORT_DIGITS = 10;

  private final LibraryResult result;
  private final LibraryPlan plan;
  private final List<LibraryRow> shown;
  private final CaveatKinds kinds;
  private final RowNames names;

  /** The reasons why numbers of shown sessions were withheld, by first use, with their count. */
  private final Map<String, Integer> counts = new LinkedHashMap<>();

  private final Map<String, String> marks = new HashMap<>();
  private int otherReasons;
  private final Map<String, ColumnFormat> texts = new LinkedHashMap<>();

  /**
   * Creates the table of some sessions.
   *
   * @param shown the sessions that have rows
   */
  LibraryTable(
      LibraryResult result,
      List<LibraryRow> shown,
      NumberFormatter formatter,
      CaveatKinds kinds,
      RowNames names) {
    this.result = result;
    this.plan = result.plan();
    this.shown = shown;
    this.kinds = kinds;
    this.names = names;
    for (ReportNumber number : numbers(shown.get(0))) {
      String id = number.id();
      texts.put(
          id, new ColumnFormat(shown.stream().map(r -> r.numbers().get(id)).toList(), formatter));
    }
  }

  /** Returns a heading for each number, with the unit of its column. */
  List<Map<String, Object>> columns() {
    Map<String, String> heads = heads();
    return numbers(shown.get(0)).stream()
        .map(n -> column(n, heads.getOrDefault(n.id(), n.label())))
        .toList();
  }

  private Map<String, Object> column(ReportNumber number, String label) {
    return Map.of("id", number.id(), "label", label, "unit", text(number).unit());
  }

  /** Returns the numbers of a row, most important first; the same ones for all rows. */
  private List<ReportNumber> numbers(LibraryRow row) {
    List<String> first = List.of(plan.windowTimeId(), "peak_power", "peak_hold_time");
    List<ReportNumber> numbers = new ArrayList<>(row.numbers().with(Role.MINUTES));
    first.forEach(id -> numbers.add(row.numbers().get(id)));
    row.numbers().with(Role.COLUMNS).stream()
        .filter(n -> !numbers.contains(n))
        .forEach(numbers::add);
    return numbers;
  }

  private ColumnFormat text(ReportNumber number) {
    return Objects.requireNonNull(texts.get(number.id()));
  }

  private Map<String, String> heads() {
    int from = plan.window().from();
    int to = plan.window().to();
    Map<String, String> heads = new LinkedHashMap<>();
    heads.put("start_soc", Texts.of("column.start_soc"));
    heads.put("end_soc", Texts.of("column.end_soc"));
    heads.put("peak_hold_time", Texts.of("column.peak_hold_time"));
    heads.put(plan.windowTimeId(), Texts.of("column.window_time", from, to));
    heads.put("driven_range_full", Texts.of("column.driven_range"));
    for (WantedDistance distance : plan.distances()) {
      heads.put(plan.timeToAddId(distance), Texts.of("column.time_to_add", distance.words()));
    }
    heads.put(LibraryPlan.BATTERY_TEMPERATURE, Texts.of("column.battery_temperature"));
    return heads;
  }

  /** Returns the columns in parts that fit on paper, each as first and last index. */
  List<Map<String, Object>> parts() {
    int all = texts.size();
    int count = (all + MOST_ON_PAPER - 1) / MOST_ON_PAPER;
    List<Map<String, Object>> parts = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      parts.add(Map.of("first", k * all / count, "last", (k + 1) * all / count - 1));
    }
    return parts;
  }

  /** Returns the rows; also collects the reasons of all sessions. */
  List<Map<String, Object>> rows() {
    List<Map<String, Object>> rows = shown.stream().map(this::row).toList();
    Set<String> there = shown.stream().map(LibraryRow::session).collect(Collectors.toSet());
    result.rows().stream()
        .filter(row -> !there.contains(row.session()))
        .flatMap(row -> row.numbers().all().stream())
        .flatMap(number -> number.withheld().stream())
        .forEach(
            reason -> {
              if (counts.computeIfPresent(reason, (r, count) -> count + 1) == null) {
                otherReasons++;
              }
            });
    return rows;
  }

  /** Returns the number of withheld numbers of hidden sessions whose reasons are not listed. */
  int otherReasons() {
    return otherReasons;
  }

  /**
   * Returns the reasons of withheld numbers with their marks and the number of numbers that each
   * withholds; call after the rows were built.
   */
  List<Map<String, Object>> reasons() {
    List<Map<String, Object>> reasons = new ArrayList<>();
    counts.forEach(
        (reason, count) ->
            reasons.add(
                Map.of(
                    "mark", marks.getOrDefault(reason, ""),
                    "reason", reason,
                    "count", String.valueOf(count))));
    return reasons;
  }

  /** Counts a reason; returns its mark, the same for equal reasons. */
  private String mark(String reason) {
    counts.merge(reason, 1, Integer::sum);
    return marks.computeIfAbsent(reason, r -> String.valueOf(marks.size() + 1));
  }

  private Map<String, Object> row(LibraryRow row) {
    LibraryRow.About about = row.about();
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("session", row.session());
    map.put("vehicle", about.vehicle());
    map.put("detail", names.detail(row));
    map.put(
        "date",
        about.date().map(NumberFormatter::dateOrAsIs).orElse(Texts.of("page.common.not_known")));
    map.put("isoDate", about.date().orElse(""));
    map.put("place", about.place().orElse(""));
    map.put("preconditioned", about.preconditioned().orElse(""));
    map.put("marks", kinds.marks(row));
    map.put("cells", numbers(row).stream().map(this::cell).toList());
    return map;
  }

  private Map<String, Object> cell(ReportNumber number) {
    Optional<Estimate> estimate = number.estimate();
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("measured", estimate.isPresent());
    map.put("value", estimate.map(text(number)::value).orElse(""));
    map.put("range", estimate.map(text(number)::range).orElse(""));
    map.put("sort", estimate.map(e -> PlainDigits.of(e.value(), SORT_DIGITS)).orElse(""));
    map.put("mark", number.withheld().map(this::mark).orElse(""));
    return map;
  }
}
