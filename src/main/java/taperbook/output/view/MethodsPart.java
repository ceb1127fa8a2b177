package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.quantity.Unit;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.Channel;
import taperbook.session.Trace;

/** The contents of the methods section: intervals, displays, budgets, and withheld numbers. */
final class MethodsPart {
  private final ReportResult result;
  private final NumberFormatter formatter;

  /** The coverages in per cent, if there are any, and whether some intervals are bounds. */
  record Intervals(boolean bounds, List<String> coverages) {}

  /** What the display of a channel shows. */
  record Display(String session, String channel, String step, String clock, String readings) {}

  /** The labels of the numbers that are withheld for a reason. */
  record Withheld(String reason, List<String> labels) {}

  MethodsPart(ReportResult result, NumberFormatter formatter) {
    this.result = result;
    this.formatter = formatter;
  }

  /** Describes the intervals. */
  Intervals intervals() {
    List<Double> coverages =
        result.sessions().stream()
            .flatMap(s -> s.numbers().all().stream())
            .flatMap(n -> n.outcome().fold(m -> Stream.of(m.coverage()), w -> Stream.empty()))
            .distinct()
            .sorted()
            .toList();
    return new Intervals(
        coverages.contains(1.0),
        coverages.stream().filter(c -> c < 1).map(NumberViews::share).toList());
  }

  /** Returns the step of each display that was read. */
  List<Display> displays() {
    List<Display> rows = new ArrayList<>();
    for (SessionResult session : result.sessions()) {
      session
          .session()
          .traces()
          .forEach((channel, trace) -> rows.add(display(session, channel, trace)));
    }
    return rows;
  }

  private Display display(SessionResult session, Channel channel, Trace trace) {
    Unit unit = Unit.base(channel.quantity());
    return new Display(
        session.session().name(),
        channel.columnName(),
        step(2 * trace.halfStep(), unit),
        step(2 * trace.clockHalfStep(), Unit.SECOND),
        String.valueOf(trace.size()));
  }

  private String step(double amount, Unit unit) {
    return amount == 0
        ? Texts.of("page.methods_part.not_limited")
        : formatter.exactly(amount, unit);
  }

  /** Returns the withheld numbers, grouped by reason. */
  List<Withheld> withheld() {
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
    List<Withheld> list = new ArrayList<>();
    byReason.forEach((reason, labels) -> list.add(new Withheld(reason, labels)));
    return list;
  }

  private String label(SessionResult session, ReportNumber number) {
    return session.session().name().equals(result.main().session().name())
        ? number.label()
        : number.label() + " (" + session.session().name() + ")";
  }
}
