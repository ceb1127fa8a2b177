package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.plan.Basis;
import taperbook.plan.LibraryPlan;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Curve;
import taperbook.result.LibraryRow;
import taperbook.result.ReportNumber;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/**
 * Rows of sessions with numbers by hand: 120 kW from 10 % into a battery of 100 kWh is 1 % per 30
 * s.
 */
@Tag("slow")
final class LibraryMetricsTest {
  private static final LibraryPlan PLAN =
      new LibraryPlan(
          "all",
          new ReportPlan.Heading("All", "", Optional.empty()),
          List.of(new WantedDistance(100, Unit.KILOMETRE)),
          new SocWindow(20, 80),
          new ReportPlan.Style(Unit.KILOMETRE, Basis.DRIVEN, "library"),
          new ReportPlan.Article("", "reports/all.md", 1));

  /** 360 km on 90 % are 400 km on 100 %, so that 100 km are 25 % or 25 * 30 s. */
  private static final RangeTest DRIVE =
      Sessions.rangeTest(
          Map.of(
              RangeItem.DISTANCE, Estimate.exactly(360),
              RangeItem.START_SOC, Estimate.exactly(95),
              RangeItem.END_SOC, Estimate.exactly(5)));

  @Test
  void a_row_has_the_numbers_of_the_hand_calculation() {
    LibraryRow row = LibraryMetrics.measure(PLAN, even().build(), List.of(DRIVE));
    assertThat(row.numbers().all())
        .extracting(ReportNumber::id)
        .containsExactly(
            "time_to_add_100_km",
            "peak_power",
            "peak_hold_time",
            "time_soc_20_80",
            "average_power_20_80",
            "start_soc",
            "end_soc",
            "energy_per_soc",
            "driven_range_full",
            "battery_temperature_at_start",
            "day_time",
            "day_stops",
            "day_more_consumption_extra_time",
            "day_3_min_stops_extra_time",
            "day_10_min_stops_extra_time");
    assertThat(value(row, "start_soc")).isEqualTo(10);
    assertThat(value(row, "end_soc")).isEqualTo(90);
    assertThat(value(row, "peak_power")).isEqualTo(120);
    assertThat(value(row, "peak_hold_time")).isEqualTo(80 * 30);
    checkSampled(row, "time_soc_20_80", 60 * 30);
    checkSampled(row, "average_power_20_80", 120);
    checkSampled(row, "energy_per_soc", 1);
    assertThat(value(row, "driven_range_full")).isCloseTo(400, within(1e-9));
    checkSampled(row, "time_to_add_100_km", 25 * 30);
    assertThat(value(row, "battery_temperature_at_start")).isEqualTo(24);
    assertThat(row.numbers().all())
        .allSatisfy(n -> assertThat(n.estimate().orElseThrow().bounds().width()).isNotNegative());
  }

  @Test
  void unavailable_numbers_are_withheld_with_the_reason() {
    Session session =
        even().unknown(ConditionItem.BATTERY_TEMPERATURE_AT_START).named("alone").build();
    LibraryRow row = LibraryMetrics.measure(PLAN, session, List.of());
    assertThat(row.numbers().get("driven_range_full").withheld())
        .contains("there is no range test of this vehicle in the folder");
    assertThat(row.numbers().get("time_to_add_100_km").withheld())
        .contains("there is no range test of this vehicle in the folder");
    assertThat(row.numbers().get("battery_temperature_at_start").withheld())
        .contains("the battery's temperature at plugging in is not known");
    assertThat(row.caveats()).contains(Caveat.Kind.BATTERY_TEMPERATURE);
  }

  private static void checkSampled(LibraryRow row, String id, double expected) {
    Estimate estimate = row.numbers().estimate(id).orElseThrow();
    // 0.1 kWh, the step of the counter, is 0.17 % of the energy from 20 % to 80 %.
    assertThat(estimate.value()).as(id).isCloseTo(expected, within(1e-3 * expected));
    assertThat(estimate.bounds().contains(expected)).as(id + " " + estimate).isTrue();
    assertThat(estimate.bounds().width()).as(id).isLessThan(0.02 * expected);
  }

