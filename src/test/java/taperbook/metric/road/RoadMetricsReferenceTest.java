package taperbook.metric.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.metric.ReportMetrics;
import taperbook.metric.Sessions;
import taperbook.plan.ReportPlan;
import taperbook.plan.RoadTopic;
import taperbook.plan.RoadWishes;
import taperbook.plan.Trip;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Numbers;
import taperbook.result.ReportResult;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.HowKnown;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/**
 * Numbers of the road on charging curves with an exact solution. For P = a - k s kW and C kWh
 *
 * <pre>
 *   t(s1, s2) = 3600 C / (100 k) ln((a - k s1) / (a - k s2))   [s]
 * </pre>
 *
 * and for constant power the time is C times the share over the power.
 */
@Tag("slow")
final class RoadMetricsReferenceTest {
  /** 400 km on a full battery of 60 kWh: 150 Wh/km, 4 km per 1 %; 100 km/h. */
  private static final RangeTest DRIVE =
      Sessions.rangeTest(
          Map.of(
              RangeItem.DISTANCE, Estimate.exactly(400),
              RangeItem.START_SOC, Estimate.exactly(100),
              RangeItem.END_SOC, Estimate.exactly(0),
              RangeItem.ENERGY_USED, Estimate.exactly(60),
              RangeItem.AVERAGE_SPEED, Estimate.exactly(100)));

  private static final WantedDistance HUNDRED = new WantedDistance(100, Unit.KILOMETRE);

  private static double taper(double soc) {
    return 3600 * 60 / 120.0 * Math.log(150 / (150 - 1.2 * soc));
  }

  /** Constant 120 kW: 60 kWh in half an hour, 18 s per 1 %. */
  private static double constant(double soc) {
    return 18 * soc;
  }

  /** Rows at each {@code step} per cent; optionally rounded to whole per cents and seconds. */
  private static Session session(
      DoubleUnaryOperator time, int from, int to, double step, boolean rounded) {
    int n = (int) Math.round((to - from) / step) + 1;
    double[] seconds = new double[n];
    double[] soc = new double[n];
    for (int i = 0; i < n; i++) {
      double late = from + i * step + (rounded && i > 0 && i < n - 1 ? 0.4 * Math.sin(5.0 * i) : 0);
      double second = time.applyAsDouble(late) - time.applyAsDouble(from);
      seconds[i] = rounded ? Math.rint(second) : second;
      soc[i] = rounded ? Math.rint(late) : late;
    }
    return Sessions.session()
        .clockHalfStep(rounded ? 0.5 : 0)
        .channel(Channel.SOC, rounded ? 0.5 : 0, seconds, soc)
        .build();
  }

  private static Numbers measure(Session session, RangeTest drive, RoadWishes road) {
    ReportPlan plan = Sessions.roadPlan(List.of(HUNDRED), road);
    return ReportMetrics.measure(plan, session, List.of(), List.of(drive)).main().numbers();
  }

  private static RoadWishes all(Trip trip) {
    return new RoadWishes(EnumSet.allOf(RoadTopic.class), Optional.of(trip));
  }

  private static RoadWishes only(RoadTopic... topics) {
    return new RoadWishes(Set.of(topics), Optional.empty());
  }

  private static double value(Numbers numbers, String id) {
    return numbers.estimate(id).orElseThrow(() -> new AssertionError(id)).value();
  }

  @ParameterizedTest
  @CsvSource({"0, 50", "10, 100", "20, 150", "40, 200", "60, 50"})
  void minutes_for_a_distance_are_those_of_the_exact_solution(int from, int km) {
    Numbers numbers =
        measure(session(s -> taper(s), 0, 95, 0.25, false), DRIVE, only(RoadTopic.PLUG_IN));
    double expected = taper(from + km / 4.0) - taper(from);
    String id = "plug_in_" + from + "_" + km + "_km";
    assertThat(value(numbers, id)).isCloseTo(expected, within(0.001 * expected));
  }

