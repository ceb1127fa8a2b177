package taperbook.output.library;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.format.RowNames;
import taperbook.i18n.Texts;
import taperbook.plan.LibraryPlan;
import taperbook.result.LibraryResult;
import taperbook.result.LibraryRow;
import taperbook.result.ReportNumber;

/** The summary at the top of a library: its size and its notable sessions. */
final class LibrarySummary {
  private final LibraryResult result;
  private final NumberFormatter formatter;
  private final RowNames names;

  LibrarySummary(LibraryResult result, NumberFormatter formatter, RowNames names) {
    this.result = result;
    this.formatter = formatter;
    this.names = names;
  }

  /** Describes the number of sessions and vehicles, and the dates. */
  String subject() {
    long vehicles = result.rows().stream().map(r -> r.about().vehicle()).distinct().count();
    String count =
        Texts.of(
            "page.common.of",
            LibraryPage.sessions(result),
            Texts.count(vehicles, "count.vehicle", "count.vehicles"));
    List<LocalDate> days = days();
    if (days.isEmpty()) {
      return count;
    }
    String first = NumberFormatter.date(days.get(0));
    String last = NumberFormatter.date(days.get(days.size() - 1));
    return count
        + ", "
        + (first.equals(last) ? first : Texts.of("page.library_summary.to", first, last));
  }

  private List<LocalDate> days() {
    List<LocalDate> days = new ArrayList<>();
    for (LibraryRow row : result.rows()) {
      row.about().date().flatMap(LibrarySummary::day).ifPresent(days::add);
    }
    days.sort(Comparator.naturalOrder());
    return days;
  }

  private static Optional<LocalDate> day(String written) {
    try {
      return Optional.of(LocalDate.parse(written));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** Returns the notable numbers, each with its session. */
  List<Map<String, Object>> items() {
    LibraryPlan plan = result.plan();
    String window = Texts.of("page.common.to", plan.window().from(), plan.window().to());
    List<Map<String, Object>> items = new ArrayList<>();
    best(Texts.of("glance.window_time", window), plan.windowTimeId(), 1).ifPresent(items::add);
    best(Texts.of("glance.peak"), "peak_power", -1).ifPresent(items::add);
    best(Texts.of("glance.average", window), plan.averagePowerId(), -1).ifPresent(items::add);
    return items;
  }

  private Optional<Map<String, Object>> best(String label, String id, int sign) {
    Comparator<LibraryRow> order =
        Comparator.comparingDouble(r -> sign * r.numbers().estimate(id).orElseThrow().value());
    return result.rows().stream()
        .filter(r -> r.numbers().estimate(id).isPresent())
        .min(order)
        .map(row -> item(label, row, row.numbers().get(id)));
  }

  private Map<String, Object> item(String label, LibraryRow row, ReportNumber number) {
    return Map.of(
        "label", label,
        "value", formatter.value(number),
        "spread", formatter.spread(number).orElse(""),
        "session", names.name(row));
  }
}
