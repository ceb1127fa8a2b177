package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.session.Channel;

/** Courses from unknowns of a given power; every threshold finds the times of a known power. */
final class CourseBuilderTest {
  private static final double[] SECONDS = {0, 300, 600, 900, 1200};

  private static CourseModel model(boolean powered) {
    Sessions session =
        Sessions.session().channel(Channel.SOC, 0.5, SECONDS, new double[] {10, 20, 30, 40, 50});
    if (powered) {
      session.channel(Channel.POWER, 0.5, SECONDS, new double[] {72, 72, 72, 72, 72});
    }
    return new CourseModel(new CourseData(session.build()));
  }

  /** Unknowns of a power over time, with 2 % for each kWh from 10 % on. */
  private static double[] unknowns(CourseModel model, DoubleUnaryOperator power, double ratio) {
    int n = model.cells();
    double[] nodes = model.data().nodes();
    double[] x = new double[n + CourseModel.BORDER];
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double middle = (nodes[i] + nodes[i + 1]) / 2;
      sum += power.applyAsDouble(middle) * (nodes[i + 1] - nodes[i]) / 3600;
      x[i] = sum;
    }
    x[n + CourseModel.START] = 10;
    x[n + CourseModel.PER_ENERGY] = 2;
    x[n + CourseModel.POWER_RATIO] = ratio;
    return x;
  }

  private static Course course(
      CourseModel model, DoubleUnaryOperator drawn, DoubleUnaryOperator centre, double ratio) {
    CourseBuilder builder = new CourseBuilder(model, new RandomNumbers(1));
    builder.setCentre(unknowns(model, centre, ratio));
    return builder.course(unknowns(model, drawn, ratio));
  }

  @Test
  void energy_and_charge_are_those_of_the_unknowns() {
    Course course = course(model(true), t -> 60 + t / 100, t -> 66, 0.1);
    assertThat(course.firstSecond()).isZero();
    assertThat(course.lastSecond()).isEqualTo(1200);
    // 60 kW rising by 12 kW, over a third of an hour.
    assertThat(course.energyAt(1200)).isCloseTo(22, within(1e-9));
    assertThat(course.chargeAt(0)).isEqualTo(10);
    assertThat(course.chargeAt(1200)).isCloseTo(54, within(1e-9));
    assertThat(course.powerAt(600)).isCloseTo(1.1 * 66, within(1e-6));
  }

  @Test
  void a_falling_energy_or_charge_stays_where_it_was() {
    Course course = course(model(true), t -> t < 600 ? 60 : -30, t -> 60, 0);
    assertThat(course.energyAt(600)).isCloseTo(10, within(1e-9));
    assertThat(course.energyAt(1200)).isCloseTo(10, within(1e-9));
    assertThat(course.chargeAt(1200)).isCloseTo(30, within(1e-9));
    Course below = course(model(true), t -> t < 600 ? -30 : 60, t -> 60, 0);
    assertThat(below.energyAt(300)).isZero();
    assertThat(below.chargeAt(300)).isCloseTo(10, within(1e-9));
    assertThat(below.energyAt(1200)).isCloseTo(5, within(1e-9));
  }

  /** The deviation of a draw at the readings of power, linear between them, and no noise. */
  @Test
  void power_for_thresholds_is_the_centre_and_the_deviation_at_the_readings() {
    CourseModel model = model(true);
    // The centre falls by 12 kW, the draw is above it by 3 kW at first and 6 kW at the end.
    DoubleUnaryOperator centre = t -> 90 - t / 100;
    Course course = course(model, t -> centre.applyAsDouble(t) + 3 + t / 400, centre, 0);
    // 93 - t / 100 + t / 400 = 88.5 at 600 s.
    assertThat(course.lastAbove(88.5)).isCloseTo(600, within(0.5));
    assertThat(course.lastAbove(90)).isCloseTo(400, within(0.5));
    Course scaled = course(model, t -> centre.applyAsDouble(t) + 3 + t / 400, centre, 0.1);
    assertThat(scaled.lastAbove(1.1 * 88.5)).isCloseTo(600, within(0.5));
  }

  @Test
  void noise_between_readings_does_not_move_a_threshold() {
    CourseModel model = model(true);
    DoubleUnaryOperator centre = t -> 90 - t / 100;
    // A bump of 20 kW between the readings at 300 s and 600 s.
    Course course =
        course(model, t -> centre.applyAsDouble(t) + (t > 400 && t < 500 ? 20 : 0), centre, 0);
    assertThat(course.longestAbove(95)[1]).isZero();
    assertThat(course.lastAbove(84)).isCloseTo(600, within(0.5));
    assertThat(course.powerAt(450)).isCloseTo(105.5, within(0.1));
  }

  @Test
  void without_readings_of_power_the_draw_itself_counts() {
    DoubleUnaryOperator centre = t -> 90 - t / 100;
    Course course = course(model(false), t -> centre.applyAsDouble(t) + 3, centre, 0);
    assertThat(course.lastAbove(87)).isCloseTo(600, within(0.5));
  }

  /** A logger's rows share one offset of their clock; hand-written rows do not. */
  @Test
  void the_nodes_of_a_log_are_shifted_together_within_half_a_step() {
    double[] seconds = IntStream.range(0, 1000).asDoubleStream().toArray();
    double[] soc = Arrays.stream(seconds).map(t -> Math.floor(10 + t / 30)).toArray();
    double[] power = Arrays.stream(seconds).map(t -> 72).toArray();
    for (double half : new double[] {0, 0.5}) {
      CourseModel model =
          new CourseModel(
              new CourseData(
                  Sessions.session()
                      .clockHalfStep(half)
                      .channel(Channel.SOC, 0.5, seconds, soc)
                      .channel(Channel.POWER, 0.5, seconds, power)
                      .build()));
      double[] x = unknowns(model, t -> 72, 0);
      CourseBuilder builder = new CourseBuilder(model, new RandomNumbers(4));
      builder.setCentre(x);
      double low = 0;
      double high = 0;
      for (int k = 0; k < 200; k++) {
        Course course = builder.course(x);
        double late = course.lastSecond() - 999;
        assertThat(course.firstSecond()).isZero();
        assertThat(course.timeOfEnergy(10)).isCloseTo(500 + late, within(1e-6));
        low = Math.min(low, late);
        high = Math.max(high, late);
      }
      assertThat(low).isBetween(-half - 1e-9, -0.9 * half + 1e-9);
      assertThat(high).isBetween(0.9 * half - 1e-9, half + 1e-9);
    }
  }
}
