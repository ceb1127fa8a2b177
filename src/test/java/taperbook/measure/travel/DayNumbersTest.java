package taperbook.measure.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.measure.Sessions;
import taperbook.measure.course.Courses;
import taperbook.measure.ledger.Ledger;
import taperbook.measure.recording.RangeFigures;
import taperbook.measure.recording.Recording;
import taperbook.model.Basis;
import taperbook.model.Channel;
import taperbook.model.ConditionItem;
import taperbook.model.DisplayRounding;
import taperbook.model.Estimate;
import taperbook.model.LibraryPlan;
import taperbook.model.Numbers;
import taperbook.model.RangeItem;
import taperbook.model.RangeTest;
import taperbook.model.Session;
import taperbook.model.Trip;
import taperbook.model.Unit;
import taperbook.words.Wording;

final class DayNumbersTest {
  /** 400 km on 100 %, without any doubt. */
  private static final RangeTest DRIVE =
      Sessions.rangeTest(
          Map.of(
              RangeItem.DISTANCE, Estimate.exactly(400),
              RangeItem.START_SOC, Estimate.exactly(100),
              RangeItem.END_SOC, Estimate.exactly(0)));

  /** From 5 % on, 2 % a minute. */
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
        Recording.of(session, Optional.of(DRIVE), Courses.FEW, new Wording(Unit.KILOMETRE));
    RangeFigures range = RangeFigures.of(Optional.of(DRIVE), DisplayRounding.NEAREST, Basis.DRIVEN);
    Ledger ledger = new Ledger("test", List.of());
    DayNumbers.measure(Trip.day(Unit.KILOMETRE), recording, range, ledger);
    return ledger.numbers();
  }

  @Test
  void a_day_at_constant_power_takes_the_charge_it_needs_and_the_fewest_stops() {
    // 250 % are driven, 90 % of them are there: 160 % at 2 % a minute. From 10 to 90 % are 300 km
    // between stations, so that two stops reach 350 + 300 + 320 km and it takes three.
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
  void a_session_that_went_through_too_little_gives_no_day() {
    assertThat(numbers(20).get(LibraryPlan.DAY_TIME).withheld().orElseThrow())
        .startsWith("no plan keeps 10 % in reserve");
  }
}
