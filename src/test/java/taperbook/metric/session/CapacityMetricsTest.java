package taperbook.metric.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.metric.ReportMetrics;
import taperbook.metric.Sessions;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.result.CrossCheck;
import taperbook.result.CrossCheck.Compared;
import taperbook.result.CrossCheck.NotPossible;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.result.SessionResult;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/** Energy per 1 %, the energy of a full battery, and its change between sessions. */
@Tag("slow")
final class CapacityMetricsTest {
  /** A row every two minutes from 10 %, with an energy per 1 %. */
  private static Sessions steady(double energyPerPercent) {
    return steady("test-session", energyPerPercent);
  }

  private static Sessions steady(String name, double energyPerPercent) {
    double[] soc = IntStream.rangeClosed(0, 14).mapToDouble(i -> 10 + 5 * i).toArray();
    double[] seconds = IntStream.rangeClosed(0, 14).mapToDouble(i -> 120 * i).toArray();
    double[] energy =
        IntStream.rangeClosed(0, 14)
            .mapToDouble(i -> Math.rint(50 * i * energyPerPercent) / 10)
            .toArray();
    return Sessions.session()
        .named(name)
        .channel(Channel.SOC, 0.5, seconds, soc)
        .channel(Channel.ENERGY_ADDED, 0.05, seconds, energy);
  }

  private static SessionResult main(Session session, List<Session> compared, RangeTest... tests) {
    return ReportMetrics.measure(
            Sessions.plan(List.of(new SocWindow(10, 80)), List.of()),
            session,
            compared,
            List.of(tests))
        .main();
  }

  private static CrossCheck check(SessionResult result, String id) {
    return result.checks().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
  }

  /**
   * Fast charging of two cars at three temperatures: energy and state of charge at both ends as
   * published by a national laboratory (INL/MIS-16-38450), with an assumed display step of 0.4 %.
   */
  @ParameterizedTest
  @CsvSource({
    "3740, 21.30, 6.8, 92.8, 24.7674",
    "3267, 22.16, 6.0, 94.0, 25.1818",
    "3257, 10.06, 6.4, 48.0, 24.1827",
    "3375, 20.94, 6.4, 91.2, 24.6934",
    "2628, 21.37, 4.8, 90.0, 25.0822",
    "1947, 6.41, 5.6, 32.0, 24.2803"
  })
  void usable_capacity_is_energy_over_the_share_of_charge(
      double seconds, double energy, double from, double to, double full) {
    double[] both = {0, seconds};
    Numbers numbers =
        Sessions.measure(
                Sessions.session()
                    .text(ConditionItem.ROWS_WRITTEN, "at set times")
                    .channel(Channel.SOC, 0.2, both, new double[] {from, to})
                    .channel(Channel.ENERGY_ADDED, 0.005, both, new double[] {0, energy})
                    .build())
            .main()
            .numbers();
    assertThat(numbers.estimate("implied_full_energy").orElseThrow().value())
        // The mean of a quotient is slightly above the quotient of the readings.
        .isCloseTo(full, within(1e-3 * full));
    assertThat(numbers.get("implied_full_energy_fitted").withheld().orElseThrow())
        .contains("fewer than 5");
  }

  @Test
  void the_line_through_all_readings_agrees_with_the_simulation() {
    SessionResult result = main(steady(0.6).build(), List.of());
    Estimate ends = result.numbers().estimate("energy_per_soc").orElseThrow();
    ReportNumber fitted = result.numbers().get("energy_per_soc_fitted");
    assertThat(fitted.estimate().orElseThrow().value()).isCloseTo(0.6, within(1e-3));
    assertThat(ends.bounds().contains(0.6)).as(ends.toString()).isTrue();
    assertThat(fitted.outcome().<Double>fold(m -> m.coverage(), w -> 0.0)).isEqualTo(0.95);
    assertThat(fitted.origin().rows()).hasSize(15);
    Compared compared = (Compared) check(result, "check_energy_per_soc").outcome();
    assertThat(compared.agrees()).isTrue();
  }

  @Test
  void scatter_beyond_rounding_widens_the_interval_and_is_stated() {
    double[] soc = {10, 20, 30, 40, 50, 60, 70};
    double[] seconds = {0, 100, 200, 300, 400, 500, 600};
    double[] energy = {0, 9, 11, 21, 23, 33, 35};
    ReportNumber number =
        Sessions.measure(
                Sessions.session()
                    .channel(Channel.SOC, 0.5, seconds, soc)
                    .channel(Channel.ENERGY_ADDED, 0.05, seconds, energy)
                    .build())
            .main()
            .numbers()
            .get("energy_per_soc_fitted");
    assertThat(number.caveats())
        .anySatisfy(
            c -> {
              assertThat(c.kind()).isEqualTo(Caveat.Kind.ENERGY_LINE);
              assertThat(c.sentence()).contains("widened");
            });
    assertThat(number.estimate().orElseThrow().bounds().width()).isGreaterThan(0.1);
  }

