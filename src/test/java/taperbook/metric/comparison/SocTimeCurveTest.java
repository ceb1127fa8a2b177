package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import taperbook.session.Trace;

final class SocTimeCurveTest {
  private static final Trace RISING = traceOf(0, 10, 100, 20, 200, 40);

  private static Trace traceOf(double... secondsAndValues) {
    int n = secondsAndValues.length / 2;
    double[] seconds = new double[n];
    double[] values = new double[n];
    for (int i = 0; i < n; i++) {
      seconds[i] = secondsAndValues[2 * i];
      values[i] = secondsAndValues[2 * i + 1];
    }
    return new Trace("r", seconds, values, new int[n], 0, 0);
  }

  @Test
  void it_covers_the_time_in_which_both_channels_were_recorded() {
    SocTimeCurve curve = new SocTimeCurve(RISING, traceOf(50, 90, 150, 80));
    assertThat(curve.from()).isEqualTo(15);
    assertThat(curve.to()).isEqualTo(30);
    assertThat(curve.corners()).containsExactly(15, 20, 30);
  }

  @Test
  void a_charge_between_readings_is_interpolated_linearly() {
    SocTimeCurve curve = new SocTimeCurve(RISING, traceOf(0, 90, 200, 80));
    assertThat(curve.second(10)).isZero();
    assertThat(curve.second(12.5)).isEqualTo(25);
    assertThat(curve.second(20)).isEqualTo(100);
    assertThat(curve.second(25)).isEqualTo(125);
    assertThat(curve.second(40)).isEqualTo(200);
  }

  @Test
  void after_a_fall_the_first_time_of_a_charge_is_used() {
    Trace soc = traceOf(0, 10, 100, 20, 200, 18, 300, 30);
    SocTimeCurve curve = new SocTimeCurve(soc, traceOf(0, 90, 300, 80));
    assertThat(curve.second(19)).isCloseTo(90, within(1e-9));
    assertThat(curve.second(20)).isCloseTo(100, within(1e-9));
    // From 18 % at 200 s it rises by 0.12 % per second.
    assertThat(curve.second(21)).isCloseTo(200 + 3 / 0.12, within(1e-9));
    assertThat(curve.corners()).containsExactly(10, 20, 30);
  }

  @Test
  void channels_need_a_common_stretch_of_time() {
    assertThat(SocTimeCurve.exists(RISING, traceOf(199, 1, 300, 2))).isTrue();
    assertThat(SocTimeCurve.exists(RISING, traceOf(200, 1, 300, 2))).isFalse();
    assertThat(SocTimeCurve.exists(RISING, traceOf(-20, 1, 0, 2))).isFalse();
  }
}
