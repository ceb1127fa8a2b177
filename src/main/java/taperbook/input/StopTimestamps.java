package taperbook.input;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.cell.ClockFormat;
import taperbook.input.cell.ColumnSpec;
import taperbook.input.readings.ReadingsParser;
import taperbook.quantity.Estimate;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.Session;
import taperbook.session.Trace;

/**
 * Converts the times of arrival, plugging in and departure to the clock of the readings, and checks
 * their order.
 */
final class StopTimestamps {
  private static final List<ConditionItem> BEFORE =
      List.of(ConditionItem.ARRIVED, ConditionItem.PLUGGED_IN, ConditionItem.FIRST_POWER);
  private static final List<ConditionItem> AFTER =
      List.of(ConditionItem.UNPLUGGED, ConditionItem.LEFT);

  /** A moment of the stop; without a fact if the readings show it. */
  private record Moment(String words, Estimate second, Optional<Fact> fact) {}

  private final int valueColumn;
  private final ProblemLog log;

  /**
   * Creates a check.
   *
   * @param valueColumn number of the column with values, from 1
   * @param log receives the problems of the conditions
   */
  StopTimestamps(int valueColumn, ProblemLog log) {
    this.valueColumn = valueColumn;
    this.log = log;
  }

  /** Returns the facts with clock times converted to the clock of the readings. */
  Facts<ConditionItem> onReadingsClock(Facts<ConditionItem> facts, ReadingsParser rows) {
    Map<ConditionItem, Fact> all = new EnumMap<>(ConditionItem.class);
    all.putAll(facts.all());
    all.replaceAll((item, fact) -> isClock(item, fact) ? onReadingsClock(item, fact, rows) : fact);
    return new Facts<>(facts.file(), ConditionItem.class, all);
  }

  private static boolean isClock(ConditionItem item, Fact fact) {
    return (BEFORE.contains(item) || AFTER.contains(item))
        && fact.isKnown()
        && fact.unit().equals(ColumnSpec.CLOCK_UNIT);
  }

  private Fact onReadingsClock(ConditionItem item, Fact fact, ReadingsParser rows) {
    Optional<Estimate> second =
        ClockFormat.ISO
            .writing()
            .parse(fact.written())
            .flatMap(clock -> rows.counted(clock, AFTER.contains(item)))
            .map(t -> Estimate.around(t.seconds(), t.stepSeconds() / 2));
    if (second.isEmpty()) {
      log.add(
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          fact.row().line(),
          valueColumn,
          Quoted.of(fact.written()),
          "a time in the form that the readings have for " + item.words(),
          "write it as the times of the readings are written, or as elapsed time, as in -4:30 with"
              + " the unit min:s");
    }
    return new Fact(
        fact.written(), fact.unit(), second, fact.giveOrTake(), fact.howKnown(), fact.row());
  }

  /** Reports times that precede one that they must follow. */
  void checkOrder(Session session) {
    List<Moment> moments = new ArrayList<>(stated(session, BEFORE));
    session.trace(Channel.POWER).ifPresent(power -> moments.addAll(ofPower(power)));
    moments.addAll(stated(session, AFTER));
    for (int i = 1; i < moments.size(); i++) {
      Moment earlier = moments.get(i - 1);
      Moment later = moments.get(i);
      if (later.second().bounds().high() < earlier.second().bounds().low()) {
        report(earlier, later);
      }
    }
  }

  private static List<Moment> stated(Session session, List<ConditionItem> items) {
    List<Moment> moments = new ArrayList<>();
    for (ConditionItem item : items) {
      session
          .conditions()
          .known(item)
          .filter(f -> f.amount().isPresent())
          .ifPresent(f -> moments.add(new Moment(item.words(), f.amount().get(), Optional.of(f))));
    }
    return moments;
  }

  /** Returns the times of the first and the last row with power. */
  private static List<Moment> ofPower(Trace power) {
    List<Moment> moments = new ArrayList<>();
    power.firstAbove(Session.MAX_AT_REST_KILOWATTS).ifPresent(i -> add(power, i, moments));
    power.lastAbove(Session.MAX_AT_REST_KILOWATTS).ifPresent(i -> add(power, i, moments));
    return moments;
  }

  private static void add(Trace power, int i, List<Moment> moments) {
    moments.add(
        new Moment(
            "the power on " + power.row(i),
            Estimate.around(power.second(i), power.clockHalfStep()),
            Optional.empty()));
  }

  private void report(Moment earlier, Moment later) {
    Fact fact = later.fact().or(earlier::fact).orElseThrow();
    boolean isLater = later.fact().isPresent();
    log.add(
        ProblemCode.FACTS_CONTRADICT,
        fact.row().line(),
        valueColumn,
        Quoted.of(fact.written()),
        isLater
            ? "a time not before " + named(earlier) + " for " + later.words()
            : "a time not after " + later.words() + " for " + earlier.words(),
        "correct one of the two; a time before the zero of the clock has a minus sign");
  }

  private static String named(Moment moment) {
    return moment
        .fact()
        .map(f -> moment.words() + " on line " + f.row().line())
        .orElse(moment.words());
  }
}
