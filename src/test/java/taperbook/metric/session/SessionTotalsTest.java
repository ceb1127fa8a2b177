package taperbook.metric.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.quantity.Estimate;
import taperbook.result.Numbers;
import taperbook.session.Channel;

final class SessionTotalsTest {
  /** Power that falls linearly from 140 to 60 kW in half an hour is 100 kW on average. */
  @Test
  void the_average_of_a_session_is_the_area_under_its_power_over_its_time() {
    int n = 31;
    double[] seconds = new double[n];
    Arrays.setAll(seconds, i -> 60.0 * i);
    double[] power = Arrays.stream(seconds).map(t -> Math.rint(140 - 80 * t / 1800)).toArray();
    Numbers numbers =
        Sessions.measure(
                Sessions.session()
                    .clockHalfStep(0.5)
                    .channel(Channel.POWER, 0.5, seconds, power)
                    .build())
            .main()
            .numbers();
    Estimate average = numbers.estimate("average_power_session").orElseThrow();
    assertThat(average.bounds().contains(100)).as(average.toString()).isTrue();
    assertThat(average.value()).isCloseTo(100, within(0.3));
    assertThat(average.bounds().width()).isLessThan(1.5);
  }

  @Test
  void without_energy_and_power_there_is_no_average() {
    double[] seconds = {0, 300, 600, 900};
    Numbers numbers =
        Sessions.measure(
                Sessions.session()
                    .channel(Channel.SOC, 0.5, seconds, new double[] {20, 30, 40, 50})
                    .build())
            .main()
            .numbers();
    assertThat(numbers.get("average_power_session").withheld()).isPresent();
  }
}
