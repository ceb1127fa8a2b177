package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.metric.course.Courses;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Numbers;
import taperbook.result.PairResult;
import taperbook.result.Stretch;
import taperbook.session.Channel;
import taperbook.session.Session;

/**
 * Two curves in closed form: constant 100 kW, and a linear fall from 160 kW at 10 % to 55 kW at 80
 * %, 1.5 kW per 1 %. They cross at 10 + 60 / 1.5 = 50 %. A battery of C kWh takes C / (100 k) ln(P1
 * / P2) hours while the power falls by k kW per 1 % from P1 to P2, the integral of C / 100 dq /
 * P(q).
 */
final class ClosedFormPairTest {
  private static final double CAPACITY = 60;
  private static final double SLOPE = 1.5;
  private static final int POINTS = 281;

  private static double falling(double percent) {
    return 160 - SLOPE * (percent - 10);
  }

  private static double secondsFalling(double from, double to) {
    return 36 * CAPACITY / SLOPE * Math.log(falling(from) / falling(to));
  }

  private static double secondsSteady(double from, double to) {
    return 36 * CAPACITY * (to - from) / 100;
  }

  /** Exact readings every quarter of a per cent from 10 % to 80 %. */
  private static Session exact(
      String name, DoubleUnaryOperator secondOf, DoubleUnaryOperator power) {
    double[] soc = new double[POINTS];
    Arrays.setAll(soc, i -> 10 + i / 4.0);
    double[] seconds = Arrays.stream(soc).map(secondOf).toArray();
    double[] kilowatts = Arrays.stream(soc).map(power).toArray();
    return Sessions.session()
        .named(name)
        .channel(Channel.SOC, 0, seconds, soc)
        .channel(Channel.POWER, 0, seconds, kilowatts)
        .build();
  }

  private static Courses courses(Session session) {
    return new Courses(session, Optional.empty(), Courses.FOR_REPORT);
  }

  private static PairResult pair() {
    return CurveComparison.of(
        courses(exact("steady", s -> secondsSteady(10, s), s -> 100)),
        courses(exact("falling", s -> secondsFalling(10, s), ClosedFormPairTest::falling)),
        "the falling one",
        List.of());
  }

  @Test
  void mean_lead_and_time_gain_are_those_of_the_closed_form() {
    Numbers numbers = pair().numbers();
    // Mean of 100 - 160 + 1.5 x over x from 0 to 70.
    check(numbers, "mean_lead_shared", -60 + 1.5 * 35);
    check(numbers, "time_gain_shared", secondsFalling(10, 80) - secondsSteady(10, 80));
  }

  @Test
  void leads_meet_at_the_crossing_of_the_straight_lines() {
    PairResult pair = pair();
    List<Stretch> led =
        pair.stretches().stream().filter(s -> s.order() != Stretch.Order.UNDECIDED).toList();
    assertThat(led.stream().map(Stretch::order))
        .containsExactly(Stretch.Order.BEHIND, Stretch.Order.AHEAD);
    assertThat(led.get(0).from()).isEqualTo(10);
    assertThat(led.get(0).to()).isCloseTo(50, within(0.3));
    assertThat(led.get(1).from()).isCloseTo(50, within(0.3));
    assertThat(led.get(1).to()).isEqualTo(80);
    check(pair.numbers(), "crossing_1_soc", 50);
    assertThat(pair.numbers().estimate("crossing_1_soc").orElseThrow().bounds())
        .isEqualTo(new Interval(led.get(0).to(), led.get(1).from()));
    assertThat(led.get(0).to()).isLessThan(led.get(1).from());
    // Over each stretch: half of the greatest difference, which is at its open end.
    assertThat(value(pair.numbers(), "lead_1_power")).isCloseTo(-30, within(0.3));
    assertThat(value(pair.numbers(), "lead_2_power")).isCloseTo(22.5, within(0.3));
    assertThat(value(pair.numbers(), "lead_1_time_gain"))
        .isCloseTo(secondsFalling(10, 50) - secondsSteady(10, 50), within(2.0));
    assertThat(value(pair.numbers(), "lead_2_time_gain"))
        .isCloseTo(secondsFalling(50, 80) - secondsSteady(50, 80), within(2.0));
  }

  @Test
  void a_lead_over_less_than_one_per_cent_is_not_reported() {
    DoubleUnaryOperator even = s -> 30 * (s - 10);
    PairResult pair =
        CurveComparison.of(
            courses(exact("steady", even, s -> 100)),
            courses(exact("bump", even, s -> s > 40 && s < 40.75 ? 110 : 90)),
            "the one with a bump",
            List.of());
    assertThat(pair.stretches().stream().map(Stretch::order))
        .containsExactly(Stretch.Order.AHEAD, Stretch.Order.UNDECIDED, Stretch.Order.AHEAD);
    assertThat(pair.crossings()).isEmpty();
  }

  private static double value(Numbers numbers, String id) {
    return numbers.estimate(id).orElseThrow().value();
  }

  private static void check(Numbers numbers, String id, double expected) {
    Estimate estimate = numbers.estimate(id).orElseThrow();
    assertThat(estimate.value()).as(id).isCloseTo(expected, within(2e-3 * Math.abs(expected)));
    assertThat(estimate.bounds().contains(estimate.value())).isTrue();
  }
}
