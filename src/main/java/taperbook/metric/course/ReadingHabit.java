package taperbook.metric.course;

import java.util.List;
import taperbook.session.Channel;
import taperbook.session.RowsWritten;

/**
 * Models the place of the charge in its display step when a row was written: at the edge, if the
 * display had just changed, or anywhere in the step. The choice is drawn for each row that may be
 * either, together with the share of such rows.
 */
final class ReadingHabit {
  /**
   * A rectangular distribution over a step of the display, as a mixture of this many equal normal
   * ones, each with this standard deviation as a share of the step.
   */
  private static final int PARTS = 4;

  static final double PART_SPREAD = 0.12;

  /** Prior probabilities that no row, and that every row, was written at a change. */
  private static final double NO_ROW_AT_CHANGE = 0.4;

  private static final double EVERY_ROW_AT_CHANGE = 0.3;

  /** Shape of the beta prior of the share in between. */
  private static final double HABIT_SHAPE = 2;

  private final CourseData data;

  /** Step of the charge display, %. */
  private final double step;

  private final List<ReadingForm> ofCharge;
  private final int n;
  private final RandomNumbers random;
  private double shareAtChange = 0.5;

  ReadingHabit(CourseModel model, RandomNumbers random) {
    this.data = model.data();
    this.step = data.step(Channel.SOC);
    this.ofCharge = model.formsOfCharge();
    this.n = model.cells();
    this.random = random;
  }

  /**
   * Adds the readings whose place in their step is drawn.
   *
   * @param whole the system to add to
   * @param rough true to weight every place equally before the first draw
   */
  void addTo(ArrowSystem whole, boolean rough) {
    for (ReadingForm form : ofCharge) {
      if (!form.isOpen()) {
        continue;
      }
      boolean either = form.observation.form() == Observation.Form.EITHER;
      if (rough) {
        double middle = form.value + (either ? 0.25 : 0.5) * step;
        whole.add(
            form.first,
            form.banded,
            form.bordered,
            middle,
            1 / (form.variance + step * step * (either ? 0.146 : 0.083)));
      } else if (form.part < 0) {
        whole.add(form.first, form.banded, form.bordered, form.edgeValue, 1 / form.edgeVariance);
      } else {
        double middle = form.value + (form.part + 0.5) / PARTS * step;
        whole.add(form.first, form.banded, form.bordered, middle, 1 / form.variance);
      }
    }
  }

  /**
   * Determines which rows were probably written at a change, by the best-fitting shift and share.
   */
  void choose(double[] centre) {
    List<ReadingForm> open =
        ofCharge.stream().filter(f -> f.observation.form() == Observation.Form.EITHER).toList();
    for (ReadingForm form : ofCharge) {
      form.part = form.isOpen() ? partOf((form.of(centre, n) - form.value) / step) : 0;
    }
    if (open.isEmpty()) {
      return;
    }
    double width = 0.08 * step;
    double best = Double.NEGATIVE_INFINITY;
    double bestShift = 0;
    double bestShare = 0.5;
    for (double shift = -0.5; shift <= 0.5; shift += 0.05) {
      for (double share : new double[] {0.02, 0.25, 0.5, 0.75, 0.98}) {
        double sum = 0;
        for (ReadingForm form : open) {
          double off = form.of(centre, n) - form.edgeValue + shift * step;
          sum +=
              Math.log(
                  share * density(off / width) / width
                      + (1 - share) * within(off, step, width) / step
                      + 1e-6);
        }
        if (sum > best) {
          best = sum;
          bestShift = shift;
          bestShare = share;
        }
      }
    }
    shareAtChange = bestShare;
    for (ReadingForm form : open) {
      double off = form.of(centre, n) - form.edgeValue + bestShift * step;
      double edge = bestShare * density(off / width) / width;
      double inside = (1 - bestShare) * within(off, step, width) / step + 1e-6;
      form.part = edge > inside ? -1 : partOf(off / step);
    }
  }

  private static int partOf(double share) {
    return Math.max(0, Math.min(PARTS - 1, (int) Math.floor(share * PARTS)));
  }

  private static double density(double z) {
    return Math.exp(-0.5 * z * z) / 2.5066282746310002;
  }

  /** Returns a window that is one inside a step and falls off smoothly at its edges. */
  private static double within(double off, double step, double width) {
    return 1 / (1 + Math.exp(-1.7 * off / width)) / (1 + Math.exp(-1.7 * (step - off) / width));
  }

  void draw(double[] state) {
    int edges = 0;
    int open = 0;
    double[] odds = new double[PARTS + 1];
    for (ReadingForm form : ofCharge) {
      if (!form.isOpen()) {
        continue;
      }
      boolean either = form.observation.form() == Observation.Form.EITHER;
      double value = form.of(state, n);
      double sum = 0;
      for (int k = 0; k < PARTS; k++) {
        double middle = form.value + (k + 0.5) / PARTS * step;
        odds[k] =
            (either ? 1 - shareAtChange : 1) / PARTS * normalDensity(value - middle, form.variance);
        sum += odds[k];
      }
      odds[PARTS] =
          either ? shareAtChange * normalDensity(value - form.edgeValue, form.edgeVariance) : 0;
      sum += odds[PARTS];
      double left = random.uniform() * sum;
      int part = 0;
      while (part < PARTS && left >= odds[part]) {
        left -= odds[part];
        part++;
      }
      form.part = part == PARTS ? (either ? -1 : PARTS - 1) : part;
      open += either ? 1 : 0;
      edges += form.part < 0 ? 1 : 0;
    }
    if (open > 0) {
      shareAtChange = drawShare(edges, open);
    }
  }

  /**
   * Draws the share of rows that were written at a change: none, all or some, see {@link
   * #NO_ROW_AT_CHANGE}.
   */
  private double drawShare(int edges, int open) {
    double some = HABIT_SHAPE + edges;
    double others = HABIT_SHAPE + open - edges;
    if (data.rowsWritten() != RowsWritten.NOT_KNOWN || (edges > 0 && edges < open)) {
      return random.beta(some, others);
    }
    boolean none = edges == 0;
    double exact = none ? NO_ROW_AT_CHANGE : EVERY_ROW_AT_CHANGE;
    // Probability of this many rows if the share is anything between.
    double between = 1 - NO_ROW_AT_CHANGE - EVERY_ROW_AT_CHANGE;
    for (int i = 0; i < open; i++) {
      between *= (HABIT_SHAPE + i) / (2 * HABIT_SHAPE + i);
    }
    return random.uniform() * (exact + between) < exact
        ? (none ? 0 : 1)
        : random.beta(some, others);
  }

  private static double normalDensity(double off, double variance) {
    return Math.exp(-0.5 * off * off / variance) / Math.sqrt(variance);
  }
}
