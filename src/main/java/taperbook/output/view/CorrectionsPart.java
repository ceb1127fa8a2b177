package taperbook.output.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import taperbook.format.NumberFormatter;
import taperbook.quantity.Estimate;
import taperbook.result.Correction;
import taperbook.result.MovedNumber;

/**
 * The corrections since a report was published, latest first. They fit on one page: the most
 * important numbers of the latest correction, and a summary of earlier ones.
 */
final class CorrectionsPart {
  /**
   * Maximum number of two-line numbers that leaves room for reason, changes and earlier
   * corrections.
   */
  private static final int MOST_NUMBERS = 14;

  private static final int MOST_CHANGES = 8;

  private final String session;
  private final List<String> headline;
  private final NumberFormatter formatter;

  /**
   * Creates the corrections of a report.
   *
   * @param session name of the reported session
   * @param headline ids of its headline numbers, in order
   */
  CorrectionsPart(String session, List<String> headline, NumberFormatter formatter) {
    this.session = session;
    this.headline = List.copyOf(headline);
    this.formatter = formatter;
  }

  /**
   * Returns one entry per correction: {@code date}, {@code reason}, {@code sum}, {@code changes},
   * {@code moved}, {@code rest}.
   */
  List<Map<String, Object>> of(List<Correction> corrections) {
    List<Map<String, Object>> entries = new ArrayList<>();
    for (int i = 0; i < corrections.size(); i++) {
      entries.add(0, entry(corrections.get(i), i == corrections.size() - 1));
    }
    return entries;
  }

  private Map<String, Object> entry(Correction correction, boolean latest) {
    List<MovedNumber> first = latest ? first(correction.moved()) : List.of();
    List<String> changes = latest ? changes(correction, first) : List.of();
    return Map.of(
        "date",
        NumberFormatter.date(correction.day()),
        "reason",
        correction.reason(),
        "sum",
        sum(correction),
        "changes",
        changes,
        "moved",
        first.stream().map(m -> moved(m, changes)).toList(),
        "rest",
        rest(correction, first));
  }

  private static String sum(Correction correction) {
    String since = "Since the version of " + NumberFormatter.date(correction.since()) + " ";
    int all = correction.moved().size();
    if (all == 0) {
      return since + "no number moved by more than other random draws move it.";
    }
    long beyond = correction.moved().stream().filter(MovedNumber::isOutsideInterval).count();
    return since
        + (all == 1 ? "1 number" : all + " numbers")
        + " moved by more than other random draws move them, "
        + (beyond == 0 ? "none" : String.valueOf(beyond))
        + " of them beyond the interval that was printed.";
  }

  /** Sorts headline numbers first, then those outside their old intervals. */
  private List<MovedNumber> first(List<MovedNumber> moved) {
    return moved.stream()
        .filter(m -> headline(m) < Integer.MAX_VALUE || m.isOutsideInterval())
        .sorted(Comparator.comparingInt(this::headline))
        .limit(MOST_NUMBERS)
        .toList();
  }

  /** Returns the index among the headline numbers. */
  private int headline(MovedNumber number) {
    int place = headline.indexOf(number.id());
    boolean main = number.session().equals(session) && number.against().isEmpty();
    return main && place >= 0 ? place : Integer.MAX_VALUE;
  }

  /** Describes the changes, those that affect a number of the table first. */
  private static List<String> changes(Correction correction, List<MovedNumber> first) {
    LinkedHashSet<String> changes = new LinkedHashSet<>();
    first.forEach(m -> changes.addAll(m.causes()));
    correction.moved().forEach(m -> changes.addAll(m.causes()));
    return changes.stream().limit(MOST_CHANGES).toList();
  }

  private Map<String, Object> moved(MovedNumber number, List<String> changes) {
    return Map.of(
        "label",
        label(number),
        "before",
        amount(number, number.before()),
        "after",
        amount(number, number.after()),
        "beyond",
        number.isOutsideInterval(),
        "causes",
        number.causes().stream()
            .map(changes::indexOf)
            .filter(i -> i >= 0)
            .map(i -> String.valueOf(i + 1))
            .collect(Collectors.joining(", ")));
  }

  private Map<String, String> amount(MovedNumber number, Optional<Estimate> estimate) {
    return Map.of(
        "value", formatter.value(number, estimate), "range", formatter.range(number, estimate));
  }

  /** Describes how many numbers are not in the table. */
  private static String rest(Correction correction, List<MovedNumber> first) {
    if (first.isEmpty() || correction.moved().size() == first.size()) {
      return first.isEmpty() && !correction.moved().isEmpty() ? "All are" : "";
    }
    int more = correction.moved().size() - first.size();
    return more == 1 ? "1 more is" : more + " more are";
  }

  private String label(MovedNumber number) {
    String of = number.session().equals(session) ? "" : " (" + number.session() + ")";
    return number.label()
        + (number.against().isEmpty() ? of : " (against " + number.against() + ")");
  }
}
