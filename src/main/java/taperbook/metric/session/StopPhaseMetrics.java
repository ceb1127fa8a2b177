package taperbook.metric.session;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import taperbook.i18n.Message;
import taperbook.metric.recording.Finding;
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
import taperbook.session.Session;
import taperbook.session.Trace;

/** Computes the phases of a stop from arrival to departure, if their times are stated. */
public final class StopPhaseMetrics {
  private static final Message NO_ARRIVAL =
      Message.of("metric.stop_phase_metrics.time_of_arriving_is_not");
  private static final Message NO_PLUG_IN =
      Message.of("metric.stop_phase_metrics.time_of_plugging_in_is");
  private static final Message NO_LEAVING =
      Message.of("metric.stop_phase_metrics.time_of_leaving_is_not");
  private static final Message NO_POWER =
      Message.of("metric.stop_phase_metrics.neither_readings_nor_conditions_say");

  private final Session session;

  private StopPhaseMetrics(Session session) {
    this.session = session;
  }

  /** Adds the times of a session's stop. */
  public static void measure(Session session, MetricCollector collector) {
    StopPhaseMetrics door = new StopPhaseMetrics(session);
    boolean none =
        Stream.of(
                ConditionItem.ARRIVED,
                ConditionItem.PLUGGED_IN,
                ConditionItem.LEFT,
                ConditionItem.FIRST_POWER,
                ConditionItem.UNPLUGGED)
            .allMatch(item -> session.conditions().amount(item).isEmpty());
    if (none) {
      return;
    }
    Finding<Estimate> arrived = door.stated(ConditionItem.ARRIVED, NO_ARRIVAL);
    Finding<Estimate> plugged = door.stated(ConditionItem.PLUGGED_IN, NO_PLUG_IN);
    collector.measured(metric("arrival_to_power_time"), between(arrived, door.firstPower()));
    collector.measured(metric("plug_in_to_power_time"), between(plugged, door.firstPower()));
    collector.measured(metric("stop_door_to_door"), door.doorToDoor());
    collector.measured(metric("stop_overhead"), door.overhead());
  }

  /**
   * Returns the time of the stop other than charging, s; empty if arrival or departure is not
   * stated.
   */
  public static Optional<Estimate> overhead(Session session) {
    return new StopPhaseMetrics(session).overhead().value();
  }

  private static Metric metric(String id) {
    return Metric.of(id, Unit.SECOND, Method.DOOR_TO_DOOR, Basis.READINGS, Set.of(Input.READINGS));
  }

  private Finding<Estimate> stated(ConditionItem item, Message otherwise) {
    return Finding.of(session.conditions().amount(item), otherwise)
        .from(second -> session.conditions().rows(item));
  }

  private Finding<Estimate> doorToDoor() {
    return between(
        stated(ConditionItem.ARRIVED, NO_ARRIVAL), stated(ConditionItem.LEFT, NO_LEAVING));
  }

  /** Returns door-to-door time minus charging: before power and after it. */
  private Finding<Estimate> overhead() {
    Finding<Estimate> door = doorToDoor();
    return door.flatMap(d -> between(between(firstPower(), end()), door));
  }

  private static Finding<Estimate> between(Finding<Estimate> from, Finding<Estimate> to) {
    return from.flatMap(f -> to.map(t -> t.minus(f)))
        .map(raw -> new Estimate(Math.max(0, raw.value()), raw.bounds().atLeast(0)));
  }

  /** Returns the stated time of first power, or that of the first row that shows power. */
  private Finding<Estimate> firstPower() {
    return stated(ConditionItem.FIRST_POWER, NO_POWER).or(this::firstRowWithPower);
  }

  private Finding<Estimate> firstRowWithPower() {
    Optional<Trace> power = session.trace(Channel.POWER);
    OptionalInt at =
        power.map(p -> p.firstAbove(Session.MAX_AT_REST_KILOWATTS)).orElse(OptionalInt.empty());
    if (at.isEmpty()) {
      return Finding.missing(NO_POWER);
    }
    Trace p = power.get();
    int i = at.getAsInt();
    double second = p.second(i);
    double before =
        i > 0
            ? p.second(i - 1)
            : stated(ConditionItem.PLUGGED_IN, NO_PLUG_IN)
                .or(() -> stated(ConditionItem.ARRIVED, NO_ARRIVAL))
                .value()
                .map(Estimate::value)
                .orElse(second);
    return moment(p, i, Math.min(before, second), second);
  }

  private static Finding<Estimate> moment(Trace power, int i, double earliest, double latest) {
    double half = power.clockHalfStep();
    return Finding.of(
        new Estimate(power.second(i), new Interval(earliest - half, latest + half)),
        List.of(power.row(i)));
  }

  /** Returns the end of charging: unplugging, unless power stopped before. */
  private Finding<Estimate> end() {
    Finding<Estimate> unplugged = stated(ConditionItem.UNPLUGGED, NO_POWER);
    Optional<Trace> power = session.trace(Channel.POWER);
    OptionalInt at =
        power.map(p -> p.lastAbove(Session.MAX_AT_REST_KILOWATTS)).orElse(OptionalInt.empty());
    if (at.isEmpty()) {
      return unplugged;
    }
    Trace p = power.get();
    int i = at.getAsInt();
    if (i < p.size() - 1) {
      return moment(p, i, p.second(i), p.second(i + 1));
    }
    double latest =
        session.conditions().amount(ConditionItem.LEFT).map(Estimate::value).orElse(p.second(i));
    return unplugged.or(() -> moment(p, i, p.second(i), Math.max(p.second(i), latest)));
  }
}
