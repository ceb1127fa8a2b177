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
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.CommonGround;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.session.Input;
import taperbook.session.Trace;

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
            Texts.of("number.time_to_add_from", distance.words(), from),
            Unit.SECOND,
            Method.TIME_TO_ADD_FROM,
            range.chosenBasis(),
            range.chosenBasis() == Basis.RATED ? Input.CHARGING : Input.ROAD);
    boolean rated = range.chosenBasis() == Basis.RATED;
    double km = distance.kilometres();
    ToDoubleFunction<Draw> end =
        d -> d.course().timeOfCharge(from + (rated ? d.ratedShare(km) : d.share(km)));
    uninterrupted.time(
        metric,
        RangeFigures.share(distance, range.chosenRange())
            .and(recording.reached(from))
            .flatMap(share -> reachedBy(from + share.value()))
            .map(
                q ->
                    new Span(d -> start(d, from), end, q.lastSecond() - recording.secondOf(from))));
  }

  /** Returns the charge if the readings show a figure, or that they end below it. */
  private Finding<Trace> reachedBy(double percent) {
    Finding<Trace> reached = recording.reached(percent);
    return reached.value().isPresent()
        ? reached
        : Finding.missing(recording.beyondTheEnd(recording.soc().orElseThrow()));
  }

  /**
   * Returns when the display first showed a charge, or the start of a session that began at it, s.
   */
  private static double start(Draw draw, int percent) {
    return Math.max(draw.course().firstSecond(), draw.course().timeOfCharge(percent));
  }

  private void energy(int kilowattHours, int from) {
    Metric metric =
        Metric.charging(
            CommonGround.timeToAddId(kilowattHours, from),
            Texts.of("number.time_to_add_energy_from", kilowattHours, from),
            Unit.SECOND,
            Method.TIME_TO_ADD_ENERGY);
    uninterrupted.time(
        metric,
        recording
            .reached(from)
            .flatMap(q -> recording.energy())
            .flatMap(energy -> added(energy, kilowattHours, from)));
  }

  private Finding<Span> added(EnergyOverTime energy, int kilowattHours, int from) {
    double begins = recording.secondOf(from);
    double last = energy.span().high();
    Span span =
        new Span(
            d -> start(d, from),
            d -> d.course().timeOfEnergy(d.course().energyAt(start(d, from)) + kilowattHours),
            last - begins);
    double seconds = recording.courses().estimate(span::seconds).map(Estimate::value).orElse(0.0);
    return begins + seconds > last
        ? Finding.missing(Message.of("metric.common_ground_metrics.session_added_less_energy_from"))
        : Finding.of(span, recording.energyRows(begins, begins + seconds));
  }
}
