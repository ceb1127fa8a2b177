package taperbook.metric.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import taperbook.format.Labels;
import taperbook.metric.bounds.EnergyOverTime;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.plan.Basis;
import taperbook.plan.StopMinutes;
import taperbook.quantity.Estimate;
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
  private final MetricCollector collector;
  private final UninterruptedMetrics uninterrupted;

  public StopMetrics(Recording recording, RangeFigures range, MetricCollector collector) {
    this.recording = recording;
    this.range = range;
    this.collector = collector;
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
            Labels.of("number.distance_after", minutes),
            Unit.KILOMETRE,
            Method.DISTANCE_AFTER,
            range.chosenBasis(),
            Input.ROAD);
    Optional<String> reason = range.chosenRange().withheld().or(() -> whyNoCharge(minutes));
    if (reason.isPresent()) {
      collector.withheld(metric, reason.get());
      return;
    }
    Trace soc = recording.soc().orElseThrow();
    double start = soc.firstSecond();
    List<RowRef> rows = chargeRows(soc, minutes);
    rows.addAll(range.chosenRange().rows());
    uninterrupted.after(
        metric,
        start,
        60.0 * minutes,
        soc.lastSecond(),
        (d, second) -> kilometres(d, range.chosenBasis(), start, second),
        rows);
  }

  private void charge(int minutes) {
    Metric metric =
        Metric.charging(
            StopMinutes.socId(minutes),
            Labels.of("number.soc_after", minutes),
            Unit.PERCENT,
            Method.SOC_AFTER);
    Optional<String> reason = whyNoCharge(minutes);
    if (reason.isPresent()) {
      collector.withheld(metric, reason.get());
      return;
    }
    Trace soc = recording.soc().orElseThrow();
    uninterrupted.after(
        metric,
        soc.firstSecond(),
        60.0 * minutes,
        soc.lastSecond(),
        Draw::trueChargeAt,
        chargeRows(soc, minutes));
  }

  private void energy(int minutes) {
    Metric metric =
        Metric.charging(
            StopMinutes.energyId(minutes),
            Labels.of("number.energy_after", minutes),
            Unit.KILOWATT_HOUR,
            Method.ENERGY_COUNTER);
    Optional<EnergyOverTime> source = recording.energy();
    if (source.isEmpty() || recording.hasFewRows()) {
      collector.withheld(metric, source.isEmpty() ? recording.whyNoEnergy() : Recording.FEW_ROWS);
      return;
    }
    double start = source.get().span().low();
    double last = source.get().span().high();
    Optional<String> reason = whyPastTheEnd(start, last, minutes);
    if (reason.isPresent()) {
      collector.withheld(metric, reason.get());
      return;
    }
    uninterrupted.after(
        metric.with(source.get().method()),
        start,
        60.0 * minutes,
        last,
        (d, second) -> d.course().energyAt(second) - d.course().energyAt(start),
        recording.energyRows(start, start + 60.0 * minutes));
  }

  /** Returns the distance on the chosen basis of the charge gained between two times, km. */
  static double kilometres(Draw draw, Basis basis, double from, double to) {
    double full = basis == Basis.RATED ? draw.drive().ratedRange() : draw.drive().fullRange();
    return (draw.course().chargeAt(to) - draw.course().chargeAt(from)) / 100 * full;
  }

  private Optional<String> whyNoCharge(int minutes) {
    if (recording.clock().isEmpty()) {
      return Optional.of(recording.whyNoClock());
    }
    Trace soc = recording.soc().orElseThrow();
    return whyPastTheEnd(soc.firstSecond(), soc.lastSecond(), minutes);
  }

  private Optional<String> whyPastTheEnd(double start, double last, int minutes) {
    return last - start < 60.0 * minutes
        ? Optional.of(
            "the readings end after "
                + recording.formatter().value(Estimate.exactly(last - start), Unit.SECOND))
        : Optional.empty();
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
            Labels.of("number.charging_speed", window.from(), window.to()),
            Unit.KILOMETRE_PER_HOUR,
            Method.CHARGING_SPEED,
            range.chosenBasis(),
            Input.ROAD);
    Optional<List<RowRef>> edges = recording.rowsBetween(window.from(), window.to());
    if (range.chosenRange().withheld().isPresent() || edges.isEmpty()) {
      collector.withheld(
          metric,
          range
              .chosenRange()
              .withheld()
              .orElseGet(
                  () ->
                      recording.whyNotReached(
                          recording.rowsAround(window.from()).isEmpty()
                              ? window.from()
                              : window.to())));
      return;
    }
    List<RowRef> rows = new ArrayList<>(edges.get());
    rows.addAll(range.chosenRange().rows());
    ToDoubleFunction<Draw> from = WindowMetrics.start(recording, window);
    ToDoubleFunction<Draw> to = recording.firstShown(window.to());
    uninterrupted.average(
        metric,
        d -> kilometres(d, range.chosenBasis(), from.applyAsDouble(d), to.applyAsDouble(d)),
        from,
        to,
        rows);
  }
}
