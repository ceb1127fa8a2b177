package taperbook.metric.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import taperbook.format.Labels;
import taperbook.metric.recording.MetricCollector;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Input;
import taperbook.session.RowRef;
import taperbook.session.Session;
import taperbook.session.Trace;

/** Computes the phases of a stop from arrival to departure, if their times are stated. */
public final class StopPhaseMetrics {
  /** The time of an event, and the rows that state it. */
  private record Moment(Estimate second, List<RowRef> rows) {}

  private final Session session;

  private StopPhaseMetrics(Session session) {
    this.session = session;
  }

  /** Adds the times of a session's stop. */
  public static void measure(Session session, MetricCollector collector) {
    StopPhaseMetrics door = new StopPhaseMetrics(session);
    Optional<Moment> arrived = door.stated(ConditionItem.ARRIVED);
    Optional<Moment> plugged = door.stated(ConditionItem.PLUGGED_IN);
    Optional<Moment> left = door.stated(ConditionItem.LEFT);
    boolean none =
        Stream.of(
                arrived,
                plugged,
                left,
                door.stated(ConditionItem.FIRST_POWER),
                door.stated(ConditionItem.UNPLUGGED))
            .allMatch(Optional::isEmpty);
    if (none) {
      return;
    }
    String noArrival = "the time of arriving is not stated";
    add(
        collector,
        metric("arrival_to_power_time", Labels.of("number.arrival_to_power_time")),
        arrived.flatMap(a -> door.firstPower().map(f -> between(a, f))),
        arrived.isEmpty() ? noArrival : NO_POWER);
    add(
        collector,
        metric("plug_in_to_power_time", Labels.of("number.plug_in_to_power_time")),
        plugged.flatMap(p -> door.firstPower().map(f -> between(p, f))),
        plugged.isEmpty() ? "the time of plugging in is not stated" : NO_POWER);
    String noDoor = arrived.isEmpty() ? noArrival : "the time of leaving is not stated";
    Optional<Moment> whole = door.doorToDoor();
    add(
        collector,
        metric("stop_door_to_door", Labels.of("number.stop_door_to_door")),
        whole,
        noDoor);
    add(
        collector,
        metric("stop_overhead", Labels.of("number.stop_overhead")),
        door.overhead(),
        whole.isEmpty() ? noDoor : NO_POWER);
  }

  /**
   * Returns the time of the stop other than charging, s; empty if arrival or departure is not
   * stated.
   */
  public static Optional<Estimate> overhead(Session session) {
    return new StopPhaseMetrics(session).overhead().map(Moment::second);
  }

  private static final String NO_POWER = "neither readings nor conditions say when power flowed";

  private static Metric metric(String id, String label) {
    return new Metric(
        id, label, Unit.SECOND, Method.DOOR_TO_DOOR, Basis.READINGS, Set.of(Input.READINGS));
  }

  private static void add(
      MetricCollector collector, Metric metric, Optional<Moment> time, String reason) {
    time.ifPresentOrElse(
        t -> collector.measured(metric, t.second(), t.rows()),
        () -> collector.withheld(metric, reason));
  }

  private Optional<Moment> stated(ConditionItem item) {
    return session
        .conditions()
        .amount(item)
        .map(second -> new Moment(second, session.conditions().rows(item)));
  }

  private Optional<Moment> doorToDoor() {
    return stated(ConditionItem.ARRIVED)
        .flatMap(a -> stated(ConditionItem.LEFT).map(l -> between(a, l)));
  }

  /** Returns door-to-door time minus charging: before power and after it. */
  private Optional<Moment> overhead() {
    return doorToDoor()
        .flatMap(
            door ->
                firstPower()
                    .flatMap(first -> end().map(end -> between(between(first, end), door))));
  }

  private static Moment between(Moment from, Moment to) {
    Estimate raw = to.second().minus(from.second());
    List<RowRef> rows = new ArrayList<>(from.rows());
    rows.addAll(to.rows());
    return new Moment(new Estimate(Math.max(0, raw.value()), raw.bounds().atLeast(0)), rows);
  }

  /** Returns the stated time of first power, or that of the first row that shows power. */
  private Optional<Moment> firstPower() {
    return stated(ConditionItem.FIRST_POWER).or(this::firstRowWithPower);
  }

  private Optional<Moment> firstRowWithPower() {
    Optional<Trace> power = session.trace(Channel.POWER);
    OptionalInt at =
        power.map(p -> p.firstAbove(Session.MAX_AT_REST_KILOWATTS)).orElse(OptionalInt.empty());
    if (at.isEmpty()) {
      return Optional.empty();
    }
    Trace p = power.get();
    int i = at.getAsInt();
    double second = p.second(i);
    double before =
        i > 0
            ? p.second(i - 1)
            : stated(ConditionItem.PLUGGED_IN)
                .or(() -> stated(ConditionItem.ARRIVED))
                .map(m -> m.second().value())
                .orElse(second);
    return Optional.of(moment(p, i, Math.min(before, second), second));
  }

  private static Moment moment(Trace power, int i, double earliest, double latest) {
    double half = power.clockHalfStep();
    return new Moment(
        new Estimate(power.second(i), new Interval(earliest - half, latest + half)),
        List.of(power.row(i)));
  }

  /** Returns the end of charging: unplugging, unless power stopped before. */
  private Optional<Moment> end() {
    Optional<Moment> unplugged = stated(ConditionItem.UNPLUGGED);
    Optional<Trace> power = session.trace(Channel.POWER);
    OptionalInt at =
        power.map(p -> p.lastAbove(Session.MAX_AT_REST_KILOWATTS)).orElse(OptionalInt.empty());
    if (at.isEmpty()) {
      return unplugged;
    }
    Trace p = power.get();
    int i = at.getAsInt();
    if (i < p.size() - 1) {
      return Optional.of(moment(p, i, p.second(i), p.second(i + 1)));
    }
    if (unplugged.isPresent()) {
      return unplugged;
    }
    double latest = stated(ConditionItem.LEFT).map(l -> l.second().value()).orElse(p.second(i));
    return Optional.of(moment(p, i, p.second(i), Math.max(p.second(i), latest)));
  }
}
