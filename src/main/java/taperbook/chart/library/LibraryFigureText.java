package taperbook.chart.library;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import taperbook.chart.model.Heading;
import taperbook.format.NumberFormatter;
import taperbook.format.RowNames;
import taperbook.i18n.Texts;
import taperbook.plan.LibraryPlan;
import taperbook.result.LibraryResult;
import taperbook.result.LibraryRow;

/** Formats a library's numbers for its figures. */
final class LibraryFigureText {
  private final LibraryResult result;
  private final List<LibraryRow> inDetail;
  private final RowNames names;
  private final NumberFormatter formatter;

  LibraryFigureText(LibraryResult result) {
    this.result = result;
    this.inDetail = result.inDetail();
    this.names = RowNames.of(result.rows());
    this.formatter = new NumberFormatter(result.plan().style());
  }

  LibraryPlan plan() {
    return result.plan();
  }

  List<LibraryRow> rows() {
    return result.rows();
  }

  boolean isLarge() {
    return result.isLarge();
  }

  /** Returns the sessions whose curves are shown. */
  List<LibraryRow> inDetail() {
    return inDetail;
  }

  /** Describes the sessions that a figure omits, if there are any. */
  String more() {
    return result.isLarge()
        ? Texts.of(
            "figure.library_figure_text.shown_are_quickest_sessions_of",
            inDetail.size(),
            rows().size())
        : "";
  }

  /** Returns the window, such as {@code 10 % to 80 %}, with non-breaking amounts. */
  String window() {
    return Texts.of("label.window_unbroken", plan().window().from(), plan().window().to());
  }

  /** Returns the first distance, such as {@code 100 km}. */
  String distance() {
    return plan().distances().get(0).words().replace(' ', '\u00a0');
  }

  /** Formats the number of sessions. */
  static String sessions(int count) {
    return Texts.count(count, "count.session", "count.sessions");
  }

  /** Returns the value with its unit, if it was measured. */
  Optional<String> value(LibraryRow row, String id) {
    return row.numbers().measured(id).map(formatter::value);
  }

  /** Returns the value with its interval, if it was measured. */
  Optional<String> full(LibraryRow row, String id) {
    return row.numbers()
        .find(id)
        .flatMap(n -> formatter.spread(n).map(spread -> formatter.value(n) + " (" + spread + ")"));
  }

  /** Returns the session with its value and interval, such as {@code one with 171 kW (...)}. */
  String named(LibraryRow row, String joiner, String id) {
    return name(row) + joiner + full(row, id).orElse("\u2013");
  }

  /** Returns the rows that have a number, in ascending order. */
  static List<LibraryRow> rising(List<LibraryRow> rows, String id) {
    return rows.stream()
        .filter(r -> r.numbers().estimate(id).isPresent())
        .sorted(
            Comparator.comparingDouble(
                (LibraryRow r) -> r.numbers().estimate(id).orElseThrow().value()))
        .toList();
  }

  /** Returns the name of a session, see {@link RowNames#name}. */
  String name(LibraryRow row) {
    return names.name(row);
  }

  /** Returns the detail that distinguishes a session of its car, see {@link RowNames#detail}. */
  String detail(LibraryRow row) {
    return names.detail(row);
  }

  /** Returns the car's name up to the first comma. */
  static String model(LibraryRow row) {
    return row.about().vehicle().split(",", 2)[0];
  }

  /**
   * Returns the day and the rest of the car's name, in this order because a long name may be
   * truncated.
   */
  static String about(LibraryRow row) {
    String rest = row.about().vehicle().substring(model(row).length()).replaceFirst(", *", "");
    return Stream.of(row.about().date().map(NumberFormatter::dateOrAsIs), Optional.of(rest))
        .flatMap(Optional::stream)
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(", "));
  }

  /** Returns the title texts of a figure of some sessions. */
  Heading heading(String finding, String quantity, int sessions) {
    List<String> credit = new ArrayList<>(List.of(sessions(sessions)));
    if (!plan().heading().author().isEmpty()) {
      credit.add(plan().heading().author());
    }
    return new Heading(finding, quantity, credit);
  }

  /** Returns a sentence on the number of rows that lack a number, if there are any. */
  Optional<String> missing(String id) {
    int missing = (int) rows().stream().filter(r -> r.numbers().estimate(id).isEmpty()).count();
    if (missing == 0) {
      return Optional.empty();
    }
    return Optional.of(
        Texts.of(
            "figure.library_figure_text.this_number",
            sessions(missing),
            missing == 1
                ? Texts.of("figure.library_figure_text.lacks")
                : Texts.of("figure.library_figure_text.lack")));
  }
}
