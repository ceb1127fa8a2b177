package taperbook.metric.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.session.Trace;

/** More than a minute, and more than 6 % of the recorded time. */
final class GapRuleTest {
  @ParameterizedTest
  @CsvSource({
    // 6 % of 2000 s are 120 s.
    "120, 2000, false",
    "121, 2000, true",
    // 6 % of 500 s are less than a minute.
    "60, 500, false",
    "61, 500, true",
    // The recorded time starts with the first reading.
    "121, 2018, false",
  })
  void a_gap_is_wide_if_it_exceeds_both_limits(double gap, double session, boolean wide) {
    double[] seconds = {100, 100 + gap, 100 + session};
    Trace trace = new Trace("r", seconds, new double[3], new int[] {2, 3, 4}, 0, 0);
    assertThat(GapRule.isWide(trace, 0)).isEqualTo(wide);
    assertThat(GapRule.isWide(trace, 1)).isTrue();
    assertThat(GapRule.isWide(trace, 2)).as("after the last reading").isFalse();
  }
}
