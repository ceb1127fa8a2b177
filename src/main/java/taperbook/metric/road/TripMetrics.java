package taperbook.metric.road;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.DriveSpeed;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.metric.trip.TripPlan;
import taperbook.metric.trip.TripSearch;
import taperbook.metric.trip.UnplugRanges;
import taperbook.plan.Trip;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Metric;
import taperbook.session.Caveat;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;
import taperbook.session.RowRun;
import taperbook.session.Trace;

/**
 * Computes the fastest plan for a trip: its stops, its time, and how flat the optimum is. All cars
 * of a report drive at the same speed, so that times differ only by consumption and charging.
 */
final class TripMetrics {
  /** Delay that still counts as optimal: a minute. */
  private static final double FLAT_SECONDS = 60;

  private static final int SECONDS_PER_HOUR = 3600;

  private static final Message NO_SPEED =
      Message.of("metric.trip_metrics.average_speed_of_reported_car");

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
    Finding<PlannedTrip> planned =
        range
            .fullRange()
            .flatMap(
                full ->
                    Finding.of(speed(), NO_SPEED)
                        .flatMap(v -> PlannedTrip.of(trip, recording, full)));
    planned
        .value()
        .ifPresentOrElse(
            this::plan,
            () ->
                TripMetricNames.OF_THE_WHOLE.forEach(
                    metric -> collector.withheld(metric, planned.reason().orElseThrow())));
  }

  private Optional<Estimate> speed() {
    return trip.kilometresPerHour().isPresent()
        ? Optional.of(Estimate.exactly(trip.kilometresPerHour().getAsDouble()))
        : reported.flatMap(t -> DriveSpeed.of(t.facts()));
  }

  private void plan(PlannedTrip planned) {
    TripPlan best = planned.best();
    Interval speed = speed().orElseThrow().bounds();
    TripTimes times = planned.times();
    double hours = SECONDS_PER_HOUR * trip.distance().kilometres();
    ToDoubleFunction<Draw> driving = d -> hours / d.drive().speedWithin(speed);
    double overhead = best.stops().size() * trip.secondsPerStop();
    add(TripMetricNames.TIME, d -> times.charging(d) + driving.applyAsDouble(d) + overhead);
    add(TripMetricNames.DRIVING, driving);
    add(TripMetricNames.CHARGING, times::charging);
    add(TripMetricNames.STOPS, best.stops().size());
    add(TripMetricNames.ARRIVAL, times::arrival);
    nextBest(planned.search(), best);
    List<Interval> flat = UnplugRanges.within(planned.clock(), planned.task(), best, FLAT_SECONDS);
    for (int k = 0; k < flat.size(); k++) {
      stop(times, best, k, flat.get(k));
    }
  }

  private void add(Metric metric, ToDoubleFunction<Draw> quantity) {
    collector.add(metric, Finding.of(recording.measure(quantity), rows()), List.of(caveat()));
  }

  private void add(Metric metric, double exactly) {
    collector.measured(metric, Finding.of(Estimate.exactly(exactly), rows()), List.of(caveat()));
  }

  /** A plan depends on the whole session, so on every state-of-charge reading. */
  private List<RowRef> rows() {
    Trace soc = recording.soc().orElseThrow();
    List<RowRef> speed =
        trip.kilometresPerHour().isPresent()
            ? List.of()
            : reported.map(t -> DriveSpeed.rows(t.facts())).orElse(List.of());
    List<RowRef> charge = soc.rows(0, soc.size() - 1);
    return RowRun.union(RowRun.union(range.fullRange().rows(), charge), speed);
  }

  private Caveat caveat() {
    String lost =
        PlugInMetrics.warmStart(recording, collector)
            .flatMap(WarmStart::certainLoss)
            .map(
                s ->
                    Texts.of(
                        "metric.trip_metrics.each_stop_is_taken_without",
                        recording.formatter().value(s, Unit.SECOND)))
            .orElse("");
    return new Caveat(
        Caveat.Kind.PLAN,
        Message.of("metric.trip_metrics.driven_beside_lost", driven(), overheadText(), lost),
        Message.of("metric.trip_metrics.plan_is_not_promise_it"));
  }

  /** Describes the speed and its source. */
  private String driven() {
    String speed = Texts.of("metric.trip_metrics.trip_is_driven_at", words(speed().orElseThrow()));
    if (trip.kilometresPerHour().isPresent()) {
      return Texts.of("metric.trip_metrics.as_report_asks_and_takes", speed);
    }
    if (test.equals(reported)) {
      return Texts.of("metric.trip_metrics.average_of_range_test", speed);
    }
    String own =
        test.flatMap(t -> DriveSpeed.of(t.facts()))
            .map(v -> Texts.of("metric.trip_metrics.at", words(v)))
            .orElse(Texts.of("metric.trip_metrics.at_speed_that_is_not"));
    return Texts.of("metric.trip_metrics.average_of_reported_car_s", speed, own);
  }

  private String overheadText() {
    return trip.overhead() == Trip.Overhead.MEASURED
        ? Texts.of(
            "metric.trip_metrics.beside_charging_stop_takes_as",
            recording.formatter().value(Estimate.exactly(trip.secondsPerStop()), Unit.SECOND))
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
      Message reason = Message.of("metric.trip_metrics.no_plan_has_one_stop");
      collector.withheld(TripMetricNames.OTHER_STOPS, reason);
      collector.withheld(TripMetricNames.OTHER_TIME, reason);
      return;
    }
    add(TripMetricNames.OTHER_STOPS, other.get().stops().size());
    double more = other.get().stopSeconds() - best.stopSeconds();
    add(TripMetricNames.OTHER_TIME, more);
  }

  private void stop(TripTimes times, TripPlan plan, int k, Interval flat) {
    TripPlan.Stop stop = plan.stops().get(k);
    int number = k + 1;
    add(TripMetricNames.kilometre(number), stop.kilometre());
    add(
        TripMetricNames.stop(number, "arrival_soc", "number.stop_arrival_soc"),
        d -> times.arrivalAt(d, k));
    add(TripMetricNames.stop(number, "unplug_soc", "number.stop_unplug_soc"), stop.unplugPercent());
    add(TripMetricNames.charging(number), d -> times.chargingAt(d, k));
    add(TripMetricNames.stop(number, "unplug_soc_from", "number.stop_unplug_soc_from"), flat.low());
    add(TripMetricNames.stop(number, "unplug_soc_to", "number.stop_unplug_soc_to"), flat.high());
  }
}
