package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Session;

/** Draws of steady sessions, whose distributions have a closed form. */
final class CourseSamplerTest {
  private static final int PAIRS = 300;
  private static final int ROWS = 13;
  private static final double[] SECONDS =
      IntStream.range(0, ROWS).mapToDouble(i -> 150 * i).toArray();

  private static Sessions powered() {
    double[] power = new double[ROWS];
    Arrays.fill(power, 72);
    return Sessions.session()
        .text(ConditionItem.DISPLAY_ROUNDS, "nearest")
        .channel(Channel.POWER, 0.5, SECONDS, power);
  }

  private static double[] energies(Session session) {
    return new CourseSampler(session, 1)
        .draw(PAIRS, 0).stream().mapToDouble(c -> c.energyAt(1800)).toArray();
  }

  private static double deviation(double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    return Math.sqrt(
        Arrays.stream(values).map(v -> (v - mean) * (v - mean)).average().orElseThrow());
  }

  /**
   * Half an hour of steady power: at least the variance of the mean of the readings, each
   * rectangular in 1 kW, and that of their common offset, 0.1 kW. At most also that of a random
   * walk of 0.6 % per root of a second between the readings, whose integral over a gap T has the
   * variance of a Brownian bridge, T^3 / 12.
   */
  @Test
  void the_energy_of_steady_power_is_at_least_as_uncertain_as_the_mean_of_its_readings() {
    double[] energies = energies(powered().build());
    double least = Math.sqrt(1 / 12.0 / ROWS + 0.01) / 2;
    double walk = 0.006 * 72 * Math.sqrt((ROWS - 1) * Math.pow(150, 3) / 12) / 3600;
    assertThat(energies).hasSize(2 * PAIRS);
    assertThat(Arrays.stream(energies).average().orElseThrow()).isCloseTo(36, within(0.03));
    assertThat(deviation(energies)).isBetween(least, Math.hypot(least, walk));
  }

  /** The counter determines the energy far better than power does: two readings of 0.1 kWh. */
  @Test
  void a_counter_determines_the_energy_within_its_step() {
    double[] counter = Arrays.stream(SECONDS).map(t -> Math.rint(t / 5) / 10).toArray();
    double[] energies =
        energies(powered().channel(Channel.ENERGY_ADDED, 0.05, SECONDS, counter).build());
    assertThat(Arrays.stream(energies).average().orElseThrow()).isCloseTo(36, within(0.05));
    // At most the last reading alone with the common offset, at least the mean of all of them.
    double single = Math.hypot(0.1 / Math.sqrt(12), 0.025);
    assertThat(deviation(energies)).isBetween(0.02, 1.1 * single);
  }

  @Test
  void a_charge_at_set_times_is_uniform_within_its_step() {
    double[] soc = {10, 70};
    double[] seconds = {0, 1800};
    Session session =
        powered()
            .text(ConditionItem.ROWS_WRITTEN, "at set times")
            .channel(Channel.SOC, 0.5, seconds, soc)
            .build();
    double[] starts =
        new CourseSampler(session, 1)
            .draw(PAIRS, 0).stream().mapToDouble(c -> c.chargeAt(0)).toArray();
    assertThat(Arrays.stream(starts).average().orElseThrow()).isCloseTo(10.5, within(0.06));
    assertThat(deviation(starts)).isCloseTo(1 / Math.sqrt(12), within(0.05));
  }

  @Test
  void predictions_are_kept_for_every_reading() {
    CourseSampler sampler = new CourseSampler(powered().build(), 1);
    assertThat(sampler.draw(20, 8)).hasSize(40);
    List<Influence> influences = sampler.influences();
    assertThat(influences).hasSize(ROWS).allMatch(i -> i.size() == 8);
    double[] ones = new double[8];
    Arrays.fill(ones, 1);
    for (Influence influence : influences) {
      assertThat(influence.times(ones)).isCloseTo(0, within(1e-9));
      assertThat(influence.squares()).isPositive();
      // A rectangular step of 1 kW, and the accuracy of the model.
      assertThat(influence.variance()).isCloseTo(1 / 12.0 + 1e-6, within(1e-9));
    }
  }

  @Test
  void rows_at_changes_are_counted_in_their_draws() {
    double[] soc = Arrays.stream(SECONDS).map(t -> 10 + t / 30).toArray();
    Session session = powered().channel(Channel.SOC, 0.5, SECONDS, soc).build();
    CourseSampler sampler = new CourseSampler(session, 1);
    double atStart =
        sampler.draw(PAIRS, 0).stream().mapToDouble(c -> c.chargeAt(0)).average().orElseThrow();
    // All rows read a whole per cent at even times: the display has just changed.
    assertThat(atStart).isCloseTo(10, within(0.2));
  }

  /** Independent numbers have a lag-one autocorrelation of 0 with a standard deviation of 0.06. */
  @Test
  void pairs_of_a_log_are_almost_independent() {
    double[] seconds = IntStream.rangeClosed(0, 1800).asDoubleStream().toArray();
    double[] power = Arrays.stream(seconds).map(t -> Math.rint(72 - t / 60)).toArray();
    double[] soc = Arrays.stream(seconds).map(t -> Math.floor(10 + t / 40)).toArray();
    Session log =
        Sessions.session()
            .channel(Channel.SOC, 0.5, seconds, soc)
            .channel(Channel.POWER, 0.5, seconds, power)
            .build();
    List<Course> courses = new CourseSampler(log, 1).draw(PAIRS, 0);
    double[] energies =
        IntStream.range(0, PAIRS).mapToDouble(k -> courses.get(2 * k).energyAt(900)).toArray();
    double[] starts =
        IntStream.range(0, PAIRS).mapToDouble(k -> courses.get(2 * k).chargeAt(0)).toArray();
    assertThat(autocorrelation(energies)).isCloseTo(0, within(0.25));
    assertThat(autocorrelation(starts)).isCloseTo(0, within(0.25));
  }

  private static double autocorrelation(double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    double sum = 0;
    for (int k = 1; k < values.length; k++) {
      sum += (values[k] - mean) * (values[k - 1] - mean);
    }
    return sum / values.length / Math.pow(deviation(values), 2);
  }

  @Test
  void a_seed_gives_the_same_draws() {
    double[] one = energies(powered().build());
    assertThat(energies(powered().build())).isEqualTo(one);
    assertThat(Arrays.stream(one).distinct().count()).isGreaterThan(PAIRS);
  }
}
