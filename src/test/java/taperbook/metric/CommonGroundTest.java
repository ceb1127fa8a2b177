package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.metric.course.TrueCurve;
import taperbook.plan.Basis;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.CommonGround;
import taperbook.result.Numbers;
import taperbook.result.PairResult;
import taperbook.result.ReportResult;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/**
 * Common ground of sessions at constant power: P kW into C kWh add 100 P / C per cent per hour, E
 * kWh in E / P hours, and a distance D of a range R in C D / R / P hours.
 */
@Tag("slow")
final class CommonGroundTest {
  private static final WantedDistance DISTANCE = new WantedDistance(100, Unit.KILOMETRE);
  private static final double CAPACITY = 60;

  /**
   * Readings of a battery of 60 kWh as the display first shows each whole per cent, exact except
   * for the display steps.
   */
  private static Sessions read(
      String name, int from, int to, DoubleUnaryOperator second, DoubleUnaryOperator power) {
    double[] soc = new double[to - from + 1];
    Arrays.setAll(soc, i -> from + i);
    double[] seconds = Arrays.stream(soc).map(second).toArray();
    return Sessions.session()
        .named(name)
        .text(ConditionItem.DISPLAY_ROUNDS, "nearest")
        .text(ConditionItem.ROWS_WRITTEN, "at changes")
        .channel(Channel.SOC, 0.5, seconds, soc)
        .channel(Channel.POWER, 0.5, seconds, Arrays.stream(soc).map(power).toArray())
        .channel(
            Channel.ENERGY_ADDED,
            0.05,
            seconds,
            Arrays.stream(soc).map(q -> (q - from) / 100 * CAPACITY).toArray());
  }

  private static Sessions steady(String name, int from, int to, double kilowatts) {
    return read(name, from, to, q -> (q - from) * 36 * CAPACITY / kilowatts, q -> kilowatts);
  }

  private static ReportResult measure(Basis basis, Session main, Session... others) {
    return measure(basis, ReportMetrics.Again.NO, main, others);
  }

  private static ReportResult measure(
      Basis basis, ReportMetrics.Again again, Session main, Session... others) {
    // 240 km with 80 % of the battery are 300 km with the full battery.
    RangeTest drive =
        Sessions.rangeTest(
            Map.of(
                RangeItem.DISTANCE, Estimate.around(240, 0.05),
                RangeItem.START_SOC, Estimate.around(90, 0.5),
                RangeItem.END_SOC, Estimate.around(10, 0.5),
                RangeItem.RATED_RANGE, Estimate.exactly(400)));
    ReportPlan plan =
        Sessions.plan(List.of(new SocWindow(20, 70)), List.of(DISTANCE), Unit.KILOMETRE, basis);
    return ReportMetrics.measure(
        plan,
        new ReportMetrics.Sessions(
            main, List.of(others), List.of(), List.of(), ReportPlan.Season.none()),
        List.of(drive),
        again);
  }

  private static void check(Numbers numbers, String id, double expected) {
    Estimate estimate = numbers.estimate(id).orElseThrow();
    // The counter's last digit is 0.2 % of the energy; the mean of the draws is closer than that.
    assertThat(estimate.value()).as(id).isCloseTo(expected, within(1e-3 * expected));
    assertThat(estimate.bounds().contains(expected)).as(id + " " + estimate).isTrue();
    assertThat(estimate.bounds().width()).as(id).isBetween(1e-4 * expected, 0.1 * expected);
  }

  @Test
  void numbers_on_common_ground_are_those_of_a_steady_power() {
    ReportResult result =
        measure(
            Basis.DRIVEN,
            steady("one", 10, 80, 100).amount(ConditionItem.BATTERY_USABLE_ENERGY, 60, 0.5).build(),
            steady("other", 14, 78, 50).build());
    CommonGround ground = result.common();
    // The other session starts with 14 % displayed for an unknown time: 15 % is the first whole
    // change.
    assertThat(ground.shared()).contains(new SocWindow(15, 78));
    assertThat(ground.warmed()).isEmpty();
    // The second session adds less: 63 % of 60 kWh are 37.8 kWh.
    assertThat(ground.energyKilowattHours()).hasValue(35);
    Numbers one = result.main().numbers();
    check(one, "time_soc_15_78", 0.63 * CAPACITY / 100 * 3600);
    check(one, "energy_soc_15_78", 0.63 * CAPACITY);
    check(one, "average_power_15_78", 100);
    check(one, CommonGround.timeToAddId(DISTANCE, 15), CAPACITY / 3 / 100 * 3600);
    check(one, CommonGround.timeToAddId(35, 15), 35.0 / 100 * 3600);
    check(one, "peak_c_rate", 100.0 / 60);
    check(one, "average_c_rate_15_78", 100.0 / 60);
    Numbers other = result.compared().get(0).numbers();
    check(other, CommonGround.timeToAddId(DISTANCE, 15), CAPACITY / 3 / 50 * 3600);
    check(other, CommonGround.timeToAddId(35, 15), 35.0 / 50 * 3600);
    assertThat(one.get("peak_c_rate").label()).contains("stated");
    assertThat(other.get("peak_c_rate").label()).contains("implied");
    check(other, "peak_c_rate", 50.0 / 60);
    assertThat(one.get("peak_c_rate").unit()).isEqualTo(Unit.PER_HOUR);
    assertThat(result.plan().wishes().windows()).containsExactly(new SocWindow(20, 70));
  }

