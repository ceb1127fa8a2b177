package taperbook.metric.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import taperbook.metric.ReportMetrics;
import taperbook.metric.Sessions;
import taperbook.plan.RoadTopic;
import taperbook.plan.RoadWishes;
import taperbook.quantity.Estimate;
import taperbook.result.Numbers;
import taperbook.session.Channel;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.HowKnown;
import taperbook.session.Leg;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;
import taperbook.session.Session;

/**
 * Compares the range under standard conditions with hand calculation and SAE J1634 (range is usable
 * energy over consumption, from memory); standard air by ISO 2533.
 */
final class StandardRangeMetricsTest {
  private static final Session SESSION =
      Sessions.session()
          .channel(Channel.SOC, 0, new double[] {0, 600}, new double[] {10, 60})
          .build();

  /** 400 km and 60 kWh for the full battery at 100 km/h, 150 Wh/km. */
  private static Map<RangeItem, Estimate> drive() {
    Map<RangeItem, Estimate> drive = new EnumMap<>(RangeItem.class);
    drive.put(RangeItem.DISTANCE, Estimate.exactly(400));
    drive.put(RangeItem.START_SOC, Estimate.exactly(100));
    drive.put(RangeItem.END_SOC, Estimate.exactly(0));
    drive.put(RangeItem.ENERGY_USED, Estimate.exactly(60));
    drive.put(RangeItem.AVERAGE_SPEED, Estimate.exactly(100));
    drive.put(RangeItem.AMBIENT_TEMPERATURE, Estimate.exactly(15));
    drive.put(RangeItem.AIR_PRESSURE, Estimate.exactly(1013.25));
    drive.put(RangeItem.DRAG_AREA, Estimate.exactly(0.72));
    drive.put(RangeItem.VEHICLE_MASS, Estimate.exactly(1800));
    drive.put(RangeItem.WIND_SPEED, Estimate.exactly(0));
    return drive;
  }

  private static RangeTest test(
      Map<RangeItem, Estimate> amounts, Map<RangeItem, String> words, List<Leg> legs) {
    RangeTest plain = Sessions.rangeTest(amounts);
    Map<RangeItem, Fact> facts = new EnumMap<>(RangeItem.class);
    facts.putAll(plain.facts().all());
    words.forEach(
        (item, word) ->
            facts.put(
                item,
                new Fact(
                    word,
                    "",
                    Optional.empty(),
                    HowKnown.MEASURED,
                    new RowRef("sessions/drive/range-test.csv", 40))));
    return new RangeTest(
        "drive", new Facts<>("sessions/drive/range-test.csv", RangeItem.class, facts), legs);
  }

  private static Numbers measure(RangeTest test) {
    RoadWishes road = new RoadWishes(Set.of(RoadTopic.STANDARD_RANGE), Optional.empty());
    return ReportMetrics.measure(
            Sessions.roadPlan(List.of(), road), SESSION, List.of(), List.of(test))
        .main()
        .numbers();
  }

  private static Numbers measure(Map<RangeItem, Estimate> amounts, String route) {
    return measure(test(amounts, Map.of(RangeItem.ROUTE, route), List.of()));
  }

  private static double value(Numbers numbers, String id) {
    return numbers.estimate(id).orElseThrow(() -> new AssertionError(id)).value();
  }

  @Test
  void a_drive_in_standard_conditions_is_not_corrected() {
    Numbers numbers = measure(drive(), "loop");
    assertThat(value(numbers, "air_density")).isCloseTo(1.2250, within(0.00002));
    assertThat(value(numbers, "standard_range")).isCloseTo(400, within(1e-9));
    assertThat(value(numbers, "standard_consumption")).isCloseTo(150, within(1e-9));
  }

  /**
   * By hand: at 35 Cel the air has 1.14549 kg/m3, 0.07951 less than at 15 Cel. Half of that times
   * 0.72 m2 times (27.7778 m/s)^2 is 22.086 N, 6.1349 Wh/km at the wheel and, over 0.88, 6.9715
   * Wh/km at the battery. Standard consumption 156.97 Wh/km; 60 kWh over that is 382.23 km.
   */
  @Test
  void the_correction_for_thin_air_agrees_with_the_hand_calculation() {
    Map<RangeItem, Estimate> drive = drive();
    drive.put(RangeItem.AMBIENT_TEMPERATURE, Estimate.exactly(35));
    Numbers numbers = measure(drive, "loop");
    assertThat(value(numbers, "correction_air")).isCloseTo(-6.9715, within(0.002));
    assertThat(value(numbers, "standard_consumption")).isCloseTo(156.9715, within(0.002));
    assertThat(value(numbers, "standard_range")).isCloseTo(60_000 / 156.9715, within(0.01));
  }

