package taperbook.metric.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.metric.Sessions;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;

final class TaperMetricsTest {
  /** Climbs from 60 to 160 kW at 20 %, is constant to 40 %, falls by 2 kW per 1 %. */
  private static double power(double soc) {
    return soc < 20 ? 60 + 10 * (soc - 10) : soc < 40 ? 160 : 160 - 2 * (soc - 40);
  }

  private static final double[] SOCS =
      IntStream.rangeClosed(5, 45).mapToDouble(i -> 2.0 * i).toArray();
  private static final double[] SECONDS =
      IntStream.range(0, SOCS.length).mapToDouble(i -> 30.0 * i).toArray();

  private static final Numbers NUMBERS =
      Sessions.measure(
              Sessions.session()
                  .channel(Channel.SOC, 0.5, SECONDS, SOCS)
                  .channel(
                      Channel.POWER,
                      0.5,
                      SECONDS,
                      DoubleStream.of(SOCS).map(TaperMetricsTest::power).toArray())
                  .build())
          .main()
          .numbers();

  private static Estimate estimate(String id) {
    return NUMBERS.estimate(id).orElseThrow();
  }

  @Test
  void segments_are_numbered_and_named_by_kind() {
    assertThat(estimate("taper_segments").value()).isEqualTo(3);
    assertThat(NUMBERS.get("taper_segment_1_soc_from").label())
        .isEqualTo("Segment 1, warm-up climb: from");
    assertThat(NUMBERS.get("taper_segment_2_soc_to").label())
        .isEqualTo("Segment 2, plateau: until");
    assertThat(NUMBERS.get("taper_segment_3_slope").label()).isEqualTo("Segment 3, taper: slope");
    assertThat(NUMBERS.get("taper_segment_3_slope").unit()).isEqualTo(Unit.KILOWATT_PER_PERCENT);
    assertThat(NUMBERS.get("taper_segment_3_power").label())
        .isEqualTo("Segment 3, taper: mean power");
    assertThat(NUMBERS.find("taper_segment_4_slope")).isEmpty();
  }

  @Test
  void segments_match_the_true_curve() {
    assertThat(estimate("warm_up_end_soc").value()).isCloseTo(20, within(0.01));
    assertThat(estimate("longest_plateau_soc_from").value()).isCloseTo(20, within(0.01));
    assertThat(estimate("longest_plateau_soc_to").value()).isCloseTo(40, within(0.01));
    assertThat(estimate("steepest_taper_slope").value()).isCloseTo(-2, within(0.001));
    assertThat(estimate("taper_segment_3_power").value()).isCloseTo(110, within(0.1));
  }

  @Test
  void fitted_numbers_state_their_coverage_and_rows() {
    ReportNumber slope = NUMBERS.get("taper_segment_3_slope");
    double coverage = slope.outcome().fold(Outcome.Measured::coverage, w -> 0.0);
    assertThat(coverage).isEqualTo(0.95);
    // 40 % is in line 17, 90 % in line 42.
    assertThat(slope.origin().rows()).hasSize(26);
    assertThat(slope.origin().rows().get(0).line()).isEqualTo(17);
    assertThat(slope.origin().rows().get(25).line()).isEqualTo(42);
  }

