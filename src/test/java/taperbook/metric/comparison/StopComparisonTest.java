package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.metric.course.Courses;
import taperbook.metric.recording.Finding;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Session;

/** A later stop compared with the first, in closed form: 60 kWh, 100 kW, and 80 kW from 40 %. */
final class StopComparisonTest {
  private static final int ROWS = 61;

  private static Session stop(String name, double later, double shift) {
    double[] seconds = new double[ROWS];
    double[] soc = new double[ROWS];
    double[] power = new double[ROWS];
    for (int i = 0; i < ROWS; i++) {
      soc[i] = 10 + shift + i;
      power[i] = soc[i] <= 40 ? 100 : later;
      // 0.6 kWh per 1 %.
      seconds[i] = i == 0 ? 0 : seconds[i - 1] + 0.6 * 3600 / power[i];
    }
    return Sessions.session()
        .named(name)
        .text(ConditionItem.DISPLAY_ROUNDS, "nearest")
        .text(ConditionItem.ROWS_WRITTEN, "at set times")
        .channel(Channel.SOC, 0.05, seconds, soc)
        .channel(Channel.POWER, 0.5, seconds, power)
        .build();
  }

  private static Courses courses(Session session) {
    return new Courses(session, List.of(), Courses.FOR_REPORT, 0);
  }

  @Test
  void a_throttled_stop_has_less_power_at_equal_charge() {
    Finding<StopComparison> stop =
        StopComparison.of(courses(stop("two", 80, 0)), courses(stop("one", 100, 0)), 0);
    Estimate ratio = stop.value().orElseThrow().ratio();
    // 30 % at 100 kW and 30 % at 80 kW, relative to 60 % at 100 kW.
    assertThat(ratio.value()).isCloseTo(90, within(0.5));
    assertThat(ratio.bounds().contains(90)).isTrue();
    assertThat(ratio.bounds().width()).isLessThan(1.5);
    assertThat(stop.value().orElseThrow().below()).hasSize(1);
    Interval below = stop.value().orElseThrow().below().get(0);
    assertThat(below.low()).isCloseTo(40.5, within(1.0));
    assertThat(below.high()).isCloseTo(70, within(0.5));
    assertThat(stop.rows()).isNotEmpty();
  }

  @Test
  void a_stop_equal_to_the_first_is_nowhere_below_it() {
    Finding<StopComparison> stop =
        StopComparison.of(courses(stop("two", 100, 5)), courses(stop("one", 100, 0)), 0);
    assertThat(stop.value().orElseThrow().ratio().bounds().contains(100)).isTrue();
    assertThat(stop.value().orElseThrow().below()).isEmpty();
  }

  @Test
  void stops_without_common_charge_are_not_compared() {
    Finding<StopComparison> stop =
        StopComparison.of(courses(stop("two", 100, 0)), courses(stop("one", 100, 60)), 0);
    assertThat(stop.reason().orElseThrow().text())
        .isEqualTo("the two stops share less than 1 % of state of charge");
  }
}
