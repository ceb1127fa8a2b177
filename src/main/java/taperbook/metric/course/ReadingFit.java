package taperbook.metric.course;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import taperbook.quantity.Interval;
import taperbook.session.Channel;
import taperbook.session.Session;

/**
 * Fits one course to all individual readings of a session to expose readings that do not fit the
 * others. Minimises
 *
 * <pre>
 *   sum of h((reading - course) / u) + sum of |P[j+1] - P[j]| / s
 * </pre>
 *
 * <p>with Huber's loss h, which limits the effect of a wrong reading on the course, and the total
 * variation of the power, which is the same for steps and tapers and higher only for reversals.
 * Both are convex; iteratively reweighted least squares finds the minimum on the {@link
 * CourseModel}.
 *
 * @see <a href="https://doi.org/10.1214/aoms/1177703732">P. J. Huber, Annals of Mathematical
 *     Statistics 35 (1964) 73-101</a>
 * @see <a href="https://doi.org/10.1016/0167-2789(92)90242-F">L. I. Rudin and others, Physica D 60
 *     (1992) 259-268, on total variation</a>
 */
public final class ReadingFit {
  /** Huber threshold in standard uncertainties; larger misfits have linear cost. */
  private static final double HUBER = 3;

  /**
   * Change of power with unit cost, as a share of the highest power; calibrated on correct
   * sessions.
   */
  private static final double SCALE = 0.007;

  private static final double LEAST_SCALE = 0.3;

  /** Gaps between rows longer than this allow proportionally larger changes of power, s. */
  private static final double SHORT_GAP = 75;

  /** Smoothing of the absolute value of a change of power, as a share of the scale. */
  private static final double SHARPNESS = 0.02;

  /**
   * Maximum ratio of the second reading to its neighbours, as it is often the top between ramp and
   * taper.
   */
  private static final double FIRST_TOP = 1.4;

  private static final int ROUNDS = 50;
  private static final int ROUNDS_AFTER_ONE = 6;

  /** Factor on the prediction's standard uncertainty from the last iteration's weights. */
  private static final double SPREAD = 2.5;

  private final CourseModel model;
  private final List<ReadingForm> forms;
  private final double[] nodes;
  private final int n;
  private final double scale;

  private final ArrowSystem system;
  private final BitSet leftOut = new BitSet();
  private final double[] centre;
  private final double[] values;
  private final double[] variances;
  private double[] settled;
  private double cost;

  /**
   * Fits the course of a hand-recorded session without excluding readings.
   *
   * @param session a session with readings at three times or more
   */
  public ReadingFit(Session session) {
    this.model = new CourseModel(CourseData.ofSingleReadings(session));
    this.forms = model.forms();
    this.nodes = model.data().nodes();
    this.n = model.cells();
    this.scale = Math.max(LEAST_SCALE, SCALE * highPower()) * Math.max(1, medianGap() / SHORT_GAP);
    this.system = new ArrowSystem(n, CourseModel.BORDER);
    this.values = new double[forms.size()];
    this.variances = new double[forms.size()];
    this.centre = model.reference();
    this.settled = centre;
    settle();
  }

  /**
   * Returns the 90th percentile of the power readings, so that one error does not set the scale.
   */
  private double highPower() {
    double[] powers =
        forms.stream()
            .map(f -> f.observation)
            .filter(o -> o.channel() == Channel.POWER)
            .mapToDouble(Observation::value)
            .sorted()
            .toArray();
    return powers.length == 0 ? model.meanPower() : powers[(int) (0.9 * (powers.length - 1))];
  }

  /** Returns the times with any reading, s. */
  private double[] rows() {
    return forms.stream().mapToDouble(ReadingForm::second).sorted().distinct().toArray();
  }

  private double medianGap() {
    double[] rows = rows();
    double[] gaps =
        IntStream.range(1, rows.length).mapToDouble(i -> rows[i] - rows[i - 1]).toArray();
    Arrays.sort(gaps);
    return gaps[gaps.length / 2];
  }

  /** Returns the number of readings. */
  public int size() {
    return forms.size();
  }

  /** Returns the channel of reading {@code i}. */
  public Channel channel(int i) {
    return forms.get(i).observation.channel();
  }

  /** Returns the index of reading {@code i} in its trace. */
  public int index(int i) {
    return forms.get(i).observation.index();
  }

  /** Returns the time of reading {@code i}, s. */
  public double second(int i) {
    return forms.get(i).observation.second();
  }

