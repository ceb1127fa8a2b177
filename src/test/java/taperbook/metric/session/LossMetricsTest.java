package taperbook.metric.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.quantity.Estimate;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.Session;

final class LossMetricsTest {
  private static final double[] SECONDS = {0, 600, 1200, 1800};

  private static Sessions session(double[] station, double[] battery) {
    return Sessions.session()
        .channel(Channel.SOC, 0.5, SECONDS, new double[] {10, 35, 60, 80})
        .channel(Channel.STATION_ENERGY, 0.05, SECONDS, station)
        .channel(Channel.ENERGY_ADDED, 0.05, SECONDS, battery);
  }

  private static Numbers numbers(Session session) {
    return Sessions.measure(session).main().numbers();
  }

  @Test
  void sixty_dispensed_and_56_4_stored_is_an_efficiency_of_94_per_cent() {
    Numbers numbers =
        numbers(session(new double[] {0, 20, 42, 60}, new double[] {0, 19, 39.5, 56.4}).build());
    Estimate loss = numbers.estimate("charging_loss").orElseThrow();
    assertThat(loss.value()).isCloseTo(3.6, within(1e-9));
    // Four readings, each within 0.05 kWh.
    assertThat(loss.bounds().low()).isCloseTo(3.4, within(1e-9));
    assertThat(loss.bounds().high()).isCloseTo(3.8, within(1e-9));
    Estimate efficiency = numbers.estimate("charging_efficiency").orElseThrow();
    assertThat(efficiency.value()).isCloseTo(94, within(1e-9));
    assertThat(efficiency.bounds().low()).isCloseTo(100 * 56.3 / 60.1, within(1e-9));
    assertThat(efficiency.bounds().high()).isCloseTo(100 * 56.5 / 59.9, within(1e-9));
  }

  @Test
  void the_initial_reading_of_the_station_meter_does_not_matter() {
    Numbers fromZero =
        numbers(session(new double[] {0, 20, 42, 60}, new double[] {0, 19, 39.5, 56.4}).build());
    Numbers running =
        numbers(
            session(new double[] {71400, 71420, 71442, 71460}, new double[] {0, 19, 39.5, 56.4})
                .build());
    assertThat(running.estimate("charging_loss").orElseThrow().value())
        .isCloseTo(fromZero.estimate("charging_loss").orElseThrow().value(), within(1e-9));
  }

  @Test
  void only_the_time_in_which_both_were_recorded_is_used() {
    double n = Double.NaN;
    ReportNumber loss =
        numbers(session(new double[] {n, 500, 522, n}, new double[] {0, 19, 39.5, 56.4}).build())
            .get("charging_loss");
    assertThat(loss.estimate().orElseThrow().value()).isCloseTo(22 - 20.5, within(1e-9));
    assertThat(loss.origin().rows()).hasSize(2);
  }

  @Test
  void the_tolerance_of_the_meter_is_stated_without_correction() {
    ReportNumber loss =
        numbers(session(new double[] {0, 20, 42, 60}, new double[] {0, 19, 39.5, 56.4}).build())
            .get("charging_loss");
    assertThat(loss.caveats())
        .anySatisfy(
            c -> {
              assertThat(c.kind()).isEqualTo(Caveat.Kind.METER);
              assertThat(c.sentence())
                  .contains("assumed, not tested")
                  .contains("nothing was corrected");
            });
  }

  @Test
  void a_car_with_more_energy_than_the_station_is_reported() {
    ReportNumber loss =
        numbers(session(new double[] {0, 18, 37, 52}, new double[] {0, 19, 39.5, 56.4}).build())
            .get("charging_loss");
    assertThat(loss.estimate().orElseThrow().bounds().high()).isNegative();
    assertThat(loss.caveats())
        .anySatisfy(c -> assertThat(c.sentence()).contains("which cannot be"));
  }

  @Test
  void without_both_counters_losses_are_withheld_with_the_missing_one() {
    Sessions soc =
        Sessions.session().channel(Channel.SOC, 0.5, SECONDS, new double[] {10, 35, 60, 80});
    assertThat(numbers(soc.build()).get("charging_loss").withheld().orElseThrow())
        .contains("station's energy was not recorded");
    soc.channel(Channel.STATION_ENERGY, 0.05, SECONDS, new double[] {0, 20, 42, 60});
    assertThat(numbers(soc.build()).get("charging_efficiency").withheld().orElseThrow())
        .contains("energy added to the battery was not recorded");
    double n = Double.NaN;
    Session apart = session(new double[] {0, 20, n, n}, new double[] {n, n, 39.5, 56.4}).build();
    assertThat(numbers(apart).get("charging_loss").withheld().orElseThrow())
        .contains("over a common time");
    Session still = session(new double[] {5, 5, 5, 5}, new double[] {0, 1, 2, 3}).build();
    assertThat(numbers(still).get("charging_loss").withheld().orElseThrow())
        .contains("less over the common time than its display can show");
  }
}