  @Test
  void power_stays_below_80_percent_of_the_peak_after_the_taper_crosses_it() {
    // Charge follows power: 2 % of 60 kWh at the mean power of the step.
    double[] seconds = new double[SOCS.length];
    for (int i = 1; i < seconds.length; i++) {
      double mean = (power(SOCS[i - 1]) + power(SOCS[i])) / 2;
      seconds[i] = seconds[i - 1] + 0.02 * 60 * 3600 / mean;
    }
    Numbers numbers =
        Sessions.measure(
                Sessions.session()
                    .text(ConditionItem.DISPLAY_ROUNDS, "nearest")
                    .text(ConditionItem.ROWS_WRITTEN, "at set times")
                    .channel(Channel.SOC, 0.5, seconds, SOCS)
                    .channel(
                        Channel.POWER,
                        0.5,
                        seconds,
                        DoubleStream.of(SOCS).map(TaperMetricsTest::power).toArray())
                    .build())
            .main()
            .numbers();
    // 0.8 * 160 kW = 128 kW at 56 %; 0.5 * 160 kW = 80 kW at 80 %.
    Estimate eighty = numbers.estimate("soc_below_80_percent_of_peak").orElseThrow();
    assertThat(eighty.bounds().contains(56)).as(eighty.toString()).isTrue();
    assertThat(eighty.bounds().width()).isLessThan(3);
    Estimate fifty = numbers.estimate("soc_below_50_percent_of_peak").orElseThrow();
    assertThat(fifty.bounds().contains(80)).as(fifty.toString()).isTrue();
  }

  @Test
  void shares_of_time_and_the_ratio_follow_from_the_areas() {
    // 40 gaps of 30 s: power is at or above 100 kW from 14 % to 70 %, which are 28 gaps.
    assertThat(estimate("time_share_above_100_kw").value()).isCloseTo(70, within(1e-9));
    assertThat(estimate("time_share_above_50_kw").value()).isCloseTo(100, within(1e-9));
    // From 19 % to 45 %: 13 gaps.
    assertThat(estimate("time_share_above_150_kw").value()).isCloseTo(32.5, within(1e-9));
    // Each per cent takes the same time: (110 * 10 + 160 * 20 + 110 * 50) / 80 kW on average.
    assertThat(estimate("peak_to_average_ratio").value()).isCloseTo(160 / 122.5, within(1e-9));
    assertThat(estimate("peak_to_average_ratio").bounds().low()).isGreaterThan(1);
  }

  @Test
  void a_session_without_climb_plateau_or_taper_states_it() {
    Numbers falling =
        Sessions.measure(
                Sessions.session()
                    .channel(Channel.SOC, 0.5, SECONDS, SOCS)
                    .channel(
                        Channel.POWER,
                        0.5,
                        SECONDS,
                        DoubleStream.of(SOCS).map(q -> 100 - q / 2).toArray())
                    .build())
            .main()
            .numbers();
    assertThat(falling.get("warm_up_end_soc").withheld()).contains("no warm-up climb was seen");
    assertThat(falling.get("longest_plateau_soc_from").withheld()).contains("no plateau was seen");
    assertThat(falling.get("soc_below_50_percent_of_peak").withheld())
        .contains("the readings do not end surely below 50 % of the peak");
    assertThat(falling.estimate("steepest_taper_slope").orElseThrow().value())
        .isCloseTo(-0.5, within(0.001));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "taper_segments",
        "warm_up_end_soc",
        "longest_plateau_soc_from",
        "longest_plateau_soc_to",
        "steepest_taper_slope",
        "soc_below_80_percent_of_peak",
        "soc_below_50_percent_of_peak",
        "time_share_above_50_kw",
        "peak_to_average_ratio"
      })
  void without_power_every_number_is_withheld(String id) {
    Numbers numbers =
        Sessions.measure(Sessions.session().channel(Channel.SOC, 0.5, SECONDS, SOCS).build())
            .main()
            .numbers();
    assertThat(numbers.get(id).withheld()).contains("no power was recorded");
  }

  @Test
  void a_climb_that_lasts_to_the_end_has_no_end() {
    Numbers climbing =
        Sessions.measure(
                Sessions.session()
                    .channel(Channel.SOC, 0.5, SECONDS, SOCS)
                    .channel(Channel.POWER, 0.5, SECONDS, SOCS)
                    .build())
            .main()
            .numbers();
    assertThat(climbing.get("warm_up_end_soc").withheld())
        .contains("the power was still climbing at the last reading");
    assertThat(climbing.get("steepest_taper_slope").withheld()).contains("no taper was seen");
  }
}
