package taperbook.metric.trip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.quantity.Estimate;

/**
 * Compares air, wind, and road load with ISO 2533, 40 CFR 1066.210, algebra, and SciPy; see {@code
 * reference/road-load/SOURCE.md}.
 */
final class RoadLoadReferenceTest {
  private static final Map<String, Double> SCIPY = new HashMap<>();

  @BeforeAll
  static void read() throws IOException {
    try (InputStream in =
        RoadLoadReferenceTest.class.getResourceAsStream("/reference/road-load/expected.csv")) {
      List<String> lines =
          new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).toList();
      for (String line : lines) {
        String[] cells = line.split(",", -1);
        SCIPY.put(cells[0], Double.parseDouble(cells[1]));
      }
    }
  }

  /** ISO 2533:1975 and ICAO Doc 7488, density of the standard atmosphere; from memory. */
  @ParameterizedTest
  @CsvSource({"15, 1013.25, 1.2250", "0, 1013.25, 1.29227", "35, 1013.25, 1.14549"})
  void density_is_that_of_the_standard_atmosphere(double celsius, double hPa, double expected) {
    assertThat(Air.density(celsius, hPa)).isCloseTo(expected, within(0.00002));
  }

  /** ISO 2533:1975, table of pressures by height: 898.75 hPa at 1000 m; from memory. */
  @Test
  void pressure_falls_with_height_as_in_the_standard_atmosphere() {
    assertThat(Air.pressureAt(0)).isCloseTo(1013.25, within(1e-9));
    assertThat(Air.pressureAt(1000)).isCloseTo(898.75, within(0.01));
    assertThat(Air.pressureAt(212)).isCloseTo(scipy("pressure_212"), within(1e-4));
    assertThat(Air.pressureAt(1500)).isCloseTo(scipy("pressure_1500"), within(1e-4));
  }

  @Test
  void density_agrees_with_scipy() {
    assertThat(Air.density(12, 990)).isCloseTo(scipy("density_12_990"), within(1e-8));
    assertThat(Air.density(30, 900)).isCloseTo(scipy("density_30_900"), within(1e-8));
  }

  private static double scipy(String name) {
    return SCIPY.getOrDefault(name, Double.NaN);
  }

  /** Algebra: the mean of (v + w)^2 and (v - w)^2 over v^2 is 1 + (w / v)^2. */
  @Test
  void a_steady_wind_adds_about_two_per_cent_out_and_back() {
    assertThat(Wind.oneWay(10, 70, 0)).isCloseTo(1.306122449, within(1e-9));
    assertThat(Wind.oneWay(10, 70, 180)).isCloseTo(3600.0 / 4900, within(1e-9));
    assertThat(Wind.outAndBack(10, 70, 0)).isCloseTo(1.020408163, within(1e-9));
  }

  @Test
  void wind_from_all_directions_agrees_with_quadrature() {
    assertThat(Wind.allAround(14, 107)).isCloseTo(scipy("wind_all_around_14_107"), within(1e-8));
    assertThat(Wind.allAround(30, 90)).isCloseTo(scipy("wind_all_around_30_90"), within(1e-8));
    // To second order 1 + 3/4 (w / v)^2, by expanding the integrand.
    assertThat(Wind.allAround(1, 100)).isCloseTo(1 + 0.75e-4, within(1e-8));
  }

  @Test
  void a_wind_stronger_than_the_car_pushes_it() {
    assertThat(Wind.oneWay(120, 100, 180)).isCloseTo(-0.04, within(1e-12));
  }

  /** By hand: 0.5 x 1.225 x 0.23 x 2.25 x 31.2928^2 = 310.4 N, 138.756 Wh/mi. */
  @Test
  void drag_at_seventy_miles_an_hour() {
    Estimate drag =
        RoadLoad.drag(
            Estimate.exactly(1.225),
            Estimate.exactly(0.23 * 2.25),
            Estimate.exactly(70 * 1.609344));
    assertThat(drag.value() * 1.609344).isCloseTo(138.75597, within(0.001));
  }

  @Test
  void drag_and_rolling_agree_with_scipy() {
    Estimate drag =
        RoadLoad.drag(Estimate.exactly(1.2095), Estimate.exactly(0.66), Estimate.exactly(107));
    assertThat(drag.value()).isCloseTo(scipy("drag_wh_per_km"), within(1e-6));
    Estimate rolling = RoadLoad.rolling(Estimate.exactly(0.010), Estimate.exactly(1775));
    assertThat(rolling.value()).isCloseTo(scipy("rolling_wh_per_km"), within(1e-6));
  }

  /** Potential energy m g h, 40 CFR 1066.210: g = 9.80665 m/s2. */
  @Test
  void climbing_requires_mass_times_gravity_times_height() {
    Estimate climb =
        RoadLoad.climb(Estimate.exactly(1775), Estimate.exactly(250), Estimate.exactly(50));
    assertThat(climb.value()).isCloseTo(scipy("climb_wh_per_km"), within(1e-6));
    // 1000 kg up 367.1 m is 1 kWh, to four digits: 3.6e6 / (1000 x 9.80665) = 367.098 m.
    Estimate kilowattHour =
        RoadLoad.climb(Estimate.exactly(1000), Estimate.exactly(367.098), Estimate.exactly(1));
    assertThat(kilowattHour.value()).isCloseTo(1000, within(0.001));
  }

  @Test
  void usual_bodies_are_wide_and_in_order_of_size() {
    assertThat(BodyShape.ofWords("lorry")).isEmpty();
    for (BodyShape body : BodyShape.values()) {
      assertThat(body.dragArea().bounds().width()).isGreaterThan(0.25 * body.dragArea().value());
    }
    assertThat(BodyShape.VAN.dragArea().value()).isGreaterThan(BodyShape.SALOON.dragArea().value());
  }
}