  /**
   * 150 kW up to 40 % and then 1.8 kW less per 1 %, 75 kWh, 3.5 mi/kWh: by the integral, 100 and
   * 150 mi from 10 % take 11.554773522 and 18.852533736 min.
   */
  @Test
  void minutes_for_miles_are_those_of_a_worked_curve() {
    DoubleUnaryOperator time =
        s ->
            s <= 40
                ? 3600 * 0.75 * s / 150
                : 3600 * 0.75 * 40 / 150
                    + 3600 * 0.75 / 1.8 * Math.log(150 / (150 - 1.8 * (s - 40)));
    RangeTest drive =
        Sessions.rangeTest(
            Map.of(
                RangeItem.DISTANCE, Estimate.exactly(75 * 3.5 * 1.609344),
                RangeItem.START_SOC, Estimate.exactly(100),
                RangeItem.END_SOC, Estimate.exactly(0)));
    ReportPlan kilometres = Sessions.roadPlan(List.of(HUNDRED), only(RoadTopic.PLUG_IN));
    ReportPlan plan =
        new ReportPlan(
            kilometres.name(),
            kilometres.heading(),
            kilometres.subject(),
            kilometres.wishes(),
            new ReportPlan.Style(Unit.MILE, kilometres.style().basis(), "report"),
            kilometres.article());
    Numbers numbers =
        ReportMetrics.measure(plan, session(time, 0, 90, 0.25, false), List.of(), List.of(drive))
            .main()
            .numbers();
    assertThat(value(numbers, "plug_in_10_100_mi") / 60).isCloseTo(11.554773522, within(0.001));
    assertThat(value(numbers, "plug_in_10_150_mi") / 60).isCloseTo(18.852533736, within(0.001));
  }

  private static Trip trip(int km, int spacing) {
    return new Trip(
        new WantedDistance(km, Unit.KILOMETRE),
        new WantedDistance(spacing, Unit.KILOMETRE),
        300,
        100,
        10);
  }

  /** Constant power: 200 % for 800 km, 90 % available, 110 % to charge at 18 s each, two stops. */
  @Test
  void a_trip_at_constant_power_charges_the_missing_energy() {
    Numbers numbers =
        measure(session(s -> constant(s), 0, 95, 0.5, false), DRIVE, all(trip(800, 50)));
    assertThat(value(numbers, "trip_stops")).isEqualTo(2);
    assertThat(value(numbers, "trip_charging_time")).isCloseTo(110 * 18, within(0.5));
    assertThat(value(numbers, "trip_driving_time")).isCloseTo(8 * 3600, within(1e-6));
    assertThat(value(numbers, "trip_time")).isCloseTo(8 * 3600 + 600 + 110 * 18, within(0.5));
    assertThat(value(numbers, "trip_arrival_soc")).isCloseTo(10, within(1e-6));
    // One more stop costs only its overhead; one fewer is impossible.
    assertThat(value(numbers, "trip_next_best_stops")).isEqualTo(3);
    assertThat(value(numbers, "trip_next_best_extra_time")).isCloseTo(300, within(0.5));
    assertThat(value(numbers, "trip_stop_1_time") + value(numbers, "trip_stop_2_time"))
        .isCloseTo(110 * 18, within(0.5));
  }

  private static RangeTest drive(String name, String vehicle, double speed, HowKnown howKnown) {
    return Sessions.rangeTest(
        name,
        vehicle,
        Map.of(
            RangeItem.DISTANCE, Estimate.exactly(400),
            RangeItem.ODOMETER_CORRECTION, Estimate.around(1.02, 0.005),
            RangeItem.START_SOC, Estimate.exactly(100),
            RangeItem.END_SOC, Estimate.exactly(0),
            RangeItem.AVERAGE_SPEED, Estimate.around(speed, 0.5)),
        howKnown);
  }

  /**
   * 800 km at 102 km/h with a tolerance of 0.51 and of the correction of 0.5: 800 / v by its ends.
   */
  @Test
  void driving_time_has_the_interval_of_the_speed_and_its_correction() {
    Session session = session(s -> constant(s), 0, 95, 0.5, false);
    RangeTest displayed = drive("drive", "Northmoor Finch", 100, HowKnown.DISPLAYED);
    ReportPlan plan = Sessions.roadPlan(List.of(HUNDRED), all(trip(800, 50)));
    Numbers numbers = ReportMetrics.measureSession(plan, session, List.of(displayed));
    Estimate driving = numbers.estimate("trip_driving_time").orElseThrow();
    // Speeds from 99.5 * 1.015 to 100.5 * 1.025 km/h; the interval contains the central 95 %.
    double slow = 99.5 * 1.015;
    double fast = 100.5 * 1.025;
    double edge = 0.025 * (fast - slow);
    assertThat(driving.value()).isCloseTo(3600 * 800 / 102.0, within(10.0));
    assertThat(driving.bounds().low()).isCloseTo(3600 * 800 / (fast - edge), within(12.0));
    assertThat(driving.bounds().high()).isCloseTo(3600 * 800 / (slow + edge), within(12.0));
    assertThat(numbers.estimate("trip_time").orElseThrow().bounds().width())
        .isGreaterThanOrEqualTo(driving.bounds().width());
    // Values that the car did not display are not corrected.
    RangeTest measured = drive("drive", "Northmoor Finch", 100, HowKnown.MEASURED);
    assertThat(value(measure(session, measured, all(trip(800, 50))), "trip_driving_time"))
        .isCloseTo(8 * 3600, within(10.0));
  }

