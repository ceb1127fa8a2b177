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
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.session.Input;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/** Computes the minutes to each state-of-charge mark, with the energy, power and distance there. */
public final class SocTimeMetrics {
  private final Recording recording;
  private final RangeFigures range;
  private final MetricCollector collector;
  private final UninterruptedMetrics uninterrupted;

  public SocTimeMetrics(Recording recording, RangeFigures range, MetricCollector collector) {
    this.recording = recording;
    this.range = range;
    this.collector = collector;
    this.uninterrupted = new UninterruptedMetrics(recording, collector);
  }

  public void measure(List<Integer> marks) {
    for (int mark : marks) {
      measure(mark);
    }
  }

  private void measure(int mark) {
    Optional<List<RowRef>> rows = recording.rowsAround(mark);
    if (rows.isEmpty()) {
      String reason = recording.whyNotReached(mark);
      for (Metric metric :
          List.of(timeMetric(mark), energyMetric(mark), powerMetric(mark), distanceMetric(mark))) {
        collector.withheld(metric, reason);
      }
      return;
    }
    uninterrupted.time(timeMetric(mark), d -> 0, second(mark), rows.get(), List.of());
    energy(mark, rows.get());
    power(mark, rows.get());
    distance(mark, rows.get());
  }

  /** Returns when the display first shows a mark; zero for one that it showed from the start. */
  private ToDoubleFunction<Draw> second(int mark) {
    ToDoubleFunction<Draw> shown = recording.firstShown(mark);
    return d -> Math.max(Math.min(0, d.course().firstSecond()), shown.applyAsDouble(d));
  }

  private Metric timeMetric(int mark) {
    return Metric.charging(
        "time_to_soc_" + mark,
        Labels.of("number.time_to_soc", mark, recording.zero()),
        Unit.SECOND,
        Method.SOC_CROSSING);
  }

  private static Metric energyMetric(int mark) {
    return Metric.charging(
        "energy_to_soc_" + mark,
        Labels.of("number.energy_to_soc", mark),
        Unit.KILOWATT_HOUR,
        Method.INTERPOLATION);
  }

  private static Metric powerMetric(int mark) {
    return Metric.charging(
        "power_at_soc_" + mark,
        Labels.of("number.power_at_soc", mark),
        Unit.KILOWATT,
        Method.INTERPOLATION);
  }

  private Metric distanceMetric(int mark) {
    return new Metric(
        "distance_to_soc_" + mark,
        Labels.of("number.distance_to_soc", mark),
        Unit.KILOMETRE,
        Method.SOC_SHARE,
        range.chosenBasis(),
        Input.ROAD);
  }

  private void energy(int mark, List<RowRef> edge) {
    Optional<EnergyOverTime> source = recording.energy();
    if (source.isEmpty()) {
      collector.withheld(energyMetric(mark), recording.whyNoEnergy());
      return;
    }
    double start = source.get().span().low();
    List<RowRef> rows = new ArrayList<>(edge);
    rows.addAll(recording.energyRows(start, recording.secondOf(mark)));
    ToDoubleFunction<Draw> second = second(mark);
    collector.add(
        energyMetric(mark),
        recording.measure(
            d -> d.course().energyAt(second.applyAsDouble(d)) - d.course().energyAt(start)),
        rows);
  }

  private void power(int mark, List<RowRef> rows) {
    double at = recording.secondOf(mark);
    Optional<Trace> power =
        recording.power().filter(p -> p.firstSecond() <= at && at <= p.lastSecond());
    if (power.isEmpty()) {
      collector.withheld(
          powerMetric(mark),
          recording.power().isEmpty() ? Recording.NO_POWER : "no power was read there");
      return;
    }
    ToDoubleFunction<Draw> second = second(mark);
    collector.add(
        powerMetric(mark),
        recording.measure(d -> d.course().powerAt(second.applyAsDouble(d))),
        rows);
  }

  private void distance(int mark, List<RowRef> edge) {
    if (range.chosenRange().withheld().isPresent()) {
      collector.withheld(distanceMetric(mark), range.chosenRange().withheld().get());
      return;
    }
    Trace soc = recording.soc().orElseThrow();
    List<RowRef> rows = new ArrayList<>(edge);
    rows.add(soc.row(0));
    rows.addAll(range.chosenRange().rows());
    boolean rated = range.chosenBasis() == Basis.RATED;
    collector.add(
        distanceMetric(mark),
        recording.measure(
            d ->
                Math.max(0, mark - d.course().chargeAt(soc.firstSecond()))
                    / 100
                    * (rated ? d.drive().ratedRange() : d.drive().fullRange())),
        rows);
  }
}
