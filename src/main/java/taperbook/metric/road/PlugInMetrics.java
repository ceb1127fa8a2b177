package taperbook.metric.road;

import java.util.List;
import java.util.Optional;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.plan.Basis;
import taperbook.plan.RoadWishes;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.session.Caveat;
import taperbook.session.Input;
import taperbook.session.Trace;

/** Computes the minutes to add a distance from several starting states of charge. */
final class PlugInMetrics {
  private static final Metric LOST =
      Metric.of(
          "warm_up_time_lost", Unit.SECOND, Method.PLUG_IN_WARM, Basis.READINGS, Input.CHARGING);

  private final Recording recording;
  private final RangeFigures range;
  private final MetricCollector collector;

  PlugInMetrics(Recording recording, RangeFigures range, MetricCollector collector) {
    this.recording = recording;
    this.range = range;
    this.collector = collector;
  }

  void measure(List<WantedDistance> distances) {
    for (int from : RoadWishes.PLUG_IN_SOC) {
      distances.forEach(distance -> asRecorded(from, distance));
    }
    Optional<WarmStart> warm = warmStart(recording, collector);
    if (warm.isEmpty()) {
      return;
    }
    lost(warm.get());
    if (!warm.get().isFaster()) {
      return;
    }
    double first = recording.soc().orElseThrow().firstValue();
    for (int from : RoadWishes.PLUG_IN_SOC) {
      if (first <= from && from < warm.get().climbEnd()) {
        distances.forEach(distance -> warm(warm.get(), from, distance));
      }
    }
  }

  /** Returns the session without its climb; empty if no end of a climb was found. */
  static Optional<WarmStart> warmStart(Recording recording, MetricCollector collector) {
    return recording
        .soc()
        .flatMap(soc -> collector.numbers().estimate("warm_up_end_soc"))
        .map(end -> new WarmStart(recording, end));
  }

  private void lost(WarmStart warm) {
    collector.add(
        LOST,
        warm.hasPace() ? Finding.of(warm.lost(), warm.rows()) : Finding.missing(noPace(warm)),
        List.of(inference(warm)));
  }

  private static Message noPace(WarmStart warm) {
    return Message.of(
        "metric.plug_in_metrics.session_has_no_after_climb", Math.round(warm.width()));
  }

  private Caveat inference(WarmStart warm) {
    Estimate end = collector.numbers().estimate("warm_up_end_soc").orElseThrow();
    return new Caveat(
        Caveat.Kind.INFERENCE,
        Message.of(
            "metric.plug_in_metrics.inference_and_not_measurement_climb",
            recording.formatter().value(end, Unit.PERCENT),
            Math.round(warm.width())));
  }

  private void asRecorded(int from, WantedDistance distance) {
    Metric metric =
        metric(
            RoadWishes.plugInId(from, distance),
            Texts.of("number.time_to_add_from", distance.words(), from),
            Method.PLUG_IN);
    double km = distance.kilometres();
    collector.add(
        metric,
        range
            .share(distance)
            .flatMap(share -> stretch(from, share))
            .map(q -> recording.measure(d -> d.seconds(from, from + d.share(km)))));
  }

  /** Returns the charge if the readings show both ends of a stretch. */
  private Finding<Trace> stretch(int from, Estimate share) {
    Finding<Trace> read = recording.between(from, from + share.value());
    return read.value().isPresent() ? read : Finding.missing(whyNot(from, share));
  }

  private void warm(WarmStart warm, int from, WantedDistance distance) {
    Metric metric =
        metric(
            RoadWishes.warmPlugInId(from, distance),
            Texts.of("number.plug_in_warm", distance.words(), from),
            Method.PLUG_IN_WARM);
    double km = distance.kilometres();
    double last = recording.soc().orElseThrow().lastValue();
    collector.add(
        metric,
        range
            .share(distance)
            .flatMap(
                share ->
                    from + share.value() <= last
                        ? Finding.of(share, warm.rows())
                        : Finding.missing(whyNot(from, share)))
            .map(share -> recording.measure(d -> warm.seconds(d, from, d.share(km)))),
        List.of(inference(warm)));
  }

  private static Metric metric(String id, String label, Method method) {
    return new Metric(id, label, Unit.SECOND, method, Basis.DRIVEN, Input.ROAD);
  }

  private Message whyNot(int from, Estimate share) {
    Finding<Trace> charge = recording.charge();
    if (charge.value().isEmpty()) {
      return charge.reason().orElseThrow();
    }
    Trace soc = charge.value().get();
    if (soc.firstValue() > from || from + share.value() <= soc.lastValue()) {
      return recording.reached(from).reason().orElseThrow();
    }
    return recording.beyondTheEnd(soc);
  }
}