  @Test
  void all_cars_of_a_report_drive_the_trip_at_the_speed_of_the_reported_car() {
    Session main = session(s -> constant(s), 0, 95, 0.5, false);
    double[] seconds = {0, 360, 720, 1080, 1440, 1710};
    Session other =
        Sessions.session()
            .named("other")
            .text(ConditionItem.VEHICLE, "Veldt Carrier")
            .channel(Channel.SOC, 0, seconds, new double[] {0, 20, 40, 60, 80, 95})
            .build();
    List<RangeTest> drives =
        List.of(
            drive("drive", "Northmoor Finch", 100, HowKnown.MEASURED),
            drive("other-drive", "Veldt Carrier", 120, HowKnown.MEASURED));
    ReportResult result =
        ReportMetrics.measure(
            Sessions.roadPlan(List.of(HUNDRED), all(trip(800, 50))), main, List.of(other), drives);
    Numbers compared = result.compared().get(0).numbers();
    assertThat(value(compared, "trip_driving_time")).isCloseTo(8 * 3600, within(10.0));
    assertThat(compared.estimate("trip_driving_time").orElseThrow().bounds().width()).isPositive();
    assertThat(compared.get("trip_time").caveats().get(0).sentence().replace('\u00a0', ' '))
        .contains(
            "driven at 100 km/h, the average of the reported car's range test, as all trips of the"
                + " report are; what it takes is what this car took in its own, at 120 km/h.");
    Trip stated =
        new Trip(
            new WantedDistance(800, Unit.KILOMETRE),
            new WantedDistance(50, Unit.KILOMETRE),
            300,
            100,
            10,
            OptionalDouble.of(80),
            Trip.Overhead.STATED);
    Numbers slow =
        ReportMetrics.measure(
                Sessions.roadPlan(List.of(HUNDRED), all(stated)), main, List.of(other), drives)
            .main()
            .numbers();
    assertThat(slow.estimate("trip_driving_time")).contains(Estimate.exactly(10 * 3600));
    assertThat(slow.get("trip_time").caveats().get(0).sentence()).contains("as the report asks");
  }

  /** Constant power: 4 km per 1 % and 18 s, 13.33 km/min throughout, never half of it. */
  @Test
  void distance_per_minute_is_uniform_at_constant_power() {
    Numbers numbers =
        measure(session(s -> constant(s), 5, 90, 0.5, false), DRIVE, only(RoadTopic.PER_MINUTE));
    // A mean over draws, in which rounding still shifts the charge a little.
    assertThat(value(numbers, "road_per_minute_best")).isCloseTo(40.0 / 3, within(1e-3));
    assertThat(numbers.get("road_per_minute_half_soc").withheld())
        .contains("the readings do not end surely below half of the most");
  }

  /**
   * A linear taper adds half of the maximum distance where 10 % take twice as long: with x = a - k
   * s at the middle and d = 5 k, ln((x + d) / (x - d)) = 2 ln((X + d) / (X - d)), so that (x + d) /
   * (x - d) = ((X + d) / (X - d))^2 = r and x = d (r + 1) / (r - 1).
   */
  @Test
  void a_linear_taper_adds_half_the_distance_at_the_exact_charge() {
    Numbers numbers =
        measure(session(s -> taper(s), 5, 95, 0.25, false), DRIVE, only(RoadTopic.PER_MINUTE));
    double most = 150 - 1.2 * 10;
    double r = Math.pow((most + 6) / (most - 6), 2);
    double x = 6 * (r + 1) / (r - 1);
    assertThat(value(numbers, "road_per_minute_best_soc_from")).isEqualTo(5);
    assertThat(value(numbers, "road_per_minute_half_soc")).isCloseTo((150 - x) / 1.2, within(0.1));
  }

