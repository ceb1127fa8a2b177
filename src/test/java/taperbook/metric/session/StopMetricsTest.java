package taperbook.metric.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.format.NumberFormatter;
import taperbook.metric.ReportMetrics;
import taperbook.metric.Sessions;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.Recording;
import taperbook.plan.Basis;
import taperbook.plan.StopMinutes;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Numbers;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

final class StopMetricsTest {
  /** 400 km on 100 %, without uncertainty. */
  private static final RangeTest DRIVE =
      Sessions.rangeTest(
          Map.of(
              RangeItem.DISTANCE, Estimate.exactly(400),
              RangeItem.START_SOC, Estimate.exactly(100),
              RangeItem.END_SOC, Estimate.exactly(0)));

  private static final double BATTERY_KILOWATT_HOURS = 60;

  /** A session with the charge as a function of time, every 30 s in tenths of a per cent. */
  private static Session session(int seconds, DoubleUnaryOperator soc) {
    double[] times = IntStream.rangeClosed(0, seconds / 30).mapToDouble(i -> 30.0 * i).toArray();
    return Sessions.session()
        .text(ConditionItem.DISPLAY_ROUNDS, "nearest")
        .text(ConditionItem.ROWS_WRITTEN, "at set times")
        .channel(Channel.SOC, 0.05, times, read(times, soc, 0.1))
        .channel(
            Channel.ENERGY_ADDED,
            0.005,
            times,
            read(
                times,
                t -> (soc.applyAsDouble(t) - soc.applyAsDouble(0)) / 100 * BATTERY_KILOWATT_HOURS,
                0.01))
        .build();
  }

  private static double[] read(double[] times, DoubleUnaryOperator truth, double step) {
    return Arrays.stream(times).map(t -> step * Math.rint(truth.applyAsDouble(t) / step)).toArray();
  }

  private static Numbers measured(Session session) {
    return ReportMetrics.measureSession(
        Sessions.plan(
            List.of(new SocWindow(20, 60)),
            List.of(new WantedDistance(100, Unit.KILOMETRE)),
            Unit.KILOMETRE,
            Basis.DRIVEN),
        session,
        List.of(DRIVE));
  }

  private static void assertNear(Numbers numbers, String id, double truth, double tolerance) {
    Estimate estimate = numbers.estimate(id).orElseThrow();
    assertThat(estimate.value()).as(id).isCloseTo(truth, within(tolerance));
    assertThat(estimate.bounds().contains(truth)).as(id + " " + estimate).isTrue();
  }

  @Test
  void constant_power_adds_distance_in_proportion_to_time() {
    // 2 % per minute from 10 % are 8 km and 1.2 kWh per minute, and 480 km/h.
    Numbers numbers = measured(session(1200, t -> 10 + 2 * t / 60));
    for (int minutes : List.of(5, 10, 15, 20)) {
      assertNear(numbers, StopMinutes.distanceId(minutes), 8 * minutes, 0.3);
      assertNear(numbers, StopMinutes.socId(minutes), 10 + 2 * minutes, 0.1);
      assertNear(numbers, StopMinutes.energyId(minutes), 1.2 * minutes, 0.02);
    }
    assertThat(numbers.get("charging_speed_20_60").withheld()).isPresent();
  }

  @Test
  void a_linear_taper_adds_its_exponential() {
    // dq/dt = k (100 - q), so that q(t) = 100 - (100 - q0) exp(-k t).
    double k = 1.0 / 1500;
    Numbers numbers = measured(session(1500, t -> 100 - 90 * Math.exp(-k * t)));
    for (int minutes : List.of(5, 10, 15, 20)) {
      double gain = 90 * (1 - Math.exp(-k * 60 * minutes));
      assertNear(numbers, StopMinutes.distanceId(minutes), 4 * gain, 0.4);
      assertNear(numbers, StopMinutes.socId(minutes), 10 + gain, 0.1);
      assertNear(numbers, StopMinutes.energyId(minutes), 0.6 * gain, 0.02);
    }
    // A display in tenths that rounds to nearest first shows 20 % at 19.95 % and 60 % at 59.95 %.
    double seconds = Math.log(80.05 / 40.05) / k;
    assertNear(numbers, "charging_speed_20_60", 40 * 4 / seconds * 3600, 3);
  }

  @Test
  void beyond_the_last_reading_a_number_is_withheld_with_the_reason() {
    Numbers numbers = measured(session(900, t -> 10 + 2 * t / 60));
    assertThat(numbers.estimate(StopMinutes.distanceId(15))).isPresent();
    for (String id :
        List.of(StopMinutes.distanceId(20), StopMinutes.socId(20), StopMinutes.energyId(30))) {
      assertThat(numbers.get(id).withheld().orElseThrow().replace('\u00a0', ' '))
          .as(id)
          .isEqualTo("the readings end after 15 min");
    }
  }

  @Test
  void distance_after_the_time_to_add_a_distance_is_that_distance_on_each_draw() {
    Recording recording =
        Recording.of(
            session(1500, t -> 100 - 90 * Math.exp(-t / 1500)),
            Optional.of(DRIVE),
            200,
            new NumberFormatter(Unit.KILOMETRE));
    for (Draw draw : recording.courses().draws()) {
      for (double km : new double[] {20, 100, 180}) {
        double start = draw.course().chargeAt(0);
        double seconds = draw.course().timeOfCharge(start + draw.share(km));
        assertThat(StopMetrics.kilometres(draw, Basis.DRIVEN, 0, seconds))
            .isCloseTo(km, within(1e-9));
      }
    }
  }

  @Test
  void an_interruption_is_included_in_the_number_and_excluded_from_the_uninterrupted_number() {
    // 2 % per minute, nothing from 310 s to 410 s.
    double[] times = IntStream.rangeClosed(0, 40).mapToDouble(i -> 30.0 * i).toArray();
    DoubleUnaryOperator going = t -> t - Math.max(0, Math.min(t, 410) - 310);
    Session session =
        Sessions.session()
            .text(ConditionItem.DISPLAY_ROUNDS, "nearest")
            .text(ConditionItem.ROWS_WRITTEN, "at set times")
            .channel(
                Channel.SOC, 0.05, times, read(times, t -> 10 + going.applyAsDouble(t) / 30, 0.1))
            .channel(
                Channel.POWER,
                0.5,
                times,
                Arrays.stream(times).map(t -> t > 310 && t < 410 ? 0 : 72).toArray())
            .build();
    Numbers numbers = measured(session);
    String id = StopMinutes.distanceId(10);
    assertThat(numbers.get(id).label()).endsWith("interruption included");
    assertNear(numbers, id, 500 / 30.0 * 4, 1);
    Estimate without = numbers.estimate(id + "_without_interruptions").orElseThrow();
    assertThat(without.bounds().contains(80)).as("" + without).isTrue();
    assertThat(without.value()).isCloseTo(80, within(5.0));
    assertThat(numbers.find(StopMinutes.distanceId(5) + "_without_interruptions")).isEmpty();
  }
}
