package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.metric.recording.RangeFigures;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.session.Channel;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/** Numbers that the data cannot support are withheld with the reason. */
final class WithheldTest {
  private static final double[] SECONDS = {0, 300, 600, 900, 1200, 1500};
  private static final double[] SOC = {12, 24, 38, 51, 62, 71};
  private static final double[] POWER = {90, 150, 160, 140, 110, 80};

  @Test
  void marks_outside_the_readings_are_withheld_with_the_recorded_limit() {
    Numbers numbers = Sessions.measure(socOnly()).main().numbers();
    assertThat(reason(numbers, "time_to_soc_10")).isEqualTo("the session began at 12\u00a0%");
    assertThat(reason(numbers, "time_to_soc_80")).isEqualTo("the session ended at 71\u00a0%");
    assertThat(reason(numbers, "time_soc_10_80")).isEqualTo("the session began at 12\u00a0%");
    assertThat(numbers.estimate("time_to_soc_70")).isPresent();
  }

  @Test
  void soc_and_time_are_sufficient_for_times() {
    Numbers numbers = Sessions.measure(socOnly(), new SocWindow(20, 70)).main().numbers();
    assertThat(numbers.estimate("time_soc_20_70")).isPresent();
    assertThat(numbers.estimate("start_soc")).isPresent();
    assertThat(reason(numbers, "peak_power")).isEqualTo("no power was recorded");
    assertThat(reason(numbers, "peak_hold_time")).isEqualTo("no power was recorded");
    for (String id : List.of("energy_added", "average_power_20_70", "implied_full_energy")) {
      assertThat(reason(numbers, id)).isEqualTo("neither energy nor power was recorded");
    }
  }

  @Test
  void power_and_time_are_sufficient_for_peak_hold_and_energy() {
    Session session = Sessions.session().channel(Channel.POWER, 0.5, SECONDS, POWER).build();
    Numbers numbers = Sessions.measure(session).main().numbers();
    assertThat(numbers.estimate("peak_power")).isPresent();
    assertThat(numbers.estimate("peak_hold_time")).isPresent();
    assertThat(numbers.estimate("energy_added")).isPresent();
    assertThat(reason(numbers, "peak_reached_soc")).isEqualTo("no state of charge was recorded");
    assertThat(reason(numbers, "time_to_soc_50")).isEqualTo("no state of charge was recorded");
  }

  @Test
  void without_a_range_test_there_is_no_distance() {
    Numbers numbers =
        ReportMetrics.measure(
                Sessions.plan(
                    List.of(new SocWindow(20, 70)), List.of(new WantedDistance(100, Unit.MILE))),
                socOnly(),
                List.of(),
                List.of())
            .main()
            .numbers();
    for (String id :
        List.of(
            "consumption",
            "driven_range_full",
            "soc_for_100_mi",
            "time_to_add_100_mi",
            "time_to_add_100_mi_by_energy",
            "time_to_add_100_mi_rated",
            "distance_to_soc_50")) {
      assertThat(reason(numbers, id)).as(id).isEqualTo(RangeFigures.NO_TEST.text());
    }
  }

  @Test
  void a_distance_beyond_the_session_states_the_required_charge_and_the_end_of_the_session() {
    RangeTest test =
        Sessions.rangeTest(
            Map.of(
                RangeItem.DISTANCE, Estimate.exactly(400),
                RangeItem.START_SOC, Estimate.exactly(100),
                RangeItem.END_SOC, Estimate.exactly(0)));
    Numbers numbers =
        ReportMetrics.measure(
                Sessions.plan(
                    List.of(new SocWindow(20, 70)),
                    List.of(new WantedDistance(260, Unit.KILOMETRE))),
                socOnly(),
                List.of(),
                List.of(test))
            .main()
            .numbers();
    assertThat(reason(numbers, "time_to_add_260_km"))
        .isEqualTo("it needs a charge of 77\u00a0%, and the session ended at 71\u00a0%");
  }

  @Test
  void a_display_that_no_longer_rises_gives_no_bound() {
    Numbers numbers = Sessions.measure(shown(50, 51, 50), new SocWindow(50, 51)).main().numbers();
    assertThat(reason(numbers, "time_soc_50_51"))
        .isEqualTo("the state of charge gained is not more than its display can show");
  }

  @Test
  void a_gain_of_one_step_is_bounded_by_two_rows() {
    Numbers numbers =
        Sessions.measure(shown(50, 50, 50, 51, 51), new SocWindow(50, 51)).main().numbers();
    Estimate time = numbers.estimate("time_soc_50_51").orElseThrow();
    // The change is between the row at 120 s and that at 180 s.
    assertThat(time.bounds().low()).isGreaterThanOrEqualTo(120);
    assertThat(time.bounds().high()).isLessThanOrEqualTo(180);
    assertThat(time.bounds().width()).isGreaterThan(10);
  }

  @Test
  void too_few_rows_give_no_times() {
    Numbers numbers = Sessions.measure(shown(50, 60, 70), new SocWindow(50, 70)).main().numbers();
    assertThat(numbers.get("time_soc_50_70").withheld())
        .contains("fewer than 4 rows were read, and what the power did between them is not known");
  }

  /** Displayed values one minute apart. */
  private static Session shown(double... soc) {
    double[] seconds = IntStream.range(0, soc.length).mapToDouble(i -> 60 * i).toArray();
    return Sessions.session().channel(Channel.SOC, 0.5, seconds, soc).build();
  }

  @Test
  void every_number_has_a_value_with_rows_or_a_reason() {
    Session session =
        Sessions.session()
            .channel(Channel.SOC, 0.5, SECONDS, SOC)
            .channel(Channel.POWER, 0.5, SECONDS, POWER)
            .build();
    for (ReportNumber number : Sessions.measure(session).main().numbers().all()) {
      assertThat(number.estimate().isPresent())
          .as(number.id())
          .isNotEqualTo(number.withheld().isPresent());
      if (number.estimate().isPresent()) {
        assertThat(number.origin().rows()).as(number.id()).isNotEmpty();
      }
    }
  }

  private static Session socOnly() {
    return Sessions.session().channel(Channel.SOC, 0.5, SECONDS, SOC).build();
  }

  private static String reason(Numbers numbers, String id) {
    return numbers.get(id).withheld().orElseThrow();
  }
}
