package taperbook.metric.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.metric.ReportMetrics;
import taperbook.metric.Sessions;
import taperbook.plan.Basis;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.result.Drives;
import taperbook.result.Numbers;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.HowKnown;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/** Several drives of one car: means, spread, range over speed. */
final class DriveMetricsTest {
  private static final double FULL_KILOWATT_HOURS = 60;

  private static ReportPlan plan(Unit units) {
    return Sessions.plan(List.of(new SocWindow(10, 80)), List.of(), units, Basis.DRIVEN);
  }

  private static final Session SESSION =
      Sessions.session()
          .text(ConditionItem.DISPLAY_ROUNDS, "nearest")
          // No readings of the charge, because numbers of drives do not depend on a session.
          .channel(Channel.BATTERY_TEMPERATURE, 0.5, new double[] {0, 1800}, new double[] {20, 40})
          .build();

  private static Numbers measured(List<RangeTest> drives) {
    return ReportMetrics.measureSession(plan(Unit.KILOMETRE), SESSION, drives);
  }

  /** Readings with half a step as a share of the display step of cars. */
  private static RangeTest drive(
      String name, double speed, double celsius, double consumption, double fine) {
    double distance = 200;
    Map<RangeItem, Estimate> amounts = new HashMap<>();
    amounts.put(RangeItem.DISTANCE, Estimate.around(distance, 0.05 * fine));
    amounts.put(RangeItem.ODOMETER_CORRECTION, Estimate.exactly(1));
    double used = distance * consumption / 1000 / FULL_KILOWATT_HOURS * 100;
    amounts.put(RangeItem.START_SOC, Estimate.around(95, 0.5 * fine));
    amounts.put(RangeItem.END_SOC, Estimate.around(95 - used, 0.5 * fine));
    amounts.put(RangeItem.ENERGY_USED, Estimate.around(distance * consumption / 1000, 0.05 * fine));
    amounts.put(RangeItem.AVERAGE_SPEED, Estimate.around(speed, 0.05 * fine));
    amounts.put(RangeItem.TARGET_SPEED, Estimate.around(speed, 0.5));
    amounts.put(RangeItem.AMBIENT_TEMPERATURE, Estimate.around(celsius, 0.5));
    amounts.put(RangeItem.AIR_PRESSURE, Estimate.around(1013, 0.5 * fine));
    return Sessions.rangeTest(name, "Northmoor Finch", amounts, HowKnown.MEASURED);
  }

  /** In closed form, by SciPy: reference/drives, row "mean". */
  @Test
  void consumption_is_the_mean_of_drives_with_students_interval() {
    List<RangeTest> drives = new ArrayList<>();
    for (double c : new double[] {171.2, 176.9, 168.4, 173.0}) {
      drives.add(drive("d" + drives.size(), 110, 15 + drives.size(), c, 0.001));
    }
    Numbers numbers = measured(drives);
    Estimate mean = numbers.estimate("consumption").orElseThrow();
    assertThat(mean.value()).isCloseTo(172.375, within(0.001));
    assertThat(mean.bounds().width() / 2).isCloseTo(5.66674, within(0.01));
    assertThat(numbers.estimate("consumption_drive_spread").orElseThrow().value())
        .isCloseTo(3.56125, within(1e-4));
    assertThat(numbers.estimate("drive_2_consumption").orElseThrow().value())
        .isCloseTo(176.9, within(1e-6));
    // Ranges are 60 kWh over each consumption.
    double range = 15_000 * (1 / 171.2 + 1 / 176.9 + 1 / 168.4 + 1 / 173.0);
    Estimate full = numbers.estimate("driven_range_full").orElseThrow();
    assertThat(full.value()).isCloseTo(range, within(0.02));
    assertThat(numbers.get("consumption").caveats().get(0).sentence())
        .startsWith("Consumption and range are the mean of 4 drives (d0, d1, d2, d3)");
    assertThat(numbers.find("range_at_110_km_h")).isEmpty();
  }

