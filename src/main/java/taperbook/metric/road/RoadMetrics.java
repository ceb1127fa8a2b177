package taperbook.metric.road;

import java.util.Optional;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.plan.ReportPlan;
import taperbook.plan.RoadTopic;
import taperbook.plan.RoadWishes;
import taperbook.quantity.Unit;
import taperbook.session.RangeTest;

/** Computes the road numbers that a report requests; none unless requested. */
public final class RoadMetrics {
  private final Recording recording;
  private final Optional<RangeTest> test;
  private final Optional<RangeTest> reported;
  private final RangeFigures range;
  private final RangeFigures ofFirst;
  private final MetricCollector collector;

  /**
   * Creates the road metrics of a session.
   *
   * @param test the first range test of this car
   * @param ofFirst figures of that drive alone, which are corrected for its weather
   * @param reported the range test of the reported car
   */
  public RoadMetrics(
      Recording recording,
      Optional<RangeTest> test,
      Optional<RangeTest> reported,
      RangeFigures range,
      RangeFigures ofFirst,
      MetricCollector collector) {
    this.recording = recording;
    this.test = test;
    this.reported = reported;
    this.range = range;
    this.ofFirst = ofFirst;
    this.collector = collector;
  }

  /**
   * Adds the numbers: all for the reported session; only trip and cost, which are shown side by
   * side, for a compared session.
   */
  public void measure(ReportPlan plan) {
    Unit units = plan.style().units();
    RoadWishes road = plan.wishes().road();
    if (recording.session().name().equals(plan.subject().session())) {
      ofTheReported(plan.wishes(), units);
    }
    road.trip()
        .ifPresent(
            trip -> new TripMetrics(trip, recording, test, reported, range, collector).measure());
    if (road.wants(RoadTopic.COST)) {
      new CostMetrics(recording, range, collector).measure(units);
    }
  }

  private void ofTheReported(ReportPlan.Wishes wishes, Unit units) {
    RoadWishes road = wishes.road();
    if (road.wants(RoadTopic.PLUG_IN)) {
      new PlugInMetrics(recording, range, collector).measure(RoadWishes.plugInDistances(units));
    }
    if (road.wants(RoadTopic.NEXT_LEG)) {
      new NextLegMetrics(recording, range, collector)
          .measure(wishes.distances(), road.reserveSoc());
    }
    if (road.wants(RoadTopic.PER_MINUTE)) {
      new PerMinuteMetrics(recording, range, collector).measure();
    }
    if (road.wants(RoadTopic.STANDARD_RANGE)) {
      new StandardRangeMetrics(test, ofFirst, collector).measure();
      new TwoWayMetrics(test, collector).measure();
    }
  }
}
