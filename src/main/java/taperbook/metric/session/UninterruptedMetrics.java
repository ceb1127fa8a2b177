package taperbook.metric.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import taperbook.format.Labels;
import taperbook.metric.bounds.LinearPower;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.EventFinder;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Event;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.session.Caveat;
import taperbook.session.RowRef;

/**
 * Adds times and averages that may contain an interruption: as elapsed, with a label and caveat
 * that state it, and again without the interruption.
 */
final class UninterruptedMetrics {
  /** Interruptions shorter than this within a window are ignored, s. */
  private static final double LEAST_SECONDS = 1;

  private final Recording recording;
  private final MetricCollector collector;
  private final List<Event> interruptions;

  UninterruptedMetrics(Recording recording, MetricCollector collector) {
    this.recording = recording;
    this.collector = collector;
    this.interruptions = EventFinder.interruptions(recording.session());
  }

  /** Adds the total duration of interruptions, if there were any. */
  void sum() {
    if (interruptions.isEmpty()) {
      return;
    }
    Metric metric =
        Metric.charging(
            "interruption_time",
            Labels.of("number.interruption_time"),
            Unit.SECOND,
            Method.INTERRUPTIONS);
    double whole = recording.session().recorded().high();
    collector.add(metric, recording.measure(d -> idle(d, 0, whole)), rows());
  }

  /** Adds a time between two moments. */
  void time(
      Metric metric,
      ToDoubleFunction<Draw> start,
      ToDoubleFunction<Draw> end,
      List<RowRef> rows,
      List<Caveat> own) {
    time(metric, start, end, rows, own, true);
  }

  /**
   * Adds a time between two moments.
   *
   * @param both whether to add it without interruptions as well
   */
  void time(
      Metric metric,
      ToDoubleFunction<Draw> start,
      ToDoubleFunction<Draw> end,
      List<RowRef> rows,
      List<Caveat> own,
      boolean both) {
    ToDoubleFunction<Draw> seconds = d -> end.applyAsDouble(d) - start.applyAsDouble(d);
    if (!isConcerned(start, end)) {
      collector.add(metric, recording.measure(seconds), rows, own);
      return;
    }
    collector.add(included(metric), recording.measure(seconds), rows, withCaveats(own));
    if (both) {
      collector.add(
          without(metric),
          recording.measure(d -> seconds.applyAsDouble(d) - idle(d, start, end)),
          joined(rows),
          own);
    }
  }

  /** Adds an energy over the time between two moments, kW. */
  void average(
      Metric metric,
      ToDoubleFunction<Draw> energy,
      ToDoubleFunction<Draw> start,
      ToDoubleFunction<Draw> end,
      List<RowRef> rows) {
    ToDoubleFunction<Draw> seconds = d -> end.applyAsDouble(d) - start.applyAsDouble(d);
    ToDoubleFunction<Draw> wattSeconds =
        d -> energy.applyAsDouble(d) * LinearPower.SECONDS_PER_HOUR;
    ToDoubleFunction<Draw> average = d -> wattSeconds.applyAsDouble(d) / seconds.applyAsDouble(d);
    if (!isConcerned(start, end)) {
      collector.add(metric, recording.measure(average), rows);
      return;
    }
    collector.add(included(metric), recording.measure(average), rows, withCaveats(List.of()));
    collector.add(
        without(metric),
        recording.measure(
            d -> wattSeconds.applyAsDouble(d) / (seconds.applyAsDouble(d) - idle(d, start, end))),
        joined(rows));
  }

  /** A quantity of a draw at a time. */
  @FunctionalInterface
  interface AtTime {
    double of(Draw draw, double second);
  }

