package taperbook.metric.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.metric.Sessions;
import taperbook.metric.course.Courses;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.result.Numbers;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Session;
import taperbook.session.Trace;

/** How long the power is near its peak. */
final class PowerHoldTest {
  /** Power every ten seconds, with a matching charge. */
  private static Session session(double halfStep, double... power) {
    double[] seconds = IntStream.range(0, power.length).mapToDouble(i -> 10 * i).toArray();
    double[] soc = new double[power.length];
    double energy = 0;
    for (int i = 0; i < power.length; i++) {
      soc[i] = Math.rint(20 + energy);
      energy += power[i] * 10 / 3600;
    }
    return Sessions.session()
        .channel(Channel.SOC, 0.5, seconds, soc)
        .channel(Channel.POWER, halfStep, seconds, power)
        .build();
  }

  private static PowerHold hold(Session session) {
    return new PowerHold(session.trace(Channel.POWER).orElseThrow());
  }

  private static Estimate seconds(Session session) {
    return new Courses(session, Optional.empty(), Courses.FOR_REPORT)
        .estimate(hold(session)::seconds)
        .orElseThrow();
  }

  /** Pairs of a power and its number of readings, expanded. */
  private static double[] steps(double... powerAndCount) {
    return IntStream.range(0, powerAndCount.length / 2)
        .boxed()
        .flatMapToDouble(
            i -> {
              double[] same = new double[(int) powerAndCount[2 * i + 1]];
              Arrays.fill(same, powerAndCount[2 * i]);
              return Arrays.stream(same);
            })
        .toArray();
  }

  @Test
  void two_per_cent_of_the_peak_applies_if_the_display_is_finer() {
    // 148 is within 2 % of 150: twelve readings, and up to 10 s on either side.
    Session session = session(0.5, steps(100, 4, 150, 6, 148, 6, 130, 4));
    assertThat(hold(session).rows()).hasSize(12);
    assertThat(seconds(session).bounds().low()).isGreaterThanOrEqualTo(105);
    assertThat(seconds(session).bounds().high()).isLessThanOrEqualTo(135);
  }

  @Test
  void one_display_step_applies_if_it_exceeds_two_per_cent() {
    Session session = session(5, steps(120, 4, 140, 6, 150, 6, 120, 4));
    assertThat(hold(session).rows()).hasSize(12);
  }

  @Test
  void a_dip_splits_the_hold_and_the_longer_part_is_used() {
    Session session = session(0.5, steps(150, 4, 120, 3, 150, 9, 90, 4));
    assertThat(hold(session).rows()).hasSize(9);
    assertThat(seconds(session).bounds().high()).isLessThanOrEqualTo(105);
    assertThat(seconds(session).bounds().low()).isGreaterThanOrEqualTo(75);
  }

  /** 150 kW for 15 minutes, then 4 kW less per minute: 147 kW, 2 % less, 45 s into the fall. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.01, 0.03, 0.06, 0.1})
  void losses_between_power_and_counter_do_not_shorten_the_hold(double loss) {
    double[] seconds = IntStream.rangeClosed(0, 30).mapToDouble(i -> 60 * i).toArray();
    double[] power = Arrays.stream(seconds).map(t -> 150 - Math.max(0, t - 900) / 15).toArray();
    double[] energy =
        Arrays.stream(seconds)
            .map(t -> (150 * t - Math.pow(Math.max(0, t - 900), 2) / 30) / 3600 * (1 - loss))
            .toArray();
    Session session =
        Sessions.session()
            .text(ConditionItem.DISPLAY_ROUNDS, "down")
            .text(ConditionItem.ROWS_WRITTEN, "at set times")
            .channel(
                Channel.SOC,
                0.5,
                seconds,
                Arrays.stream(energy).map(e -> Math.floor(10 + e / 0.9)).toArray())
            .channel(Channel.POWER, 0.5, seconds, power)
            .channel(
                Channel.ENERGY_ADDED,
                0.05,
                seconds,
                Arrays.stream(energy).map(e -> Math.rint(10 * e) / 10).toArray())
            .build();
    Estimate hold = seconds(session);
    assertThat(hold.bounds().contains(945)).as(hold.toString()).isTrue();
    // Half a kilowatt is 7.5 s of the fall.
    assertThat(hold.value()).isCloseTo(945, within(10.0));
    assertThat(hold.bounds().width()).isLessThan(60);
  }

  @Test
  void a_session_at_constant_power_is_one_hold() {
    Session session = session(0.5, steps(50, 20));
    assertThat(seconds(session).value()).isEqualTo(190);
    assertThat(hold(session).rows()).hasSize(20);
  }

  /** Noise of 1 kW at 100 kW leaves 2 % of the highest reading by chance. */
  @Test
  void the_hold_of_a_fluctuating_log_is_withheld_and_its_peak_has_a_caveat() {
    for (double noise : new double[] {0.1, 1}) {
      Random random = new Random(6);
      double[] seconds = IntStream.rangeClosed(0, 1800).asDoubleStream().toArray();
      double[] power =
          Arrays.stream(seconds)
              .map(t -> (t < 900 ? 100 : 70) + noise * random.nextGaussian())
              .toArray();
      Numbers numbers =
          Sessions.measure(
                  Sessions.session()
                      .channel(
                          Channel.SOC,
                          0.5,
                          seconds,
                          Arrays.stream(seconds).map(t -> Math.floor(10 + t / 40)).toArray())
                      .channel(Channel.POWER, 0.05, seconds, power)
                      .build(),
                  new SocWindow(15, 50))
              .main()
              .numbers();
      assertThat(numbers.estimate("peak_hold_time").isPresent()).isEqualTo(noise < 1);
      assertThat(numbers.measured("peak_power").orElseThrow().caveats())
          .extracting(Caveat::sentence)
          .filteredOn(s -> s.startsWith("Readings of power fluctuate by about"))
          .hasSize(noise < 1 ? 0 : 1);
    }
  }

  @Test
  void the_first_of_two_equal_holds_has_its_rows_named() {
    Session session = session(0.5, steps(150, 5, 120, 3, 150, 5));
    Trace power = session.trace(Channel.POWER).orElseThrow();
    assertThat(hold(session).rows()).isEqualTo(power.rows(0, 4));
  }
}