  /** Excludes readings permanently. */
  public void leaveOut(BitSet readings) {
    leftOut.or(readings);
    settle();
  }

  /** Returns true if a reading is excluded. */
  public boolean isLeftOut(int i) {
    return leftOut.get(i);
  }

  private void settle() {
    cost = fit(leftOut, ROUNDS);
    settled = centre.clone();
    // Costs are compared after the same small number of iterations.
    cost = fit(leftOut, ROUNDS_AFTER_ONE);
    System.arraycopy(settled, 0, centre, 0, centre.length);
    cost = Math.min(cost, cost(leftOut));
  }

  /**
   * Returns the reduction in cost without some readings.
   *
   * @param readings the readings to exclude temporarily
   */
  public double gainWithout(BitSet readings) {
    BitSet out = (BitSet) leftOut.clone();
    out.or(readings);
    double gain = cost - fit(out, ROUNDS_AFTER_ONE);
    System.arraycopy(settled, 0, centre, 0, centre.length);
    return gain;
  }

  /**
   * Returns the readings that fit worst, worst first: by the gain of excluding one while the
   * weights of all others are kept.
   *
   * @param most maximum number of readings
   */
  public List<Integer> likely(int most) {
    updateWeights(leftOut);
    system.factor();
    double[] gains = new double[size()];
    for (int i = 0; i < size(); i++) {
      ReadingForm form = forms.get(i);
      double weight = weight(i) / variances[i];
      double off = misfit(i);
      double leverage = weight * system.variance(form.first, form.banded, form.bordered);
      gains[i] = leftOut.get(i) ? -1 : weight * off * off / Math.max(1e-3, 1 - leverage);
    }
    return IntStream.range(0, size())
        .boxed()
        .sorted(Comparator.comparingDouble((Integer i) -> gains[i]).reversed())
        .limit(most)
        .toList();
  }

