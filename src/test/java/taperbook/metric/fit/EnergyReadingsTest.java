package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.metric.bounds.PowerIntegral;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/** Points of a session that takes 0.6 kWh per 1 % at 72 kW, so 30 s per 1 %. */
final class EnergyReadingsTest {
  private static final double[] SECONDS = {0, 30, 60, 90, 120, 150, 180};
  private static final double[] SOC = {10, 11, 12, 13, 14, 15, 16};
  private static final double[] ENERGY = {0, 0.6, 1.2, 1.8, 2.4, 3.0, 3.6};

  private static Trace trace(double halfStep, double[] seconds, double... values) {
    int[] lines = Arrays.stream(seconds).mapToInt(t -> (int) (t / 30) + 2).toArray();
    return new Trace("r", seconds, values, lines, halfStep, 0);
  }

  private static Trace soc(double halfStep) {
    return trace(halfStep, SECONDS, SOC);
  }

  private static Optional<PowerIntegral> steady(double halfStep, double from, double to) {
    double[] seconds = {from, to};
    return Optional.of(
        new PowerIntegral(
            new Trace("p", seconds, new double[] {72, 72}, new int[] {2, 3}, halfStep, 0)));
  }

  @Test
  void the_counter_gives_one_point_for_each_displayed_charge() {
    EnergyReadings readings =
        EnergyReadings.of(soc(0.5), Optional.of(trace(0.05, SECONDS, ENERGY)), Optional.empty())
            .orElseThrow();
    assertThat(readings.relativeScale()).isZero();
    assertThat(readings.points()).hasSize(7);
    for (int i = 0; i < 7; i++) {
      LinePoint point = readings.points().get(i);
      assertThat(point.x()).isEqualTo(10 + i);
      assertThat(point.y()).isCloseTo(0.6 * i, within(1e-12));
      assertThat(point.xVariance()).isCloseTo(0.25 / 3, within(1e-12));
      assertThat(point.yVariance()).isCloseTo(0.0025 / 3, within(1e-12));
    }
    assertThat(readings.rows()).extracting(RowRef::line).containsExactly(2, 3, 4, 5, 6, 7, 8);
  }

  @Test
  void only_rows_with_both_readings_count() {
    double[] seconds = {0, 30, 90, 120, 180};
    Optional<Trace> counter = Optional.of(trace(0.05, seconds, 0, 0.6, 1.8, 2.4, 3.6));
    EnergyReadings readings = EnergyReadings.of(soc(0.5), counter, Optional.empty()).orElseThrow();
    assertThat(readings.points())
        .extracting(LinePoint::x)
        .containsExactly(10.0, 11.0, 13.0, 14.0, 16.0);
    assertThat(readings.points()).extracting(LinePoint::y).containsExactly(0.0, 0.6, 1.8, 2.4, 3.6);
    assertThat(readings.rows()).extracting(RowRef::line).containsExactly(2, 3, 5, 6, 8);
  }

  @Test
  void a_counter_in_fewer_than_five_rows_is_replaced_by_integrated_power() {
    double[] seconds = {0, 30, 90, 120};
    Optional<Trace> counter = Optional.of(trace(0.05, seconds, 0, 0.6, 1.8, 2.4));
    assertThat(EnergyReadings.of(soc(0.5), counter, Optional.empty())).isEmpty();
    EnergyReadings integrated =
        EnergyReadings.of(soc(0.5), counter, steady(0.5, 0, 180)).orElseThrow();
    assertThat(integrated.points()).hasSize(7);
    assertThat(integrated.relativeScale()).isPositive();
  }

  @Test
  void integrated_power_has_the_uncertainty_of_its_scale_and_no_scatter() {
    EnergyReadings readings =
        EnergyReadings.of(soc(0.5), Optional.empty(), steady(0.5, 0, 180)).orElseThrow();
    for (int i = 0; i < 7; i++) {
      LinePoint point = readings.points().get(i);
      assertThat(point.y()).isCloseTo(0.6 * i, within(1e-9));
      assertThat(point.yVariance()).isZero();
    }
    // 72 kW within half a kW, as a rectangular distribution.
    assertThat(readings.relativeScale()).isCloseTo(0.5 / 72 / Math.sqrt(3), within(1e-9));
    assertThat(readings.rows())
        .containsExactlyElementsOf(
            List.of(
                new RowRef("r", 2),
                new RowRef("r", 3),
                new RowRef("r", 4),
                new RowRef("r", 5),
                new RowRef("r", 6),
                new RowRef("r", 7),
                new RowRef("r", 8),
                new RowRef("p", 2),
                new RowRef("p", 3)));
  }

  @Test
  void charges_outside_the_readings_of_power_are_left_out() {
    EnergyReadings readings =
        EnergyReadings.of(soc(0.5), Optional.empty(), steady(0.5, 20, 160)).orElseThrow();
    assertThat(readings.points())
        .extracting(LinePoint::x)
        .containsExactly(11.0, 12.0, 13.0, 14.0, 15.0);
    // The first is 10 s after power was first read: 0.2 kWh.
    assertThat(readings.points().get(0).y()).isCloseTo(0.2, within(1e-9));
    assertThat(EnergyReadings.of(soc(0.5), Optional.empty(), steady(0.5, 40, 160))).isEmpty();
  }

  @Test
  void readings_without_any_rounding_have_no_weight() {
    Optional<Trace> counter = Optional.of(trace(0, SECONDS, ENERGY));
    assertThat(EnergyReadings.of(soc(0), counter, Optional.empty())).isEmpty();
    assertThat(EnergyReadings.of(soc(0), Optional.empty(), steady(0.5, 0, 180))).isEmpty();
    assertThat(EnergyReadings.of(soc(0.5), counter, Optional.empty())).isPresent();
    assertThat(
            EnergyReadings.of(soc(0), Optional.of(trace(0.05, SECONDS, ENERGY)), Optional.empty()))
        .isPresent();
  }

  @Test
  void a_power_of_zero_has_no_relative_uncertainty() {
    PowerIntegral none =
        new PowerIntegral(
            new Trace("p", new double[] {0, 180}, new double[] {0, 0}, new int[] {2, 3}, 0.5, 0));
    assertThat(
            EnergyReadings.of(soc(0.5), Optional.empty(), Optional.of(none))
                .orElseThrow()
                .relativeScale())
        .isZero();
  }

  @Test
  void a_log_has_the_middle_of_each_step_of_both_displays() {
    // Three rows per 1 %, four per 1 kWh: within each step of the counter the energy rises evenly.
    int n = 48;
    double[] seconds = IntStream.range(0, n).mapToDouble(i -> 30 * i).toArray();
    double[] soc = IntStream.range(0, n).mapToDouble(i -> Math.floorDiv(i, 3) + 10).toArray();
    double[] energy = IntStream.range(0, n).mapToDouble(i -> Math.floorDiv(i, 4)).toArray();
    EnergyReadings readings =
        EnergyReadings.of(
                trace(0.5, seconds, soc),
                Optional.of(trace(0.5, seconds, energy)),
                Optional.empty())
            .orElseThrow();
    assertThat(readings.points()).hasSize(16);
    for (int k = 2; k < 14; k++) {
      // The middle row is 3 k + 1, and a step begins half a row before its first row.
      double row = 3 * k + 1;
      assertThat(readings.points().get(k).y()).isCloseTo((row + 0.5) / 4 - 0.5, within(1e-9));
    }
  }
}
