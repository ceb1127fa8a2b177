package taperbook.metric.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.format.NumberFormatter;
import taperbook.metric.Sessions;
import taperbook.metric.course.Courses;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.plan.Basis;
import taperbook.plan.LibraryPlan;
import taperbook.plan.Trip;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Numbers;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.DisplayRounding;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

final class DayMetricsTest {
  /** 400 km on 100 %, without uncertainty. */
  private static final RangeTest DRIVE =
      Sessions.rangeTest(
          Map.of(
              RangeItem.DISTANCE, Estimate.exactly(400),
              RangeItem.START_SOC, Estimate.exactly(100),
              RangeItem.END_SOC, Estimate.exactly(0)));

  /** From 10 %, 2 % per minute. */
  private static Numbers numbers(double endSoc) {
    double[] times =
        IntStream.rangeClosed(0, (int) (endSoc - 5)).mapToDouble(i -> 30.0 * i).toArray();
    Session session =
        Sessions.session()
            .text(ConditionItem.DISPLAY_ROUNDS, "nearest")
            .text(ConditionItem.ROWS_WRITTEN, "at set times")
            .channel(Channel.SOC, 0.05, times, Arrays.stream(times).map(t -> 5 + t / 30).toArray())
            .build();
    Recording recording =
        Recording.of(session, Optional.of(DRIVE), Courses.FEW, new NumberFormatter(Unit.KILOMETRE));
    RangeFigures range = RangeFigures.of(Optional.of(DRIVE), DisplayRounding.NEAREST, Basis.DRIVEN);
    MetricCollector collector = new MetricCollector("test", List.of());
    DayMetrics.measure(Trip.day(Unit.KILOMETRE), recording, range, collector);
    return collector.numbers();
  }

  @Test
  void a_day_at_constant_power_has_the_required_charge_and_the_fewest_stops() {
    // The day needs 250 %, of which 90 % are available: 160 % at 2 % per minute. 10 to 90 % are 300
    // km between stations, so that two stops reach 350 + 300 + 320 km and three are required.
    Numbers day = numbers(90);
    double seconds = 3600 * 1000 / 110.0 + 160 / 2.0 * 60 + 3 * 300;
    Estimate time = day.estimate(LibraryPlan.DAY_TIME).orElseThrow();
    assertThat(time.value()).isCloseTo(seconds, within(15.0));
    assertThat(time.bounds().contains(seconds)).as("" + time).isTrue();
    assertThat(day.estimate(LibraryPlan.DAY_STOPS).orElseThrow()).isEqualTo(Estimate.exactly(3));
    assertThat(day.estimate(LibraryPlan.DAY_MORE_CONSUMPTION).orElseThrow().value())
        .isCloseTo(25 / 2.0 * 60, within(10.0));
    assertThat(day.estimate(LibraryPlan.DAY_SHORT_STOPS).orElseThrow().value())
        .isCloseTo(-360, within(1.0));
    assertThat(day.estimate(LibraryPlan.DAY_LONG_STOPS).orElseThrow().value())
        .isCloseTo(900, within(1.0));
  }

  @Test
  void a_session_of_too_little_charge_has_no_day() {
    assertThat(numbers(20).get(LibraryPlan.DAY_TIME).withheld().orElseThrow())
        .startsWith("no plan keeps 10 % in reserve");
  }
}