  @Test
  void a_row_has_the_values_and_intervals_of_a_report() {
    ReportPlan plan =
        Sessions.plan(List.of(PLAN.window()), PLAN.distances(), Unit.KILOMETRE, Basis.DRIVEN);
    var report = ReportMetrics.measureSession(plan, even().build(), List.of(DRIVE));
    LibraryRow row = LibraryMetrics.measure(PLAN, even().build(), List.of(DRIVE));
    List<ReportNumber> both =
        row.numbers().all().stream().filter(n -> report.find(n.id()).isPresent()).toList();
    assertThat(both).hasSizeGreaterThan(5);
    for (ReportNumber number : both) {
      assertThat(number.outcome()).as(number.id()).isEqualTo(report.get(number.id()).outcome());
    }
  }

  @Test
  void a_curve_of_straight_segments_keeps_exactly_its_corners_and_its_peak() {
    double[] cornersX = {5, 12, 40, 55, 90};
    double[] cornersY = {60, 150, 140, 90, 30};
    int n = 3401;
    double[] x = IntStream.range(0, n).mapToDouble(i -> 5 + i * 0.025).toArray();
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      y[i] = piecewise(cornersX, cornersY, x[i]);
    }
    Curve thinned = CurveThinning.of(new Curve(x, y, y, y, new boolean[n]), 5);
    assertThat(IntStream.range(0, thinned.size()).mapToDouble(thinned::x).toArray())
        .containsExactly(cornersX, within(1e-9));
    assertThat(IntStream.range(0, thinned.size()).mapToDouble(thinned::y).toArray())
        .containsExactly(cornersY, within(1e-9));
  }

  @Test
  void a_logger_curve_has_at_most_64_points_and_keeps_its_gaps() {
    int n = 3600;
    double[] x = IntStream.range(0, n).mapToDouble(i -> i / 40.0).toArray();
    double[] y = IntStream.range(0, n).mapToDouble(i -> 100 + 20 * Math.sin(i / 7.0)).toArray();
    boolean[] wide = new boolean[n];
    wide[1234] = true;
    Curve thinned = CurveThinning.of(new Curve(x, y, y, y, wide), LibraryRow.MAX_POINTS);
    assertThat(thinned.size()).isEqualTo(64);
    assertThat(IntStream.range(0, 64).filter(thinned::wideGapAfter).count()).isEqualTo(1);
    assertThat(thinned.x(0)).isEqualTo(x[0]);
    assertThat(thinned.x(63)).isEqualTo(x[n - 1]);
  }

  private static double piecewise(double[] xs, double[] ys, double x) {
    for (int k = 1; k < xs.length; k++) {
      if (x <= xs[k] + 1e-9) {
        return ys[k - 1] + (x - xs[k - 1]) / (xs[k] - xs[k - 1]) * (ys[k] - ys[k - 1]);
      }
    }
    throw new IllegalArgumentException("beyond the corners: " + x);
  }

  private static double value(LibraryRow row, String id) {
    return row.numbers().estimate(id).orElseThrow().value();
  }

  private static Sessions even() {
    double[] seconds = IntStream.rangeClosed(0, 80).mapToDouble(i -> 30.0 * i).toArray();
    return Sessions.session()
        .channel(Channel.SOC, 0.5, seconds, each(i -> 10.0 + i))
        .channel(Channel.POWER, 0.5, seconds, each(i -> 120.0))
        .channel(Channel.ENERGY_ADDED, 0.05, seconds, each(i -> (double) i))
        .amount(ConditionItem.BATTERY_TEMPERATURE_AT_START, 24, 0.5);
  }

  private static double[] each(IntToDoubleFunction value) {
    return IntStream.rangeClosed(0, 80).mapToDouble(value).toArray();
  }
}
