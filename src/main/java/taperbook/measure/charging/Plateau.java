package taperbook.measure.charging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import taperbook.measure.recording.Recording;
import taperbook.model.Channel;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.RowRef;
import taperbook.model.Trace;

/**
 * A hold of the power that is long enough to ask what set it.
 *
 * @param recording the session
 * @param from when it begins, s
 * @param to when it ends, s
 */
public record Plateau(Recording recording, double from, double to) {
  /** A shorter hold is a peak in passing: a choice of this report. */
  private static final double LEAST_SECONDS = 120;

  private static final int LEAST_READINGS = 3;

  /** A current that varies by no more than this share is flat: a choice of this report. */
  private static final double FLAT_SHARE = 0.01;

  /**
   * A mean over the plateau.
   *
   * @param estimate mean of the readings, with bounds that hold every one of them
   * @param halfStep half the display's step
   * @param rows the readings
   */
  public record Level(Estimate estimate, double halfStep, List<RowRef> rows) {}

  /** The longest hold of the power, if it is long enough. */
  public static Optional<Plateau> of(Recording recording) {
    return recording
        .power()
        .map(Hold::longest)
        .filter(h -> h.duration().value() >= LEAST_SECONDS && h.rows().size() >= LEAST_READINGS)
        .map(h -> new Plateau(recording, h.from().value(), h.to().value()));
  }

  /** How long it lasts, with the clock's rounding at both ends, s. */
  public Estimate duration() {
    double clock = recording.power().orElseThrow().clockHalfStep();
    return Estimate.around(to - from, 2 * clock);
  }

  /** Its power where the station shows it, else where the car does, kW. */
  public Level power() {
    return level(Channel.STATION_POWER).or(() -> level(Channel.POWER)).orElseThrow();
  }

  private Optional<Level> level(Channel channel) {
    Optional<Trace> trace = recording.session().trace(channel);
    if (trace.isEmpty()) {
      return Optional.empty();
    }
    int[] inside = inside(trace.get());
    if (inside.length == 0) {
      return Optional.empty();
    }
    double half = trace.get().halfStep();
    double sum = 0;
    Interval bounds = Interval.around(trace.get().value(inside[0]), half);
    List<RowRef> rows = new ArrayList<>();
    for (int i : inside) {
      sum += trace.get().value(i);
      bounds = bounds.hull(Interval.around(trace.get().value(i), half));
      rows.add(trace.get().row(i));
    }
    return Optional.of(new Level(new Estimate(sum / inside.length, bounds), half, rows));
  }

  private int[] inside(Trace trace) {
    return IntStream.range(0, trace.size())
        .filter(i -> trace.second(i) >= from && trace.second(i) <= to)
        .toArray();
  }

  /** By how much the voltage rises at the least from the first to the last reading, V. */
  Optional<Interval> risingVoltage() {
    Optional<Trace> voltage = recording.session().trace(Channel.VOLTAGE);
    int[] inside = voltage.map(this::inside).orElse(new int[0]);
    if (inside.length < 2) {
      return Optional.empty();
    }
    double first = voltage.get().value(inside[0]);
    double last = voltage.get().value(inside[inside.length - 1]);
    return last - first > 2 * voltage.get().halfStep()
        ? Optional.of(new Interval(first, last))
        : Optional.empty();
  }

  /**
   * The current that the plateau follows, A: flat within its step or 1 %, while the voltage rises
   * so far that holding the power would have changed the current by twice as much as it varies.
   *
   * @return the current; empty if it is not flat, or if the voltage rises too little to tell a held
   *     current from a held power
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
