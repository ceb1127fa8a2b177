package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.metric.course.Observation.Form;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Session;

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
  void a_log_has_one_power_for_each_cell() {
    double[] seconds = IntStream.rangeClosed(0, 960).asDoubleStream().toArray();
    double[] power = Arrays.stream(seconds).map(t -> 100).toArray();
    double[] soc = Arrays.stream(seconds).map(t -> Math.floor(10 + t / 20)).toArray();
    CourseData data =
        new CourseData(
            Sessions.session()
                .channel(Channel.SOC, 0.5, seconds, soc)
                .channel(Channel.POWER, 0.5, seconds, power)
                .build());
    assertThat(data.isDense()).isTrue();
    assertThat(data.nodes()).hasSize(241);
    List<Observation> cells = of(data, Channel.POWER);
    assertThat(cells).hasSize(240);
    // Readings from 0 s to 3 s; the last cell includes the reading at its end.
    assertThat(cells.get(0).value()).isCloseTo(100, within(1e-9));
    assertThat(cells.get(0).second()).isCloseTo(1.5, within(1e-9));
    assertThat(cells.get(0).displayVariance()).isCloseTo(1 / 12.0 / 4, within(1e-12));
    assertThat(cells.get(239).second()).isCloseTo(958, within(1e-9));
    assertThat(of(data, Channel.SOC)).hasSizeLessThan(200);
  }

  /**
   * A ramp of 1 kW/s has no noise; that of normal numbers is their variance, over a cell's rows.
   */
  @Test
  void a_log_s_noise_adds_to_the_uncertainty_of_a_cell() {
    double[] seconds = IntStream.rangeClosed(0, 9600).asDoubleStream().toArray();
    double[] stepped = Arrays.stream(seconds).map(t -> t > 3000 ? t / 50 : 200 - t / 50).toArray();
    assertThat(meanVariance(seconds, stepped)).isCloseTo(0, within(1e-9));
    Random random = new Random(3);
    double[] noisy = Arrays.stream(seconds).map(t -> t + 2 * random.nextGaussian()).toArray();
    assertThat(meanVariance(seconds, noisy)).isCloseTo(4 / 40.0, within(0.006));
  }

  /** Returns the mean variance of the power of 240 cells of 40 rows. */
  private static double meanVariance(double[] seconds, double[] power) {
    CourseData data =
        new CourseData(Sessions.session().channel(Channel.POWER, 0, seconds, power).build());
    return of(data, Channel.POWER).stream()
        .mapToDouble(Observation::displayVariance)
        .average()
        .orElseThrow();
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

  @Test
  void single_readings_are_within_their_step_and_at_least_two_cells_apart() {
    CourseData data = CourseData.ofSingleReadings(session("at changes").build());
    assertThat(of(data, Channel.SOC))
        .extracting(Observation::value)
        .containsExactly(10.5, 30.5, 50.5, 70.5);
    assertThat(of(data, Channel.SOC)).allMatch(o -> o.form() == Form.WITHIN_STEP);
    assertThat(of(data, Channel.SOC).get(2).index()).isEqualTo(2);
    assertThat(of(data, Channel.SOC).get(2).displayVariance()).isCloseTo(1 / 12.0, within(1e-12));
    // Cells of 6 s up to the first row after plugging in, then 27 of at most 22.5 s in 600 s.
    double[] nodes = data.nodes();
    assertThat(nodes).hasSize(1 + 100 + 27 + 27);
    assertThat(nodes[1]).isCloseTo(6, within(1e-9));
    assertThat(nodes[101]).isCloseTo(600 + 600 / 27.0, within(1e-9));
    assertThat(data.isDense()).isFalse();
    double[] close = {0, 200, 201, 201.2, 400};
    CourseData two =
        CourseData.ofSingleReadings(
            Sessions.session()
                .channel(Channel.SOC, 0.5, close, new double[] {10, 11, 12, 13, 14})
                .build());
    // 400 s in 80 cells: 5 s, two between the rows a second apart, none for the fifth of a second.
    assertThat(two.nodes()).hasSize(1 + 40 + 2 + 40);
  }

  @Test
  void a_counter_that_is_first_read_later_counts_from_plugging_in() {
    double[] later = {60, 600, 1200, 1800};
    CourseData data =
        new CourseData(
            Sessions.session()
                .channel(Channel.ENERGY_ADDED, 0.05, later, new double[] {1.2, 12, 24, 36})
                .build());
    assertThat(data.nodes()[0]).isZero();
    assertThat(of(data, Channel.ENERGY_ADDED))
        .extracting(Observation::value)
        .containsExactly(1.2, 12.0, 24.0, 36.0);
    assertThat(data.counterOffset()).isCloseTo(0.025, within(1e-12));
    CourseData zero =
        new CourseData(
            Sessions.session()
                .channel(Channel.ENERGY_ADDED, 0, SECONDS, new double[] {0, 12, 24, 36})
                .build());
    assertThat(zero.counterOffset()).isCloseTo(1e-4, within(1e-12));
    CourseData once =
        new CourseData(
            session("unknown")
                .channel(Channel.ENERGY_ADDED, 0.05, new double[] {60}, new double[] {1.2})
                .build());
    assertThat(once.has(Channel.ENERGY_ADDED)).isFalse();
    assertThat(once.has(Channel.POWER)).isTrue();
  }

  @Test
  void offsets_of_power_depend_on_the_rounding_of_the_displays() {
    assertThat(new CourseData(session("unknown").build()).powerOffset())
        .isCloseTo(0.2, within(1e-12));
    CourseData nearest =
        new CourseData(session("unknown").text(ConditionItem.DISPLAY_ROUNDS, "nearest").build());
    assertThat(nearest.powerOffset()).isCloseTo(0.1, within(1e-12));
    assertThat(nearest.clockHalfStep()).isEqualTo(0.5);
    assertThat(nearest.step(Channel.SOC)).isEqualTo(1);
    CourseData exact =
        new CourseData(
            Sessions.session()
                .channel(Channel.POWER, 0, SECONDS, new double[] {72, 70, 68, 66})
                .build());
    assertThat(exact.powerOffset()).isCloseTo(1e-4, within(1e-12));
    assertThat(exact.step(Channel.SOC)).isEqualTo(1);
  }

  /** Two rows g apart, and five changes in 400 s + g: half a step is 0.5 = 5 g / (400 + g). */
  @Test
  void two_rows_enclose_a_change_if_they_are_within_half_a_step() {
    assertThat(changes(44, 1, "at set times")).isEqualTo(1);
    assertThat(changes(45, 1, "at set times")).isZero();
    assertThat(changes(44, 1, "unknown")).isEqualTo(1);
    assertThat(changes(5, 2, "at set times")).isZero();
    assertThat(changes(5, 0, "at set times")).isZero();
  }

  /** Returns the number of changes between rows. */
  private static long changes(double gap, double rise, String rowsWritten) {
    double[] seconds = {0, 100, 200, 200 + gap, 300 + gap, 400 + gap};
    double[] soc = {8, 9, 10, 10 + rise, 11 + rise, 12 + rise};
    CourseData data =
        new CourseData(
            Sessions.session()
                .text(ConditionItem.ROWS_WRITTEN, rowsWritten)
                .channel(Channel.SOC, 0.5, seconds, soc)
                .build());
    List<Observation> charge = of(data, Channel.SOC);
    long changes = charge.stream().filter(o -> o.form() == Form.AT_CHANGE).count();
    assertThat(charge).hasSize(6 - (int) changes);
    return changes;
  }

  @Test
  void a_charge_without_steps_is_exact() {
    CourseData data =
        new CourseData(Sessions.session().channel(Channel.SOC, 0, SECONDS, SOC).build());
    assertThat(of(data, Channel.SOC)).allMatch(o -> o.form() == Form.AT_CHANGE);
    assertThat(of(data, Channel.SOC))
        .extracting(Observation::value)
        .containsExactly(10.0, 30.0, 50.0, 70.0);
    assertThat(of(data, Channel.SOC)).allMatch(o -> o.displayVariance() == 0);
  }

  @Test
  void twenty_rows_in_a_cell_count_as_four_for_their_rounding_and_one_in_ten_of_the_counter() {
    double[] seconds = IntStream.rangeClosed(0, 4800).asDoubleStream().toArray();
    double[] power = Arrays.stream(seconds).map(t -> 100).toArray();
    double[] energy = Arrays.stream(seconds).map(t -> t / 36).toArray();
    CourseData data =
        new CourseData(
            Sessions.session()
                .clockHalfStep(0.5)
                .channel(Channel.POWER, 0.5, seconds, power)
                .channel(Channel.ENERGY_ADDED, 0.05, seconds, energy)
                .build());
    Observation cell = of(data, Channel.POWER).get(100);
    assertThat(cell.second()).isCloseTo(2009.5, within(1e-9));
    assertThat(cell.index()).isEqualTo(2019);
    assertThat(cell.displayVariance()).isCloseTo(1 / 48.0, within(1e-12));
    assertThat(cell.clockVariance()).isCloseTo(1 / 240.0, within(1e-12));
    List<Observation> counter = of(data, Channel.ENERGY_ADDED);
    assertThat(counter).hasSize(481);
    assertThat(counter.get(1).second()).isEqualTo(10);
    assertThat(counter.get(480).second()).isEqualTo(4800);
    assertThat(counter.get(1).clockVariance()).isCloseTo(1 / 12.0, within(1e-12));
  }

  @Test
  void two_hundred_rows_are_written_by_hand_and_one_more_is_a_log() {
    for (int rows : new int[] {200, 201}) {
      double[] seconds = IntStream.range(0, rows).mapToDouble(i -> 9 * i).toArray();
      double[] power = Arrays.stream(seconds).map(t -> 100).toArray();
      CourseData data =
          new CourseData(Sessions.session().channel(Channel.POWER, 0.5, seconds, power).build());
      assertThat(data.isDense()).isEqualTo(rows > 200);
      // One cell from each row to the next, in a log as well.
      assertThat(data.nodes()).hasSize(rows > 200 ? 201 : 200);
    }
  }

  @Test
  void half_steps_have_a_quarter_of_the_variance_of_whole_ones() {
    Session session =
        Sessions.session()
            .text(ConditionItem.ROWS_WRITTEN, "at set times")
            .channel(Channel.SOC, 0.25, SECONDS, SOC)
            .build();
    for (CourseData data : List.of(new CourseData(session), CourseData.ofSingleReadings(session))) {
      assertThat(of(data, Channel.SOC))
          .extracting(Observation::value)
          .containsExactly(10.25, 30.25, 50.25, 70.25);
      assertThat(of(data, Channel.SOC))
          .allMatch(o -> Math.abs(o.displayVariance() - 0.25 / 12) < 1e-12);
      assertThat(data.step(Channel.SOC)).isEqualTo(0.5);
    }
  }

  @Test
  void a_change_between_two_rows_is_uniform_in_their_gap() {
    double[] seconds = {0, 100, 200, 240, 340, 440};
    CourseData data =
        new CourseData(
            Sessions.session()
                .clockHalfStep(0.5)
                .text(ConditionItem.ROWS_WRITTEN, "at set times")
                .channel(Channel.SOC, 0.5, seconds, new double[] {8, 9, 10, 11, 12, 13})
                .build());
    Observation change =
        of(data, Channel.SOC).stream()
            .filter(o -> o.form() == Form.AT_CHANGE)
            .findFirst()
            .orElseThrow();
    assertThat(change.second()).isEqualTo(220);
    assertThat(change.value()).isEqualTo(11);
    assertThat(change.index()).isEqualTo(3);
    assertThat(change.clockVariance()).isCloseTo(1600 / 12.0 + 1 / 12.0, within(1e-9));
  }
}
