package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.metric.Sessions;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;

/**
 * Readings of 72 kW for 1800 s, 36 kWh, over which the charge rises from 10 to 70 %, so that a
 * second is 1 / 30 %. Each reading as a linear form is compared with the course it linearises.
 */
final class CourseModelTest {
  private static final double[] SECONDS = {0, 300, 600, 900, 1200, 1500, 1800};
  private static final double[] SOC = {10, 20, 30, 40, 50, 60, 70};

  private static double[] at(DoubleUnaryOperator value) {
    return Arrays.stream(SECONDS).map(value).toArray();
  }

  private static Sessions charge(String rowsWritten) {
    return Sessions.session()
        .text(ConditionItem.DISPLAY_ROUNDS, "nearest")
        .text(ConditionItem.ROWS_WRITTEN, rowsWritten)
        .clockHalfStep(0.5)
        .channel(Channel.SOC, 0.5, SECONDS, SOC);
  }

  private static Sessions powered(DoubleUnaryOperator power) {
    return charge("at set times").channel(Channel.POWER, 0.5, SECONDS, at(power));
  }

  private static Sessions counted(double total) {
    return powered(t -> 72).channel(Channel.ENERGY_ADDED, 0.05, SECONDS, at(t -> total * t / 1800));
  }

  private static CourseModel model(Sessions session) {
    return new CourseModel(new CourseData(session.build()));
  }

  private static double total(CourseModel model) {
    return model.reference()[model.cells() - 1];
  }

  private static double border(CourseModel model, int index) {
    return model.reference()[model.cells() + index];
  }

  @Test
  void the_first_course_integrates_power_and_starts_at_the_first_charge() {
    CourseModel model = model(powered(t -> 72));
    assertThat(model.cells()).isEqualTo(model.data().nodes().length - 1);
    assertThat(model.meanPower()).isCloseTo(72, within(1e-9));
    assertThat(total(model)).isCloseTo(36, within(1e-9));
    // A row at a set time shows the middle of its step.
    assertThat(border(model, CourseModel.START)).isCloseTo(10.5, within(1e-9));
    assertThat(border(model, CourseModel.PER_ENERGY)).isCloseTo(60 / 36.0, within(1e-9));
    CourseModel ramp = model(powered(t -> 20 + t / 30));
    assertThat(ramp.meanPower()).isCloseTo(50, within(1e-9));
    double[] reference = ramp.reference();
    for (double t = 0; t < 1800; t += 77) {
      double expected = 20 + t / 30;
      assertThat(ramp.powerAt(reference, t)).isCloseTo(expected, within(0.2));
    }
  }

  @ParameterizedTest
  @CsvSource({"30, 30", "19, 19", "70, 70", "17, 36", "73, 36"})
  void a_counter_that_agrees_by_a_factor_of_two_sets_the_energy(double counted, double expected) {
    assertThat(total(model(counted(counted)))).isCloseTo(expected, within(1e-9));
  }

  @Test
  void without_power_the_first_course_follows_the_counter_or_the_charge() {
    Sessions counter =
        charge("at set times").channel(Channel.ENERGY_ADDED, 0.05, SECONDS, at(t -> t * t / 90000));
    CourseModel model = model(counter);
    assertThat(total(model)).isCloseTo(36, within(1e-9));
    // Linear between the readings of the counter, 4 kWh at 600 s and 9 kWh at 900 s.
    assertThat(model.energyAt(model.reference(), 750)).isCloseTo(6.5, within(1e-9));
    CourseModel bare = model(charge("at set times"));
    assertThat(total(bare)).isCloseTo(60, within(1e-9));
    assertThat(border(bare, CourseModel.PER_ENERGY)).isEqualTo(1);
    assertThat(border(bare, CourseModel.START)).isCloseTo(10.5, within(1e-6));
    assertThat(bare.charge(bare.reference(), 30)).isCloseTo(40.5, within(1e-6));
  }

