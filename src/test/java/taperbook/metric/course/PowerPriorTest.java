package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.session.Channel;

/**
 * Precisions of the random walk of power, by its definition: the variance of a step is the squared
 * 0.6 % of the mean power of 72 kW, times the time between the middles of its cells, s, times the
 * square of 1 + 3 exp(-t / 30 s) after plugging in.
 */
final class PowerPriorTest {
  private static final double[] SECONDS = {0, 300, 600, 900, 1200, 1500, 1800};
  private static final double SCALE = Math.pow(0.006 * 72, 2);
  private static final int DRAWS = 400;
  private static final int MOVED = 80;

  private static CourseModel model(boolean counted) {
    Sessions session =
        Sessions.session()
            .channel(Channel.SOC, 0.5, SECONDS, at(t -> 10 + t / 30))
            .channel(Channel.POWER, 0.5, SECONDS, at(t -> 72));
    if (counted) {
      session.channel(Channel.ENERGY_ADDED, 0.05, SECONDS, at(t -> t / 50));
    }
    return new CourseModel(new CourseData(session.build()));
  }

  private static double[] at(DoubleUnaryOperator value) {
    return Arrays.stream(SECONDS).map(value).toArray();
  }

  private static double expected(double[] nodes, int j) {
    double rising = 1 + 3 * Math.exp(-(nodes[j + 1] - nodes[0]) / 30);
    return SCALE * rising * rising * (nodes[j + 2] - nodes[j]) / 2;
  }

  /** Variances of the steps of power of a walk that starts at a known power. */
  private static double[] variances(CourseModel model, PowerPrior walk, double[] ofRatio) {
    int n = model.cells();
    double[] nodes = model.data().nodes();
    ArrowSystem system = new ArrowSystem(n, CourseModel.BORDER);
    system.add(0, new double[] {1}, new double[CourseModel.BORDER], 0, 1);
    for (int i = 0; i < CourseModel.BORDER; i++) {
      if (i != CourseModel.POWER_RATIO || ofRatio.length == 0) {
        system.addBorder(i, 1);
      }
    }
    walk.addTo(system);
    system.factor();
    double[] variances = new double[n - 1];
    for (int j = 0; j + 1 < n; j++) {
      double one = 3600 / (nodes[j + 1] - nodes[j]);
      double other = 3600 / (nodes[j + 2] - nodes[j + 1]);
      double[] step = {one, -one - other, other};
      variances[j] = system.variance(j - 1, step, new double[CourseModel.BORDER]);
    }
    if (ofRatio.length > 0) {
      double[] unit = new double[CourseModel.BORDER];
      unit[CourseModel.POWER_RATIO] = 1;
      ofRatio[0] = system.variance(n, new double[0], unit);
    }
    return variances;
  }

  @Test
  void each_step_has_the_variance_of_its_time() {
    CourseModel model = model(false);
    double[] variances =
        variances(model, new PowerPrior(model, new RandomNumbers(1)), new double[0]);
    for (int j = 0; j < variances.length; j++) {
      double expected = expected(model.data().nodes(), j);
      assertThat(variances[j]).as("%s", j).isCloseTo(expected, within(1e-6 * expected));
    }
  }

  @Test
  void the_ratio_of_display_and_counter_is_within_three_thousandths() {
    CourseModel model = model(true);
    double[] ofRatio = new double[1];
    variances(model, new PowerPrior(model, new RandomNumbers(1)), ofRatio);
    assertThat(ofRatio[0]).isCloseTo(9e-6, within(1e-12));
  }

  /**
   * With constant power a precision is a gamma number of shape 2 over a rate of 3 / 2, and that of
   * the common scale one of shape (3 + n - 1) / 2 over a rate of 3 / 2 of the prior.
   */
  @Test
  void constant_power_has_smaller_steps_and_a_ratio_of_one_keeps_its_spread() {
    CourseModel model = model(true);
    int n = model.cells();
    double[] state = new double[n + CourseModel.BORDER];
    for (int i = 0; i < n; i++) {
      state[i] = 72 * model.data().nodes()[i + 1] / 3600;
    }
    PowerPrior walk = new PowerPrior(model, new RandomNumbers(5));
    double[] ofRatio = new double[1];
    double precision = 0;
    double ratio = 0;
    for (int k = 0; k < DRAWS; k++) {
      walk.drawScales(state);
      double[] variances = variances(model, walk, ofRatio);
      for (int j = 0; j < n - 1; j++) {
        precision += expected(model.data().nodes(), j) / variances[j] / (n - 1) / DRAWS;
      }
      ratio += 9e-6 / ofRatio[0] / DRAWS;
    }
    assertThat(precision / (4 / 3.0 * (n + 2) / 3)).isCloseTo(1, within(0.03));
    // A gamma number of shape 3 / 2, divided by 1 and with a variance of 3 / 2.
    assertThat(ratio).isCloseTo(1.5, within(5 * Math.sqrt(1.5 / DRAWS)));
  }

