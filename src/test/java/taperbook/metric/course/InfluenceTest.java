package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.result.UncertaintySource;
import taperbook.session.Channel;

/** Variances of readings by hand: a rectangular step of 1 has a variance of 1 / 12. */
final class InfluenceTest {
  private static ReadingForm form(Channel channel, Observation.Form form, double variance) {
    ReadingForm reading =
        new ReadingForm(new Observation(channel, 1, 60, 20, 1 / 12.0, 0, form), 0, 0.5);
    reading.variance = variance;
    reading.partVariance = 0.0144;
    return reading;
  }

  @Test
  void predictions_count_from_their_mean() {
    Influence influence = new Influence(new double[] {1, 2, 6}, 4, Map.of());
    assertThat(influence.size()).isEqualTo(3);
    assertThat(influence.times(new double[] {1, 0, 0})).isEqualTo(-2);
    assertThat(influence.times(new double[] {0, 1, 0})).isEqualTo(-1);
    assertThat(influence.times(new double[] {0, 0, 1})).isEqualTo(3);
    assertThat(influence.squares()).isEqualTo(14);
    assertThat(influence.variance()).isEqualTo(4);
    assertThat(influence.shares()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"POWER, POWER_DISPLAY", "ENERGY_ADDED, ENERGY_DISPLAY"})
  void the_variance_of_a_reading_is_that_of_its_display_and_the_clock(
      Channel channel, UncertaintySource display) {
    ReadingForm form = form(channel, Observation.Form.WITHIN_STEP, 1 / 12.0 + 1 / 24.0);
    Influence influence = Influence.of(form, new double[] {1, 3}, 1);
    assertThat(influence.variance()).isCloseTo(1 / 8.0, within(1e-12));
    assertThat(influence.shares()).containsOnlyKeys(display, UncertaintySource.CLOCK);
    assertThat(share(influence, display)).isCloseTo(2 / 3.0, within(1e-12));
    assertThat(share(influence, UncertaintySource.CLOCK)).isCloseTo(1 / 3.0, within(1e-12));
    assertThat(influence.times(new double[] {0, 1})).isEqualTo(1);
  }

  /** A quarter of the draws at the edge, the others within the step of 2 %. */
  @Test
  void a_charge_that_may_be_at_a_change_has_a_share_of_the_habit() {
    ReadingForm form = form(Channel.SOC, Observation.Form.EITHER, 0.0144 + 0.05);
    form.edges = 0.25;
    Influence influence = Influence.of(form, new double[] {1, 3}, 2);
    double habit = 0.25 * 0.75 * 4 / 4;
    double display = 0.75 / 12;
    double sum = habit + display + 0.05;
    assertThat(influence.variance()).isCloseTo(sum, within(1e-12));
    assertThat(share(influence, UncertaintySource.READING_HABIT))
        .isCloseTo(habit / sum, within(1e-12));
    assertThat(share(influence, UncertaintySource.SOC_DISPLAY))
        .isCloseTo(display / sum, within(1e-12));
    assertThat(share(influence, UncertaintySource.CLOCK)).isCloseTo(0.05 / sum, within(1e-12));
  }

  @Test
  void a_charge_at_a_change_has_no_habit() {
    ReadingForm form = form(Channel.SOC, Observation.Form.AT_CHANGE, 1 / 12.0 + 0.05);
    Influence influence = Influence.of(form, new double[] {1, 3}, 1);
    assertThat(influence.shares())
        .containsOnlyKeys(UncertaintySource.SOC_DISPLAY, UncertaintySource.CLOCK);
    assertThat(influence.variance()).isCloseTo(1 / 12.0 + 0.05, within(1e-12));
  }

  private static double share(Influence influence, UncertaintySource source) {
    return influence.shares().getOrDefault(source, Double.NaN);
  }
}