  /** A course with power that changes, and all global parameters away from zero. */
  private static double[] course(CourseModel model) {
    int n = model.cells();
    double[] nodes = model.data().nodes();
    double[] x = new double[n + CourseModel.BORDER];
    for (int i = 0; i < n; i++) {
      double t = nodes[i + 1] / 1800;
      x[i] = 40 * t - 6 * t * t;
    }
    double[] border = {9.7, 1.6, 0.11, -0.07, 0.02, 0.004, 0.3};
    System.arraycopy(border, 0, x, n, border.length);
    return x;
  }

  @Test
  void energy_and_power_are_those_of_the_cells() {
    CourseModel model = model(powered(t -> 72));
    double[] x = course(model);
    double[] nodes = model.data().nodes();
    for (int i = 0; i < model.cells(); i++) {
      double middle = (nodes[i] + nodes[i + 1]) / 2;
      // The secant of 40 t - 6 t^2 is its derivative in the middle.
      double power = (40 - 12 * middle / 1800) / 1800 * 3600;
      assertThat(model.powerOf(x, i)).isCloseTo(power, within(1e-9));
      assertThat(model.powerAt(x, nodes[i])).isCloseTo(power, within(1e-9));
      assertThat(model.powerAt(x, middle)).isCloseTo(power, within(1e-9));
      double before = i == 0 ? 0 : x[i - 1];
      assertThat(model.energyAt(x, middle)).isCloseTo((before + x[i]) / 2, within(1e-9));
      assertThat(model.energyAt(x, nodes[i + 1])).isCloseTo(x[i], within(1e-9));
    }
  }

  @Test
  void charge_bends_and_skews_between_fixed_ends() {
    CourseModel model = model(powered(t -> 72));
    int n = model.cells();
    double[] x = new double[n + CourseModel.BORDER];
    x[n + CourseModel.START] = 10;
    x[n + CourseModel.PER_ENERGY] = 2;
    assertThat(model.charge(x, 9)).isCloseTo(28, within(1e-9));
    x[n + CourseModel.BEND] = 0.4;
    // With a length of 36 kWh: 9 (9 - 36) / 36 is -6.75.
    assertThat(model.charge(x, 9)).isCloseTo(28 - 0.4 * 6.75, within(1e-9));
    assertThat(model.charge(x, 0)).isCloseTo(10, within(1e-9));
    assertThat(model.charge(x, 36)).isCloseTo(82, within(1e-9));
    x[n + CourseModel.BEND] = 0;
    x[n + CourseModel.SKEW] = 0.4;
    // And (2 * 9 - 36) / 36 is -0.5.
    assertThat(model.charge(x, 9)).isCloseTo(28 + 0.4 * 3.375, within(1e-9));
    assertThat(model.charge(x, 18)).isCloseTo(46, within(1e-9));
  }

  /** The charge of a reading minus the lower edge of its step, to first order about the course. */
  @ParameterizedTest
  @ValueSource(strings = {"at set times", "at changes", "unknown"})
  void a_reading_of_the_charge_is_the_course_to_first_order(String rowsWritten) {
    CourseModel model =
        model(charge(rowsWritten).channel(Channel.POWER, 0.5, SECONDS, at(t -> 72)));
    double[] x = course(model);
    model.linearise(x);
    double[] moved = x.clone();
    for (int i = 0; i < moved.length; i++) {
      moved[i] += 1e-5 * Math.sin(i + 1);
    }
    int n = model.cells();
    for (ReadingForm form : model.formsOfCharge()) {
      Observation o = form.observation;
      double rate = rate(model, x, o.second());
      boolean changed = o.form() == Observation.Form.AT_CHANGE;
      double edge =
          changed
              ? o.value() + (o.index() > 0 ? 0.1 * rate : 0)
              : o.value() - (o.form() == Observation.Form.WITHIN_STEP ? 0.5 : 0);
      assertThat(form.of(x, n) - form.value)
          .isCloseTo(model.charge(x, model.energyAt(x, o.second())) - edge, within(1e-9));
      assertThat(form.of(moved, n) - form.value)
          .isCloseTo(model.charge(moved, model.energyAt(moved, o.second())) - edge, within(1e-8));
      double spread = 0.02 + 1e-4;
      double clock = rate * rate / 12;
      double eye = 0.01 * rate * rate;
      if (changed) {
        assertThat(form.variance).isCloseTo(clock + eye + spread * spread, within(1e-9));
      } else {
        assertThat(form.partVariance).isCloseTo(0.0144, within(1e-12));
        assertThat(form.variance).isCloseTo(0.0144 + clock + spread * spread, within(1e-9));
        assertThat(form.edgeValue - form.value).isCloseTo(0.1 * rate, within(1e-9));
        assertThat(form.edgeVariance).isCloseTo(clock + eye + spread * spread, within(1e-9));
      }
    }
  }