  /**
   * Returns the times at which all readings of an excluded row would fit; empty if there are none.
   *
   * @param readings readings of one row
   * @param within times that are possible, s
   */
  public Optional<Interval> timesThatFit(BitSet readings, Interval within) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (double t = Math.ceil(within.low()); t <= within.high(); t++) {
      double second = t;
      if (readings.stream().allMatch(i -> fitsAt(i, second))) {
        from = Math.min(from, t);
        to = Math.max(to, t);
      }
    }
    return from <= to ? Optional.of(new Interval(from, to)) : Optional.empty();
  }

  private boolean fitsAt(int i, double second) {
    Observation o = forms.get(i).observation;
    double step = model.data().step(o.channel());
    double shown =
        switch (o.channel()) {
          case POWER ->
              (1 + centre[n + CourseModel.POWER_RATIO]) * model.powerAt(centre, second)
                  + centre[n + CourseModel.POWER_OFFSET];
          case ENERGY_ADDED ->
              model.energyAt(centre, second) + centre[n + CourseModel.COUNTER_OFFSET];
          default -> model.charge(centre, model.energyAt(centre, second));
        };
    double tolerance = o.channel() == Channel.POWER ? step + 3 * scale : step;
    return Math.abs(shown - o.value()) <= tolerance;
  }

  /**
   * Returns the values at which an excluded reading would fit, in its unit; at least one step wide.
   */
  public Interval fitting(int i) {
    updateWeights(leftOut);
    double shown = forms.get(i).observation.value() - misfit(i);
    if (channel(i) == Channel.SOC) {
      shown -= model.data().step(Channel.SOC) / 2;
    }
    system.factor();
    ReadingForm form = forms.get(i);
    double spread = Math.sqrt(system.variance(form.first, form.banded, form.bordered));
    double half = SPREAD * spread + model.data().step(channel(i)) / 2;
    return new Interval(shown - half, shown + half);
  }

  private double fit(BitSet out, int rounds) {
    for (int r = 0; r < rounds; r++) {
      updateWeights(out);
      system.factor();
      system.solve(centre);
    }
    return cost(out);
  }

  /** Builds the system with the weights that follow from the course. */
  private void updateWeights(BitSet out) {
    updateForms();
    system.clear();
    model.addPriors(system);
    for (int i = 0; i < size(); i++) {
      if (!out.get(i)) {
        ReadingForm form = forms.get(i);
        system.add(form.first, form.banded, form.bordered, values[i], weight(i) / variances[i]);
      }
    }
    for (int j = 0; j + 1 < n; j++) {
      double one = 3600 / (nodes[j + 1] - nodes[j]);
      double other = 3600 / (nodes[j + 2] - nodes[j + 1]);
      double weight = 1 / (scale * (step(j) + SHARPNESS * scale));
      system.addDifference(j - 1, one, -one - other, other, weight);
    }
  }

  private double step(int cell) {
    return Math.abs(model.powerOf(centre, cell + 1) - model.powerOf(centre, cell));
  }

  private double weight(int i) {
    return Math.min(1, HUBER * Math.sqrt(variances[i]) / Math.abs(misfit(i)));
  }

  /** Updates values and forms about the course. */
  private void updateForms() {
    model.linearise(centre);
    double step = model.data().step(Channel.SOC);
    for (int i = 0; i < size(); i++) {
      ReadingForm form = forms.get(i);
      values[i] = form.value;
      variances[i] = form.variance;
      if (form.isOpen()) {
        values[i] = form.value + step / 2;
        variances[i] = form.variance - form.partVariance + step * step / 12;
      } else if (channel(i) == Channel.POWER) {
        updatePowerForm(form, values[i]);
      }
    }
  }

  /** Lets a power reading match either adjacent cell or any power between them. */
  private void updatePowerForm(ReadingForm form, double value) {
    int left = form.first + 1;
    double one = model.powerOf(centre, left);
    double other = model.powerOf(centre, left + 1);
    double read = value;
    for (int k = 0; k < CourseModel.BORDER; k++) {
      read -= form.bordered[k] * centre[n + k];
    }
    double share = other == one ? 0.5 : Math.max(0, Math.min(1, (read - one) / (other - one)));
    double low = (1 - share) * 3600 / (nodes[left + 1] - nodes[left]);
    double high = share * 3600 / (nodes[left + 2] - nodes[left + 1]);
    form.banded[0] = -low;
    form.banded[1] = low - high;
    form.banded[2] = high;
  }

  /** Returns the reading minus the prediction of the course. */
  private double misfit(int i) {
    return values[i] - forms.get(i).of(centre, n);
  }

  private double cost(BitSet out) {
    updateForms();
    double sum = model.priorCost(centre);
    for (int i = 0; i < size(); i++) {
      if (!out.get(i)) {
        double z = Math.abs(misfit(i)) / Math.sqrt(variances[i]);
        sum += z <= HUBER ? z * z / 2 : HUBER * z - HUBER * HUBER / 2;
      }
    }
    for (int j = 0; j + 1 < n; j++) {
      sum += step(j) / scale;
    }
    return sum;
  }

  /**
   * Returns the gain of excluding a power reading that does not indicate an error: a rise at the
   * start, a fall at the end, and an extremum that the adjacent slopes lead to.
   */
  public double excusedGain(int i) {
    if (channel(i) != Channel.POWER) {
      return 0;
    }
    double read = forms.get(i).observation.value();
    double[] left = neighbour(i, -1);
    double[] right = neighbour(i, 1);
    if (left.length == 0 || right.length == 0) {
      double[] only = left.length == 0 ? right : left;
      return only.length == 0 ? 0 : Math.max(0, only[0] - read) / scale;
    }
    boolean second = neighbour(i - 1, -1).length == 0;
    double top =
        second
            ? Math.min(read, FIRST_TOP * highest(i))
            : Math.min(read, Math.max(left[1], right[1]));
    double bottom = Math.max(read, Math.min(left[1], right[1]));
    double over = top - Math.max(left[0], right[0]);
    double under = Math.min(left[0], right[0]) - bottom;
    return 2 * Math.max(0, Math.max(over, under)) / scale;
  }

  private double highest(int except) {
    return IntStream.range(0, size())
        .filter(k -> k != except && channel(k) == Channel.POWER)
        .mapToDouble(k -> forms.get(k).observation.value())
        .max()
        .orElse(0);
  }

  /** Returns the neighbouring power on a side, and the extrapolation of that and the next one. */
  private double[] neighbour(int i, int by) {
    int one = i + by;
    int two = i + 2 * by;
    if (one < 0 || one >= size() || channel(one) != Channel.POWER) {
      return new double[0];
    }
    double near = forms.get(one).observation.value();
    if (two < 0 || two >= size() || channel(two) != Channel.POWER || second(one) == second(two)) {
      return new double[] {near, near};
    }
    double slope = (near - forms.get(two).observation.value()) / (second(one) - second(two));
    return new double[] {near, near + slope * (second(i) - second(one))};
  }
}
