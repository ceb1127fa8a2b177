package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.metric.fit.EnergyReadings.SocStep;
import taperbook.metric.fit.EnergyReadings.WithinStep;
import taperbook.session.Trace;

/** One reading for each step of a display, and its position within the step. */
final class SocStepTest {
  private static Trace trace(double halfStep, double... values) {
    int n = values.length;
    return new Trace(
        "sessions/steps/readings.csv",
        IntStream.range(0, n).mapToDouble(i -> i).toArray(),
        values,
        IntStream.range(0, n).map(i -> i + 2).toArray(),
        halfStep,
        0.5);
  }

  @Test
  void the_middle_row_or_both_middle_rows_represent_a_displayed_value() {
    List<SocStep> steps = SocStep.of(trace(0.5, 10, 11, 11, 11, 12, 12), i -> true);
    assertThat(steps).containsExactly(new SocStep(0, 0), new SocStep(2, 2), new SocStep(4, 5));
    assertThat(steps.get(2).mean(i -> i)).isEqualTo(4.5);
    assertThat(steps.get(2).indices()).containsExactly(4, 5);
    assertThat(steps.get(1).indices()).containsExactly(2);
  }

  @Test
  void a_display_that_falls_back_has_one_reading_for_each_value() {
    assertThat(SocStep.of(trace(0.5, 10, 11, 10, 11, 12), i -> i != 4)).hasSize(2);
  }

  @Test
  void between_two_changes_the_true_value_rises_through_the_step() {
    Trace energy = trace(0.5, 4, 5, 5, 5, 5, 6, 6);
    // Changes at 0.5 s and 4.5 s: a quarter of the step per second.
    assertThat(WithinStep.value(energy, 1)).isCloseTo(4.5 + 0.125, within(1e-12));
    assertThat(WithinStep.value(energy, 4)).isCloseTo(5.5 - 0.125, within(1e-12));
  }

  @Test
  void without_observed_changes_the_reading_is_used() {
    // At the ends, with few rows on a step, and after a change of more than a step.
    assertThat(WithinStep.value(trace(0.5, 4, 4, 4, 5), 1)).isEqualTo(4);
    assertThat(WithinStep.value(trace(0.5, 4, 5, 5, 5), 2)).isEqualTo(5);
    assertThat(WithinStep.value(trace(0.5, 4, 5, 5, 6), 1)).isEqualTo(5);
    assertThat(WithinStep.value(trace(0.5, 4, 9, 9, 9, 10), 2)).isEqualTo(9);
  }

  @Test
  void the_reading_is_used_if_all_rows_of_a_step_have_one_time() {
    double[] seconds = {0, 7, 7, 7, 7, 7, 9};
    int[] lines = {2, 3, 4, 5, 6, 7, 8};
    Trace energy =
        new Trace(
            "sessions/steps/readings.csv",
            seconds,
            new double[] {3, 4, 5, 5, 5, 6, 6},
            lines,
            0.5,
            0.05);

    assertThat(WithinStep.value(energy, 3)).isEqualTo(5);
  }

  @Test
  void a_change_of_less_than_one_and_a_half_steps_is_one_step() {
    // Changes at 0.5 s and 3.5 s: the first row is a sixth of the step above its lower edge.
    assertThat(WithinStep.value(trace(0.5, 4, 5.4, 5.4, 5.4, 6.4), 1))
        .isCloseTo(5.4 - 0.5 + 1 / 6.0, within(1e-12));
    assertThat(WithinStep.value(trace(0.5, 4, 5.5, 5.5, 5.5, 6.5), 1)).isEqualTo(5.5);
    assertThat(WithinStep.value(trace(0.5, 4, 5, 5, 5, 6.5), 1)).isEqualTo(5);
    assertThat(WithinStep.value(trace(0.5, 6, 5, 5, 5, 6), 1)).isEqualTo(5);
  }
}