  /** Rate of the charge, %/s: its derivative by energy, numerically, times the mean power. */
  private static double rate(CourseModel model, double[] x, double second) {
    double energy = model.energyAt(x, second);
    double slope = (model.charge(x, energy + 1e-4) - model.charge(x, energy - 1e-4)) / 2e-4;
    return slope * smoothPower(model, x, second) / 3600;
  }

  /** Mean power of the cell of a time and of its neighbours, kW. */
  private static double smoothPower(CourseModel model, double[] x, double second) {
    double[] nodes = model.data().nodes();
    int cell = 0;
    while (cell + 1 < model.cells() && nodes[cell + 1] <= second) {
      cell++;
    }
    double sum = 0;
    int count = 0;
    for (int i = Math.max(0, cell - 1); i <= Math.min(model.cells() - 1, cell + 1); i++) {
      sum += model.powerOf(x, i);
      count++;
    }
    return sum / count;
  }

  @Test
  void a_reading_of_power_is_between_the_middles_of_its_cells() {
    CourseModel model = model(counted(36));
    double[] x = course(model);
    model.linearise(x);
    double[] nodes = model.data().nodes();
    int n = model.cells();
    for (ReadingForm form : model.forms()) {
      if (form.observation.channel() == Channel.POWER) {
        double t = form.second();
        double width = nodes[1] - nodes[0];
        boolean isEnd = t == 0 || t == 1800;
        // The power of the course is a line in time, but constant before the first middle.
        double middle = t == 0 ? width / 2 : t == 1800 ? 1800 - width / 2 : t;
        double line = (40 - 12 * middle / 1800) * 2;
        double smooth = smoothPower(model, x, t);
        assertThat(form.of(x, n)).isCloseTo(line + 0.004 * smooth + 0.3, within(1e-6));
        assertThat(form.value).isEqualTo(72);
        // It falls by 24 kW in 1800 s, and the clock has a variance of 1 / 12 s.
        double slope = 24 / 1800.0;
        assertThat(form.variance)
            .as("end %s", isEnd)
            .isCloseTo(1 / 12.0 + slope * slope / 12 + 1e-6, within(1e-9));
      }
    }
  }

  @Test
  void a_reading_of_the_counter_is_the_energy_and_its_offset() {
    CourseModel model = model(counted(36));
    double[] x = course(model);
    model.linearise(x);
    int n = model.cells();
    for (ReadingForm form : model.forms()) {
      if (form.observation.channel() == Channel.ENERGY_ADDED) {
        double t = form.second();
        assertThat(form.of(x, n)).isCloseTo(model.energyAt(x, t) + 0.02, within(1e-9));
        assertThat(form.value).isCloseTo(36 * t / 1800, within(1e-9));
        double rate = smoothPower(model, x, t) / 3600;
        assertThat(form.variance).isCloseTo(0.01 / 12 + rate * rate / 12 + 1e-8, within(1e-10));
      }
    }
  }

  @Test
  void an_almost_idle_course_still_has_two_per_cent_of_the_mean_power() {
    CourseModel model = model(counted(36));
    double[] x = new double[model.cells() + CourseModel.BORDER];
    model.linearise(x);
    for (ReadingForm form : model.forms()) {
      if (form.observation.channel() == Channel.POWER) {
        assertThat(form.bordered[CourseModel.POWER_RATIO]).isCloseTo(0.02 * 72, within(1e-9));
      }
    }
  }

