package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.metric.Sessions;
import taperbook.quantity.Estimate;
import taperbook.result.Contribution;
import taperbook.result.Outcome;
import taperbook.result.UncertaintySource;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.RangeItem;
import taperbook.session.Session;

/**
 * Compares numbers of drives with rectangular inputs with their exact distribution; and sessions
 * with little information.
 */
final class CoursesTest {
  /** Standard deviation of the share of 300 independent pairs below a quantile of 2.5 %. */
  private static final double SHARE = Math.sqrt(0.025 * 0.975 / 300);

  private static double fullRange(Draw draw) {
    return draw.drive().fullRange();
  }

  private static double consumption(Draw draw) {
    return draw.drive().consumption();
  }

  private static Sessions steady() {
    double[] seconds = {0, 600, 1200, 1800};
    return Sessions.session()
        .text(ConditionItem.DISPLAY_ROUNDS, "nearest")
        .text(ConditionItem.ROWS_WRITTEN, "at set times")
        .clockHalfStep(0.5)
        .channel(Channel.SOC, 0.5, seconds, new double[] {10, 30, 50, 70})
        .channel(Channel.POWER, 0.5, seconds, new double[] {72, 72, 72, 72});
  }

  private static Courses driven(RangeItem[] items, Estimate... amounts) {
    Map<RangeItem, Estimate> known = new EnumMap<>(RangeItem.class);
    for (int i = 0; i < items.length; i++) {
      known.put(items[i], amounts[i]);
    }
    return new Courses(
        steady().build(), Optional.of(Sessions.rangeTest(known)), Courses.FOR_REPORT);
  }

  private static Courses rangeOf(Estimate distance, Estimate start, Estimate end) {
    return driven(
        new RangeItem[] {RangeItem.DISTANCE, RangeItem.START_SOC, RangeItem.END_SOC},
        distance,
        start,
        end);
  }

  /**
   * The difference of two charges, each uniform in a step of 1 %, has a triangular distribution
   * from 79 to 81: 2.5 % of it are below 80 - (1 - sqrt(0.05)), and the mean of 1 / x is 79 ln 79 +
   * 81 ln 81 - 160 ln 80.
   */
  @Test
  void a_range_over_two_rounded_charges_has_the_quantiles_of_a_triangle() {
    Estimate range =
        rangeOf(Estimate.exactly(300), Estimate.around(90, 0.5), Estimate.around(10, 0.5))
            .estimate(CoursesTest::fullRange)
            .orElseThrow();
    double off = 1 - Math.sqrt(0.05);
    // The density there is sqrt(0.05) per 1 %; the derivative is 30,000 / 80^2 km per 1 %.
    double chance = 4 * SHARE / Math.sqrt(0.05) * 30_000 / 6400;
    assertThat(range.bounds().low()).isCloseTo(30_000 / (80 + off), within(chance));
    assertThat(range.bounds().high()).isCloseTo(30_000 / (80 - off), within(chance));
    assertThat(range.bounds().width()).isGreaterThan(4 * chance);
    double mean = 79 * Math.log(79) + 81 * Math.log(81) - 160 * Math.log(80);
    // Antithetic draws cancel except for the second order.
    assertThat(range.value()).isCloseTo(30_000 * mean, within(2e-5 * 375));
  }

  /**
   * The sum of relative errors with half-widths a and b has a trapezoidal distribution; the share
   * beyond its edge minus t is t^2 / (8 a b): 2.5 % for t = sqrt(0.2 a b). The second order is
   * 1e-6.
   */
  @Test
  void a_consumption_has_the_quantiles_of_a_trapezoid() {
    Estimate consumption =
        driven(
                new RangeItem[] {RangeItem.DISTANCE, RangeItem.ENERGY_USED},
                Estimate.around(320, 0.5),
                Estimate.around(50, 0.05))
            .estimate(CoursesTest::consumption)
            .orElseThrow();
    double a = 0.5 / 320;
    double b = 0.05 / 50;
    double t = Math.sqrt(0.2 * a * b);
    double chance = 4 * SHARE / (t / (4 * a * b)) * 156.25;
    assertThat(consumption.value()).isCloseTo(156.25, within(1e-5 * 156.25));
    assertThat(consumption.bounds().low()).isCloseTo(156.25 * (1 - a - b + t), within(chance));
    assertThat(consumption.bounds().high()).isCloseTo(156.25 * (1 + a + b - t), within(chance));
  }

  /**
   * 100 % displayed is a charge from 99.5 to 100 %, so that the range is 30,000 km over a
   * rectangular variable.
   */
  @Test
  void no_sampled_charge_exceeds_a_full_battery() {
    Estimate range =
        rangeOf(Estimate.exactly(300), Estimate.around(100, 0.5), Estimate.exactly(0))
            .estimate(CoursesTest::fullRange)
            .orElseThrow();
    double chance = 4 * SHARE * 0.5 * 3;
    // Half of the draws are exactly full; the others are uniform between 99.5 and 100 %.
    assertThat(range.bounds().low()).isEqualTo(300);
    assertThat(range.bounds().high()).isCloseTo(30_000 / (99.5 + 0.025), within(2 * chance));
    double mean = (300 + 60_000 * Math.log(100 / 99.5)) / 2;
    assertThat(range.value()).isCloseTo(mean, within(4 * 0.44 / Math.sqrt(300)));
  }

