package taperbook.metric.course;

import java.util.List;
import taperbook.session.Channel;

/** Builds courses from drawn unknowns. */
final class CourseBuilder {
  private final CourseModel model;
  private final CourseData data;
  private final double[] nodes;
  private final int n;
  private final RandomNumbers random;
  private final List<ReadingForm> powers;
  private final double[] centreOfReading;
  private final double[] centrePower;

  CourseBuilder(CourseModel model, RandomNumbers random) {
    this.model = model;
    this.data = model.data();
    this.nodes = data.nodes();
    this.n = model.cells();
    this.random = random;
    this.powers =
        model.forms().stream().filter(f -> f.observation.channel() == Channel.POWER).toList();
    this.centreOfReading = new double[powers.size()];
    this.centrePower = new double[n];
  }

  /** Sets the centre of the distribution of the unknowns given the scales. */
  void setCentre(double[] centre) {
    for (int i = 0; i < powers.size(); i++) {
      centreOfReading[i] = powers.get(i).bandedOf(centre, n);
    }
    for (int cell = 0; cell < n; cell++) {
      centrePower[cell] = model.powerOf(centre, cell);
    }
  }

  /**
   * Builds a course.
   *
   * @param x the drawn unknowns, around the centre that was set
   */
  Course course(double[] x) {
    double[] energy = new double[n + 1];
    double[] charge = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      double e = i == 0 ? 0 : x[i - 1];
      double q = model.charge(x, e);
      energy[i] = i == 0 ? e : Math.max(e, energy[i - 1]);
      charge[i] = i == 0 ? q : Math.max(q, charge[i - 1]);
    }
    return new Course(times(), energy, charge, calm(x), 1 + x[n + CourseModel.POWER_RATIO]);
  }

  /**
   * Returns the times of the nodes since plugging in. A hand-written row has its own rounding
   * error; a logger's rows are evenly spaced, so all of them may share one offset within the
   * clock's step.
   */
  private double[] times() {
    double half = data.clockHalfStep();
    if (!data.isDense() || half == 0) {
      return nodes;
    }
    double late = (2 * random.uniform() - 1) * half;
    double[] times = nodes.clone();
    for (int i = 1; i <= n; i++) {
      times[i] += late;
    }
    return times;
  }

  /**
   * Returns the power of each cell without the random walk's noise between readings, where it is
   * not observed: the centre of the distribution given the scales, plus the draw's deviation at
   * each power reading, linearly interpolated. As measured at the power display, which may be
   * elsewhere than the counter: the result is compared with power readings.
   */
  private double[] calm(double[] x) {
    double[] calm = calmByCounter(x);
    for (int cell = 0; cell < n; cell++) {
      calm[cell] *= 1 + x[n + CourseModel.POWER_RATIO];
    }
    return calm;
  }

  private double[] calmByCounter(double[] x) {
    double[] calm = new double[n];
    double lastOff = 0;
    double lastSecond = Double.NEGATIVE_INFINITY;
    int cell = 0;
    for (int i = 0; i < powers.size(); i++) {
      double off = powers.get(i).bandedOf(x, n) - centreOfReading[i];
      double second = powers.get(i).second();
      while (cell < n && (nodes[cell] + nodes[cell + 1]) / 2 <= second) {
        double middle = (nodes[cell] + nodes[cell + 1]) / 2;
        double share = i == 0 ? 1 : (middle - lastSecond) / (second - lastSecond);
        calm[cell] = centrePower[cell] + (i == 0 ? off : lastOff + share * (off - lastOff));
        cell++;
      }
      lastOff = off;
      lastSecond = second;
    }
    while (cell < n) {
      calm[cell] = (powers.isEmpty() ? model.powerOf(x, cell) : centrePower[cell]) + lastOff;
      cell++;
    }
    return calm;
  }
}