  @Test
  void a_pair_has_the_differences_of_its_numbers_on_common_ground() {
    ReportResult result =
        measure(
            Basis.DRIVEN, steady("one", 10, 80, 100).build(), steady("other", 14, 78, 50).build());
    Numbers pair = result.pairs().get(0).numbers();
    // Twice the power takes half the time for 63 % of 60 kWh.
    double seconds = 0.63 * CAPACITY * 3600 * (1 / 100.0 - 1 / 50.0);
    Estimate time = pair.estimate(PairResult.differenceId("time_soc_15_78")).orElseThrow();
    assertThat(time.value()).isCloseTo(seconds, within(-1e-3 * seconds));
    assertThat(time.bounds().contains(seconds)).isTrue();
    Estimate power = pair.estimate(PairResult.differenceId("average_power_15_78")).orElseThrow();
    assertThat(power.bounds().contains(50)).as(power.toString()).isTrue();
    assertThat(pair.get(PairResult.differenceId("time_soc_15_78")).origin().against())
        .isEqualTo("other");
    assertThat(pair.find(PairResult.differenceId("time_soc_10_80"))).isEmpty();
  }

  @Test
  void time_to_add_uses_the_basis_of_the_report() {
    ReportResult result =
        measure(
            Basis.RATED, steady("one", 10, 80, 100).build(), steady("other", 14, 78, 50).build());
    String id = CommonGround.timeToAddId(DISTANCE, 15);
    Numbers numbers = result.main().numbers();
    check(numbers, id, CAPACITY / 4 / 100 * 3600);
    assertThat(numbers.get(id).metric().basis()).isEqualTo(Basis.RATED);
  }

  @Test
  void the_warm_window_starts_at_the_end_of_the_last_climb() {
    TrueCurve climbing =
        new TrueCurve(CAPACITY, new double[] {10, 25, 60, 80}, new double[] {50, 120, 120, 60});
    ReportResult result =
        measure(
            Basis.DRIVEN,
            read("climbing", 10, 80, climbing::second, q -> Math.rint(climbing.power(q))).build(),
            steady("steady", 11, 75, 100).build());
    SocWindow warmed = result.common().warmed().orElseThrow();
    assertThat(result.common().shared()).contains(new SocWindow(12, 75));
    assertThat(warmed.from()).isBetween(25, 27);
    assertThat(warmed.to()).isEqualTo(75);
    String window = warmed.idPart();
    for (String id : List.of("time_soc_", "energy_soc_", "average_power_", "average_c_rate_")) {
      assertThat(result.main().numbers().estimate(id + window)).as(id).isPresent();
    }
    check(
        result.compared().get(0).numbers(),
        CommonGround.timeToAddId(DISTANCE, warmed.from()),
        CAPACITY / 3 / 100 * 3600);
  }

  @Test
  void a_climb_to_the_last_reading_has_no_warm_window() {
    TrueCurve climbing = new TrueCurve(CAPACITY, new double[] {10, 80}, new double[] {50, 120});
    ReportResult result =
        measure(
            Basis.DRIVEN,
            read("climbing", 10, 80, climbing::second, climbing::power).build(),
            steady("steady", 11, 75, 100).build());
    assertThat(result.common().warmed()).isEmpty();
  }

  @Test
  void published_windows_are_kept_while_the_readings_cover_them() {
    LocalDate day = LocalDate.of(2026, 4, 24);
    CommonGround published =
        new CommonGround(
                Optional.of(new SocWindow(20, 70)),
                Optional.of(new SocWindow(30, 70)),
                OptionalInt.of(25))
            .frozenSince(day);
    ReportMetrics.Again again = new ReportMetrics.Again(Optional.of(published), 0);
    Session main = steady("one", 10, 80, 100).build();
    ReportResult covered = measure(Basis.DRIVEN, again, main, steady("other", 14, 78, 50).build());
    assertThat(covered.common().windows()).isEqualTo(published.windows());
    assertThat(covered.common().energyKilowattHours()).hasValue(25);
    // 50 % of 60 kWh at 100 kW.
    check(covered.main().numbers(), "time_soc_20_70", 30.0 / 100 * 3600);
    assertThat(covered.common().frozen())
        .contains(new CommonGround.Frozen(day, List.of(new SocWindow(15, 78))));

    ReportResult shorter = measure(Basis.DRIVEN, again, main, steady("other", 14, 69, 50).build());
    assertThat(shorter.common().windows()).containsExactly(new SocWindow(15, 69));
    assertThat(shorter.common().frozen()).isEmpty();

    // 20 to 78 % are 34.8 kWh of 60, and 45 were published.
    CommonGround more =
        new CommonGround(published.shared(), published.warmed(), OptionalInt.of(45));
    assertThat(
            measure(
                    Basis.DRIVEN,
                    new ReportMetrics.Again(Optional.of(more), 0),
                    main,
                    steady("other", 14, 78, 50).build())
                .common()
                .shared())
        .contains(new SocWindow(15, 78));
  }

  @Test
  void sessions_without_overlap_have_no_common_ground_and_state_the_reason() {
    ReportResult result =
        measure(
            Basis.DRIVEN, steady("low", 10, 40, 100).build(), steady("high", 60, 90, 50).build());
    assertThat(result.common()).isEqualTo(CommonGround.NONE);
    assertThat(result.pairs()).hasSize(1);
    assertThat(result.pairs().get(0).numbers().get("mean_lead_shared").withheld()).isPresent();
  }

  @Test
  void a_session_alone_has_c_rates_and_nothing_to_compare() {
    ReportResult result = measure(Basis.DRIVEN, steady("one", 10, 80, 100).build());
    assertThat(result.common()).isEqualTo(CommonGround.NONE);
    assertThat(result.pairs()).isEmpty();
    check(result.main().numbers(), "peak_c_rate", 100.0 / 60);
    check(result.main().numbers(), "average_c_rate_20_70", 100.0 / 60);
  }
}
