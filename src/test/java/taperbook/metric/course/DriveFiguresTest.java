package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.quantity.Estimate;
import taperbook.session.DisplayRounding;
import taperbook.session.RangeItem;

/** By hand: 300 km on the odometer, which counts 1 % too few, from 90 % to 10 % with 50 kWh. */
final class DriveFiguresTest {
  private static final Map<RangeItem, Estimate> WHOLE =
      Map.of(
          RangeItem.DISTANCE, Estimate.around(300, 0.5),
          RangeItem.ODOMETER_CORRECTION, Estimate.around(1.01, 0.005),
          RangeItem.START_SOC, Estimate.around(90, 0.5),
          RangeItem.END_SOC, Estimate.around(10, 0.5),
          RangeItem.ENERGY_USED, Estimate.around(50, 0.05),
          RangeItem.AVERAGE_SPEED, Estimate.around(100, 0.5));

  private static DriveFigures figures(Map<RangeItem, Estimate> known) {
    return DriveFigures.of(Sessions.rangeTest(known), DisplayRounding.NEAREST);
  }

  private static DriveFigures without(RangeItem item) {
    Map<RangeItem, Estimate> some = new EnumMap<>(WHOLE);
    some.remove(item);
    return figures(some);
  }

  @Test
  void bounds_omit_the_uncertainty_that_drives_have_in_common() {
    DriveFigures drive = figures(WHOLE);
    // The correction of the odometer contributes only its value.
    check(
        drive.consumption().orElseThrow(),
        50_000 / 303.0,
        49_950 / (300.5 * 1.01),
        50_050 / (299.5 * 1.01));
    check(
        drive.chargePerKilometre().orElseThrow(),
        80 / 303.0,
        79 / (300.5 * 1.01),
        81 / (299.5 * 1.01));
    check(
        drive.fullRange().orElseThrow(),
        100 * 303 / 80.0,
        100 * 299.5 * 1.01 / 81,
        100 * 300.5 * 1.01 / 79);
  }

  @Test
  void the_speed_of_the_car_has_the_error_of_its_odometer() {
    check(figures(WHOLE).speed(true).orElseThrow(), 101, 99.5 * 1.01, 100.5 * 1.01);
    check(figures(WHOLE).speed(false).orElseThrow(), 100, 99.5, 100.5);
  }

  @Test
  void an_odometer_without_correction_is_exact() {
    assertThat(without(RangeItem.ODOMETER_CORRECTION).fullRange().orElseThrow().value())
        .isCloseTo(375, within(1e-9));
  }

  @Test
  void items_that_were_not_recorded_have_no_figure() {
    assertThat(without(RangeItem.ENERGY_USED).consumption()).isEmpty();
    assertThat(without(RangeItem.DISTANCE).consumption()).isEmpty();
    assertThat(without(RangeItem.DISTANCE).fullRange()).isEmpty();
    assertThat(without(RangeItem.END_SOC).fullRange()).isEmpty();
    assertThat(without(RangeItem.AVERAGE_SPEED).speed(true)).isEmpty();
  }

  @Test
  void a_displayed_consumption_replaces_energy_and_distance() {
    Map<RangeItem, Estimate> some = new EnumMap<>(WHOLE);
    some.remove(RangeItem.ENERGY_USED);
    some.put(RangeItem.CONSUMPTION_DISPLAYED, Estimate.around(171, 0.5));
    check(figures(some).consumption().orElseThrow(), 171, 170.5, 171.5);
  }

  private static void check(Estimate estimate, double value, double low, double high) {
    assertThat(estimate.value()).isCloseTo(value, within(1e-9));
    assertThat(estimate.bounds().low()).isCloseTo(low, within(1e-9));
    assertThat(estimate.bounds().high()).isCloseTo(high, within(1e-9));
  }
}
