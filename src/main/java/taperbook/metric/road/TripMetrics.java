package taperbook.metric.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.DriveSpeed;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.metric.trip.ChargeTimes;
import taperbook.metric.trip.TripPlan;
import taperbook.metric.trip.TripSearch;
import taperbook.metric.trip.TripTask;
import taperbook.metric.trip.UnplugRanges;
import taperbook.plan.Trip;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Metric;
import taperbook.session.Caveat;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * Computes the fastest plan for a trip: its stops, its time, and how flat the optimum is. All cars
 * of a report drive at the same speed, so that times differ only by consumption and charging.
 */
final class TripMetrics {
  /** Delay that still counts as optimal: a minute. */
  private static final double FLAT_SECONDS = 60;

  private static final int SECONDS_PER_HOUR = 3600;

  private final Recording recording;
  private final Optional<RangeTest> test;
  private final Optional<RangeTest> reported;
  private final RangeFigures range;
  private final MetricCollector collector;
  private final Trip trip;

  /**
   * Creates the metrics of a trip.
   *
   * @param test the range test of this car
   * @param reported the range test of the reported car, whose speed applies to all unless the trip
   *     states one
   */
  TripMetrics(
      Trip trip,
      Recording recording,
      Optional<RangeTest> test,
      Optional<RangeTest> reported,
      RangeFigures range,
      MetricCollector collector) {
    this.trip = trip;
    this.recording = recording;
    this.test = test;
    this.reported = reported;
    this.range = range;
    this.collector = collector;
  }

  void measure() {
    Optional<Estimate> full = range.fullRange().estimate();
    Optional<Estimate> speed = speed();
    Optional<ChargeTimes> clock = recording.clock();
    if (full.isEmpty()) {
      withhold(range.fullRange().withheld().orElseThrow());
    } else if (speed.isEmpty()) {
      withhold("the average speed of the reported car's range test is not known");
    } else if (clock.isEmpty()) {
      withhold(recording.whyNoClock());
    } else {
      TripTask task = TripTask.of(trip, full.get().value() / 100);
      plan(task, clock.get(), speed.get());
    }
  }

  private Optional<Estimate> speed() {
    return trip.kilometresPerHour().isPresent()
        ? Optional.of(Estimate.exactly(trip.kilometresPerHour().getAsDouble()))
        : reported.flatMap(t -> DriveSpeed.of(t.facts()));
  }

  private void withhold(String reason) {
    TripMetricNames.OF_THE_WHOLE.forEach(metric -> collector.withheld(metric, reason));
  }

  private void plan(TripTask task, ChargeTimes clock, Estimate speed) {
    TripSearch search = new TripSearch(clock, task);
    Optional<TripPlan> best = search.best();
    if (best.isEmpty()) {
      withhold(noPlan(trip, recording));
      return;
    }
    TripTimes times = new TripTimes(task, best.get());
    double hours = SECONDS_PER_HOUR * trip.distance().kilometres();
    ToDoubleFunction<Draw> driving = d -> hours / d.drive().speedWithin(speed.bounds());
    double overhead = best.get().stops().size() * trip.secondsPerStop();
    add(TripMetricNames.TIME, d -> times.charging(d) + driving.applyAsDouble(d) + overhead);
    add(TripMetricNames.DRIVING, driving);
    add(TripMetricNames.CHARGING, times::charging);
    add(TripMetricNames.STOPS, Estimate.exactly(best.get().stops().size()));
    add(TripMetricNames.ARRIVAL, times::arrival);
    nextBest(search, best.get());
    List<Interval> flat = UnplugRanges.within(clock, task, best.get(), FLAT_SECONDS);
    for (int k = 0; k < flat.size(); k++) {
      stop(times, best.get(), k, flat.get(k));
    }
  }

  private void add(Metric metric, ToDoubleFunction<Draw> quantity) {
    collector.add(metric, recording.measure(quantity), rows(), List.of(caveat()));
  }

  private void add(Metric metric, Estimate estimate) {
    collector.measured(metric, estimate, rows(), List.of(caveat()));
  }

  /** A plan depends on the whole session, so on every state-of-charge reading. */
  private List<RowRef> rows() {
    Trace soc = recording.soc().orElseThrow();
    List<RowRef> rows = new ArrayList<>(range.fullRange().rows());
    IntStream.range(0, soc.size()).mapToObj(soc::row).forEach(rows::add);
    if (trip.kilometresPerHour().isEmpty()) {
      reported.ifPresent(t -> rows.addAll(DriveSpeed.rows(t.facts())));
    }
    return rows;
  }

