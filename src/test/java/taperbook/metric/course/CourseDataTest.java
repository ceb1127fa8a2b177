package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.metric.course.Observation.Form;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;

/** Constraints of readings, by hand: a display that shows v has a charge from v to v + 1. */
final class CourseDataTest {
  private static final double[] SECONDS = {0, 600, 1200, 1800};
  private static final double[] SOC = {10, 30, 50, 70};

  private static Sessions session(String rowsWritten) {
    return Sessions.session()
        .text(ConditionItem.ROWS_WRITTEN, rowsWritten)
        .clockHalfStep(0.5)
        .channel(Channel.SOC, 0.5, SECONDS, SOC)
        .channel(Channel.POWER, 0.5, SECONDS, new double[] {72, 70, 68, 66});
  }

  private static List<Observation> of(CourseData data, Channel channel) {
    return data.observations().stream().filter(o -> o.channel() == channel).toList();
  }

  private static List<Form> forms(String rowsWritten) {
    CourseData data = new CourseData(session(rowsWritten).build());
    return of(data, Channel.SOC).stream().map(Observation::form).toList();
  }

  @Test
  void a_row_at_a_set_time_is_uniform_within_its_step() {
    CourseData data = new CourseData(session("at set times").build());
    List<Observation> charge = of(data, Channel.SOC);
    assertThat(charge).extracting(Observation::value).containsExactly(10.5, 30.5, 50.5, 70.5);
    assertThat(charge).extracting(Observation::second).containsExactly(0.0, 600.0, 1200.0, 1800.0);
    for (Observation o : charge) {
      assertThat(o.form()).isEqualTo(Form.WITHIN_STEP);
      // A rectangular distribution of one step and of one second: JCGM 100:2008, F.2.2.1.
      assertThat(o.displayVariance()).isCloseTo(1 / 12.0, within(1e-12));
      assertThat(o.clockVariance()).isCloseTo(1 / 12.0, within(1e-12));
    }
  }

  @Test
  void the_recording_habit_determines_the_position_within_the_step() {
    assertThat(forms("at changes"))
        .containsExactly(Form.WITHIN_STEP, Form.AT_CHANGE, Form.AT_CHANGE, Form.EITHER);
    assertThat(forms("unknown"))
        .containsExactly(Form.WITHIN_STEP, Form.EITHER, Form.EITHER, Form.EITHER);
  }

  @Test
  void a_change_between_two_close_rows_is_between_them() {
    double[] seconds = {0, 99, 100, 200};
    CourseData data =
        new CourseData(
            Sessions.session()
                .text(ConditionItem.ROWS_WRITTEN, "at set times")
                .channel(Channel.SOC, 0.5, seconds, new double[] {10, 10, 11, 12})
                .build());
    List<Observation> charge = of(data, Channel.SOC);
    Observation change =
        charge.stream().filter(o -> o.form() == Form.AT_CHANGE).findFirst().orElseThrow();
    assertThat(change.second()).isEqualTo(99.5);
    assertThat(change.value()).isEqualTo(11);
    assertThat(change.displayVariance()).isZero();
    assertThat(change.clockVariance()).isCloseTo(1 / 12.0, within(1e-12));
    assertThat(charge).hasSize(3);
  }

  @Test
  void power_and_energy_are_used_as_displayed() {
    CourseData data =
        new CourseData(
            session("at set times")
                .channel(Channel.ENERGY_ADDED, 0.05, SECONDS, new double[] {5, 16.8, 28.3, 39.5})
                .build());
    assertThat(of(data, Channel.POWER))
        .extracting(Observation::value)
        .containsExactly(72.0, 70.0, 68.0, 66.0);
    // A counter without reset provides differences only.
    assertThat(of(data, Channel.ENERGY_ADDED))
        .extracting(o -> Math.rint(10 * o.value()) / 10)
        .containsExactly(0.0, 11.8, 23.3, 34.5);
    assertThat(of(data, Channel.ENERGY_ADDED).get(1).displayVariance())
        .isCloseTo(0.01 / 12, within(1e-12));
    assertThat(data.counterOffset())
        .isCloseTo(Math.hypot(0.1 / 4, 0.1 / Math.sqrt(12)), within(1e-12));
  }

  @Test
  void nodes_are_at_the_rows_and_evenly_spaced_between_them() {
    CourseData data = new CourseData(session("at set times").build());
    double[] nodes = data.nodes();
    assertThat(data.isDense()).isFalse();
    for (double row : SECONDS) {
      assertThat(Arrays.binarySearch(nodes, row)).as(row + " s").isGreaterThanOrEqualTo(0);
    }
    // 1800 s in 160 cells are 11.25 s, and 600 s are 54 cells.
    assertThat(nodes).hasSize(3 * 54 + 1);
    assertThat(nodes[1]).isCloseTo(600 / 54.0, within(1e-9));
  }

  @Test
  void a_log_has_evenly_spaced_nodes_and_one_power_for_each_cell() {
    double[] seconds = IntStream.rangeClosed(0, 960).asDoubleStream().toArray();
    double[] power = Arrays.stream(seconds).map(t -> 100 - t / 10).toArray();
    double[] soc = Arrays.stream(seconds).map(t -> Math.floor(10 + t / 20)).toArray();
    CourseData data =
        new CourseData(
            Sessions.session()
                .channel(Channel.SOC, 0.5, seconds, soc)
                .channel(Channel.POWER, 0.5, seconds, power)
                .build());
    assertThat(data.isDense()).isTrue();
    assertThat(data.nodes()).hasSize(481);
    List<Observation> cells = of(data, Channel.POWER);
    assertThat(cells).hasSize(480);
    // Readings at 0 s and 1 s; the last cell includes the reading at its end.
    assertThat(cells.get(0).value()).isCloseTo(99.95, within(1e-9));
    assertThat(cells.get(0).second()).isCloseTo(0.5, within(1e-9));
    assertThat(cells.get(0).displayVariance()).isCloseTo(1 / 12.0 / 2, within(1e-12));
    assertThat(cells.get(479).second()).isCloseTo(959, within(1e-9));
    assertThat(of(data, Channel.SOC)).hasSizeLessThan(200);
  }

  @Test
  void readings_at_a_single_time_have_no_duration() {
    assertThat(CourseData.spansTime(session("unknown").build())).isTrue();
    assertThat(
            CourseData.spansTime(
                Sessions.session()
                    .channel(Channel.SOC, 0.5, new double[] {0, 0.5}, new double[] {10, 11})
                    .build()))
        .isFalse();
  }
}
