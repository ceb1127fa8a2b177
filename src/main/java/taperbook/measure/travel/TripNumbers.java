package taperbook.measure.travel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import taperbook.measure.ledger.Entry;
import taperbook.measure.ledger.Ledger;
import taperbook.measure.recording.RangeFigures;
import taperbook.measure.recording.Recording;
import taperbook.measure.road.ChargeClock;
import taperbook.measure.road.TripPlan;
import taperbook.measure.road.TripSearch;
import taperbook.measure.road.TripTask;
import taperbook.measure.road.UnplugRanges;
import taperbook.model.Caveat;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.RangeItem;
import taperbook.model.RangeTest;
import taperbook.model.RowRef;
import taperbook.model.Trace;
import taperbook.model.Trip;
import taperbook.model.Unit;

/** The fastest plan for a trip: its stops, its time, and how flat the optimum is. */
final class TripNumbers {
  /** How much slower is still as good: a minute. */
  private static final double FLAT_SECONDS = 60;

  private static final int SECONDS_PER_HOUR = 3600;

  private final Recording recording;
  private final Optional<RangeTest> test;
  private final RangeFigures range;
  private final Ledger ledger;

  TripNumbers(Recording recording, Optional<RangeTest> test, RangeFigures range, Ledger ledger) {
    this.recording = recording;
    this.test = test;
    this.range = range;
    this.ledger = ledger;
  }

  void measure(Trip trip) {
    Optional<Estimate> full = range.fullRange().estimate();
    Optional<Estimate> speed = test.flatMap(t -> t.facts().amount(RangeItem.AVERAGE_SPEED));
    Optional<ChargeClock> clock = recording.soc().flatMap(ChargeClock::of);
    if (full.isEmpty()) {
      withhold(range.fullRange().withheld().orElseThrow());
    } else if (speed.isEmpty()) {
      withhold("the average speed of the range test is not known");
    } else if (clock.isEmpty()) {
      withhold(recording.whyNoClock());
    } else {
      TripTask task = TripTask.of(trip, full.get().value() / 100);
      plan(trip, task, clock.get(), speed.get().value());
    }
  }

  private void withhold(String reason) {
    TripEntries.OF_THE_WHOLE.forEach(entry -> ledger.withheld(entry, reason));
  }

  private void plan(Trip trip, TripTask task, ChargeClock clock, double speed) {
    TripSearch search = new TripSearch(clock, task);
    Optional<TripPlan> best = search.best();
    if (best.isEmpty()) {
      withhold(noPlan(trip, recording.soc().orElseThrow()));
      return;
    }
    TripTimes times = new TripTimes(recording, task, range.fullRange().estimate().orElseThrow());
    Optional<Estimate> charging = times.charging(best.get());
    if (charging.isEmpty()) {
      withhold("the state of charge gained is not more than its display can tell");
      return;
    }
    double driving = SECONDS_PER_HOUR * trip.distance().kilometres() / speed;
    double beside = best.get().stops().size() * trip.secondsPerStop();
    enter(TripEntries.TIME, plus(charging.get(), driving + beside));
    enter(TripEntries.DRIVING, Estimate.exactly(driving));
    enter(TripEntries.CHARGING, charging.get());
    enter(TripEntries.STOPS, Estimate.exactly(best.get().stops().size()));
    enter(TripEntries.ARRIVAL, times.arrival(best.get()));
    nextBest(search, best.get());
    List<Interval> flat = UnplugRanges.within(clock, task, best.get(), FLAT_SECONDS);
    for (int k = 0; k < flat.size(); k++) {
      stop(times, best.get(), k, flat.get(k));
    }
  }

  private static Estimate plus(Estimate estimate, double more) {
    return estimate.minus(Estimate.exactly(-more));
  }

  private void enter(Entry entry, Estimate estimate) {
    ledger.measured(entry, estimate, rows(), List.of(caveat()));
  }

  /** A plan weighs the whole session, and with it every reading of the state of charge. */
  private List<RowRef> rows() {
    Trace soc = recording.soc().orElseThrow();
    List<RowRef> rows = new ArrayList<>(range.fullRange().rows());
    IntStream.range(0, soc.size()).mapToObj(soc::row).forEach(rows::add);
    test.ifPresent(t -> rows.addAll(t.facts().rows(RangeItem.AVERAGE_SPEED)));
    return rows;
  }

  private Caveat caveat() {
    String lost =
        PlugInNumbers.warmStart(recording, ledger)
            .filter(WarmStart::isFaster)
            .flatMap(WarmStart::lost)
            .map(
                s ->
                    " Each stop is taken without a climb of its own where it begins above the one"
                        + " that the session began with, which took "
                        + recording.wording().value(s.seconds(), Unit.SECOND)
                        + " more than the pace after it; a stop may lose as much.")
            .orElse("");
    return new Caveat(
        Caveat.Kind.PLAN,
        "A plan is not a promise: it takes every stop to charge as the session did at that state of"
            + " charge, with a free station, and the road to be driven as the range test was."
            + lost);
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
      ledger.withheld(TripEntries.OTHER_STOPS, reason);
      ledger.withheld(TripEntries.OTHER_TIME, reason);
      return;
    }
    enter(TripEntries.OTHER_STOPS, Estimate.exactly(other.get().stops().size()));
    double more = other.get().stopSeconds() - best.stopSeconds();
    enter(TripEntries.OTHER_TIME, Estimate.exactly(more));
  }

  private void stop(TripTimes times, TripPlan plan, int k, Interval flat) {
    TripPlan.Stop stop = plan.stops().get(k);
    int number = k + 1;
    enter(TripEntries.kilometre(number), Estimate.exactly(stop.kilometre()));
    enter(
        TripEntries.stop(number, "arrival_soc", "number.stop_arrival_soc"),
        times.arrivalAt(plan, k));
    enter(
        TripEntries.stop(number, "unplug_soc", "number.stop_unplug_soc"),
        Estimate.exactly(stop.unplugPercent()));
    enter(TripEntries.charging(number), times.chargingAt(plan, k).orElseThrow());
    enter(
        TripEntries.stop(number, "unplug_soc_from", "number.stop_unplug_soc_from"),
        Estimate.exactly(flat.low()));
    enter(
        TripEntries.stop(number, "unplug_soc_to", "number.stop_unplug_soc_to"),
        Estimate.exactly(flat.high()));
  }

  private String noPlan(Trip trip, Trace soc) {
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
