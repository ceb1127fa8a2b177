package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;

/**
 * Rows whose true charge is known: 1 % in 30 s from 10 % on, by a display that shows the whole per
 * cents reached.
 */
final class ReadingHabitTest {
  private static final int ROWS = 12;
  private static final int DRAWS = 4800;

  /** A session with rows at the given parts of a step, 5 % apart. */
  private static CourseModel model(String rowsWritten, IntToDoubleFunction part) {
    double[] charge =
        IntStream.range(0, ROWS).mapToDouble(i -> 10 + 5 * i + part.applyAsDouble(i)).toArray();
    double[] seconds = Arrays.stream(charge).map(q -> (q - 10) * 30).toArray();
    double[] shown = Arrays.stream(charge).map(Math::floor).toArray();
    double[] power = Arrays.stream(charge).map(q -> 72).toArray();
    CourseModel model =
        new CourseModel(
            new CourseData(
                Sessions.session()
                    .text(ConditionItem.ROWS_WRITTEN, rowsWritten)
                    .channel(Channel.SOC, 0.5, seconds, shown)
                    .channel(Channel.POWER, 0.5, seconds, power)
                    .build()));
    model.linearise(truth(model));
    return model;
  }

  /** The true course: 72 kW, and 1 % for each 0.6 kWh. */
  private static double[] truth(CourseModel model) {
    int n = model.cells();
    double[] nodes = model.data().nodes();
    double[] x = new double[n + CourseModel.BORDER];
    for (int i = 0; i < n; i++) {
      x[i] = 0.02 * (nodes[i + 1] - nodes[0]);
    }
    x[n + CourseModel.START] = 10 + nodes[0] / 30;
    x[n + CourseModel.PER_ENERGY] = 1 / 0.6;
    return x;
  }

  private static List<Integer> chosen(IntToDoubleFunction part) {
    CourseModel model = model("unknown", part);
    new ReadingHabit(model, new RandomNumbers(1)).choose(truth(model));
    return model.formsOfCharge().stream().map(f -> f.part).toList();
  }

  @Test
  void rows_at_changes_are_recognised() {
    // The eye sees a change after 0.1 s, 1 / 300 of a step.
    List<Integer> parts = chosen(i -> i == 0 ? 0 : 1 / 300.0);
    assertThat(parts.subList(1, ROWS)).containsOnly(-1);
  }

  @Test
  void rows_anywhere_in_their_step_have_their_quarter() {
    double[] places = {0.13, 0.38, 0.62, 0.87, 0.37, 0.63, 0.88, 0.12, 0.38, 0.62, 0.87, 0.37};
    List<Integer> parts = chosen(i -> places[i]);
    for (int i = 0; i < ROWS; i++) {
      int quarter = (int) (4 * places[i]);
      // Near an edge a row may also be at a change.
      assertThat(parts.get(i)).as("%s", i).isIn(quarter, places[i] < 0.25 ? -1 : quarter);
    }
  }

  @Test
  void a_mixture_of_both_is_told_apart() {
    List<Integer> parts = chosen(i -> i % 2 == 0 ? 0.6 : 1 / 300.0);
    for (int i = 1; i < ROWS; i++) {
      assertThat(parts.get(i)).as("%s", i).isEqualTo(i % 2 == 0 ? 2 : -1);
    }
  }

  @Test
  void rows_at_set_times_are_never_at_a_change() {
    CourseModel model = model("at set times", i -> i / 12.0);
    ReadingHabit habit = new ReadingHabit(model, new RandomNumbers(1));
    habit.choose(truth(model));
    for (int i = 0; i < ROWS; i++) {
      assertThat(model.formsOfCharge().get(i).part).isEqualTo(i / 3);
    }
    for (int k = 0; k < 100; k++) {
      habit.draw(truth(model));
      assertThat(model.formsOfCharge()).allMatch(f -> f.part >= 0 && f.part < 4);
    }
  }

