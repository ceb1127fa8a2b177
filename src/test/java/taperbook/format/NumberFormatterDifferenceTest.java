package taperbook.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.session.Origin;

final class NumberFormatterDifferenceTest {
  @Test
  void less_time_is_faster() {
    assertThat(text("time_soc_15_78", Unit.SECOND, -220, -240, -200))
        .containsExactly("A quicker by 3:40", "3:20\u20134:00");
    assertThat(text("time_soc_15_78", Unit.SECOND, 220, 200, 240))
        .containsExactly("B quicker by 3:40", "3:20\u20134:00");
  }

  @Test
  void a_longer_hold_and_a_higher_power_are_more() {
    assertThat(text("peak_hold_time", Unit.SECOND, 61, 50, 70))
        .containsExactly("A more by 1:01", "0:50\u20131:10");
    assertThat(text("average_power_15_78", Unit.KILOWATT, -14.6, -16, -13))
        .containsExactly("B more by 14.6", "13.0\u201316.0");
  }

  @Test
  void an_interval_across_zero_has_no_leader() {
    assertThat(text("time_soc_15_78", Unit.SECOND, -5, -20, 10))
        .containsExactly("cannot tell", "\u22120:20 to 0:10");
  }

  private static List<String> text(String id, Unit unit, double value, double low, double high) {
    ReportNumber number =
        new ReportNumber(
            Metric.charging(id + "_difference", id, unit, Method.DIFFERENCE),
            new Outcome.Measured(new Estimate(value, new Interval(low, high)), 0.95),
            new Origin("one", "other", List.of()),
            List.of());
    NumberFormatter.Difference text =
        new NumberFormatter(Unit.KILOMETRE).difference(number, "A", "B");
    return List.of(text.words(), text.ends());
  }
}
