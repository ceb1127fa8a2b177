package taperbook.metric.course;

import java.util.List;
import taperbook.session.Channel;

/**
 * The linear model of a session. The unknowns are the energy at each node but the first, where it
 * is zero, and a few global parameters: charge at the start, charge per kWh with two terms for its
 * slow change, and offsets of the counter and the power display. Every reading is a linear form of
 * them, linearised about a reference course.
 */
final class CourseModel {
  /** Border unknowns. */
  static final int START = 0;

  static final int PER_ENERGY = 1;
  static final int BEND = 2;
  static final int SKEW = 3;
  static final int COUNTER_OFFSET = 4;
  static final int POWER_RATIO = 5;
  static final int POWER_OFFSET = 6;
  static final int BORDER = 7;

  /** Relative change of the charge per kWh from the middle of a session to its ends. */
  static final double BEND_SPREAD = 0.05;

  static final double SKEW_SPREAD = 0.03;

  /** Standard deviation of the ratio of power display to counter. */
  static final double RATIO_SPREAD = 0.003;

  private final CourseData data;
  private final double[] nodes;
  private final int n;
  private final boolean energyKnown;
  private final double meanPower;
  private final double length;
  private final ArrowSystem fixed;
  private final List<ReadingForm> forms;
  private final double[] reference;

  /**
   * Creates the model of a session.
   *
   * @param data its readings and nodes
   */
  CourseModel(CourseData data) {
    this.data = data;
    this.nodes = data.nodes();
    this.n = nodes.length - 1;
    this.energyKnown = data.has(Channel.POWER) || data.has(Channel.ENERGY_ADDED);
    this.fixed = new ArrowSystem(n, BORDER);
    this.reference = firstGuess();
    this.length = reference[n - 1];
    this.meanPower = length * 3600 / (nodes[n] - nodes[0]);
    this.forms = data.observations().stream().map(this::form).toList();
  }

  CourseData data() {
    return data;
  }

  /** Returns the number of cells, which equals that of the banded unknowns. */
  int cells() {
    return n;
  }

  /** Returns the mean power of the initial course, kW. */
  double meanPower() {
    return meanPower;
  }

  /** Returns all readings, in the order of the data. */
  List<ReadingForm> forms() {
    return forms;
  }

  /** Returns the charge readings. */
  List<ReadingForm> formsOfCharge() {
    return forms.stream().filter(f -> f.observation.channel() == Channel.SOC).toList();
  }

  /**
   * Returns the priors of the global parameters and the readings that are the same in all draws.
   */
  ArrowSystem fixed() {
    return fixed;
  }

  /** Sets the course about which the charge is linearised. */
  void setReference(double[] unknowns) {
    linearise(unknowns);
    fillFixed();
  }

  /** Returns the charge at an energy, by the global parameters, %. */
  double charge(double[] x, double energy) {
    return x[n + START]
        + (energyKnown ? x[n + PER_ENERGY] : 1) * energy
        + x[n + BEND] * bend(energy)
        + x[n + SKEW] * skew(energy);
  }

  /**
   * Returns an initial course: from the counter if there is one, else from power, else from charge.
   */
  private double[] firstGuess() {
    double[] guess = new double[n + BORDER];
    List<Observation> counter = of(Channel.ENERGY_ADDED);
    List<Observation> power = of(Channel.POWER);
    List<Observation> charge = of(Channel.SOC);
    List<Observation> rising = counter.size() > 1 ? counter : charge;
    if (power.size() > 1 || rising.isEmpty()) {
      double sum = 0;
      for (int i = 0; i < n; i++) {
        double p = Math.max(0.1, linear(power, (nodes[i] + nodes[i + 1]) / 2));
        sum += p * (nodes[i + 1] - nodes[i]) / 3600;
        guess[i] = sum;
      }
      if (counter.size() > 1) {
        Observation last = counter.get(counter.size() - 1);
        double ratio = last.value() / energyAt(guess, last.second());
        if (ratio > 0.5 && ratio < 2) {
          for (int i = 0; i < n; i++) {
            guess[i] *= ratio;
          }
        }
      }
    } else {
      double start = counter.size() > 1 ? 0 : rising.get(0).value();
      for (int i = 0; i < n; i++) {
        guess[i] = Math.max(1e-6 * (i + 1), linear(rising, nodes[i + 1]) - start);
      }
    }
    if (guess[n - 1] <= 0) {
      guess[n - 1] = 1;
    }
    if (!charge.isEmpty()) {
      Observation first = charge.get(0);
      Observation last = charge.get(charge.size() - 1);
      double gained = energyAt(guess, last.second()) - energyAt(guess, first.second());
      guess[n + PER_ENERGY] =
          gained > 0 && last.value() > first.value() ? (last.value() - first.value()) / gained : 1;
      if (!energyKnown) {
        guess[n + PER_ENERGY] = 1;
      }
      guess[n + START] = first.value() - guess[n + PER_ENERGY] * energyAt(guess, first.second());
    }
    return guess;
  }