  @Test
  void drives_that_agree_to_the_digit_keep_the_interval_of_their_readings() {
    Estimate one =
        measured(List.of(drive("a", 110, 15, 170, 1))).estimate("consumption").orElseThrow();
    Estimate two =
        measured(List.of(drive("a", 110, 15, 170, 1), drive("b", 110, 15, 170, 1)))
            .estimate("consumption")
            .orElseThrow();
    assertThat(two.value()).isCloseTo(one.value(), within(0.02));
    // Rectangular distributions of two drives: 95 % of their mean are within 0.776 of the half-
    // width, triangular.
    assertThat(two.bounds().width() / one.bounds().width()).isBetween(0.7, 0.95);
  }

  @Test
  void an_odometer_error_does_not_average_out() {
    List<RangeTest> drives = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      RangeTest exact = drive("d" + i, 110, 15, 170, 0.001);
      Map<RangeItem, Estimate> amounts = new HashMap<>();
      exact
          .facts()
          .all()
          .forEach((item, fact) -> fact.amount().ifPresent(a -> amounts.put(item, a)));
      amounts.put(RangeItem.ODOMETER_CORRECTION, Estimate.around(1, 0.02));
      drives.add(Sessions.rangeTest("d" + i, "Northmoor Finch", amounts, HowKnown.MEASURED));
    }
    Estimate mean = measured(drives).estimate("consumption").orElseThrow();
    // 95 % of a rectangular distribution of 2 %: 170 * 0.019 to either side.
    assertThat(mean.bounds().width() / 2).isCloseTo(170 * 0.019, within(0.1));
  }

  /** The true value is the mean over all possible drives. */
  @Tag("slow")
  @ParameterizedTest
  @CsvSource({"2, 0.02", "3, 0.02", "5, 0.03", "3, 0.005"})
  void the_interval_contains_the_true_mean_about_as_often_as_stated(int count, double spread) {
    Random random = new Random(20261128);
    int reports = 1200;
    int consumption = 0;
    int range = 0;
    for (int i = 0; i < reports; i++) {
      List<RangeTest> drives = new ArrayList<>();
      for (int k = 0; k < count; k++) {
        double c = 170 * (1 + spread * random.nextGaussian());
        drives.add(drive("d" + k, 110, 15, c, 0.01));
      }
      Numbers numbers = measured(drives);
      consumption += numbers.estimate("consumption").orElseThrow().bounds().contains(170) ? 1 : 0;
      double truth = FULL_KILOWATT_HOURS * 1000 / 170 * (1 + spread * spread);
      range += numbers.estimate("driven_range_full").orElseThrow().bounds().contains(truth) ? 1 : 0;
    }
    assertThat(consumption)
        .as("consumption")
        .isBetween((int) (0.93 * reports), (int) (0.97 * reports));
    assertThat(range).as("range").isBetween((int) (0.93 * reports), (int) (0.97 * reports));
  }

  /**
   * A car that does not follow the fitted form: a linear term, and a load that depends on time
   * only.
   */
  private static double truth(double v) {
    return 52 + 0.12 * v + 0.0088 * v * v + 600 / v;
  }

  @ParameterizedTest
  @CsvSource({"90", "100", "110", "120"})
  void an_omitted_speed_is_predicted_by_the_others(double left) {
    List<RangeTest> drives = new ArrayList<>();
    for (double v : new double[] {80, 90, 100, 110, 120, 130}) {
      if (v != left) {
        drives.add(drive("at-" + (int) v, v, 15, truth(v), 0.1));
      }
    }
    Numbers numbers = measured(drives);
    String id = "_at_" + (int) left + "_km_h";
    Estimate consumption = numbers.estimate("consumption" + id).orElseThrow();
    assertThat(consumption.value() / truth(left)).isCloseTo(1, within(0.005));
    assertThat(consumption.bounds().contains(truth(left))).isTrue();
    Estimate range = numbers.estimate("range" + id).orElseThrow();
    assertThat(range.bounds().contains(FULL_KILOWATT_HOURS * 1000 / truth(left))).isTrue();
    assertThat(numbers.find("range_at_70_km_h")).isEmpty();
    assertThat(numbers.find("range_at_140_km_h")).isEmpty();
  }

  @Tag("slow")
  @ParameterizedTest
  @CsvSource({"3, 0.02", "4, 0.02", "6, 0.02"})
  void the_interval_contains_the_true_range_at_a_speed_about_as_often_as_stated(
      int count, double spread) {
    Random random = new Random(20261129);
    int reports = 800;
    int inside = 0;
    for (int i = 0; i < reports; i++) {
      List<RangeTest> drives = new ArrayList<>();
      for (int k = 0; k < count; k++) {
        double v = 85 + 45.0 * k / (count - 1);
        double c = truth(v) * (1 + spread * random.nextGaussian());
        drives.add(drive("d" + k, v, 15, c, 0.1));
      }
      Estimate range = measured(drives).estimate("range_at_100_km_h").orElse(Estimate.exactly(0));
      inside += range.bounds().contains(60_000 / truth(100)) ? 1 : 0;
    }
    assertThat(inside).isBetween((int) (0.93 * reports), (int) (0.985 * reports));
  }

  @Test
  void thinner_air_is_corrected_to_the_air_of_the_first_drive() {
    List<RangeTest> drives = new ArrayList<>();
    for (double v : new double[] {80, 100, 120, 130}) {
      double celsius = v == 80 ? 10 : 15;
      // By the ideal gas law, density is inversely proportional to absolute temperature.
      double c = 70 + 0.009 * v * v * 283.15 / (celsius + 273.15);
      drives.add(drive("at-" + (int) v, v, celsius, c, 0.01));
    }
    assertThat(measured(drives).estimate("consumption_at_110_km_h").orElseThrow().value())
        .isCloseTo(70 + 0.009 * 110 * 110, within(0.02));
  }

  @Test
  void two_speeds_determine_the_line_and_state_no_range() {
    List<RangeTest> drives = List.of(drive("a", 90, 15, 150, 1), drive("b", 120, 15, 190, 1));
    Numbers numbers = measured(drives);
    assertThat(numbers.get("range_at_100_km_h").withheld().orElseThrow())
        .startsWith("drives at two speeds determine the line");
    assertThat(new Drives(drives).unused()).hasSize(1);
    assertThat(numbers.estimate("consumption").orElseThrow().value()).isCloseTo(150, within(0.05));
  }

  @Test
  void miles_have_steps_of_five() {
    List<RangeTest> drives =
        List.of(
            drive("a", 90, 15, 150, 1), drive("b", 105, 15, 170, 1), drive("c", 120, 15, 192, 1));
    Numbers numbers = ReportMetrics.measureSession(plan(Unit.MILE), SESSION, drives);
    assertThat(numbers.all().stream().map(n -> n.id()).filter(id -> id.startsWith("range_at")))
        .containsExactly("range_at_60_mph", "range_at_65_mph", "range_at_70_mph");
  }

  @Test
  void drives_in_other_weather_or_at_another_speed_are_excluded() {
    RangeTest first = drive("a", 110, 15, 170, 1);
    Drives drives =
        new Drives(
            List.of(
                first,
                drive("cold", 110, 9, 185, 1),
                drive("near", 113, 20, 172, 1),
                drive("slow", 106, 15, 160, 1)));
    assertThat(drives.agreeing().stream().map(RangeTest::name)).containsExactly("a", "near");
    assertThat(drives.unused().stream().map(u -> u.test().name() + " " + u.item()))
        .containsExactly("cold AMBIENT_TEMPERATURE", "slow TARGET_SPEED");
  }
}