  @Test
  void without_a_drive_its_numbers_are_withheld() {
    Courses courses = new Courses(steady().build(), Optional.empty(), Courses.FOR_REPORT);
    assertThat(courses.estimate(CoursesTest::fullRange)).isEmpty();
    assertThat(courses.estimate(CoursesTest::consumption)).isEmpty();
  }

  @Test
  void equal_readings_give_equal_numbers() {
    ToDoubleFunction<Draw> time = d -> d.course().timeOfCharge(50);
    Courses one = new Courses(steady().build(), Optional.empty(), Courses.FOR_REPORT);
    Courses other = new Courses(steady().named("b").build(), Optional.empty(), Courses.FOR_REPORT);
    assertThat(one.estimate(time)).isEqualTo(other.estimate(time));
    assertThat(one.draws()).hasSize(Courses.FOR_REPORT);
  }

  /**
   * 80 % of two roundings by 0.5 % have a variance of 2 / 12, and 1 km of 320, 0.25 % of 80 %, one
   * of 1 / 48: 8 / 9 and 1 / 9 of the sum. The session does not contribute.
   */
  @ParameterizedTest
  @ValueSource(ints = {4, 20, 60})
  void the_budget_of_a_range_is_that_of_the_drive(int rows) {
    double[] seconds = IntStream.range(0, rows).mapToDouble(i -> 1800.0 * i / (rows - 1)).toArray();
    Session session =
        rows(
            seconds,
            Arrays.stream(seconds).map(t -> Math.floor(10 + t / 30)).toArray(),
            Arrays.stream(seconds).map(t -> 72).toArray());
    List<Contribution> budget =
        new Courses(
                session,
                Optional.of(
                    Sessions.rangeTest(
                        Map.of(
                            RangeItem.DISTANCE, Estimate.around(320, 1),
                            RangeItem.START_SOC, Estimate.around(90, 0.5),
                            RangeItem.END_SOC, Estimate.around(10, 0.5)))),
                Courses.FOR_REPORT)
            .measure(CoursesTest::fullRange)
            .fold(Outcome.Measured::budget, withheld -> List.of());
    // A squared correlation of 8 / 9 in 200 draws has a standard deviation of 0.015, one of 1 / 9
    // has 0.04, and the random correlation of both adds as much again.
    assertThat(share(budget, UncertaintySource.RANGE_SOC)).isCloseTo(8.0 / 9, within(0.15));
    assertThat(share(budget, UncertaintySource.RANGE_DISTANCE)).isCloseTo(1.0 / 9, within(0.1));
    assertThat(share(budget, UncertaintySource.SOC_DISPLAY)).isLessThan(0.1);
    assertThat(share(budget, UncertaintySource.POWER_DISPLAY)).isLessThan(0.1);
    assertThat(share(budget, UncertaintySource.CLOCK)).isLessThan(0.05);
    assertThat(budget.stream().mapToDouble(Contribution::share).sum()).isBetween(0.95, 1 + 1e-9);
  }

  private static double share(List<Contribution> budget, UncertaintySource source) {
    return budget.stream().filter(c -> c.source() == source).mapToDouble(Contribution::share).sum();
  }

  private static Session rows(double[] seconds, double[] soc, double[] power) {
    return Sessions.session()
        .channel(Channel.SOC, 0.5, seconds, soc)
        .channel(Channel.POWER, 0.5, seconds, power)
        .build();
  }

  static Stream<Session> sessionsWithoutTime() {
    return Stream.of(
        Sessions.session().channel(Channel.POWER, 0.5, new double[] {0}, new double[] {90}).build(),
        Sessions.session()
            .channel(Channel.ENERGY_ADDED, 0.05, new double[] {0}, new double[] {2})
            .build(),
        rows(new double[] {0}, new double[] {20}, new double[] {90}),
        rows(new double[] {60}, new double[] {20}, new double[] {90}),
        rows(new double[] {0, 0}, new double[] {15, 45}, new double[] {90, 90}));
  }

  @ParameterizedTest
  @MethodSource("sessionsWithoutTime")
  void readings_of_zero_duration_leave_only_numbers_of_the_drive(Session session) {
    Courses courses =
        new Courses(
            session,
            Optional.of(
                Sessions.rangeTest(
                    Map.of(
                        RangeItem.DISTANCE, Estimate.exactly(300),
                        RangeItem.START_SOC, Estimate.exactly(90),
                        RangeItem.END_SOC, Estimate.exactly(10)))),
            Courses.FOR_REPORT);
    assertThat(courses.estimate(d -> d.course().timeOfCharge(30))).isEmpty();
    assertThat(courses.estimate(d -> d.course().energyAt(10))).isEmpty();
    assertThat(courses.estimate(d -> d.course().longestAbove(50)[1])).isEmpty();
    assertThat(courses.estimate(CoursesTest::fullRange)).contains(Estimate.exactly(375));
  }

