package taperbook.metric.session;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.bounds.EnergyOverTime;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.metric.session.UninterruptedMetrics.Span;
import taperbook.plan.Basis;
import taperbook.plan.StopMinutes;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.session.Input;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * Computes the distance, charge and energy added by a stop of given minutes, and the rate of adding
 * distance over a window. On each draw the distance is the inverse of the time to add it.
 */
public final class StopMetrics {
  private final Recording recording;
  private final RangeFigures range;
  private final UninterruptedMetrics uninterrupted;

  public StopMetrics(Recording recording, RangeFigures range, MetricCollector collector) {
    this.recording = recording;
    this.range = range;
    this.uninterrupted = new UninterruptedMetrics(recording, collector);
  }

  public void measure(List<SocWindow> windows) {
    for (int minutes : StopMinutes.ALL) {
      distance(minutes);
      charge(minutes);
      energy(minutes);
    }
    windows.forEach(this::speed);
  }

  private void distance(int minutes) {
    Metric metric =
        new Metric(
            StopMinutes.distanceId(minutes),
            Texts.of("number.distance_after", minutes),
            Unit.KILOMETRE,
            Method.DISTANCE_AFTER,
            range.chosenBasis(),
            Input.ROAD);
    uninterrupted.after(
        metric,
        range.chosenRange().flatMap(r -> charged(minutes)),
        60.0 * minutes,
        (d, second) ->
            kilometres(
                d, range.chosenBasis(), recording.soc().orElseThrow().firstSecond(), second));
  }

  private void charge(int minutes) {
    Metric metric =
        Metric.charging(
            StopMinutes.socId(minutes),
            Texts.of("number.soc_after", minutes),
            Unit.PERCENT,
            Method.SOC_AFTER);
    uninterrupted.after(metric, charged(minutes), 60.0 * minutes, Draw::trueChargeAt);
  }

  private void energy(int minutes) {
    Metric metric =
        Metric.charging(
            StopMinutes.energyId(minutes),
            Texts.of("number.energy_after", minutes),
            Unit.KILOWATT_HOUR,
            Method.ENERGY_COUNTER);
    Finding<EnergyOverTime> energy =
        recording.energy().filter(e -> !recording.hasFewRows(), Recording.FEW_ROWS);
    double start = energy.value().map(e -> e.span().low()).orElse(0.0);
    uninterrupted.after(
        energy.value().map(e -> metric.with(e.method())).orElse(metric),
        energy
            .flatMap(e -> longEnough(e.span(), minutes))
            .from(s -> recording.energyRows(start, start + 60.0 * minutes)),
        60.0 * minutes,
        (d, second) -> d.course().energyAt(second) - d.course().energyAt(start));
  }

  /** Returns the distance on the chosen basis of the charge gained between two times, km. */
  static double kilometres(Draw draw, Basis basis, double from, double to) {
    double full = basis == Basis.RATED ? draw.drive().ratedRange() : draw.drive().fullRange();
    return (draw.course().chargeAt(to) - draw.course().chargeAt(from)) / 100 * full;
  }

  /** Returns when the charge was read, if that is long enough for a stop. */
  private Finding<Interval> charged(int minutes) {
    return recording
        .rising()
        .flatMap(
            q ->
                longEnough(new Interval(q.firstSecond(), q.lastSecond()), minutes)
                    .from(s -> chargeRows(q, minutes)));
  }

  private Finding<Interval> longEnough(Interval readings, int minutes) {
    return Finding.of(readings, List.<RowRef>of())
        .filter(
            r -> r.width() >= 60.0 * minutes,
            Message.of(
                "metric.stop_metrics.readings_end_after",
                recording.formatter().value(Estimate.exactly(readings.width()), Unit.SECOND)));
  }

  /** Returns the first row and those around the end of the given minutes. */
  private static List<RowRef> chargeRows(Trace soc, int minutes) {
    int before = soc.indexAtOrBefore(soc.firstSecond() + 60.0 * minutes);
    List<RowRef> rows = new ArrayList<>(List.of(soc.row(0)));
    rows.addAll(soc.rows(before, Math.min(before + 1, soc.size() - 1)));
    return rows;
  }

  private void speed(SocWindow window) {
    Metric metric =
        new Metric(
            "charging_speed_" + window.idPart(),
            Texts.of("number.charging_speed", window.from(), window.to()),
            Unit.KILOMETRE_PER_HOUR,
            Method.CHARGING_SPEED,
            range.chosenBasis(),
            Input.ROAD);
    ToDoubleFunction<Draw> from = WindowMetrics.start(recording, window);
    ToDoubleFunction<Draw> to = recording.firstShown(window.to());
    uninterrupted.average(
        metric,
        range
            .chosenRange()
            .and(recording.between(window.from(), window.to()))
            .map(r -> new Span(from, to)),
        d -> kilometres(d, range.chosenBasis(), from.applyAsDouble(d), to.applyAsDouble(d)));
  }
}