  /**
   * By hand: 1800 kg up 200 m are 3 530 394 J or 980.665 Wh, over 400 km 2.45166 Wh/km, over 0.88
   * 2.78598; going down the wheel gives 2.45166 x 0.88 = 2.15746 back.
   */
  @Test
  void the_correction_for_height_agrees_with_the_hand_calculation() {
    Map<RangeItem, Estimate> drive = drive();
    drive.put(RangeItem.START_ELEVATION, Estimate.exactly(100));
    drive.put(RangeItem.END_ELEVATION, Estimate.exactly(300));
    assertThat(value(measure(drive, "one way"), "correction_climb"))
        .isCloseTo(2.78598, within(0.00002));
    drive.put(RangeItem.END_ELEVATION, Estimate.exactly(-100));
    assertThat(value(measure(drive, "one way"), "correction_climb"))
        .isCloseTo(-2.15746, within(0.00002));
  }

  /** Algebra: a headwind of a tenth of the speed raises the drag by 1.1^2 - 1 = 21 %. */
  @Test
  void a_headwind_has_its_full_effect_one_way_and_its_square_out_and_back() {
    Map<RangeItem, Estimate> drive = drive();
    drive.put(RangeItem.WIND_SPEED, Estimate.exactly(10));
    drive.put(RangeItem.WIND_DIRECTION, Estimate.exactly(0));
    // Drag in still standard air: 0.5 x 1.225 x 0.72 x 771.605 / 3.6 / 0.88 = 107.408 Wh/km.
    double still = 0.5 * 1.225 * 0.72 * Math.pow(100 / 3.6, 2) / 3.6 / 0.88;
    drive.put(RangeItem.START_ELEVATION, Estimate.exactly(0));
    drive.put(RangeItem.END_ELEVATION, Estimate.exactly(0));
    assertThat(value(measure(drive, "one way"), "correction_wind"))
        .isCloseTo(0.21 * still, within(0.001));
    assertThat(value(measure(drive, "out and back"), "correction_wind"))
        .isCloseTo(0.01 * still, within(0.001));
  }

  @Test
  void a_body_shape_replaces_missing_inputs_with_wider_bounds() {
    Map<RangeItem, Estimate> stated = drive();
    stated.put(RangeItem.AMBIENT_TEMPERATURE, Estimate.exactly(35));
    Map<RangeItem, Estimate> usual = new EnumMap<>(stated);
    usual.remove(RangeItem.DRAG_AREA);
    usual.remove(RangeItem.VEHICLE_MASS);
    Numbers wide =
        measure(
            test(usual, Map.of(RangeItem.ROUTE, "loop", RangeItem.BODY, "crossover"), List.of()));
    double narrow =
        measure(stated, "loop").estimate("standard_range").orElseThrow().bounds().width();
    assertThat(wide.estimate("standard_range").orElseThrow().bounds().width())
        .isGreaterThan(1.5 * narrow);
    assertThat(wide.get("standard_range").caveats())
        .anyMatch(c -> c.sentence().startsWith("The drag area or the mass of the car is not"));
  }

  @Test
  void all_missing_inputs_are_reported_together() {
    Map<RangeItem, Estimate> drive = drive();
    drive.remove(RangeItem.AIR_PRESSURE);
    drive.remove(RangeItem.DRAG_AREA);
    drive.remove(RangeItem.WIND_SPEED);
    assertThat(measure(drive, "one way").get("standard_range").withheld())
        .contains(
            "not known of the range test: the air pressure or the height above sea level; the drag"
                + " area, or the body of the car; the wind speed; the height of start and end");
  }

  private static Leg leg(String name, double km, double kilowattHours) {
    return new Leg(
        name,
        Estimate.exactly(km),
        Optional.empty(),
        Optional.of(Estimate.exactly(kilowattHours)),
        Optional.empty(),
        new RowRef("sessions/drive/legs.csv", 2));
  }

  /** By hand: 20 kWh over 100 km out and 15 kWh over 100 km back are 200 and 150, mean 175. */
  @Test
  void out_and_back_have_equal_weight_in_the_two_way_mean() {
    Numbers numbers =
        measure(
            test(
                drive(),
                Map.of(RangeItem.ROUTE, "out and back"),
                List.of(leg("Out 1", 60, 12), leg("out 2", 40, 8), leg("back", 100, 15))));
    assertThat(value(numbers, "two_way_out_consumption")).isCloseTo(200, within(1e-9));
    assertThat(value(numbers, "two_way_back_consumption")).isCloseTo(150, within(1e-9));
    assertThat(value(numbers, "two_way_consumption")).isCloseTo(175, within(1e-9));
  }

  @Test
  void laps_are_not_out_and_back() {
    Numbers numbers =
        measure(test(drive(), Map.of(), List.of(leg("lap 1", 60, 12), leg("outer ring", 40, 8))));
    assertThat(numbers.get("two_way_consumption").withheld())
        .contains("no legs are called out and back");
  }
}