  /**
   * A quarter is drawn in proportion to the normal density of the charge about its middle, with a
   * standard deviation of 0.12 steps and the 2 % of the model.
   */
  @Test
  void quarters_are_drawn_by_their_densities() {
    CourseModel model = model("at set times", i -> 0.4);
    ReadingHabit habit = new ReadingHabit(model, new RandomNumbers(2));
    double variance = 0.0144 + Math.pow(0.02 + 1e-4, 2);
    double[] odds = new double[4];
    for (int k = 0; k < 4; k++) {
      odds[k] = Math.exp(-Math.pow(0.4 - (k + 0.5) / 4, 2) / 2 / variance);
    }
    double sum = Arrays.stream(odds).sum();
    double[] counts = new double[4];
    for (int k = 0; k < DRAWS; k += ROWS) {
      habit.draw(truth(model));
      model.formsOfCharge().forEach(f -> counts[f.part] += 1.0 / DRAWS);
    }
    for (int k = 0; k < 4; k++) {
      double share = odds[k] / sum;
      assertThat(counts[k])
          .isCloseTo(share, within(5 * Math.sqrt(share * (1 - share) / DRAWS) + 1e-3));
    }
  }

  /** The share of rows at a change is drawn as well: a beta number, or exactly none or all. */
  @Test
  void the_share_of_rows_at_changes_follows_them() {
    CourseModel changes = model("unknown", i -> i == 0 ? 0 : 1 / 300.0);
    CourseModel inside = model("unknown", i -> 0.6);
    assertThat(shareAtChange(changes)).isGreaterThan(0.97);
    assertThat(shareAtChange(inside)).isLessThan(0.005);
    double mixed = shareAtChange(model("unknown", i -> i % 2 == 0 ? 0.6 : 1 / 300.0));
    assertThat(mixed).isCloseTo(6 / 11.0, within(0.06));
  }

  private static double shareAtChange(CourseModel model) {
    ReadingHabit habit = new ReadingHabit(model, new RandomNumbers(3));
    List<ReadingForm> open =
        model.formsOfCharge().stream()
            .filter(f -> f.observation.form() == Observation.Form.EITHER)
            .toList();
    assertThat(open).hasSize(ROWS - 1);
    double[] truth = truth(model);
    int edges = 0;
    int rounds = 500;
    for (int k = 0; k < rounds; k++) {
      habit.draw(truth);
      for (ReadingForm form : open) {
        edges += form.part < 0 ? 1 : 0;
      }
    }
    return (double) edges / rounds / open.size();
  }

  @Test
  void an_open_reading_is_observed_at_the_middle_of_its_part() {
    // At first a row that may be at a change is at a quarter of its step, any other in its middle.
    check(3, 0, true, 0.25, 0.146);
    check(0, 0, true, 0.5, 0.083);
    for (int part = 0; part < 4; part++) {
      check(3, part, false, (part + 0.5) / 4, 0);
    }
    CourseModel model = model("unknown", i -> 0.4);
    ReadingForm form = model.formsOfCharge().get(3);
    form.part = -1;
    double[] observed = observed(model, form, false);
    assertThat(observed[0]).isCloseTo(form.edgeValue, within(1e-6));
    assertThat(observed[1]).isCloseTo(form.edgeVariance, within(1e-6));
  }

  private static void check(int index, int part, boolean rough, double place, double spread) {
    CourseModel model = model("unknown", i -> 0.4);
    ReadingForm form = model.formsOfCharge().get(index);
    form.part = part;
    double[] observed = observed(model, form, rough);
    assertThat(observed[0]).isCloseTo(form.value + place, within(1e-6));
    assertThat(observed[1]).isCloseTo(form.variance + spread, within(1e-6));
  }

  /**
   * Returns value and variance of one reading, as if it and no other read the charge at the start.
   */
  private static double[] observed(CourseModel model, ReadingForm form, boolean rough) {
    for (ReadingForm any : model.formsOfCharge()) {
      Arrays.fill(any.banded, 0);
      Arrays.fill(any.bordered, 0);
    }
    form.bordered[CourseModel.START] = 1;
    int n = model.cells();
    ArrowSystem system = new ArrowSystem(n, CourseModel.BORDER);
    for (int i = 0; i < n; i++) {
      system.add(i, new double[] {1}, new double[CourseModel.BORDER], 0, 1);
    }
    for (int i = 1; i < CourseModel.BORDER; i++) {
      system.addBorder(i, 1);
    }
    new ReadingHabit(model, new RandomNumbers(1)).addTo(system, rough);
    system.factor();
    double[] unit = new double[CourseModel.BORDER];
    unit[CourseModel.START] = 1;
    double[] solution = new double[n + CourseModel.BORDER];
    system.solve(solution);
    return new double[] {solution[n + CourseModel.START], system.variance(n, new double[0], unit)};
  }
}
