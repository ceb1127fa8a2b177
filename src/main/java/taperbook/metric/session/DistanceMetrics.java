package taperbook.metric.session;

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
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.Caveat;
import taperbook.session.Input;
import taperbook.session.Trace;

/** Computes the minutes to add distances, on the driven, the energy and the rated basis. */
public final class DistanceMetrics {
  private final Recording recording;
  private final RangeFigures range;
  private final MetricCollector collector;
  private final UninterruptedMetrics uninterrupted;

  public DistanceMetrics(Recording recording, RangeFigures range, MetricCollector collector) {
    this.recording = recording;
    this.range = range;
    this.collector = collector;
    this.uninterrupted = new UninterruptedMetrics(recording, collector);
  }

  public void measure(List<WantedDistance> distances) {
    consumptionAndRange();
    for (WantedDistance distance : distances) {
      shareOf(distance);
      addByShare(distance);
      addByEnergy(distance);
      addRated(distance);
    }
  }

  private void consumptionAndRange() {
    collector.add(
        range.consumptionMetric(),
        range.consumption().map(c -> recording.measure(d -> d.drive().consumption())));
    collector.add(
        range.rangeMetric().in(Role.LIBRARY),
        range.fullRange().map(r -> recording.measure(d -> d.drive().fullRange())));
  }

  private void shareOf(WantedDistance distance) {
    Metric metric =
        new Metric(
            "soc_for_" + distance.idPart(),
            Texts.of("number.soc_for", distance.words()),
            Unit.PERCENT,
            Method.SOC_SHARE,
            Basis.DRIVEN,
            Input.DRIVE);
    collector.add(
        metric, range.fullRange().map(r -> recording.measure(d -> d.share(distance.kilometres()))));
  }

  private void addByShare(WantedDistance distance) {
    Metric metric =
        new Metric(
            "time_to_add_" + distance.idPart(),
            Texts.of("number.time_to_add_driven", distance.words()),
            Unit.SECOND,
            Method.TIME_TO_ADD_BY_SHARE,
            Basis.DRIVEN,
            Input.ROAD);
    byShare(asHeadline(metric), distance, range.fullRange());
  }

  private void addRated(WantedDistance distance) {
    Metric metric =
        new Metric(
            "time_to_add_" + distance.idPart() + "_rated",
            Texts.of("number.time_to_add_rated", distance.words()),
            Unit.SECOND,
            Method.TIME_TO_ADD_RATED,
            Basis.RATED,
            Input.CHARGING);
    byShare(asHeadline(metric), distance, range.ratedRange());
  }

  private void byShare(Metric metric, WantedDistance distance, Finding<Estimate> fullRange) {
    boolean rated = metric.basis() == Basis.RATED;
    double km = distance.kilometres();
    Finding<Trace> added =
        RangeFigures.share(distance, fullRange)
            .flatMap(share -> recording.charge().flatMap(q -> added(q, share)));
    double start = added.value().map(Trace::firstSecond).orElse(0.0);
    ToDoubleFunction<Draw> end =
        d ->
            d.course()
                .timeOfCharge(
                    d.course().chargeAt(start) + (rated ? d.ratedShare(km) : d.share(km)));
    uninterrupted.time(
        metric,
        added.map(q -> new Span(d -> start, end, q.lastSecond() - start)),
        List.of(),
        isChosen(metric));
  }

  /** Returns the charge if its gain from the first row reaches a share. */
  private Finding<Trace> added(Trace soc, Estimate share) {
    double target = soc.firstValue() + share.value();
    Finding<Trace> reached = recording.reached(target).from(q -> List.of(q.row(0)));
    return reached.value().isPresent() || target <= soc.lastValue()
        ? reached
        : Finding.missing(whyNotAdded(soc, share));
  }

