package taperbook.metric.trip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import taperbook.quantity.Interval;
import taperbook.session.Trace;

/**
 * Optimal plans by calculus. At constant power each per cent takes the same time, so that the best
 * plan has the fewest stops and charges only the missing energy. A linearly falling curve is best
 * used from the reserve. A symmetric peak is best used symmetrically about its maximum, where power
 * at the end of a stretch equals that at its start. For power a - k |s - m| kW and C kWh the time
 * from m - w to m + w is
 *
 * <pre>
 *   2 * 3600 C / (100 k) * ln(a / (a - k w))
 * </pre>
 */
final class ClosedFormTripReferenceTest {
  private static final double FULL_KILOWATT_HOURS = 60;

  /** Charge times at each tenth of a per cent, from the integral of 1 / power. */
  private static ChargeTimes clock(DoubleUnaryOperator secondsSinceZero, int low, int high) {
    int n = (high - low) * 10 + 1;
    double[] soc = new double[n];
    double[] seconds = new double[n];
    int[] lines = new int[n];
    for (int i = 0; i < n; i++) {
      soc[i] = low + i / 10.0;
      seconds[i] = secondsSinceZero.applyAsDouble(soc[i]);
      lines[i] = i + 2;
    }
    return ChargeTimes.of(new Trace("readings.csv", seconds, soc, lines, 0, 0)).orElseThrow();
  }

  private static double taper(double a, double k, double soc) {
    return 3600 * FULL_KILOWATT_HOURS / (100 * k) * Math.log(a / (a - k * soc));
  }

  @Test
  void constant_power_gives_the_fewest_stops_and_the_missing_charge() {
    // 20 s per 1 %, 4 km per 1 %: 800 km need 200 %, of which 90 are available.
    ChargeTimes clock = clock(soc -> 20 * soc, 0, 95);
    TripTask task = new TripTask(800, 50, 15, 300, 100, 10, 4);
    TripPlan plan = new TripSearch(clock, task).best().orElseThrow();
    // 110 % are missing and one stop adds at most 85 %.
    assertThat(plan.stops()).hasSize(2);
    assertThat(plan.stopSeconds()).isCloseTo(2 * 300 + 110 * 20, within(1e-6));
    assertThat(plan.arrivalPercent()).isCloseTo(10, within(1e-9));
    assertThat(new TripSearch(clock, task).best(1)).isEmpty();
    assertThat(new TripSearch(clock, task).best(3).orElseThrow().stopSeconds())
        .isCloseTo(3 * 300 + 110 * 20, within(1e-6));
  }

  @Test
  void with_constant_power_the_flat_range_is_limited_by_the_reserve_only() {
    ChargeTimes clock = clock(soc -> 20 * soc, 0, 95);
    TripTask task = new TripTask(800, 50, 15, 300, 100, 10, 4);
    TripPlan plan = new TripSearch(clock, task).best().orElseThrow();
    List<Interval> flat = UnplugRanges.within(clock, task, plan, 0);
    // Any split of the missing charge that reaches the next stop is optimal, so that both ends
    // differ.
    TripPlan.Stop first = plan.stops().get(0);
    TripPlan.Stop second = plan.stops().get(1);
    double between = (second.kilometre() - first.kilometre()) / 4;
    assertThat(flat.get(0).low()).isCloseTo(10 + between, within(1e-9));
    assertThat(flat.get(0).high())
        .isCloseTo(Math.min(95, second.unplugPercent() + between), within(1.0));
  }

  @Test
  void an_even_taper_is_used_from_the_reserve_on() {
    // 150 kW - 1.2 kW/% x s: 10 % to 32 % take 1800 ln(138 / 111.6) s by hand.
    ChargeTimes clock = clock(soc -> taper(150, 1.2, soc), 0, 95);
    FastestStretch best = FastestStretch.of(clock, 22, 10).orElseThrow();
    assertThat(best.fromPercent()).isEqualTo(10);
    assertThat(best.toPercent()).isEqualTo(32);
    assertThat(best.seconds()).isCloseTo(3600 * 60 / 120.0 * Math.log(138 / 111.6), within(1e-3));
  }

  @Test
  void a_curve_with_a_peak_is_used_evenly_about_it() {
    double a = 160;
    double k = 2.5;
    double peak = 40;
    ChargeTimes clock =
        clock(
            s ->
                s <= peak
                    ? taper(a, k, peak) - taper(a, k, peak - s)
                    : taper(a, k, peak) + taper(a, k, s - peak),
            0,
            90);
    FastestStretch best = FastestStretch.of(clock, 30, 0).orElseThrow();
    assertThat(best.fromPercent()).isCloseTo(25, within(0.05));
    assertThat(best.toPercent()).isCloseTo(55, within(0.05));
    assertThat(best.seconds())
        .isCloseTo(2 * 3600 * 60 / (100 * k) * Math.log(a / (a - k * 15)), within(0.01));
    // Shifted by d, the time is T ln((a^2) / ((a - k (15 - d)) (a - k (15 + d)))), T = 864 s: a
    // second more where (k d)^2 = (a - 15 k)^2 (1 - exp(-1 / 864)).
    double moved = (a - 15 * k) * Math.sqrt(1 - Math.exp(-1 / 864.0)) / k;
    Interval ends = best.endsWithin(clock, 0, 1);
    assertThat(ends.low()).isCloseTo(55 - moved, within(0.05));
    assertThat(ends.high()).isCloseTo(55 + moved, within(0.05));
  }

  @Test
  void a_trip_within_the_battery_range_has_no_stop() {
    ChargeTimes clock = clock(soc -> 20 * soc, 0, 95);
    TripPlan plan =
        new TripSearch(clock, new TripTask(300, 50, 5, 300, 100, 10, 4)).best().orElseThrow();
    assertThat(plan.stops()).isEmpty();
    assertThat(plan.arrivalPercent()).isCloseTo(25, within(1e-9));
  }

  @Test
  void stations_too_far_apart_have_no_plan() {
    ChargeTimes clock = clock(soc -> 20 * soc, 0, 80);
    assertThat(new TripSearch(clock, new TripTask(900, 300, 2, 300, 100, 10, 4)).best()).isEmpty();
  }

  @Test
  void a_session_narrower_than_the_stretch_has_no_plan() {
    assertThat(FastestStretch.of(clock(soc -> 20 * soc, 20, 60), 41, 0)).isEmpty();
    assertThat(FastestStretch.of(clock(soc -> 20 * soc, 20, 60), 35, 30)).isEmpty();
  }
}
