package taperbook.output.library;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import taperbook.format.ColumnFormat;
import taperbook.format.NumberFormatter;
import taperbook.format.PlainDigits;
import taperbook.format.RowNames;
import taperbook.i18n.Texts;
import taperbook.plan.LibraryPlan;
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
  private final WithheldReasons reasons = new WithheldReasons();
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
        .map(
            n ->
                Map.<String, Object>of(
                    "id",
                    n.id(),
                    "label",
                    heads.getOrDefault(n.id(), n.label()),
                    "unit",
                    text(n).unit()))
        .toList();
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
    Set<String> there = new HashSet<>();
    shown.forEach(row -> there.add(row.session()));
    for (LibraryRow row : result.rows()) {
      if (!there.contains(row.session())) {
        row.numbers().all().forEach(n -> n.withheld().ifPresent(reasons::count));
      }
    }
    return rows;
  }

  /** Returns the number of withheld numbers of hidden sessions whose reasons are not listed. */
  int otherReasons() {
    return reasons.others();
  }

  /** Returns the reasons of withheld numbers; call after the rows were built. */
  List<Map<String, Object>> reasons() {
    return reasons.list();
  }

  private Map<String, Object> row(LibraryRow row) {
    Optional<String> date = row.about().date();
    return Map.of(
        "session",
        row.session(),
        "vehicle",
        row.about().vehicle(),
        "detail",
        names.detail(row),
        "date",
        date.map(NumberFormatter::dateOrAsIs).orElse(Texts.of("page.common.not_known")),
        "isoDate",
        date.orElse(""),
        "place",
        row.about().place().orElse(""),
        "preconditioned",
        row.about().preconditioned().orElse(""),
        "marks",
        kinds.marks(row),
        "cells",
        numbers(row).stream().map(this::cell).toList());
  }

  private Map<String, Object> cell(ReportNumber number) {
    return Map.of(
        "measured",
        number.estimate().isPresent(),
        "value",
        number.estimate().map(text(number)::value).orElse(""),
        "range",
        number.estimate().map(text(number)::range).orElse(""),
        "sort",
        number.estimate().map(e -> PlainDigits.of(e.value(), SORT_DIGITS)).orElse(""),
        "mark",
        number.withheld().map(reasons::mark).orElse(""));
  }

  /** The reasons why numbers were withheld, numbered by first use. */
  private static final class WithheldReasons {
    private final Map<String, Integer> counts = new LinkedHashMap<>();
    private final Map<String, Integer> marks = new LinkedHashMap<>();
    private int others;

    /** Returns the mark of a reason, the same for equal reasons. */
    String mark(String reason) {
      counts.merge(reason, 1, Integer::sum);
      return String.valueOf(marks.computeIfAbsent(reason, r -> marks.size() + 1));
    }

    /**
     * Counts a reason without a mark of its own in the table, unless it has one elsewhere there.
     */
    void count(String reason) {
      if (marks.containsKey(reason)) {
        counts.merge(reason, 1, Integer::sum);
      } else {
        others++;
      }
    }

    /** Returns the number of numbers whose reasons have no mark. */
    int others() {
      return others;
    }

    /** Returns all reasons with their marks and the number of numbers that each withholds. */
    List<Map<String, Object>> list() {
      List<Map<String, Object>> list = new ArrayList<>();
      marks.forEach(
          (reason, mark) ->
              list.add(
                  Map.of(
                      "mark",
                      String.valueOf(mark),
                      "reason",
                      reason,
                      "count",
                      String.valueOf(counts.getOrDefault(reason, 0)))));
      return list;
    }
  }
}