  /**
   * For a step of a hundred scales, the rate is (3 + 10^4) / 2 at the initial scale: the precision
   * is about 4 / 10^4 of that of an ordinary step.
   */
  @Test
  void a_step_of_power_is_allowed_where_it_is() {
    CourseModel model = model(true);
    int n = model.cells();
    int place = n / 2;
    double[] nodes = model.data().nodes();
    double[] state = new double[n + CourseModel.BORDER];
    double height = 100 * Math.sqrt(expected(nodes, place));
    double before = 0;
    for (int i = 0; i < n; i++) {
      before += (i <= place ? 72 : 72 - height) * (nodes[i + 1] - nodes[i]) / 3600;
      state[i] = before;
    }
    state[n + CourseModel.POWER_RATIO] = 0.012;
    double relative = 0;
    double ratio = 0;
    double[] ofRatio = new double[1];
    for (int k = 0; k < DRAWS; k++) {
      PowerPrior walk = new PowerPrior(model, new RandomNumbers(100 + k));
      walk.drawScales(state);
      double[] variances = variances(model, walk, ofRatio);
      double others = 0;
      for (int j = 0; j < n - 1; j++) {
        others += j == place ? 0 : expected(nodes, j) / variances[j] / (n - 2);
      }
      relative += expected(nodes, place) / variances[place] / others / DRAWS;
      ratio += 9e-6 / ofRatio[0] / DRAWS;
    }
    // A gamma number of shape 2 over 10003 / 2, and others of shape 2 over 3 / 2.
    double expected = (4 / 10_003.0) / (4 / 3.0);
    assertThat(relative).isCloseTo(expected, within(0.2 * expected));
    // The ratio of 0.012 is four times its spread: 3 / 2 over (2 + 16) / 2.
    assertThat(ratio).isCloseTo(1.5 / 9, within(5 * Math.sqrt(1.5 / DRAWS) / 9));
  }

  /** A move changes the system of the walk, and the factored system follows it. */
  @Test
  void moved_steps_leave_the_factored_system_up_to_date_and_go_where_the_readings_are() {
    CourseModel model = model(false);
    int n = model.cells();
    double[] nodes = model.data().nodes();
    int place = n / 2;
    double[] state = new double[n + CourseModel.BORDER];
    double before = 0;
    for (int i = 0; i < n; i++) {
      before += (i <= place ? 72 : 42) * (nodes[i + 1] - nodes[i]) / 3600;
      state[i] = before;
    }
    int moved = 0;
    int there = 0;
    for (int k = 0; k < MOVED; k++) {
      PowerPrior walk = new PowerPrior(model, new RandomNumbers(k));
      walk.drawScales(state);
      // The readings see the step five cells later.
      ArrowSystem whole = new ArrowSystem(n, CourseModel.BORDER);
      double sum = 0;
      for (int i = 0; i < n; i++) {
        sum += (i <= place + 5 ? 72 : 42) * (nodes[i + 1] - nodes[i]) / 3600;
        whole.add(i, new double[] {1}, new double[CourseModel.BORDER], sum, 1e6);
      }
      for (int i = 0; i < CourseModel.BORDER; i++) {
        whole.addBorder(i, 1);
      }
      walk.addTo(whole);
      ArrowSystem system = new ArrowSystem(n, CourseModel.BORDER);
      system.copy(whole);
      system.factor();
      double evidence = system.logEvidence();
      for (int sweep = 0; sweep < 30; sweep++) {
        walk.moveSteps(whole, system);
      }
      ArrowSystem fresh = new ArrowSystem(n, CourseModel.BORDER);
      fresh.copy(whole);
      fresh.factor();
      assertThat(system.logEvidence()).isCloseTo(fresh.logEvidence(), within(1e-9));
      double gain = system.logEvidence() - evidence;
      moved += gain > 100 ? 1 : 0;
      double[] variances = variances(model, walk, new double[0]);
      int widest = 0;
      for (int j = 0; j < n - 1; j++) {
        double relative = variances[j] / expected(nodes, j);
        widest = relative > variances[widest] / expected(nodes, widest) ? j : widest;
      }
      there += widest == place + 5 ? 1 : 0;
    }
    assertThat(moved).isGreaterThan(MOVED / 4);
    assertThat(there).isGreaterThan(MOVED / 4);
  }
}