  /** One standard deviation of each parameter from its mean costs a half. */
  @Test
  void the_priors_have_their_spreads() {
    double perEnergy = 60 / 36.0;
    double[] powerOnly = {100, perEnergy, 0.05 * perEnergy, 0.03 * perEnergy, 0.25, 1e-6, 0.1};
    checkSpreads(model(powered(t -> 72)), powerOnly);
    double[] both = {100, perEnergy, 0.05 * perEnergy, 0.03 * perEnergy, 0.025, 1e3, 0.1};
    checkSpreads(model(counted(36)), both);
    double[] bare = {100, 1e-6, 1e-9, 1e-9, 0.25, 1e-6, 0.1};
    checkSpreads(model(charge("at set times")), bare);
    CourseModel noCharge =
        model(
            Sessions.session()
                .text(ConditionItem.DISPLAY_ROUNDS, "nearest")
                .channel(Channel.POWER, 0.5, SECONDS, at(t -> 72)));
    assertThat(costOf(noCharge, CourseModel.BEND, 1e-9)).isCloseTo(0.5, within(1e-6));
    assertThat(costOf(noCharge, CourseModel.SKEW, 1e-9)).isCloseTo(0.5, within(1e-6));
  }

  private static void checkSpreads(CourseModel model, double[] spreads) {
    int n = model.cells();
    assertThat(model.priorCost(model.reference())).isZero();
    ArrowSystem system = new ArrowSystem(n, CourseModel.BORDER);
    for (int i = 0; i < n; i++) {
      system.add(i, new double[] {1}, new double[CourseModel.BORDER], 0, 1);
    }
    model.addPriors(system);
    system.factor();
    double[] solution = new double[n + CourseModel.BORDER];
    system.solve(solution);
    for (int i = 0; i < CourseModel.BORDER; i++) {
      if (i != CourseModel.COUNTER_OFFSET || spreads[i] != 0.25) {
        assertThat(costOf(model, i, spreads[i])).as("%s", i).isCloseTo(0.5, within(1e-4));
        double[] unit = new double[CourseModel.BORDER];
        unit[i] = 1;
        assertThat(Math.sqrt(system.variance(n, new double[0], unit)))
            .as("%s", i)
            .isCloseTo(spreads[i], within(1e-4 * spreads[i]));
      }
      assertThat(solution[n + i]).as("%s", i).isCloseTo(border(model, i), within(1e-9));
    }
  }

  private static double costOf(CourseModel model, int border, double off) {
    double[] x = model.reference();
    x[model.cells() + border] += off;
    return model.priorCost(x);
  }

  /** All readings but those whose place in a step is drawn. */
  @Test
  void the_fixed_part_has_the_priors_and_the_readings_that_are_no_draws() {
    CourseModel model =
        model(
            charge("at changes")
                .channel(Channel.POWER, 0.5, SECONDS, at(t -> 72))
                .channel(Channel.ENERGY_ADDED, 0.05, SECONDS, at(t -> t / 50)));
    model.setReference(model.reference());
    int n = model.cells();
    assertThat(model.formsOfCharge())
        .hasSize(7)
        .allMatch(f -> f.observation.channel() == Channel.SOC);
    assertThat(model.forms().stream().filter(ReadingForm::isOpen)).hasSize(2);
    ArrowSystem expected = new ArrowSystem(n, CourseModel.BORDER);
    model.addPriors(expected);
    for (ReadingForm form : model.forms()) {
      if (form.observation.channel() != Channel.SOC
          || form.observation.form() == Observation.Form.AT_CHANGE) {
        expected.add(form.first, form.banded, form.bordered, form.value, 1 / form.variance);
      }
    }
    ArrowSystem fixed = new ArrowSystem(n, CourseModel.BORDER);
    fixed.copy(model.fixed());
    double[][] solutions = new double[2][n + CourseModel.BORDER];
    for (ArrowSystem system : new ArrowSystem[] {fixed, expected}) {
      for (int i = 0; i < n; i++) {
        system.add(i, new double[] {1}, new double[CourseModel.BORDER], 0, 1);
      }
      system.factor();
      system.solve(solutions[system == fixed ? 0 : 1]);
    }
    assertThat(solutions[0]).containsExactly(solutions[1], within(1e-9));
  }
}
