package taperbook.metric.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Method;
import taperbook.session.DisplayRounding;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;

/** Arithmetic of a drive, and what is missing if a reading is. */
final class RangeFiguresTest {
  private static final Map<RangeItem, Double> DRIVE =
      Map.of(
          RangeItem.DISTANCE, 270.0,
          RangeItem.START_SOC, 95.0,
          RangeItem.END_SOC, 5.0,
          RangeItem.ENERGY_USED, 54.0,
          RangeItem.RATED_RANGE, 420.0);

  private static RangeTest drive(Map<RangeItem, Double> amounts) {
    Map<RangeItem, Estimate> exact = new EnumMap<>(RangeItem.class);
    amounts.forEach((item, amount) -> exact.put(item, Estimate.exactly(amount)));
    return Sessions.rangeTest(exact);
  }

  private static Map<RangeItem, Double> without(RangeItem... items) {
    Map<RangeItem, Double> rest = new EnumMap<>(DRIVE);
    List.of(items).forEach(rest::remove);
    return rest;
  }

  private static RangeFigures of(Map<RangeItem, Double> amounts) {
    return RangeFigures.of(Optional.of(drive(amounts)), DisplayRounding.NEAREST, Basis.DRIVEN);
  }

  private static double value(Finding<Estimate> finding) {
    return finding.value().orElseThrow().value();
  }

  private static String reason(Finding<?> finding) {
    return finding.reason().orElseThrow().text();
  }

  @Test
  void range_and_consumption_follow_from_the_readings() {
    RangeFigures figures = of(DRIVE);
    assertThat(value(figures.distance())).isEqualTo(270);
    // 270 km on 90 % of the charge, 54 kWh on 270 km.
    assertThat(value(figures.fullRange())).isCloseTo(300, within(1e-9));
    assertThat(value(figures.consumption())).isCloseTo(200, within(1e-9));
    assertThat(value(figures.ratedRange())).isEqualTo(420);
    assertThat(figures.consumptionBasis()).isEqualTo(Basis.ENERGY);
    assertThat(figures.fullRange().rows()).hasSize(3);
    assertThat(figures.consumption().rows()).hasSize(2);
  }

  @Test
  void the_share_of_a_distance_is_that_of_the_range() {
    RangeFigures figures = of(DRIVE);
    WantedDistance distance = new WantedDistance(75, Unit.KILOMETRE);
    assertThat(value(figures.share(distance))).isCloseTo(25, within(1e-9));
    assertThat(value(RangeFigures.share(distance, figures.ratedRange())))
        .isCloseTo(75 / 4.2, within(1e-9));
  }

  @Test
  void the_odometer_correction_scales_distance_range_and_consumption() {
    Map<RangeItem, Double> corrected = new EnumMap<>(DRIVE);
    corrected.put(RangeItem.ODOMETER_CORRECTION, 0.9);
    RangeFigures figures = of(corrected);
    assertThat(value(figures.distance())).isCloseTo(243, within(1e-9));
    assertThat(value(figures.fullRange())).isCloseTo(270, within(1e-9));
    assertThat(value(figures.consumption())).isCloseTo(54_000 / 243.0, within(1e-9));
    assertThat(figures.distance().rows()).hasSize(2);
  }

  @Test
  void the_displayed_consumption_is_used_only_if_it_cannot_be_computed() {
    Map<RangeItem, Double> displayed = without(RangeItem.ENERGY_USED);
    displayed.put(RangeItem.CONSUMPTION_DISPLAYED, 212.0);
    RangeFigures figures = of(displayed);
    assertThat(value(figures.consumption())).isEqualTo(212);
    assertThat(figures.consumptionMethod()).isEqualTo(Method.CONSUMPTION_DISPLAYED);
    assertThat(figures.consumptionBasis()).isEqualTo(Basis.DISPLAYED);
    displayed.put(RangeItem.ENERGY_USED, 54.0);
    assertThat(value(of(displayed).consumption())).isCloseTo(200, within(1e-9));
  }

  @Test
  void what_is_not_known_is_named() {
    assertThat(reason(of(without(RangeItem.DISTANCE)).fullRange()))
        .isEqualTo("the distance driven is not known");
    assertThat(reason(of(without(RangeItem.DISTANCE)).consumption()))
        .isEqualTo("the distance driven is not known");
    assertThat(reason(of(without(RangeItem.ENERGY_USED)).consumption()))
        .startsWith("neither the energy used nor");
    assertThat(of(without(RangeItem.END_SOC)).fullRange().value()).isEmpty();
    assertThat(of(without(RangeItem.END_SOC)).consumption().value()).isPresent();
    assertThat(of(without(RangeItem.RATED_RANGE)).ratedRange().value()).isEmpty();
    RangeFigures none = RangeFigures.of(Optional.empty(), DisplayRounding.NEAREST, Basis.RATED);
    assertThat(List.of(none.distance(), none.fullRange(), none.consumption(), none.chosenRange()))
        .allMatch(f -> f.reason().equals(Optional.of(RangeFigures.NO_TEST)));
  }

  @Test
  void several_drives_give_their_mean_with_their_spread() {
    Map<RangeItem, Double> shorter = new EnumMap<>(DRIVE);
    shorter.put(RangeItem.DISTANCE, 261.0);
    RangeFigures mean =
        RangeFigures.of(
            List.of(drive(DRIVE), drive(shorter), drive(without(RangeItem.DISTANCE))),
            DisplayRounding.NEAREST,
            Basis.DRIVEN);
    // The mean of 300 km and 290 km; Student's factor for two is 12.7.
    assertThat(value(mean.fullRange())).isCloseTo(295, within(1e-9));
    assertThat(mean.fullRange().value().orElseThrow().bounds().high())
        .isCloseTo(295 + 12.706 * 5, within(0.01));
    assertThat(mean.rangeMethod()).isEqualTo(Method.DRIVES_MEAN);
    assertThat(mean.consumptionMethod()).isEqualTo(Method.DRIVES_MEAN);
  }

  @Test
  void a_single_drive_with_a_figure_is_not_a_mean() {
    RangeFigures one =
        RangeFigures.of(
            List.of(drive(without(RangeItem.DISTANCE)), drive(DRIVE)),
            DisplayRounding.NEAREST,
            Basis.DRIVEN);
    assertThat(value(one.fullRange())).isCloseTo(300, within(1e-9));
    assertThat(one.rangeMethod()).isEqualTo(Method.DRIVEN_RANGE);
  }
}
