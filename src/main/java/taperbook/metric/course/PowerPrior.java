package taperbook.metric.course;

import java.util.Arrays;
import taperbook.session.Channel;

/**
 * The prior of the power: a random walk from cell to cell whose steps follow Student's
 * distribution, represented as normal steps with individual variances, so that constant power stays
 * flat and steps stay sharp. The common scale and the ratio of power display to counter are drawn
 * too.
 */
final class PowerPrior {
  private static final double RATIO_FREEDOM = 2;

  /** Degrees of freedom of the steps of power. */
  private static final double FREEDOM = 3;

  /** Prior of the walk's scale: equivalent number of steps, */
  private static final double SCALE_COUNT = 3;

  /** and their size as a share of the mean power per root of a second. */
  private static final double SCALE = 0.006;

  /** Factor on the step size at plugging in, and its decay time: common practice. */
  private static final double START_UP = 3;

  private static final double START_UP_SECONDS = 30;

  /** Number of proposals per sweep to move a power step, and their maximum distance in cells. */
  private static final int MOVES = 2;

  private static final int REACH = 12;

  private final CourseModel model;
  private final double[] nodes;
  private final int n;
  private final boolean counted;
  private final RandomNumbers random;
  private final double[] stepScale;
  private final double[] distances;
  private double scale;

  /** Variance of the ratio of power display to counter; Student's distribution as a mixture. */
  private double ratioScale = CourseModel.RATIO_SPREAD * CourseModel.RATIO_SPREAD;

  PowerPrior(CourseModel model, RandomNumbers random) {
    this.model = model;
    this.nodes = model.data().nodes();
    this.n = model.cells();
    this.counted = model.data().has(Channel.ENERGY_ADDED);
    this.random = random;
    this.stepScale = new double[n - 1];
    Arrays.fill(stepScale, 1);
    this.distances = new double[n - 1];
    Arrays.setAll(distances, this::distance);
    double q = SCALE * model.meanPower();
    this.scale = q * q;
  }

  /** Adds the walk to a system. */
  void addTo(ArrowSystem whole) {
    if (counted) {
      whole.addBorder(CourseModel.POWER_RATIO, 1 / ratioScale);
    }
    for (int j = 0; j + 1 < n; j++) {
      addStep(whole, j, 1 / stepScale[j]);
    }
  }

  /** Adds the walk from cell j to the next, with a multiple of the common precision. */
  private void addStep(ArrowSystem whole, int j, double times) {
    double one = 3600 / (nodes[j + 1] - nodes[j]);
    double other = 3600 / (nodes[j + 2] - nodes[j + 1]);
    whole.addDifference(j - 1, one, -one - other, other, times / (scale * distances[j]));
  }

  /**
   * Proposes moves of large power steps, by Metropolis's rule on the evidence with all normal
   * unknowns integrated out. Without this, a step stays in the cell where it was first drawn.
   */
  void moveSteps(ArrowSystem whole, ArrowSystem system) {
    double now = system.logEvidence();
    boolean stale = false;
    for (int k = 0; k < MOVES; k++) {
      int from = largeStep();
      int by = 1 + (int) (random.uniform() * REACH);
      int to = random.uniform() < 0.5 ? from - by : from + by;
      if (to < 0 || to >= stepScale.length) {
        continue;
      }
      swap(whole, from, to);
      system.copy(whole);
      system.factor();
      double then = system.logEvidence();
      boolean taken = Math.log(random.uniform()) < then - now;
      if (taken) {
        now = then;
      } else {
        swap(whole, from, to);
      }
      stale = !taken;
    }
    if (stale) {
      system.copy(whole);
      system.factor();
    }
  }

  private void swap(ArrowSystem whole, int one, int other) {
    double change = 1 / stepScale[other] - 1 / stepScale[one];
    addStep(whole, one, change);
    addStep(whole, other, -change);
    double kept = stepScale[one];
    stepScale[one] = stepScale[other];
    stepScale[other] = kept;
  }

  /** Draws a place with probability proportional to the scale of its step. */
  private int largeStep() {
    double sum = 0;
    for (double s : stepScale) {
      sum += s;
    }
    double left = random.uniform() * sum;
    for (int j = 0; j < stepScale.length; j++) {
      left -= stepScale[j];
      if (left < 0) {
        return j;
      }
    }
    return stepScale.length - 1;
  }

  /**
   * Returns the variance of the walk from cell j to the next as a multiple of its scale: the time
   * between their middles, s, and more in the first half minute, when stations ramp up their power.
   */
  private double distance(int j) {
    double rising = 1 + START_UP * StrictMath.exp(-(nodes[j + 1] - nodes[0]) / START_UP_SECONDS);
    return rising * rising * (nodes[j + 2] - nodes[j]) / 2;
  }

  /** Draws the scales given a course. */
  void drawScales(double[] state) {
    double sum = 0;
    for (int j = 0; j + 1 < n; j++) {
      double step = model.powerOf(state, j + 1) - model.powerOf(state, j);
      double squared = step * step / distances[j];
      double rate = (FREEDOM + squared / scale) / 2;
      stepScale[j] = rate / random.gamma((FREEDOM + 1) / 2);
      sum += squared / stepScale[j];
    }
    double ratio = state[n + CourseModel.POWER_RATIO];
    ratioScale =
        (RATIO_FREEDOM * CourseModel.RATIO_SPREAD * CourseModel.RATIO_SPREAD + ratio * ratio)
            / 2
            / random.gamma((RATIO_FREEDOM + 1) / 2);
    double prior = SCALE * model.meanPower();
    double rate = (SCALE_COUNT * prior * prior + sum) / 2;
    scale = rate / random.gamma((SCALE_COUNT + n - 1) / 2);
  }
}
