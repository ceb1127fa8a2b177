package taperbook.metric.bounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Method;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * A counter in steps of 0.1 kWh, with bounds by hand by the rules of {@link MonotoneBounds}.
 *
 * <p>With 0, 1 and 3 kWh at 0, 60 and 120 s the slowest rates are 0.9 and 1.9 kWh/min and the
 * fastest 1.1 and 2.1 kWh/min. Each gap has the slowest and the fastest rate of both.
 */
final class EnergyCounterTest {
  private static Trace trace(double[] seconds, double... values) {
    int[] lines = new int[values.length];
    for (int i = 0; i < lines.length; i++) {
      lines[i] = i + 2;
    }
    return new Trace("r", seconds, values, lines, 0.05, 0);
  }

  private static EnergyCounter readLater() {
    return new EnergyCounter(trace(new double[] {60, 120}, 1, 3));
  }

  private static EnergyCounter notReset() {
    return new EnergyCounter(trace(new double[] {0, 60}, 5, 6));
  }

  @Test
  void a_counter_with_a_late_first_reading_started_at_zero() {
    EnergyCounter counter = readLater();
    assertThat(counter.span()).isEqualTo(new Interval(0, 120));
    // Half a minute after 0 and half a minute before 1: 0.4 to 0.6 kWh; before 3: 1.9 to 2.1 kWh.
    check(counter.between(30, 90), 1.5, 1.9 - 0.6, 2.1 - 0.4);
    check(counter.between(60, 120), 2, 2.95 - 1.05, 3.05 - 0.95);
    check(counter.between(0, 30), 0.5, 0.4 - 0.05, 0.6 + 0.05);
  }

  @Test
  void only_differences_of_a_counter_without_reset_are_used() {
    EnergyCounter counter = notReset();
    assertThat(counter.span()).isEqualTo(new Interval(0, 60));
    check(counter.between(0, 60), 1, 5.95 - 5.05, 6.05 - 4.95);
  }

  @Test
  void energy_is_not_negative() {
    check(notReset().between(0, 0), 0, 0, 0.1);
  }

  @Test
  void the_origin_is_the_readings_around_each_end() {
    assertThat(readLater().rows(30, 90)).containsExactly(row(2), row(2), row(3));
    assertThat(readLater().rows(60, 120)).containsExactly(row(2), row(3));
    assertThat(readLater().method()).isEqualTo(Method.ENERGY_COUNTER);
  }

  private static RowRef row(int line) {
    return new RowRef("r", line);
  }

  private static void check(Estimate estimate, double value, double low, double high) {
    assertThat(estimate.value()).isCloseTo(value, within(1e-9));
    assertThat(estimate.bounds().low()).isCloseTo(low, within(1e-9));
    assertThat(estimate.bounds().high()).isCloseTo(high, within(1e-9));
  }
}