  @Test
  void without_a_counter_the_line_is_fitted_to_integrated_power_with_the_bounds_of_its_scale() {
    double[] seconds = IntStream.rangeClosed(0, 20).mapToDouble(i -> 60 * i).toArray();
    double[] soc = IntStream.rangeClosed(0, 20).mapToDouble(i -> 20 + 2 * i).toArray();
    double[] power = IntStream.rangeClosed(0, 20).mapToDouble(i -> 90).toArray();
    Estimate fitted =
        Sessions.measure(
                Sessions.session()
                    .channel(Channel.SOC, 0.5, seconds, soc)
                    .channel(Channel.POWER, 0.5, seconds, power)
                    .build())
            .main()
            .numbers()
            .estimate("energy_per_soc_fitted")
            .orElseThrow();
    // 90 kW for a minute is 1.5 kWh, over 2 %; half a kilowatt of 90 is a rectangular distribution
    // of 0.56 %.
    assertThat(fitted.value()).isCloseTo(0.75, within(1e-9));
    assertThat(fitted.bounds().width() / 2)
        .isGreaterThan(1.96 * 0.75 * 0.5 / 90 / Math.sqrt(3) - 1e-9);
  }

  /** Energy in every eighth row: an interpolated energy is not a reading. */
  @Test
  void interpolated_energies_between_counter_rows_are_not_readings() {
    double[] seconds = IntStream.rangeClosed(0, 24).mapToDouble(i -> 60 * i).toArray();
    double[] soc = IntStream.rangeClosed(0, 24).mapToDouble(i -> 20 + 2 * i).toArray();
    double[] power = IntStream.rangeClosed(0, 24).mapToDouble(i -> 90).toArray();
    double[] energy =
        IntStream.rangeClosed(0, 24).mapToDouble(i -> i % 8 == 0 ? 1.5 * i : Double.NaN).toArray();
    Sessions counted =
        Sessions.session()
            .channel(Channel.SOC, 0.5, seconds, soc)
            .channel(Channel.ENERGY_ADDED, 0.05, seconds, energy);
    assertThat(
            Sessions.measure(counted.build())
                .main()
                .numbers()
                .get("energy_per_soc_fitted")
                .withheld()
                .orElseThrow())
        .contains("fewer than 5");
    ReportNumber number =
        Sessions.measure(counted.channel(Channel.POWER, 0.5, seconds, power).build())
            .main()
            .numbers()
            .get("energy_per_soc_fitted");
    assertThat(number.estimate().orElseThrow().value()).isCloseTo(0.75, within(1e-9));
    assertThat(number.caveats()).noneMatch(c -> c.kind() == Caveat.Kind.ENERGY_LINE);
  }

  private static RangeTest drive(double energyUsed) {
    return Sessions.rangeTest(
        Map.of(
            RangeItem.ENERGY_USED, Estimate.around(energyUsed, 0.05),
            RangeItem.START_SOC, Estimate.around(90, 0.5),
            RangeItem.END_SOC, Estimate.around(10, 0.5)));
  }

  @Test
  void charging_is_compared_with_driving_and_with_the_stated_energy() {
    SessionResult result =
        main(
            steady(0.6).amount(ConditionItem.BATTERY_USABLE_ENERGY, 60, 0.5).build(),
            List.of(),
            drive(45.6));
    CrossCheck full = check(result, "check_full_energy");
    assertThat(full.title()).contains("what goes in").contains("up to 12 % may be lost");
    Compared compared = (Compared) full.outcome();
    assertThat(compared.second().estimate().value()).isCloseTo(57, within(1e-9));
    // The discharge is 5 % below the charge, as losses allow.
    assertThat(compared.agrees()).isTrue();
    assertThat(compared.maxLoss()).isCloseTo(0.12, within(1e-9));
    assertThat(((Compared) check(result, "check_usable_energy").outcome()).agrees()).isTrue();
    Estimate share = result.numbers().estimate("drive_energy_share").orElseThrow();
    assertThat(share.value()).isCloseTo(95, within(0.2));
    assertThat(share.bounds().contains(95)).isTrue();
    assertThat(result.numbers().get("drive_energy_share").caveats())
        .anySatisfy(c -> assertThat(c.sentence()).contains("two days"));
  }

  /** 60 kWh are charged; the drive uses the given energy of 80 % of the battery. */
  @ParameterizedTest
  @CsvSource({"38, false", "42.9, true", "47.9, true", "57.6, false"})
  void more_than_losses_differs(double used, boolean agrees) {
    SessionResult result = main(steady(0.6).build(), List.of(), drive(used));
    Compared compared = (Compared) check(result, "check_full_energy").outcome();
    assertThat(compared.agrees()).isEqualTo(agrees);
    assertThat(
            result.caveats().stream()
                .anyMatch(
                    c -> c.sentence().contains("rounding and losses of up to 12\u00a0% allow.")))
        .isEqualTo(!agrees);
  }

  @Test
  void without_a_drive_or_a_stated_energy_there_is_no_comparison() {
    SessionResult result = main(steady(0.6).build(), List.of());
    assertThat(check(result, "check_full_energy").outcome()).isInstanceOf(NotPossible.class);
    assertThat(result.checks()).noneMatch(c -> c.id().equals("check_usable_energy"));
    assertThat(result.numbers().get("drive_energy_share").withheld())
        .hasValue(RangeFigures.NO_TEST.text());
  }

