package taperbook.write.page;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import taperbook.model.Assumption;
import taperbook.model.Channel;
import taperbook.model.Method;
import taperbook.model.ReportNumber;
import taperbook.model.ReportResult;
import taperbook.model.SessionResult;
import taperbook.model.Trace;
import taperbook.model.Unit;
import taperbook.words.Wording;

/** What the methods section lists: definitions, assumptions, displays, and what was withheld. */
final class MethodsPart {
  private static final int LETTERS = 26;

  private final ReportResult result;
  private final Wording wording;
  private final Set<Method> methods = EnumSet.noneOf(Method.class);
  private final Set<Assumption> assumptions = EnumSet.noneOf(Assumption.class);

  MethodsPart(ReportResult result, Wording wording) {
    this.result = result;
    this.wording = wording;
    for (SessionResult session : result.sessions()) {
      session.numbers().all().forEach(n -> methods.add(n.method()));
    }
    methods.forEach(m -> assumptions.addAll(m.assumptions()));
  }

  /** Every method that a number of this report uses, with the marks of its assumptions. */
  List<Map<String, Object>> definitions() {
    List<Assumption> order = new ArrayList<>(assumptions);
    return methods.stream()
        .map(
            m ->
                Map.<String, Object>of(
                    "title",
                    m.title(),
                    "definition",
                    m.definition(),
                    "assumptions",
                    m.assumptions().stream()
                        .map(order::indexOf)
                        .sorted()
                        .map(MethodsPart::letter)
                        .toList()))
        .toList();
  }

  /**
   * What the intervals are: coverages in per cent, if there are any, and whether some are bounds.
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

  /** Every assumption behind them, lettered. */
  List<Map<String, Object>> assumptions() {
    List<Map<String, Object>> list = new ArrayList<>();
    for (Assumption a : assumptions) {
      list.add(
          Map.of(
              "mark", letter(list.size()),
              "sentence", a.sentence(),
              "source", a.source()));
    }
    return list;
  }

  /** The step of each display that was read. */
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
    return amount == 0 ? "not limited" : wording.exactly(amount, unit);
  }

  /** What was withheld, the numbers with the same reason together. */
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

  /** From a to z, then aa, ab and so on. */
  private static String letter(int index) {
    String last = String.valueOf((char) ('a' + index % LETTERS));
    return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
  }
}
