package taperbook.metric.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.format.Labels;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.metric.session.DistanceMetrics;
import taperbook.plan.Basis;
import taperbook.plan.RoadWishes;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Outcome;
import taperbook.session.Caveat;
import taperbook.session.Input;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/** Computes the minutes to add a distance from several starting states of charge. */
final class PlugInMetrics {
  private static final Metric LOST =
      new Metric(
          "warm_up_time_lost",
          Labels.of("number.warm_up_time_lost"),
          Unit.SECOND,
          Method.PLUG_IN_WARM,
          Basis.READINGS,
          Input.CHARGING);

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
    if (warm.hasPace()) {
      collector.add(LOST, warm.lost(), warm.rows(), List.of(inference(warm)));
    } else {
      collector.withheld(LOST, noPace(warm));
    }
  }

  private static String noPace(WarmStart warm) {
    return "the session has no "
        + Math.round(warm.width())
        + " % after the climb that would show the pace of a warm battery";
  }

  private Caveat inference(WarmStart warm) {
    Estimate end = collector.numbers().estimate("warm_up_end_soc").orElseThrow();
    return new Caveat(
        Caveat.Kind.INFERENCE,
        "An inference and not a measurement: the climb below "
            + recording.formatter().value(end, Unit.PERCENT)
            + " is taken out, and the pace of the "
            + Math.round(warm.width())
            + "\u00a0% right after it is carried on downwards. No session was seen that began warm.");
  }

  private Optional<Estimate> share(Metric metric, WantedDistance distance) {
    Optional<Estimate> share = DistanceMetrics.share(distance, range.fullRange());
    if (share.isEmpty()) {
      collector.withheld(metric, range.fullRange().withheld().orElseThrow());
    }
    return share;
  }

  private void asRecorded(int from, WantedDistance distance) {
    Metric metric =
        metric(
            RoadWishes.plugInId(from, distance),
            Labels.of("number.time_to_add_from", distance.words(), from),
            Method.PLUG_IN);
    Optional<Estimate> share = share(metric, distance);
    if (share.isEmpty()) {
      return;
    }
    Optional<List<RowRef>> rows = recording.rowsBetween(from, from + share.get().value());
    if (rows.isEmpty()) {
      collector.withheld(metric, whyNot(from, share.get()));
      return;
    }
    double km = distance.kilometres();
    add(metric, recording.measure(d -> d.seconds(from, from + d.share(km))), rows.get(), List.of());
  }

  private void warm(WarmStart warm, int from, WantedDistance distance) {
    Metric metric =
        metric(
            RoadWishes.warmPlugInId(from, distance),
            Labels.of("number.plug_in_warm", distance.words(), from),
            Method.PLUG_IN_WARM);
    Optional<Estimate> share = share(metric, distance);
    if (share.isEmpty()) {
      return;
    }
    Trace soc = recording.soc().orElseThrow();
    if (from + share.get().value() > soc.lastValue()) {
      collector.withheld(metric, whyNot(from, share.get()));
      return;
    }
    double km = distance.kilometres();
    Outcome seconds = recording.measure(d -> warm.seconds(d, from, d.share(km)));
    add(metric, seconds, warm.rows(), List.of(inference(warm)));
  }

  private static Metric metric(String id, String label, Method method) {
    return new Metric(id, label, Unit.SECOND, method, Basis.DRIVEN, Input.ROAD);
  }

  private void add(Metric metric, Outcome seconds, List<RowRef> stretch, List<Caveat> own) {
    List<RowRef> rows = new ArrayList<>(stretch);
    rows.addAll(range.fullRange().rows());
    collector.add(metric, seconds, rows, own);
  }

  private String whyNot(int from, Estimate share) {
    if (recording.soc().isEmpty()) {
      return Recording.NO_SOC;
    }
    Trace soc = recording.soc().get();
    if (soc.firstValue() > from || from + share.value() <= soc.lastValue()) {
      return recording.whyNotReached(from);
    }
    return recording.beyondTheEnd(soc);
  }
}
