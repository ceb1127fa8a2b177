package taperbook.measure.travel;

import java.util.Optional;
import taperbook.measure.ledger.Ledger;
import taperbook.measure.recording.RangeFigures;
import taperbook.measure.recording.Recording;
import taperbook.model.RangeTest;
import taperbook.model.ReportPlan;
import taperbook.model.RoadTopic;
import taperbook.model.RoadWishes;
import taperbook.model.Unit;

/** The numbers of the road that a report asks for; none unless it does. */
public final class RoadNumbers {
  private final Recording recording;
  private final Optional<RangeTest> test;
  private final Optional<RangeTest> reported;
  private final RangeFigures range;
  private final RangeFigures ofFirst;
  private final Ledger ledger;

  /**
   * Numbers of the road.
   *
   * @param test the first range test of this car
   * @param ofFirst figures of that drive alone, which its weather corrects
   * @param reported the range test of the reported car
   */
  public RoadNumbers(
      Recording recording,
      Optional<RangeTest> test,
      Optional<RangeTest> reported,
      RangeFigures range,
      RangeFigures ofFirst,
      Ledger ledger) {
    this.recording = recording;
    this.test = test;
    this.reported = reported;
    this.range = range;
    this.ofFirst = ofFirst;
    this.ledger = ledger;
  }

  /**
   * Enters the numbers: all for the reported session; for one that it is held against only the trip
   * and the cost, which are told side by side.
   */
  public void measure(ReportPlan plan) {
    Unit units = plan.style().units();
    RoadWishes road = plan.wishes().road();
    if (recording.session().name().equals(plan.subject().session())) {
      ofTheReported(plan.wishes(), units);
    }
    road.trip()
        .ifPresent(
            trip -> new TripNumbers(trip, recording, test, reported, range, ledger).measure());
    if (road.wants(RoadTopic.COST)) {
      new CostNumbers(recording, range, ledger).measure(units);
    }
  }

  private void ofTheReported(ReportPlan.Wishes wishes, Unit units) {
    RoadWishes road = wishes.road();
    if (road.wants(RoadTopic.PLUG_IN)) {
      new PlugInNumbers(recording, range, ledger).measure(RoadWishes.plugInDistances(units));
    }
    if (road.wants(RoadTopic.NEXT_LEG)) {
      new NextLegNumbers(recording, range, ledger).measure(wishes.distances(), road.reserveSoc());
    }
    if (road.wants(RoadTopic.PER_MINUTE)) {
      new PerMinuteNumbers(recording, range, ledger).measure();
    }
    if (road.wants(RoadTopic.STANDARD_RANGE)) {
      new StandardRangeNumbers(test, ofFirst, ledger).measure();
      new TwoWayNumbers(test, ledger).measure();
    }
  }
}
