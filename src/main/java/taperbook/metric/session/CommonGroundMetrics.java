package taperbook.metric.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import taperbook.format.Labels;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.Derived;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.plan.Basis;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.CommonGround;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Outcome;
import taperbook.session.Caveat;
import taperbook.session.Input;
import taperbook.session.RowRef;

/** Computes the numbers of a session on the common ground of all sessions of a report. */
public final class CommonGroundMetrics {
  private final Recording recording;
  private final RangeFigures range;
  private final MetricCollector collector;
  private final UninterruptedMetrics uninterrupted;

  public CommonGroundMetrics(Recording recording, RangeFigures range, MetricCollector collector) {
    this.recording = recording;
    this.range = range;
    this.collector = collector;
    this.uninterrupted = new UninterruptedMetrics(recording, collector);
  }

  public void measure(CommonGround ground, ReportPlan.Wishes wishes) {
    List<SocWindow> more = new ArrayList<>(ground.windows());
    more.removeAll(wishes.windows());
    new WindowMetrics(recording, collector).measure(more, wishes.windows().get(0));
    for (SocWindow window : ground.windows()) {
      wishes.distances().forEach(d -> distance(d, window.from()));
    }
    ground
        .shared()
        .ifPresent(w -> ground.energyKilowattHours().ifPresent(e -> energy(e, w.from())));
  }

  private void distance(WantedDistance distance, int from) {
    Metric metric =
        new Metric(
            CommonGround.timeToAddId(distance, from),
            Labels.of("number.time_to_add_from", distance.words(), from),
            Unit.SECOND,
            Method.TIME_TO_ADD_FROM,
            range.chosenBasis(),
            range.chosenBasis() == Basis.RATED ? Input.CHARGING : Input.ROAD);
    Derived full = range.chosenRange();
    Optional<Estimate> share = DistanceMetrics.share(distance, full);
    Optional<List<RowRef>> start = recording.rowsAround(from);
    if (share.isEmpty() || start.isEmpty()) {
      collector.withheld(metric, full.withheld().orElseGet(() -> recording.whyNotReached(from)));
      return;
    }
    Optional<List<RowRef>> end = recording.rowsAround(from + share.get().value());
    if (end.isEmpty()) {
      collector.withheld(metric, recording.beyondTheEnd(recording.soc().orElseThrow()));
      return;
    }
    List<RowRef> rows = new ArrayList<>(start.get());
    rows.addAll(end.get());
    rows.addAll(full.rows());
    boolean rated = range.chosenBasis() == Basis.RATED;
    double km = distance.kilometres();
    ToDoubleFunction<Draw> reached =
        d -> d.course().timeOfCharge(from + (rated ? d.ratedShare(km) : d.share(km)));
    Outcome time = recording.measure(d -> reached.applyAsDouble(d) - start(d, from));
    uninterrupted.time(metric, d -> start(d, from), reached, rows, pastTheEnd(time, from));
  }

  /**
   * Returns when the display first showed a charge, or the start of a session that began at it, s.
   */
  private static double start(Draw draw, int percent) {
    return Math.max(draw.course().firstSecond(), draw.course().timeOfCharge(percent));
  }

  private List<Caveat> pastTheEnd(Outcome time, int from) {
    double left = recording.soc().orElseThrow().lastSecond() - recording.secondOf(from);
    return DistanceMetrics.pastTheEnd(time, left);
  }

  private void energy(int kilowattHours, int from) {
    Metric metric =
        Metric.charging(
            CommonGround.timeToAddId(kilowattHours, from),
            Labels.of("number.time_to_add_energy_from", kilowattHours, from),
            Unit.SECOND,
            Method.TIME_TO_ADD_ENERGY);
    Optional<List<RowRef>> start = recording.rowsAround(from);
    if (start.isEmpty() || recording.energy().isEmpty()) {
      collector.withheld(
          metric, start.isEmpty() ? recording.whyNotReached(from) : recording.whyNoEnergy());
      return;
    }
    ToDoubleFunction<Draw> reached =
        d -> d.course().timeOfEnergy(d.course().energyAt(start(d, from)) + kilowattHours);
    Outcome time = recording.measure(d -> reached.applyAsDouble(d) - start(d, from));
    double begins = recording.secondOf(from);
    double ends = begins + time.estimateIfMeasured().map(Estimate::value).orElse(0.0);
    double last = recording.energy().orElseThrow().span().high();
    if (ends > last) {
      collector.withheld(metric, "the session added less energy from there on");
      return;
    }
    List<RowRef> rows = new ArrayList<>(start.get());
    rows.addAll(recording.energyRows(begins, ends));
    uninterrupted.time(
        metric,
        d -> start(d, from),
        reached,
        rows,
        DistanceMetrics.pastTheEnd(time, last - begins));
  }
}