  static Stream<Session> oddSessions() {
    double[] two = {0, 600};
    double[] four = {0, 300, 600, 900};
    double[] twice = {0, 0, 600, 600};
    return Stream.of(
        rows(two, new double[] {15, 45}, new double[] {100, 100}),
        rows(twice, new double[] {15, 15, 45, 45}, new double[] {100, 100, 100, 100}),
        rows(four, new double[] {45, 40, 35, 30}, new double[] {100, 100, 100, 100}),
        rows(four, new double[] {45, 45, 45, 45}, new double[] {0, 0, 0, 0}),
        rows(four, new double[] {15, 24, 23, 40}, new double[] {50, 50, 50, 50}),
        rows(four, new double[] {99, 100, 100, 100}, new double[] {20, 10, 5, 0}),
        Sessions.session()
            .channel(Channel.POWER, 0.5, new double[] {0}, new double[] {90})
            .channel(Channel.ENERGY_ADDED, 0.05, new double[] {600}, new double[] {15})
            .build(),
        Sessions.session().channel(Channel.SOC, 0.5, two, new double[] {15, 45}).build());
  }

  @ParameterizedTest
  @MethodSource("oddSessions")
  void unusual_sessions_have_rising_courses_without_gaps(Session session) {
    for (Draw draw : new Courses(session, Optional.empty(), Courses.FEW).draws()) {
      Course course = draw.course();
      double energy = course.energyAt(course.firstSecond());
      double charge = course.chargeAt(course.firstSecond());
      for (double t = course.firstSecond(); t <= course.lastSecond(); t += 5) {
        assertThat(course.energyAt(t)).isFinite().isGreaterThanOrEqualTo(energy - 1e-9);
        assertThat(course.chargeAt(t)).isFinite().isGreaterThanOrEqualTo(charge - 1e-9);
        assertThat(course.powerAt(t)).isFinite();
        energy = course.energyAt(t);
        charge = course.chargeAt(t);
      }
    }
  }

  @Test
  void the_offset_of_a_display_is_the_part_of_its_step_that_it_rounds() {
    double[] expected = {0, 0.25, 0.5};
    String[] ways = {"down", "nearest", "up"};
    for (int i = 0; i < ways.length; i++) {
      Courses courses =
          new Courses(
              Sessions.session()
                  .text(ConditionItem.DISPLAY_ROUNDS, ways[i])
                  .channel(
                      Channel.SOC, 0.25, new double[] {0, 600, 1200}, new double[] {10, 30, 50})
                  .build(),
              Optional.empty(),
              Courses.FEW);
      assertThat(courses.displayOffset()).isEqualTo(expected[i]);
      for (Draw draw : courses.draws()) {
        assertThat(draw.displayOffset()).isEqualTo(expected[i]);
      }
    }
  }

  @Test
  void places_are_antithetic_and_fill_the_unit_interval() {
    List<Draw> draws = new Courses(steady().build(), Optional.empty(), Courses.FEW).draws();
    for (int k = 0; k < draws.size(); k += 2) {
      assertThat(draws.get(k).place() + draws.get(k + 1).place()).isCloseTo(1, within(1e-12));
      assertThat(draws.get(k).place()).isBetween(0.0, 1.0);
    }
    assertThat(draws.stream().mapToDouble(Draw::place).min().orElseThrow()).isLessThan(0.1);
    assertThat(draws.stream().mapToDouble(Draw::place).max().orElseThrow()).isGreaterThan(0.9);
  }

  @Test
  void rows_are_counted_once_and_up_to_a_hundred() {
    assertThat(new Courses(steady().build(), Optional.empty(), Courses.FEW).rowCount())
        .isEqualTo(4);
    double[] seconds = IntStream.range(0, 150).mapToDouble(i -> 10 * i).toArray();
    double[] power = Arrays.stream(seconds).map(t -> 72).toArray();
    Session log = Sessions.session().channel(Channel.POWER, 0.5, seconds, power).build();
    assertThat(new Courses(log, Optional.empty(), Courses.FEW).rowCount()).isEqualTo(100);
  }

  @Test
  void an_alternative_set_of_draws_differs() {
    ToDoubleFunction<Draw> time = d -> d.course().timeOfCharge(50);
    Courses first = new Courses(steady().build(), List.of(), Courses.FEW, 0);
    Courses other = new Courses(steady().build(), List.of(), Courses.FEW, 3);
    assertThat(first.redraw()).isZero();
    assertThat(other.redraw()).isEqualTo(3);
    assertThat(other.estimate(time)).isPresent().isNotEqualTo(first.estimate(time));
  }
}
