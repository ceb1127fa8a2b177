package taperbook.metric.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import taperbook.format.Labels;
import taperbook.metric.bounds.EnergyOverTime;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.Derived;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Outcome;
import taperbook.result.Role;
import taperbook.session.Caveat;
import taperbook.session.Input;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/** Computes the minutes to add distances, on the driven, the energy and the rated basis. */
public final class DistanceMetrics {
  private static final Caveat PAST_THE_END =
      new Caveat(
          Caveat.Kind.GAPS,
          "The upper end of the interval lies past the last reading; the course is carried on there"
              + " at the mean rate of its last tenth, which a further taper would exceed.");

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
    put(
        new Metric(
            "consumption",
            Labels.of("number.consumption"),
            Unit.WATT_HOUR_PER_KILOMETRE,
            range.consumption().method(),
            range.consumption().basis(),
            Input.DRIVE),
        range.consumption(),
        d -> d.drive().consumption());
    put(
        new Metric(
            "driven_range_full",
            Labels.of("number.driven_range_full"),
            Unit.KILOMETRE,
            range.fullRange().method(),
            Basis.DRIVEN,
            Input.DRIVE,
            Set.of(Role.LIBRARY)),
        range.fullRange(),
        d -> d.drive().fullRange());
  }

  private void put(Metric metric, Derived figure, ToDoubleFunction<Draw> quantity) {
    if (figure.estimate().isPresent()) {
      collector.add(metric, recording.measure(quantity), figure.rows());
    } else {
      collector.withheld(metric, figure.withheld().orElseThrow());
    }
  }

  private void shareOf(WantedDistance distance) {
    Metric metric =
        new Metric(
            "soc_for_" + distance.idPart(),
            Labels.of("number.soc_for", distance.words()),
            Unit.PERCENT,
            Method.SOC_SHARE,
            Basis.DRIVEN,
            Input.DRIVE);
    Optional<Estimate> share = share(distance, range.fullRange());
    if (share.isPresent()) {
      collector.add(
          metric, recording.measure(d -> d.share(distance.kilometres())), range.fullRange().rows());
    } else {
      collector.withheld(metric, range.fullRange().withheld().orElseThrow());
    }
  }

  /** Returns the share of a range that a distance takes, %. */
  public static Optional<Estimate> share(WantedDistance distance, Derived fullRange) {
    return fullRange
        .estimate()
        .map(full -> Estimate.exactly(distance.kilometres() * 100).over(full));
  }

  private void addByShare(WantedDistance distance) {
    Metric metric =
        new Metric(
            "time_to_add_" + distance.idPart(),
            Labels.of("number.time_to_add_driven", distance.words()),
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
            Labels.of("number.time_to_add_rated", distance.words()),
            Unit.SECOND,
            Method.TIME_TO_ADD_RATED,
            Basis.RATED,
            Input.CHARGING);
    byShare(asHeadline(metric), distance, range.ratedRange());
  }

  private void byShare(Metric metric, WantedDistance distance, Derived fullRange) {
    if (fullRange.withheld().isPresent()) {
      collector.withheld(metric, fullRange.withheld().get());
      return;
    }
    if (recording.soc().isEmpty()) {
      collector.withheld(metric, Recording.NO_SOC);
      return;
    }
    Estimate share = share(distance, fullRange).orElseThrow();
    Trace soc = recording.soc().get();
    double target = soc.firstValue() + share.value();
    Optional<List<RowRef>> reached = recording.rowsAround(target);
    if (reached.isEmpty()) {
      collector.withheld(metric, whyNotAdded(soc, share, target));
      return;
    }
    List<RowRef> rows = new ArrayList<>(reached.get());
    rows.add(soc.row(0));
    rows.addAll(fullRange.rows());
    double start = soc.firstSecond();
    boolean rated = fullRange.basis() == Basis.RATED;
    double km = distance.kilometres();
    ToDoubleFunction<Draw> end =
        d ->
            d.course()
                .timeOfCharge(
                    d.course().chargeAt(start) + (rated ? d.ratedShare(km) : d.share(km)));
    Outcome time = recording.measure(d -> end.applyAsDouble(d) - start);
    uninterrupted.time(
        metric,
        d -> start,
        end,
        rows,
        pastTheEnd(time, soc.lastSecond() - start),
        isChosen(metric));
  }

  private String whyNotAdded(Trace soc, Estimate share, double target) {
    if (target <= soc.lastValue()) {
      return recording.whyNotReached(target);
    }
    return "it needs a charge of "
        + recording
            .formatter()
            .value(share.minus(Estimate.exactly(-soc.firstValue())), Unit.PERCENT)
        + ", and the session ended at "
        + recording.percent(soc.lastValue(), soc);
  }

  private void addByEnergy(WantedDistance distance) {
    Metric metric =
        new Metric(
            "time_to_add_" + distance.idPart() + "_by_energy",
            Labels.of("number.time_to_add_by_energy", distance.words()),
            Unit.SECOND,
            Method.TIME_TO_ADD_BY_ENERGY,
            Basis.ENERGY,
            Input.ROAD);
    if (range.consumption().withheld().isPresent()) {
      collector.withheld(metric, range.consumption().withheld().get());
      return;
    }
    Optional<EnergyOverTime> source = recording.energy();
    if (source.isEmpty() || recording.hasFewRows()) {
      collector.withheld(metric, source.isEmpty() ? Recording.NO_ENERGY : Recording.FEW_ROWS);
      return;
    }
    byEnergy(metric, distance, source.get());
  }

  private void byEnergy(Metric metric, WantedDistance distance, EnergyOverTime energy) {
    Estimate need =
        range.consumption().estimate().orElseThrow().times(distance.kilometres() / 1000);
    double start = energy.span().low();
    double end = energy.span().high();
    Estimate added =
        recording
            .courses()
            .estimate(d -> d.course().energyAt(end) - d.course().energyAt(start))
            .orElse(Estimate.exactly(0));
    if (need.value() > added.value()) {
      collector.withheld(
          metric,
          "it takes "
              + recording.formatter().value(need, Unit.KILOWATT_HOUR)
              + " and the session added "
              + recording.formatter().value(added, Unit.KILOWATT_HOUR));
      return;
    }
    double km = distance.kilometres();
    ToDoubleFunction<Draw> reached =
        d ->
            d.course()
                .timeOfEnergy(d.course().energyAt(start) + d.drive().consumption() * km / 1000);
    Outcome time = recording.measure(d -> reached.applyAsDouble(d) - start);
    double second = start + time.estimateIfMeasured().map(Estimate::value).orElse(end - start);
    List<RowRef> rows = new ArrayList<>(energy.rows(start, Math.min(end, second)));
    rows.addAll(range.consumption().rows());
    List<Caveat> own = new ArrayList<>(List.of(withoutLosses()));
    own.addAll(pastTheEnd(time, end - start));
    uninterrupted.time(metric, d -> start, reached, rows, own, isChosen(metric));
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
    String measured =
        collector
            .numbers()
            .estimate("drive_energy_share")
            .map(
                share ->
                    "By session and range test "
                        + recording.formatter().value(share, Unit.PERCENT)
                        + " ("
                        + recording.formatter().range(share.bounds(), Unit.PERCENT)
                        + ") of what went into a per cent came out of it"
                        + needed(share.value())
                        + ".")
            .orElse("How much is lost between charging and driving is not known.");
    return new Caveat(
        Caveat.Kind.LOSSES,
        measured,
        "The energy basis takes all that is added while charging to come out while driving: a lower"
            + " limit, without losses.");
  }

  private String needed(double sharePercent) {
    return sharePercent < 100
        ? ", so that it takes "
            + recording.formatter().exactly(Math.rint(1e4 / sharePercent) / 100, Unit.ONE)
            + " times the energy"
        : "";
  }

  /** Returns the caveats of a time whose interval extends past the last reading. */
  static List<Caveat> pastTheEnd(Outcome time, double lastSecond) {
    boolean past =
        time.estimateIfMeasured().filter(e -> e.bounds().high() > lastSecond + 0.5).isPresent();
    return past ? List.of(PAST_THE_END) : List.of();
  }
}