  private Message whyNotAdded(Trace soc, Estimate share) {
    return Message.of(
        "metric.distance_metrics.it_needs_charge_of_and",
        recording.formatter().value(share.minus(Estimate.exactly(-soc.firstValue())), Unit.PERCENT),
        recording.percent(soc.lastValue(), soc));
  }

  private void addByEnergy(WantedDistance distance) {
    Metric metric =
        new Metric(
            "time_to_add_" + distance.idPart() + "_by_energy",
            Texts.of("number.time_to_add_by_energy", distance.words()),
            Unit.SECOND,
            Method.TIME_TO_ADD_BY_ENERGY,
            Basis.ENERGY,
            Input.ROAD);
    Finding<EnergyOverTime> energy =
        range
            .consumption()
            .flatMap(c -> recording.energy())
            .filter(e -> !recording.hasFewRows(), Recording.FEW_ROWS)
            .flatMap(e -> enough(e, distance));
    energy
        .value()
        .ifPresentOrElse(
            e -> byEnergy(metric, distance, e),
            () -> collector.withheld(metric, energy.reason().orElseThrow()));
  }

  /** Returns the energy if it suffices for a distance. */
  private Finding<EnergyOverTime> enough(EnergyOverTime energy, WantedDistance distance) {
    Estimate need = range.consumption().value().orElseThrow().times(distance.kilometres() / 1000);
    Interval span = energy.span();
    Estimate added =
        recording
            .courses()
            .estimate(d -> d.course().energyAt(span.high()) - d.course().energyAt(span.low()))
            .orElse(Estimate.exactly(0));
    return need.value() <= added.value()
        ? Finding.of(energy, List.of())
        : Finding.missing(
            Message.of(
                "metric.distance_metrics.it_takes_and_session_added",
                recording.formatter().value(need, Unit.KILOWATT_HOUR),
                recording.formatter().value(added, Unit.KILOWATT_HOUR)));
  }

  private void byEnergy(Metric metric, WantedDistance distance, EnergyOverTime energy) {
    double start = energy.span().low();
    double end = energy.span().high();
    double km = distance.kilometres();
    Span span =
        new Span(
            d -> start,
            d ->
                d.course()
                    .timeOfEnergy(d.course().energyAt(start) + d.drive().consumption() * km / 1000),
            end - start);
    double seconds =
        recording.courses().estimate(span::seconds).map(Estimate::value).orElse(end - start);
    uninterrupted.time(
        metric,
        range
            .consumption()
            .map(c -> span)
            .from(s -> energy.rows(start, Math.min(end, start + seconds))),
        List.of(withoutLosses()),
        isChosen(metric));
  }

  /** Marks a metric as a headline if it uses the report's basis. */
  private Metric asHeadline(Metric metric) {
    return isChosen(metric) ? metric.in(Role.MINUTES) : metric;
  }

  /** Returns true for the report's basis; only that one also has a time without interruptions. */
  private boolean isChosen(Metric metric) {
    return metric.basis() == range.chosenBasis();
  }

  /** Returns the caveat, with the measured ratio if both energies per per cent are known. */
  private Caveat withoutLosses() {
    Message measured =
        collector
            .numbers()
            .estimate("drive_energy_share")
            .map(
                share ->
                    Message.of(
                        "metric.distance_metrics.by_session_and_range_test",
                        recording.formatter().value(share, Unit.PERCENT),
                        recording.formatter().range(share.bounds(), Unit.PERCENT),
                        needed(share.value())))
            .orElse(Message.of("metric.distance_metrics.how_much_is_lost_between"));
    return new Caveat(
        Caveat.Kind.LOSSES,
        measured,
        Message.of("metric.distance_metrics.energy_basis_takes_all_that"));
  }

  private String needed(double sharePercent) {
    return sharePercent < 100
        ? Texts.of(
            "metric.distance_metrics.so_that_it_takes_times",
            recording.formatter().exactly(Math.rint(1e4 / sharePercent) / 100, Unit.ONE))
        : "";
  }
}