  private static Session on(String name, String date, double energyPerPercent) {
    return steady(name, energyPerPercent).text(ConditionItem.DATE, date).build();
  }

  private static String meaning(ReportNumber number) {
    return number.caveats().stream()
        .filter(c -> c.kind() == Caveat.Kind.ODOMETER && c.sentence().contains("against"))
        .map(Caveat::sentence)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_clear_loss_since_an_earlier_session_may_be_ageing() {
    ReportNumber number =
        main(on("later", "2026-04-18", 0.57), List.of(on("First-Visit", "2024-05-10", 0.6)))
            .numbers()
            .get("full_energy_change_first_visit");
    Estimate change = number.estimate().orElseThrow();
    assertThat(change.bounds().contains(-5)).isTrue();
    assertThat(change.bounds().high()).isNegative();
    assertThat(number.label()).isEqualTo("Full charge against First-Visit");
    assertThat(meaning(number)).contains("may be called ageing").contains("calibration");
    assertThat(number.origin().rows()).hasSize(30);
  }

  @Test
  void a_change_within_its_interval_is_not_ageing() {
    ReportNumber number =
        main(on("later", "2026-04-18", 0.599), List.of(on("first", "2024-05-10", 0.6)))
            .numbers()
            .get("full_energy_change_first");
    assertThat(number.estimate().orElseThrow().bounds().contains(0)).isTrue();
    assertThat(meaning(number))
        .contains("cannot be distinguished from no change")
        .contains("not called");
  }

  @Test
  void a_gain_or_an_earlier_session_is_not_ageing() {
    Numbers numbers =
        main(
                on("one", "2026-04-18", 0.57),
                List.of(on("two", "2026-09-01", 0.6), on("three", "2024-05-10", 0.54)))
            .numbers();
    assertThat(meaning(numbers.get("full_energy_change_two"))).contains("not called ageing");
    assertThat(meaning(numbers.get("full_energy_change_three"))).contains("That is not ageing");
  }

  @Test
  void another_vehicle_has_no_change_and_equal_ids_are_distinguished() {
    Session other = steady("other", 0.6).text(ConditionItem.VEHICLE, "Veldt Carrier").build();
    Numbers numbers =
        main(
                on("one", "2026-04-18", 0.57),
                List.of(other, on("a-b", "2024-05-10", 0.6), on("a_b", "2024-05-11", 0.6)))
            .numbers();
    assertThat(numbers.ids().stream().filter(id -> id.startsWith("full_energy_change")))
        .containsExactlyInAnyOrder("full_energy_change_a_b", "full_energy_change_a_b_2");
  }

  private static Session aged(double kilometres, double perPercent, double celsius) {
    return steady("at-" + (int) kilometres, perPercent)
        .amount(ConditionItem.ODOMETER, kilometres, 0.5)
        .amount(ConditionItem.AMBIENT_TEMPERATURE, celsius, 0.5)
        .build();
  }

  /** 60, 59, and 58 kWh at 10 000, 20 000, and 30 000 km: 1 kWh per 10 000 km. */
  @Test
  void three_sessions_over_the_odometer_have_a_slope() {
    List<Session> earlier = List.of(aged(10_000, 0.6, 14), aged(20_000, 0.59, 17));
    ReportNumber slope = main(aged(30_000, 0.58, 19), earlier).numbers().get("full_energy_slope");
    // The plan is in miles.
    Estimate estimate = slope.estimate().orElseThrow();
    assertThat(estimate.value()).isCloseTo(-1.609344, within(0.1));
    assertThat(estimate.bounds().contains(-1.609344)).isTrue();
    assertThat(slope.label()).endsWith("for each 10,000 mi");
  }

  @Test
  void too_few_sessions_or_different_weather_have_no_slope() {
    List<Session> earlier = List.of(aged(10_000, 0.6, 12), aged(20_000, 0.59, 17));
    assertThat(
            main(aged(30_000, 0.58, 19), earlier)
                .numbers()
                .get("full_energy_slope")
                .withheld()
                .orElseThrow())
        .isEqualTo("the sessions differ by more than 5 \u00b0C in ambient temperature");
    assertThat(
            main(aged(20_000, 0.58, 17), earlier)
                .numbers()
                .get("full_energy_slope")
                .withheld()
                .orElseThrow())
        .isEqualTo("fewer than three sessions differ in their odometer");
    assertThat(main(aged(30_000, 0.58, 19), earlier.subList(0, 1)).numbers().ids())
        .doesNotContain("full_energy_slope");
  }

  @Test
  void a_session_without_a_fit_withholds_the_change_and_is_named() {
    Session short1 =
        Sessions.session()
            .named("short")
            .channel(Channel.SOC, 0.5, new double[] {0, 600}, new double[] {10, 40})
            .build();
    assertThat(
            main(on("one", "2026-04-18", 0.57), List.of(short1))
                .numbers()
                .get("full_energy_change_short")
                .withheld()
                .orElseThrow())
        .isEqualTo("of short: " + Recording.NO_ENERGY);
  }
}
