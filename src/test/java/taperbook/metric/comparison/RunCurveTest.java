package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.metric.course.Courses;
import taperbook.result.Curve;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;

/** Mean curves of exact runs; the interval of three runs by t(2) = 4.302652729911275. */
final class RunCurveTest {
  private static final double T_OF_TWO = 4.302652729911275;

  private static Courses run(Sessions session) {
    return new Courses(session.build(), Optional.empty(), Courses.FEW);
  }

  /** Readings without rounding at each per cent from a charge on; 0.6 kWh per 1 %. */
  private static Courses run(double from, double to, DoubleUnaryOperator power) {
    double[] soc =
        IntStream.iterate(0, i -> from + i < to, i -> i + 1).mapToDouble(i -> from + i).toArray();
    double[] charges = Arrays.copyOf(soc, soc.length + 1);
    charges[soc.length] = to;
    double[] seconds = new double[charges.length];
    for (int i = 1; i < seconds.length; i++) {
      double middle = power.applyAsDouble((charges[i] + charges[i - 1]) / 2);
      seconds[i] = seconds[i - 1] + 0.6 * 3600 * (charges[i] - charges[i - 1]) / middle;
    }
    double[] kilowatts = Arrays.stream(charges).map(power).toArray();
    return run(
        Sessions.session()
            .channel(Channel.SOC, 0, seconds, charges)
            .channel(Channel.POWER, 0, seconds, kilowatts));
  }

  @Test
  void three_runs_have_students_interval_about_their_mean() {
    Curve curve =
        RunCurve.of(List.of(run(10, 60, s -> 100), run(10, 60, s -> 104), run(10, 60, s -> 108)))
            .orElseThrow();
    // The standard deviation of 100, 104 and 108 is 4.
    double half = T_OF_TWO * 4 / Math.sqrt(3);
    for (int i = 0; i < curve.size(); i++) {
      assertThat(curve.x(i)).isEqualTo(10 + i / 2.0);
      assertThat(curve.y(i)).isCloseTo(104, within(0.1));
      assertThat(curve.low(i)).isCloseTo(104 - half, within(0.2));
      assertThat(curve.high(i)).isCloseTo(104 + half, within(0.2));
      assertThat(curve.wideGapAfter(i)).isFalse();
    }
  }

  @Test
  void two_runs_have_a_mean_without_an_interval() {
    Curve curve = RunCurve.of(List.of(run(10, 60, s -> 100), run(10, 60, s -> 108))).orElseThrow();
    for (int i = 0; i < curve.size(); i++) {
      assertThat(curve.y(i)).isCloseTo(104, within(0.1));
      assertThat(curve.low(i)).isEqualTo(curve.y(i));
      assertThat(curve.high(i)).isEqualTo(curve.y(i));
    }
  }

  @Test
  void an_interval_does_not_reach_below_zero() {
    Curve curve =
        RunCurve.of(List.of(run(10, 30, s -> 5), run(10, 30, s -> 40), run(10, 30, s -> 90)))
            .orElseThrow();
    assertThat(curve.low(20)).isZero();
    assertThat(curve.high(20)).isGreaterThan(100);
  }

  @Test
  void the_curve_covers_the_half_per_cents_of_all_runs() {
    DoubleUnaryOperator falling = s -> 160 - s;
    Curve curve = RunCurve.of(List.of(run(10.3, 60.2, falling), run(5, 70, falling))).orElseThrow();
    assertThat(curve.size()).isEqualTo(100);
    for (int i = 0; i < curve.size(); i++) {
      assertThat(curve.x(i)).isEqualTo(10.5 + i / 2.0);
    }
    for (int i = 2; i + 2 < curve.size(); i++) {
      assertThat(curve.y(i)).as("at %s", curve.x(i)).isCloseTo(160 - curve.x(i), within(0.3));
    }
  }

  @Test
  void a_display_that_rounds_up_reads_one_step_more_than_one_that_rounds_down() {
    // Power falls by 1 kW per 1 %, so that one step of charge is 1 kW.
    double[] levels =
        List.of("down", "nearest", "up").stream().mapToDouble(RunCurveTest::at40).toArray();
    assertThat(levels[0] - levels[1]).isCloseTo(0.5, within(0.25));
    assertThat(levels[0] - levels[2]).isCloseTo(1, within(0.4));
  }

  private static double at40(String rounds) {
    double[] seconds = IntStream.rangeClosed(0, 60).mapToDouble(i -> 20 * i).toArray();
    double[] soc = IntStream.rangeClosed(0, 60).mapToDouble(i -> 10 + i).toArray();
    double[] power = IntStream.rangeClosed(0, 60).mapToDouble(i -> 150 - i).toArray();
    Courses run =
        run(
            Sessions.session()
                .text(ConditionItem.DISPLAY_ROUNDS, rounds)
                .text(ConditionItem.ROWS_WRITTEN, "at changes")
                .channel(Channel.SOC, 0.5, seconds, soc)
                .channel(Channel.POWER, 0, seconds, power));
    Curve curve = RunCurve.of(List.of(run, run)).orElseThrow();
    return curve.y(60);
  }

  @Test
  void runs_without_both_channels_or_a_common_charge_have_no_curve() {
    Courses run = run(10, 60, s -> 100);
    double[] seconds = {0, 600, 1200};
    double[] soc = {10, 30, 50};
    double[] power = {100, 100, 100};
    Courses noPower = run(Sessions.session().channel(Channel.SOC, 0, seconds, soc));
    Courses noCharge = run(Sessions.session().channel(Channel.POWER, 0, seconds, power));
    Courses oneRow =
        run(
            Sessions.session()
                .channel(Channel.SOC, 0, seconds, soc)
                .channel(Channel.POWER, 0, new double[] {0}, new double[] {100}));
    assertThat(RunCurve.of(List.of(run, noPower))).isEmpty();
    assertThat(RunCurve.of(List.of(run, noCharge))).isEmpty();
    assertThat(RunCurve.of(List.of(run, oneRow))).isEmpty();
    assertThat(RunCurve.of(List.of(run, run(59.9, 80, s -> 100)))).isEmpty();
    assertThat(RunCurve.of(List.of(run, run(59.4, 80, s -> 100))).orElseThrow().size())
        .isEqualTo(2);
  }
}
