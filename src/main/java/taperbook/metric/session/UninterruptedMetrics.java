package taperbook.metric.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.bounds.LinearPower;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.EventFinder;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Event;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Outcome;
import taperbook.session.Caveat;
import taperbook.session.RowRef;

/**
 * Adds times and averages that may contain an interruption: as elapsed, with a label and caveat
 * that state it, and again without the interruption.
 */
final class UninterruptedMetrics {
  /** Interruptions shorter than this within a window are ignored, s. */
  private static final double LEAST_SECONDS = 1;

  private static final Caveat PAST_THE_END =
      new Caveat(
          Caveat.Kind.GAPS, Message.of("metric.distance_metrics.upper_end_of_interval_lies"));

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
    Metric metric = Metric.charging("interruption_time", Unit.SECOND, Method.INTERRUPTIONS);
    double whole = recording.session().recorded().high();
    collector.add(metric, Finding.of(recording.measure(d -> idle(d, 0, whole)), rows()));
  }

  /**
   * A stretch of time in each draw.
   *
   * @param start its start, s
   * @param end its end, s
   * @param readSeconds how long the readings cover it, s
   */
  record Span(ToDoubleFunction<Draw> start, ToDoubleFunction<Draw> end, double readSeconds) {
    /** Creates a stretch that ends within the readings. */
    Span(ToDoubleFunction<Draw> start, ToDoubleFunction<Draw> end) {
      this(start, end, Double.POSITIVE_INFINITY);
    }

    double seconds(Draw draw) {
      return end.applyAsDouble(draw) - start.applyAsDouble(draw);
    }

    /** Returns the caveats of its duration: one if the interval extends past the last reading. */
    private List<Caveat> caveats(Outcome time) {
      return time.estimateIfMeasured()
          .filter(e -> e.bounds().high() > readSeconds + 0.5)
          .map(e -> List.of(PAST_THE_END))
          .orElse(List.of());
    }
  }

  /** Adds a time between two moments. */
  void time(Metric metric, Finding<Span> span) {
    time(metric, span, List.of(), true);
  }

  /**
   * Adds a time between two moments.
   *
   * @param both whether to add it without interruptions as well
   */
  void time(Metric metric, Finding<Span> span, List<Caveat> own, boolean both) {
    add(metric, span, own, both, (draw, seconds) -> seconds);
  }

  /** Adds an energy, kWh, or a distance, km, over the time between two moments, per hour. */
  void average(Metric metric, Finding<Span> span, ToDoubleFunction<Draw> amount) {
    ToDoubleFunction<Draw> hours = d -> amount.applyAsDouble(d) * LinearPower.SECONDS_PER_HOUR;
    add(metric, span, List.of(), true, (d, seconds) -> hours.applyAsDouble(d) / seconds);
  }

  /**
   * Adds a quantity of the duration of a stretch.
   *
   * @param both whether to add it without interruptions as well
   */
  private void add(
      Metric metric, Finding<Span> span, List<Caveat> own, boolean both, AtTime quantity) {
    Finding<Outcome> elapsed = measure(span, quantity, Span::seconds);
    List<Caveat> all = new ArrayList<>(own);
    span.value().ifPresent(s -> elapsed.value().ifPresent(time -> all.addAll(s.caveats(time))));
    if (span.value().filter(this::isConcerned).isEmpty()) {
      collector.add(metric, elapsed, all);
      return;
    }
    collector.add(included(metric), elapsed, withCaveats(all));
    if (both) {
      collector.add(
          without(metric),
          measure(span, quantity, (s, d) -> s.seconds(d) - idle(d, s)).from(o -> rows()),
          all);
    }
  }

  private Finding<Outcome> measure(
      Finding<Span> span, AtTime quantity, ToDoubleBiFunction<Span, Draw> seconds) {
    return span.map(s -> recording.measure(d -> quantity.of(d, seconds.applyAsDouble(s, d))));
  }

  /** A quantity of a draw at a time. */
  @FunctionalInterface
  interface AtTime {
    double of(Draw draw, double second);
  }

  /**
   * Adds a quantity after a time from the start of readings, and again after that time of charging
   * if the readings cover it.
   *
   * @param readings when the readings begin and end, s
   * @param seconds length of the time, s
   */
  void after(Metric metric, Finding<Interval> readings, double seconds, AtTime quantity) {
    boolean concerned =
        readings
            .value()
            .filter(r -> isConcerned(new Span(d -> r.low(), d -> r.low() + seconds)))
            .isPresent();
    collector.add(
        concerned ? included(metric) : metric,
        readings.map(r -> recording.measure(d -> quantity.of(d, r.low() + seconds))),
        concerned ? withCaveats(List.of()) : List.of());
    if (!concerned) {
      return;
    }
    Interval read = readings.value().orElseThrow();
    ToDoubleFunction<Draw> later = d -> end(d, read.low(), seconds);
    if (recording.courses().estimate(later).filter(e -> e.value() <= read.high()).isPresent()) {
      collector.add(
          without(metric),
          readings
              .map(r -> recording.measure(d -> quantity.of(d, later.applyAsDouble(d))))
              .from(o -> rows()));
    }
  }

  /**
   * Returns the metric of a number over a stretch of time, labelled if it includes an interruption.
   */
  Metric included(Metric metric, double from, double to) {
    return isConcerned(new Span(d -> from, d -> to)) ? included(metric) : metric;
  }

  /** Returns the caveats of a number over a stretch of time. */
  List<Caveat> caveats(double from, double to) {
    return isConcerned(new Span(d -> from, d -> to)) ? withCaveats(List.of()) : List.of();
  }

  private boolean isConcerned(Span span) {
    if (interruptions.isEmpty()) {
      return false;
    }
    Optional<Estimate> within = recording.courses().estimate(d -> idle(d, span));
    return within.filter(e -> e.value() >= LEAST_SECONDS).isPresent();
  }

  private List<Caveat> withCaveats(List<Caveat> own) {
    List<Caveat> all = new ArrayList<>(collector.caveats(Caveat.Kind.INTERRUPTION));
    all.addAll(own);
    return all;
  }

  private static Metric included(Metric metric) {
    return metric.labelled(Texts.of("label.with_interruptions", metric.label()));
  }

  private static Metric without(Metric metric) {
    return new Metric(
        Metric.withoutInterruptions(metric.id()),
        Texts.of("label.without_interruptions", metric.label()),
        metric.unit(),
        Method.INTERRUPTIONS,
        metric.basis(),
        metric.inputs());
  }

  private List<RowRef> rows() {
    return interruptions.stream().flatMap(e -> e.rows().stream()).toList();
  }

  private double idle(Draw draw, Span span) {
    return idle(draw, span.start().applyAsDouble(draw), span.end().applyAsDouble(draw));
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
