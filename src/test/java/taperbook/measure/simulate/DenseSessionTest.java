package taperbook.measure.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.measure.Sessions;
import taperbook.model.Channel;
import taperbook.model.Estimate;
import taperbook.model.Numbers;
import taperbook.model.Outcome;
import taperbook.model.ReportNumber;
import taperbook.model.Session;
import taperbook.model.SocWindow;

/** A logger's session: a row each two seconds. */
final class DenseSessionTest {
  private static final double CAPACITY = 60;

  /** A steady 100 kW into 60 kWh from 9.7 %: 1 % in 21.6 s, 50 kW from 60 % on. */
  private static Session logged() {
    double[] seconds = IntStream.range(0, 800).mapToDouble(i -> 2 * i).toArray();
    double[] soc = new double[800];
    double[] power = new double[800];
    for (int i = 0; i < 800; i++) {
      double fast = 9.7 + seconds[i] / 21.6;
      double late = Math.max(0, seconds[i] - (60 - 9.7) * 21.6);
      soc[i] = Math.rint(fast <= 60 ? fast : 60 + late / 43.2);
      power[i] = fast <= 60 ? 100 : 50;
    }
    return Sessions.session()
        .clockHalfStep(0.5)
        .channel(Channel.SOC, 0.5, seconds, soc)
        .channel(Channel.POWER, 0.05, seconds, power)
        .build();
  }

  private static final Numbers NUMBERS =
      Sessions.measure(logged(), new SocWindow(20, 60)).main().numbers();

  @Test
  void energy_by_a_loggers_power_keeps_its_bounds_and_is_never_called_exact() {
    ReportNumber energy = NUMBERS.get("energy_added");
    assertThat(energy.estimate().orElseThrow().bounds().width()).isPositive();
    assertThat(((Outcome.Measured) energy.outcome()).coverage()).isEqualTo(1);
  }

  @Test
  void changes_of_the_display_place_a_crossing_within_a_step() {
    Estimate time = NUMBERS.estimate("time_soc_20_60").orElseThrow();
    assertThat(time.bounds().contains(40 * 21.6)).as(time.toString()).isTrue();
    assertThat(time.bounds().width()).isLessThan(2 * 21.6);
    Estimate sixty = NUMBERS.estimate("time_to_soc_60").orElseThrow();
    assertThat(sixty.bounds().contains((60 - 9.7) * 21.6)).as(sixty.toString()).isTrue();
  }

  @Test
  void the_first_change_of_the_display_tells_where_in_its_step_the_session_began() {
    // 9.7 % at the start: the display changes from 10 to 11 % after 0.8 % or 17 s.
    Estimate start = NUMBERS.estimate("start_soc").orElseThrow();
    assertThat(start.bounds().contains(9.7)).as(start.toString()).isTrue();
    assertThat(start.bounds().width()).isLessThan(0.7);
    Estimate energy = NUMBERS.estimate("energy_soc_20_60").orElseThrow();
    // The truth may sit on an end, where the last bits of the arithmetic decide.
    assertThat(energy.bounds().low()).isLessThanOrEqualTo(CAPACITY * 0.4 + 1e-9);
    assertThat(energy.bounds().high()).isGreaterThanOrEqualTo(CAPACITY * 0.4 - 1e-9);
  }
}
