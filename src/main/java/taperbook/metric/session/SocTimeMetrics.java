package taperbook.metric.session;

import java.util.List;
import java.util.function.ToDoubleFunction;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.metric.session.UninterruptedMetrics.Span;
import taperbook.plan.Basis;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.session.Input;
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
    Finding<Trace> reached = recording.reached(mark);
    ToDoubleFunction<Draw> second = second(mark);
    uninterrupted.time(timeMetric(mark), reached.map(q -> new Span(d -> 0, second)));
    energy(mark, reached, second);
    power(mark, reached, second);
    distance(mark, reached);
  }

  /** Returns when the display first shows a mark; zero for one that it showed from the start. */
  private ToDoubleFunction<Draw> second(int mark) {
    ToDoubleFunction<Draw> shown = recording.firstShown(mark);
    return d -> Math.max(Math.min(0, d.course().firstSecond()), shown.applyAsDouble(d));
  }

  private Metric timeMetric(int mark) {
    return Metric.charging(
        "time_to_soc_" + mark,
        Texts.of("number.time_to_soc", mark, recording.zero()),
        Unit.SECOND,
        Method.SOC_CROSSING);
  }

  private static Metric energyMetric(int mark) {
    return Metric.charging(
        "energy_to_soc_" + mark,
        Texts.of("number.energy_to_soc", mark),
        Unit.KILOWATT_HOUR,
        Method.INTERPOLATION);
  }

  private static Metric powerMetric(int mark) {
    return Metric.charging(
        "power_at_soc_" + mark,
        Texts.of("number.power_at_soc", mark),
        Unit.KILOWATT,
        Method.INTERPOLATION);
  }

  private Metric distanceMetric(int mark) {
    return new Metric(
        "distance_to_soc_" + mark,
        Texts.of("number.distance_to_soc", mark),
        Unit.KILOMETRE,
        Method.SOC_SHARE,
        range.chosenBasis(),
        Input.ROAD);
  }

  private void energy(int mark, Finding<Trace> reached, ToDoubleFunction<Draw> second) {
    collector.add(
        energyMetric(mark),
        reached
            .flatMap(q -> recording.energy())
            .map(e -> e.span().low())
            .from(start -> recording.energyRows(start, recording.secondOf(mark)))
            .map(
                start ->
                    recording.measure(
                        d ->
                            d.course().energyAt(second.applyAsDouble(d))
                                - d.course().energyAt(start))));
  }

  private void power(int mark, Finding<Trace> reached, ToDoubleFunction<Draw> second) {
    Message notThere = Message.of("metric.soc_time_metrics.no_power_was_read_there");
    collector.add(
        powerMetric(mark),
        reached
            .map(q -> recording.secondOf(mark))
            .flatMap(at -> recording.powersWithin(at, at, notThere))
            .map(p -> recording.measure(d -> d.course().powerAt(second.applyAsDouble(d)))));
  }

  private void distance(int mark, Finding<Trace> reached) {
    boolean rated = range.chosenBasis() == Basis.RATED;
    collector.add(
        distanceMetric(mark),
        reached
            .and(range.chosenRange())
            .from(q -> List.of(q.row(0)))
            .map(
                q ->
                    recording.measure(
                        d ->
                            Math.max(0, mark - d.course().chargeAt(q.firstSecond()))
                                / 100
                                * (rated ? d.drive().ratedRange() : d.drive().fullRange()))));
  }
}