  @Test
  void cells_beyond_the_recorded_charge_are_withheld_with_the_reason() {
    Numbers numbers =
        measure(session(s -> taper(s), 12, 80, 1, false), DRIVE, only(RoadTopic.PLUG_IN));
    assertThat(numbers.get("plug_in_10_50_km").withheld().orElseThrow().replace('\u00a0', ' '))
        .isEqualTo("the session began at 12 %");
    assertThat(numbers.get("plug_in_60_100_km").withheld().orElseThrow().replace('\u00a0', ' '))
        .isEqualTo("the distance is reached only beyond the 80 % that the session ended at");
    assertThat(numbers.estimate("plug_in_20_200_km")).isPresent();
  }

  @Test
  void a_trip_beyond_the_recorded_charge_is_withheld_with_the_reason() {
    Numbers numbers = measure(session(s -> taper(s), 40, 60, 1, false), DRIVE, all(trip(900, 300)));
    assertThat(numbers.get("trip_time").withheld().orElseThrow().replace('\u00a0', ' '))
        .isEqualTo(
            "no plan keeps 10 % in reserve with a station every 300 km and stays within the 40 %"
                + " to 60 % that the session went through");
  }

  @Test
  void no_road_metric_is_measured_unless_requested() {
    Numbers without = measure(session(s -> taper(s), 5, 90, 1, false), DRIVE, RoadWishes.NONE);
    Numbers with = measure(session(s -> taper(s), 5, 90, 1, false), DRIVE, all(trip(800, 50)));
    assertThat(with.ids()).containsAll(without.ids());
    assertThat(without.ids())
        .noneMatch(
            id -> id.matches("(plug_in|best_unplug|road_per|trip|cost|standard|two_way|air_).*"));
    assertThat(with.ids()).contains("plug_in_10_100_km", "trip_time", "cost_session");
  }

  /** By construction, the climb at the start is 40 s slower than the rate after it. */
  @Test
  void the_warm_estimate_excludes_the_climb_and_is_marked_as_an_inference() {
    int n = 86;
    double[] seconds = new double[n];
    double[] soc = new double[n];
    double[] power = new double[n];
    for (int i = 0; i < n; i++) {
      soc[i] = 5 + i;
      // Power rises linearly from 60 to 120 kW over 10 %, then is constant: 0.6 kWh per 1 %.
      power[i] = Math.min(120, 60 + 6 * i);
      double climb = 3600 * 0.6 / 6 * Math.log(Math.min(120, 60 + 6.0 * i) / 60);
      seconds[i] = climb + Math.max(0, i - 10) * 18;
    }
    Session session =
        Sessions.session()
            .channel(Channel.SOC, 0.05, seconds, soc)
            .channel(Channel.POWER, 0.05, seconds, power)
            .build();
    Numbers numbers = measure(session, DRIVE, only(RoadTopic.PLUG_IN));
    assertThat(value(numbers, "warm_up_end_soc")).isCloseTo(15, within(0.3));
    // 10 % at 60 to 120 kW take 360 ln 2 = 249.5 s; at 120 kW they take 180 s.
    assertThat(value(numbers, "warm_up_time_lost")).isCloseTo(360 * Math.log(2) - 180, within(4.0));
    assertThat(value(numbers, "plug_in_10_100_km_warm")).isCloseTo(25 * 18.0, within(4.0));
    assertThat(value(numbers, "plug_in_10_100_km"))
        .isCloseTo(360 * Math.log(120 / 90.0) + 20 * 18, within(1.0));
    assertThat(numbers.get("plug_in_10_100_km_warm").caveats().get(0).sentence())
        .startsWith("An inference and not a measurement");
    assertThat(numbers.find("plug_in_20_100_km_warm")).isEmpty();
    // The same climb in a dozen rows of whole per cents and a clock of minutes: its cost is not
    // significant.
    double[] fewSeconds = new double[12];
    double[] fewSoc = new double[12];
    for (int i = 0; i < 12; i++) {
      fewSeconds[i] = 60 * Math.rint(seconds[7 * i] / 60);
      fewSoc[i] = soc[7 * i];
    }
    Session coarse =
        Sessions.session()
            .clockHalfStep(30)
            .channel(Channel.SOC, 0.5, fewSeconds, fewSoc)
            .channel(Channel.POWER, 0.05, seconds, power)
            .build();
    Numbers unsure = measure(coarse, DRIVE, only(RoadTopic.PLUG_IN));
    boolean surely =
        unsure.estimate("warm_up_time_lost").filter(lost -> lost.bounds().low() > 0).isPresent();
    assertThat(unsure.find("plug_in_10_100_km_warm").isPresent()).isEqualTo(surely);
  }
}
