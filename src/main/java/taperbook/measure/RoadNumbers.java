package taperbook.measure;

import java.util.Optional;
import taperbook.model.RangeTest;
import taperbook.model.ReportPlan;
import taperbook.model.RoadTopic;
import taperbook.model.RoadWishes;
import taperbook.model.Unit;

/** The numbers of the road that a report asks for; none unless it does. */
final class RoadNumbers {
  private final Recording recording;
  private final Optional<RangeTest> test;
  private final RangeFigures range;
  private final Ledger ledger;

  RoadNumbers(Recording recording, Optional<RangeTest> test, RangeFigures range, Ledger ledger) {
    this.recording = recording;
    this.test = test;
    this.range = range;
    this.ledger = ledger;
  }

  void measure(ReportPlan.Wishes wishes, Unit units) {
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
    road.trip().ifPresent(trip -> new TripNumbers(recording, test, range, ledger).measure(trip));
    if (road.wants(RoadTopic.COST)) {
      new CostNumbers(recording, range, ledger).measure(units);
    }
    if (road.wants(RoadTopic.STANDARD_RANGE)) {
      new StandardRangeNumbers(test, range, ledger).measure();
      new TwoWayNumbers(test, ledger).measure();
    }
  }
}
