package taperbook.metric.session;

import java.util.List;
import java.util.Optional;
import taperbook.metric.bounds.NearPeak;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.session.Channel;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * A phase of constant power that is long enough to determine its limit.
 *
 * @param recording the session
 * @param from when it begins, s
 * @param to when it ends, s
 */
public record Plateau(Recording recording, double from, double to) {
  /** Shorter phases count as a passing peak: a choice of this report. */
  private static final double LEAST_SECONDS = 120;

  private static final int LEAST_READINGS = 3;

  /** A current that varies by no more than this share is flat: a choice of this report. */
  private static final double FLAT_SHARE = 0.01;

  /**
   * A mean over the plateau.
   *
   * @param estimate mean of the readings, with bounds that include all of them
   * @param halfStep half the display's step
   * @param rows the readings
   */
  public record Level(Estimate estimate, double halfStep, List<RowRef> rows) {}

  /** Neighbouring readings, by index. */
  private record Inside(int first, int last) {}

  /** Returns the longest phase of constant power, if it is long enough. */
  public static Optional<Plateau> of(Recording recording) {
    Optional<PowerHold> hold =
        recording
            .power()
            .filter(p -> p.lastSecond() - p.firstSecond() >= LEAST_SECONDS)
            .filter(NearPeak::isSteady)
            .map(PowerHold::new)
            .filter(h -> h.rows().size() >= LEAST_READINGS && !recording.hasFewRows());
    if (hold.isEmpty()) {
      return Optional.empty();
    }
    Optional<Estimate> from = recording.courses().estimate(hold.get()::start);
    Optional<Estimate> to = recording.courses().estimate(hold.get()::end);
    return from.isPresent() && to.isPresent()
        ? Optional.of(new Plateau(recording, from.get().value(), to.get().value()))
            .filter(p -> p.to() - p.from() >= LEAST_SECONDS)
        : Optional.empty();
  }

  /** Returns its duration, including clock rounding at both ends, s. */
  public Estimate duration() {
    double clock = recording.power().orElseThrow().clockHalfStep();
    return Estimate.around(to - from, 2 * clock);
  }

  /** Returns its power as shown by the station, or else by the car, kW. */
  public Level power() {
    return level(Channel.STATION_POWER).or(() -> level(Channel.POWER)).orElseThrow();
  }

  private Optional<Level> level(Channel channel) {
    Optional<Trace> trace = recording.session().trace(channel);
    if (trace.isEmpty()) {
      return Optional.empty();
    }
    return inside(trace.get()).map(inside -> level(trace.get(), inside));
  }

  private static Level level(Trace trace, Inside inside) {
    double half = trace.halfStep();
    double sum = 0;
    double least = trace.value(inside.first());
    double most = least;
    for (int i = inside.first(); i <= inside.last(); i++) {
      double value = trace.value(i);
      sum += value;
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
    int count = inside.last() - inside.first() + 1;
    Estimate mean = new Estimate(sum / count, new Interval(least - half, most + half));
    return new Level(mean, half, trace.rows(inside.first(), inside.last()));
  }

  /** Returns the readings within the plateau, if there are any. */
  private Optional<Inside> inside(Trace trace) {
    int last = trace.indexAtOrBefore(to);
    int first = last + 1;
    while (first > 0 && trace.second(first - 1) >= from) {
      first--;
    }
    return first <= last ? Optional.of(new Inside(first, last)) : Optional.empty();
  }

  /** Returns the minimum rise in voltage from the first to the last reading, V. */
  Optional<Interval> risingVoltage() {
    Optional<Trace> voltage = recording.session().trace(Channel.VOLTAGE);
    Optional<Inside> inside = voltage.flatMap(this::inside);
    if (inside.isEmpty() || inside.get().first() == inside.get().last()) {
      return Optional.empty();
    }
    double first = voltage.get().value(inside.get().first());
    double last = voltage.get().value(inside.get().last());
    return last - first > 2 * voltage.get().halfStep()
        ? Optional.of(new Interval(first, last))
        : Optional.empty();
  }

  /**
   * Returns the limiting current, A: flat within its step or 1 %, while the voltage rises so far
   * that a constant power would have changed the current by twice its variation.
   *
   * @return the current; empty if it is not flat, or if the voltage rises too little to distinguish
   *     constant current from constant power
   */
  public Optional<Level> heldCurrent() {
    Optional<Level> current = level(Channel.CURRENT).filter(c -> c.rows().size() >= LEAST_READINGS);
    Optional<Interval> voltage = risingVoltage();
    if (current.isEmpty() || voltage.isEmpty()) {
      return Optional.empty();
    }
    double voltageStep =
        2 * recording.session().trace(Channel.VOLTAGE).map(Trace::halfStep).orElse(0.0);
    double mean = current.get().estimate().value();
    double step = 2 * current.get().halfStep();
    double varies = current.get().estimate().bounds().width() - step;
    double wouldFall = mean * (voltage.get().width() - voltageStep) / voltage.get().low();
    boolean flat = varies <= Math.max(step, FLAT_SHARE * mean) + 1e-9;
    return flat && 2 * varies <= wouldFall && varies + step <= wouldFall
        ? current
        : Optional.empty();
  }
}
