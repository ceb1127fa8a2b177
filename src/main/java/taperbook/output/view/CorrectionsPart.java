package taperbook.output.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.output.view.NumberView.Plain;
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

  /**
   * A correction; only the latest lists its changes and the numbers that moved.
   *
   * @param rest how many numbers are not listed, or empty
   */
  record Entry(
      String date,
      String reason,
      String sum,
      List<String> changes,
      List<Moved> moved,
      String rest) {}

  /** A number before and after a correction, with the numbers of the changes that moved it. */
  record Moved(String label, Plain before, Plain after, boolean beyond, String causes) {}

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

  /** Returns one entry per correction. */
  List<Entry> of(List<Correction> corrections) {
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < corrections.size(); i++) {
      entries.add(0, entry(corrections.get(i), i == corrections.size() - 1));
    }
    return entries;
  }

  private Entry entry(Correction correction, boolean latest) {
    List<MovedNumber> first = latest ? first(correction.moved()) : List.of();
    List<String> changes = latest ? changes(correction, first) : List.of();
    return new Entry(
        NumberFormatter.date(correction.day()),
        correction.reason(),
        sum(correction),
        changes,
        first.stream().map(m -> moved(m, changes)).toList(),
        rest(correction, first));
  }

  private static String sum(Correction correction) {
    String since =
        Texts.of(
            "page.corrections_part.since_version_of", NumberFormatter.date(correction.since()));
    int all = correction.moved().size();
    if (all == 0) {
      return Texts.of("page.corrections_part.no_number_moved_by_more", since);
    }
    long beyond = correction.moved().stream().filter(MovedNumber::isOutsideInterval).count();
    return Texts.of(
        "page.corrections_part.moved_by_more_than_other",
        since,
        Texts.count(all, "count.number", "count.numbers"),
        beyond == 0 ? Texts.of("page.corrections_part.none") : String.valueOf(beyond));
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

  private Moved moved(MovedNumber number, List<String> changes) {
    return new Moved(
        label(number),
        amount(number, number.before()),
        amount(number, number.after()),
        number.isOutsideInterval(),
        number.causes().stream()
            .map(changes::indexOf)
            .filter(i -> i >= 0)
            .map(i -> String.valueOf(i + 1))
            .collect(Collectors.joining(", ")));
  }

  private Plain amount(MovedNumber number, Optional<Estimate> estimate) {
    return new Plain(formatter.value(number, estimate), formatter.range(number, estimate));
  }

  /** Describes how many numbers are not in the table. */
  private static String rest(Correction correction, List<MovedNumber> first) {
    if (first.isEmpty() || correction.moved().size() == first.size()) {
      return first.isEmpty() && !correction.moved().isEmpty()
          ? Texts.of("page.corrections_part.all_are")
          : "";
    }
    return Texts.count(
        correction.moved().size() - first.size(),
        "page.corrections_part.more_is",
        "page.corrections_part.more_are");
  }

  private String label(MovedNumber number) {
    String of = number.session().equals(session) ? "" : " (" + number.session() + ")";
    return number.label()
        + (number.against().isEmpty()
            ? of
            : Texts.of("page.corrections_part.against", number.against()));
  }
}
