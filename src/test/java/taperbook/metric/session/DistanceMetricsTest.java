package taperbook.metric.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.metric.ReportMetrics;
import taperbook.metric.Sessions;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Numbers;
import taperbook.result.Role;
import taperbook.session.Channel;
import taperbook.session.RangeItem;
import taperbook.session.Session;

/**
 * Time to add a distance where charge and energy rise evenly: from 20 % by 3 % and 2 kWh a minute,
 * for 20 minutes, with a range of 300 km and 200 Wh/km.
 */
final class DistanceMetricsTest {
  private static final double SECONDS_PER_PERCENT = 20;

  private static Numbers numbers(int... kilometres) {
    double[] seconds = IntStream.rangeClosed(0, 20).mapToDouble(i -> 60.0 * i).toArray();
    Session session =
        Sessions.session()
            .channel(Channel.SOC, 0.05, seconds, rising(20, 3))
            .channel(Channel.POWER, 0.05, seconds, rising(120, 0))
            .channel(Channel.ENERGY_ADDED, 0.005, seconds, rising(0, 2))
            .build();
    return ReportMetrics.measure(
            Sessions.plan(
                List.of(new SocWindow(20, 70)),
                IntStream.of(kilometres)
                    .mapToObj(km -> new WantedDistance(km, Unit.KILOMETRE))
                    .toList()),
            session,
            List.of(),
            List.of(
                Sessions.rangeTest(
                    Map.of(
                        RangeItem.DISTANCE, Estimate.exactly(270),
                        RangeItem.START_SOC, Estimate.exactly(95),
                        RangeItem.END_SOC, Estimate.exactly(5),
                        RangeItem.ENERGY_USED, Estimate.exactly(54),
                        RangeItem.RATED_RANGE, Estimate.exactly(400)))))
        .main()
        .numbers();
  }

  private static double[] rising(double from, double perMinute) {
    return IntStream.rangeClosed(0, 20).mapToDouble(i -> from + perMinute * i).toArray();
  }

  private static void assertAbout(Numbers numbers, String id, double expected, double most) {
    Estimate estimate = numbers.estimate(id).orElseThrow();
    assertThat(estimate.value()).as(id).isCloseTo(expected, within(most));
    assertThat(estimate.bounds().contains(expected)).as(id).isTrue();
  }

  @Test
  void a_distance_takes_its_share_of_the_range_or_its_energy() {
    Numbers numbers = numbers(60);
    assertAbout(numbers, "driven_range_full", 300, 1e-6);
    assertAbout(numbers, "consumption", 200, 1e-6);
    assertAbout(numbers, "soc_for_60_km", 20, 1e-6);
    assertAbout(numbers, "time_to_add_60_km", 20 * SECONDS_PER_PERCENT, 5);
    assertAbout(numbers, "time_to_add_60_km_rated", 15 * SECONDS_PER_PERCENT, 5);
    // 12 kWh at 2 kWh a minute.
    assertAbout(numbers, "time_to_add_60_km_by_energy", 360, 5);
  }

  @Test
  void only_the_reports_basis_is_a_headline() {
    Numbers numbers = numbers(60);
    assertThat(numbers.with(Role.MINUTES))
        .extracting(n -> n.id())
        .contains("time_to_add_60_km")
        .doesNotContain("time_to_add_60_km_rated", "time_to_add_60_km_by_energy");
  }

  @Test
  void a_distance_beyond_the_last_reading_is_withheld_on_each_basis_that_lacks_it() {
    // 210 km is 70 % of the driven range, 52.5 % of the rated one, and 42 kWh of 40.
    Numbers numbers = numbers(210);
    assertThat(numbers.get("time_to_add_210_km").withheld().orElseThrow())
        .isEqualTo("it needs a charge of 90\u00a0%, and the session ended at 80\u00a0%");
    assertThat(numbers.get("time_to_add_210_km_by_energy").withheld().orElseThrow())
        .startsWith("it takes 42");
    assertAbout(numbers, "time_to_add_210_km_rated", 52.5 * SECONDS_PER_PERCENT, 5);
  }

  @Test
  void the_rows_are_those_of_both_ends_and_of_the_drive() {
    assertThat(numbers(60).get("time_to_add_60_km").origin().rows())
        .extracting(Object::toString)
        .contains("sessions/test-session/readings.csv:2", "sessions/test-session/readings.csv:8")
        .anyMatch(row -> row.startsWith("sessions/drive/range-test.csv"));
  }
}