  private List<Observation> of(Channel channel) {
    return data.observations().stream().filter(o -> o.channel() == channel).toList();
  }

  private static double linear(List<Observation> points, double second) {
    Observation before = points.get(0);
    for (Observation point : points) {
      if (point.second() >= second) {
        double span = point.second() - before.second();
        double share = span > 0 ? (second - before.second()) / span : 1;
        return before.value() + share * (point.value() - before.value());
      }
      before = point;
    }
    return before.value();
  }

  /** Returns the energy of unknowns at a time. */
  double energyAt(double[] x, double second) {
    int cell = cellOf(second);
    double share = (second - nodes[cell]) / (nodes[cell + 1] - nodes[cell]);
    double before = cell == 0 ? 0 : x[cell - 1];
    return before + share * (x[cell] - before);
  }

  /** Returns the power of the cell that contains a time, kW. */
  double powerAt(double[] x, double second) {
    return powerOf(x, cellOf(second));
  }

  double powerOf(double[] x, int cell) {
    double before = cell == 0 ? 0 : x[cell - 1];
    return (x[cell] - before) * 3600 / (nodes[cell + 1] - nodes[cell]);
  }

  private int cellOf(double second) {
    int low = 0;
    int high = n;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (nodes[middle] <= second) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private double bend(double energy) {
    return energy * (energy - length) / length;
  }

  private double bendSlope(double energy) {
    return (2 * energy - length) / length;
  }

  private double skew(double energy) {
    return energy * (energy - length) * (2 * energy - length) / (length * length);
  }

  private double skewSlope(double energy) {
    double x = energy / length;
    return 6 * x * x - 6 * x + 1;
  }

  /** Banded unknown i is the energy at node i + 1; the energy at node 0 is zero. */
  private ReadingForm form(Observation o) {
    int cell = cellOf(o.second());
    double span = nodes[cell + 1] - nodes[cell];
    double share = (o.second() - nodes[cell]) / span;
    if (o.channel() == Channel.POWER) {
      return powerForm(o, cell, share);
    }
    ReadingForm form = new ReadingForm(o, cell - 1, share);
    form.banded[0] = 1 - share;
    form.banded[1] = share;
    return form;
  }

  private ReadingForm powerForm(Observation o, int cell, double share) {
    double middle = (nodes[cell] + nodes[cell + 1]) / 2;
    int other = o.second() < middle ? cell - 1 : cell + 1;
    double weight = 0;
    if (other >= 0 && other < n) {
      double away = (nodes[other] + nodes[other + 1]) / 2;
      weight = (o.second() - middle) / (away - middle);
    } else {
      other = cell + 1 < n ? cell + 1 : cell - 1;
    }
    int low = Math.min(cell, other);
    ReadingForm form = new ReadingForm(o, low - 1, share);
    double lowWeight = low == cell ? 1 - weight : weight;
    double lowRate = lowWeight * 3600 / (nodes[low + 1] - nodes[low]);
    double highRate = (1 - lowWeight) * 3600 / (nodes[low + 2] - nodes[low + 1]);
    form.banded[0] = -lowRate;
    form.banded[1] = lowRate - highRate;
    form.banded[2] = highRate;
    form.bordered[POWER_OFFSET] = 1;
    return form;
  }

  /** Linearises as {@link #setReference}, without rebuilding {@link #fixed()}. */
  void linearise(double[] unknowns) {
    System.arraycopy(unknowns, 0, reference, 0, reference.length);
    double perEnergy = reference[n + PER_ENERGY];
    double bend = reference[n + BEND];
    double skew = reference[n + SKEW];
    for (ReadingForm form : forms) {
      Observation o = form.observation;
      double power = smoothPower(o.second());
      switch (o.channel()) {
        case POWER -> {
          double slope = slope(o.second());
          form.bordered[POWER_RATIO] = power;
          form.value = o.value();
          form.variance = o.displayVariance() + o.clockVariance() * slope * slope + 1e-6;
        }
        case ENERGY_ADDED -> {
          double rate = power / 3600;
          form.bordered[COUNTER_OFFSET] = 1;
          form.value = o.value();
          form.variance = o.displayVariance() + o.clockVariance() * rate * rate + 1e-8;
        }
        default -> {
          double energy = energyAt(reference, o.second());
          double slope = perEnergy + bend * bendSlope(energy) + skew * skewSlope(energy);
          form.banded[0] = slope * (1 - form.share);
          form.banded[1] = slope * form.share;
          form.bordered[START] = 1;
          form.bordered[PER_ENERGY] = energyKnown ? energy : 0;
          form.bordered[BEND] = bend(energy);
          form.bordered[SKEW] = skew(energy);
          double shift = slope * energy - (energyKnown ? 0 : energy);
          double rate = slope * power / 3600;
          double clock = o.clockVariance() * rate * rate;
          double model = modelVariance();
          if (o.form() == Observation.Form.AT_CHANGE) {
            form.value =
                o.value()
                    + shift
                    + (o.index() > 0 && o.displayVariance() > 0 ? rate * CourseData.EYE_DELAY : 0);
            form.variance = clock + CourseData.EYE_VARIANCE * rate * rate + model;
          } else {
            double step = data.step(Channel.SOC);
            double low = o.value() - (o.form() == Observation.Form.EITHER ? 0 : step / 2);
            form.value = low + shift;
            form.partVariance = ReadingHabit.PART_SPREAD * ReadingHabit.PART_SPREAD * step * step;
            form.variance = form.partVariance + clock + model;
            form.edgeValue = low + shift + rate * CourseData.EYE_DELAY;
            form.edgeVariance = clock + CourseData.EYE_VARIANCE * rate * rate + model;
          }
        }
      }
    }
  }

  private void fillFixed() {
    fixed.clear();
    addPriors(fixed);
    for (ReadingForm form : forms) {
      if (!form.isOpen()) {
        fixed.add(form.first, form.banded, form.bordered, form.value, 1 / form.variance);
      }
    }
  }

  /** Adds the priors of the global parameters. */
  void addPriors(ArrowSystem whole) {
    for (int i = 0; i < BORDER; i++) {
      double[] unit = new double[BORDER];
      unit[i] = 1;
      whole.add(0, new double[0], unit, priorMean(i), 1 / (priorSpread(i) * priorSpread(i)));
    }
  }

  /** Returns half the squared distance from the priors of the global parameters. */
  double priorCost(double[] x) {
    double sum = 0;
    for (int i = 0; i < BORDER; i++) {
      double off = (x[n + i] - priorMean(i)) / priorSpread(i);
      sum += off * off / 2;
    }
    return sum;
  }

  /** Returns a copy of the course about which the charge is linearised. */
  double[] reference() {
    return reference.clone();
  }

  /** Returns the variance of a displayed charge beyond its rounding: 2 % of its step. */
  private double modelVariance() {
    double spread = 0.02 * data.step(Channel.SOC) + 1e-4;
    return spread * spread;
  }

  private double priorMean(int border) {
    return switch (border) {
      case START -> reference[n + START];
      case PER_ENERGY -> reference[n + PER_ENERGY];
      default -> 0;
    };
  }

  private double priorSpread(int border) {
    double perEnergy = Math.abs(reference[n + PER_ENERGY]) + 1e-9;
    boolean both = energyKnown && data.has(Channel.SOC);
    return switch (border) {
      case START -> 100;
      case PER_ENERGY -> energyKnown ? perEnergy : 1e-6;
      case BEND -> both ? BEND_SPREAD * perEnergy : 1e-9;
      case SKEW -> both ? SKEW_SPREAD * perEnergy : 1e-9;
      case COUNTER_OFFSET -> data.counterOffset();
      case POWER_RATIO -> data.has(Channel.ENERGY_ADDED) ? 1e3 : 1e-6;
      default -> data.powerOffset();
    };
  }

  private double smoothPower(double second) {
    int cell = cellOf(second);
    int low = Math.max(0, cell - 1);
    int high = Math.min(n - 1, cell + 1);
    double sum = 0;
    for (int i = low; i <= high; i++) {
      sum += powerOf(reference, i);
    }
    return Math.max(0.02 * meanPower, sum / (high - low + 1));
  }

  /** Returns the rate of change of the reference power, kW/s. */
  private double slope(double second) {
    int cell = cellOf(second);
    int low = Math.max(0, cell - 1);
    int high = Math.min(n - 1, cell + 1);
    double time = (nodes[high] + nodes[high + 1] - nodes[low] - nodes[low + 1]) / 2;
    return time > 0 ? (powerOf(reference, high) - powerOf(reference, low)) / time : 0;
  }
}