  /**
   * Adds a quantity after a time from a start, and again after that time of charging if the
   * readings cover it.
   *
   * @param start start of the time, s
   * @param seconds its length, s
   * @param last end of the readings, s
   */
  void after(
      Metric metric,
      double start,
      double seconds,
      double last,
      AtTime quantity,
      List<RowRef> rows) {
    double end = start + seconds;
    boolean concerned = isConcerned(d -> start, d -> end);
    collector.add(
        concerned ? included(metric) : metric,
        recording.measure(d -> quantity.of(d, end)),
        rows,
        concerned ? withCaveats(List.of()) : List.of());
    ToDoubleFunction<Draw> later = d -> end(d, start, seconds);
    if (concerned
        && recording.courses().estimate(later).filter(e -> e.value() <= last).isPresent()) {
      collector.add(
          without(metric),
          recording.measure(d -> quantity.of(d, later.applyAsDouble(d))),
          joined(rows));
    }
  }

  /**
   * Returns the metric of a number over a stretch of time, labelled if it includes an interruption.
   */
  Metric included(Metric metric, double from, double to) {
    return isConcerned(d -> from, d -> to) ? included(metric) : metric;
  }

  /** Returns the caveats of a number over a stretch of time. */
  List<Caveat> caveats(double from, double to) {
    return isConcerned(d -> from, d -> to) ? withCaveats(List.of()) : List.of();
  }

  private boolean isConcerned(ToDoubleFunction<Draw> start, ToDoubleFunction<Draw> end) {
    if (interruptions.isEmpty()) {
      return false;
    }
    Optional<Estimate> within = recording.courses().estimate(d -> idle(d, start, end));
    return within.filter(e -> e.value() >= LEAST_SECONDS).isPresent();
  }

  private List<Caveat> withCaveats(List<Caveat> own) {
    List<Caveat> all = new ArrayList<>(collector.caveats(Caveat.Kind.INTERRUPTION));
    all.addAll(own);
    return all;
  }

  private static Metric included(Metric metric) {
    return metric.labelled(Labels.of("label.with_interruptions", metric.label()));
  }

  private static Metric without(Metric metric) {
    return new Metric(
        Metric.withoutInterruptions(metric.id()),
        Labels.of("label.without_interruptions", metric.label()),
        metric.unit(),
        Method.INTERRUPTIONS,
        metric.basis(),
        metric.inputs());
  }

  private List<RowRef> joined(List<RowRef> rows) {
    List<RowRef> all = new ArrayList<>(rows);
    all.addAll(rows());
    return all;
  }

  private List<RowRef> rows() {
    return interruptions.stream().flatMap(e -> e.rows().stream()).toList();
  }

  private double idle(Draw draw, ToDoubleFunction<Draw> start, ToDoubleFunction<Draw> end) {
    return idle(draw, start.applyAsDouble(draw), end.applyAsDouble(draw));
  }

  /** Returns the interrupted time between two moments in a draw, s. */
  private double idle(Draw draw, double from, double to) {
    double sum = 0;
    for (int k = 0; k < interruptions.size(); k++) {
      sum += Math.max(0, Math.min(to, ends(draw, k)) - Math.max(from, begins(draw, k)));
    }
    return sum;
  }

  /** Returns when a time without interruptions has passed since a start in a draw, s. */
  private double end(Draw draw, double start, double seconds) {
    double end = start + seconds;
    for (int k = 0; k < interruptions.size() && begins(draw, k) < end; k++) {
      end += Math.max(0, ends(draw, k) - Math.max(start, begins(draw, k)));
    }
    return end;
  }

  private double begins(Draw draw, int k) {
    Interval start = interruptions.get(k).start();
    return start.low() + place(draw, 2 * k) * start.width();
  }

  private double ends(Draw draw, int k) {
    Interval end = interruptions.get(k).end();
    return end.low() + place(draw, 2 * k + 1) * end.width();
  }

  /** Returns an independent place for each end, derived from that of the draw. */
  private static double place(Draw draw, int end) {
    double spread = draw.place() * (61 + 36 * end);
    return spread - Math.floor(spread);
  }
}