  private Caveat caveat() {
    String lost =
        PlugInMetrics.warmStart(recording, collector)
            .flatMap(WarmStart::certainLoss)
            .map(
                s ->
                    " Each stop is taken without a climb of its own where it begins above the one"
                        + " that the session began with, which took "
                        + recording.formatter().value(s, Unit.SECOND)
                        + " more than the pace after it; a stop may lose as much.")
            .orElse("");
    return new Caveat(
        Caveat.Kind.PLAN,
        driven() + overheadText() + lost,
        "A plan is not a promise: it takes every stop to charge as the session did at that state of"
            + " charge, with a free station, and the road to be driven as the range test was.");
  }

  /** Describes the speed and its source. */
  private String driven() {
    String speed = "The trip is driven at " + words(speed().orElseThrow());
    if (trip.kilometresPerHour().isPresent()) {
      return speed + ", as the report asks, and takes what the range test took at its own speed.";
    }
    if (test.equals(reported)) {
      return speed + ", the average of the range test.";
    }
    String own =
        test.flatMap(t -> DriveSpeed.of(t.facts()))
            .map(v -> " at " + words(v))
            .orElse(" at a speed that is not known");
    return speed
        + ", the average of the reported car's range test, as all trips of the report are; what it"
        + " takes is what this car took in its own,"
        + own
        + ".";
  }

  private String overheadText() {
    return trip.overhead() == Trip.Overhead.MEASURED
        ? " Beside charging a stop takes "
            + recording.formatter().value(Estimate.exactly(trip.secondsPerStop()), Unit.SECOND)
            + ", as that of the reported session did from arriving to leaving."
        : "";
  }

  private String words(Estimate speed) {
    return recording.formatter().value(speed, Unit.KILOMETRE_PER_HOUR);
  }

  private void nextBest(TripSearch search, TripPlan best) {
    int stops = best.stops().size();
    Optional<TripPlan> other = Optional.empty();
    for (int count : new int[] {stops - 1, stops + 1}) {
      Optional<TripPlan> plan = count < 0 ? Optional.empty() : search.best(count);
      boolean faster =
          plan.isPresent()
              && (other.isEmpty() || plan.get().stopSeconds() < other.get().stopSeconds());
      other = faster ? plan : other;
    }
    if (other.isEmpty()) {
      String reason = "no plan has one stop fewer or one more";
      collector.withheld(TripMetricNames.OTHER_STOPS, reason);
      collector.withheld(TripMetricNames.OTHER_TIME, reason);
      return;
    }
    add(TripMetricNames.OTHER_STOPS, Estimate.exactly(other.get().stops().size()));
    double more = other.get().stopSeconds() - best.stopSeconds();
    add(TripMetricNames.OTHER_TIME, Estimate.exactly(more));
  }

  private void stop(TripTimes times, TripPlan plan, int k, Interval flat) {
    TripPlan.Stop stop = plan.stops().get(k);
    int number = k + 1;
    add(TripMetricNames.kilometre(number), Estimate.exactly(stop.kilometre()));
    add(
        TripMetricNames.stop(number, "arrival_soc", "number.stop_arrival_soc"),
        d -> times.arrivalAt(d, k));
    add(
        TripMetricNames.stop(number, "unplug_soc", "number.stop_unplug_soc"),
        Estimate.exactly(stop.unplugPercent()));
    add(TripMetricNames.charging(number), d -> times.chargingAt(d, k));
    add(
        TripMetricNames.stop(number, "unplug_soc_from", "number.stop_unplug_soc_from"),
        Estimate.exactly(flat.low()));
    add(
        TripMetricNames.stop(number, "unplug_soc_to", "number.stop_unplug_soc_to"),
        Estimate.exactly(flat.high()));
  }

  static String noPlan(Trip trip, Recording recording) {
    Trace soc = recording.soc().orElseThrow();
    return "no plan keeps "
        + trip.reserveSoc()
        + " % in reserve with a station every "
        + trip.spacing().words()
        + " and stays within the "
        + recording.percent(soc.firstValue(), soc)
        + " to "
        + recording.percent(soc.lastValue(), soc)
        + " that the session went through";
  }
}
