package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import taperbook.format.NumberFormatter;
import taperbook.quantity.Unit;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.Channel;
import taperbook.session.Trace;

/**
 * The contents of the methods section: definitions, assumptions, displays, and withheld numbers.
 */
final class MethodsPart {
  private final ReportResult result;
  private final NumberFormatter formatter;
  private final Definitions definitions;

  MethodsPart(ReportResult result, NumberFormatter formatter) {
    this.result = result;
    this.formatter = formatter;
    this.definitions =
        Definitions.of(result.sessions().stream().map(SessionResult::numbers).toList());
  }

  /** Returns every method in use, with the marks of its assumptions. */
  List<Map<String, Object>> definitions() {
    return definitions.methods();
  }

  /**
   * Describes the intervals: coverages in per cent, if there are any, and whether some are bounds.
   */
  Map<String, Object> intervals() {
    List<Double> coverages =
        result.sessions().stream()
            .flatMap(s -> s.numbers().all().stream())
            .flatMap(n -> n.outcome().fold(m -> Stream.of(m.coverage()), w -> Stream.empty()))
            .distinct()
            .sorted()
            .toList();
    return Map.of(
        "bounds",
        coverages.contains(1.0),
        "coverages",
        coverages.stream().filter(c -> c < 1).map(NumberViews::share).toList());
  }

  /** Returns every assumption of these methods, lettered. */
  List<Map<String, Object>> assumptions() {
    return definitions.assumptions();
  }

  /** Returns the step of each display that was read. */
  List<Map<String, Object>> displays() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (SessionResult session : result.sessions()) {
      session
          .session()
          .traces()
          .forEach((channel, trace) -> rows.add(display(session, channel, trace)));
    }
    return rows;
  }

  private Map<String, Object> display(SessionResult session, Channel channel, Trace trace) {
    Unit unit = Unit.base(channel.quantity());
    return Map.of(
        "session", session.session().name(),
        "channel", channel.columnName(),
        "step", step(2 * trace.halfStep(), unit),
        "clock", step(2 * trace.clockHalfStep(), Unit.SECOND),
        "readings", String.valueOf(trace.size()));
  }

  private String step(double amount, Unit unit) {
    return amount == 0 ? "not limited" : formatter.exactly(amount, unit);
  }

  /** Returns the withheld numbers, grouped by reason. */
  List<Map<String, Object>> withheld() {
    Map<String, List<String>> byReason = new LinkedHashMap<>();
    for (SessionResult session : result.sessions()) {
      for (ReportNumber number : session.numbers().all()) {
        number
            .withheld()
            .ifPresent(
                reason ->
                    byReason
                        .computeIfAbsent(reason, r -> new ArrayList<>())
                        .add(label(session, number)));
      }
    }
    List<Map<String, Object>> list = new ArrayList<>();
    byReason.forEach((reason, labels) -> list.add(Map.of("reason", reason, "labels", labels)));
    return list;
  }

  private String label(SessionResult session, ReportNumber number) {
    return session.session().name().equals(result.main().session().name())
        ? number.label()
        : number.label() + " (" + session.session().name() + ")";
  }
}
