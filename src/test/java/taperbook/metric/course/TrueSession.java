package taperbook.metric.course;

import java.util.Random;

/**
 * A charging session with known truth: power by independent rules (ramp, hold, taper, steps, a
 * current limit, a slow oscillation), integrated in steps of 0.1 s, with an energy per 1 % that
 * varies over the charge. None of the rules is an assumption of the estimator.
 */
public final class TrueSession {
  private static final double STEP = 0.1;

  private final double[] energy;
  private final double[] charge;
  private final double[] power;
  private final int size;
  private final double capacity;
  private final boolean swings;

  private TrueSession(
      int size, double[] energy, double[] charge, double[] power, double capacity, boolean swings) {
    this.swings = swings;
    this.size = size;
    this.energy = energy;
    this.charge = charge;
    this.power = power;
    this.capacity = capacity;
  }

  /** A session of a random car from 3 to 8 % to 82 to 90 %. */
  public static TrueSession any(Random random) {
    return of(random, 3 + 5 * random.nextDouble(), 82 + 8 * random.nextDouble());
  }

  /** A session of a random car between two charges. */
  public static TrueSession of(Random random, double start, double end) {
    double capacity = 50 + 45 * random.nextDouble();
    double peak = capacity * (1.6 + 1.4 * random.nextDouble());
    double varies = 0.28 * (random.nextDouble() - 0.5);
    int kind = random.nextInt(4);
    double wobble = random.nextInt(3) == 0 ? 0.012 * random.nextDouble() : 0;
    double phase = 6.28 * random.nextDouble();
    double period = 20 + 100 * random.nextDouble();
    double ramp = 10 + 80 * random.nextDouble();
    double rampFrom = 0.3 + 0.5 * random.nextDouble();
    double holdEnd = start + 8 + 25 * random.nextDouble();
    double slope = (0.55 + 0.2 * random.nextDouble()) / (80 - holdEnd + 10);
    double[] stepAt = new double[3];
    double[] stepHeight = new double[3];
    for (int i = 0; i < 3; i++) {
      stepAt[i] = holdEnd + (95 - holdEnd) * random.nextDouble();
      stepHeight[i] = 0.05 + 0.15 * random.nextDouble();
    }
    int steps = kind == 1 ? 3 : kind == 2 ? 1 : 0;
    int most = 60 * 60 * 10 * 3;
    double[] e = new double[most];
    double[] q = new double[most];
    double[] p = new double[most];
    q[0] = start;
    int i = 0;
    while (true) {
      double second = i * STEP;
      double s = q[i];
      double share;
      if (kind == 1) {
        share = 1;
        for (int k = 0; k < steps; k++) {
          share -= s > stepAt[k] ? 1.6 * stepHeight[k] : 0;
        }
      } else {
        share = s < holdEnd ? 1 : Math.max(0.12, 1 - slope * (s - holdEnd));
        for (int k = 0; k < steps; k++) {
          share -= s > stepAt[k] ? stepHeight[k] * 0.7 : 0;
        }
      }
      if (kind == 3 && s < holdEnd) {
        // A current limit: power follows the voltage.
        share = 0.96 + 0.04 * (s - start) / (holdEnd - start);
      }
      share = Math.max(0.1, share);
      if (second < ramp) {
        share = Math.min(share, rampFrom + (1 - rampFrom) * second / ramp);
      }
      double wave = wobble * Math.sin(phase + 6.2832 * second / period);
      p[i] = peak * (share + wave);
      if (s >= end || i + 1 == most) {
        break;
      }
      e[i + 1] = e[i] + p[i] * STEP / 3600;
      double perCent = capacity / 100 * (1 + varies * (s - 50) / 100);
      q[i + 1] = s + p[i] * STEP / 3600 / perCent;
      i++;
    }
    return new TrueSession(i + 1, e, q, p, capacity, wobble > 0);
  }

  /**
   * The same session with reduced power for a while, as in a momentary station failure.
   *
   * @param from start of the reduction, s
   * @param seconds its duration
   * @param left remaining share of the power
   */
  public TrueSession withDip(double from, double seconds, double left) {
    int begin = (int) (from / STEP);
    int length = (int) (seconds / STEP);
    int longer = size + length;
    double[] e = new double[longer];
    double[] q = new double[longer];
    double[] p = new double[longer];
    q[0] = charge[0];
    int undisturbed = 0;
    int used = 0;
    for (int i = 0; i < longer; i++) {
      boolean dip = i >= begin && i < begin + length;
      p[i] = dip ? left * power[undisturbed] : power[undisturbed];
      if (i + 1 < longer) {
        double perCent =
            undisturbed + 1 < size
                ? (energy[undisturbed + 1] - energy[undisturbed])
                    / (charge[undisturbed + 1] - charge[undisturbed])
                : capacity / 100;
        e[i + 1] = e[i] + p[i] * STEP / 3600;
        q[i + 1] = q[i] + p[i] * STEP / 3600 / perCent;
      }
      undisturbed = Math.min(size - 1, dip ? undisturbed : undisturbed + 1);
      used = i + 1;
    }
    return new TrueSession(used, e, q, p, capacity, swings);
  }

  public double end() {
    return (size - 1) * STEP;
  }

  /** True if the power oscillates by up to 1.2 %, faster than rows are written. */
  public boolean swings() {
    return swings;
  }

  public double capacity() {
    return capacity;
  }

  private double at(double[] values, double second) {
    double place = Math.min(size - 1.001, Math.max(0, second / STEP));
    int i = (int) place;
    return values[i] + (place - i) * (values[i + 1] - values[i]);
  }

  public double charge(double second) {
    return at(charge, second);
  }

  public double energy(double second) {
    return at(energy, second);
  }

  public double power(double second) {
    return power[(int) Math.min(size - 1, Math.max(0, second / STEP))];
  }

  /** Time at which a true charge is reached, s; NaN if it is not. */
  public double timeOf(double percent) {
    return timeOf(charge, percent);
  }

  public double timeOfEnergy(double kilowattHours) {
    return timeOf(energy, kilowattHours);
  }

  private double timeOf(double[] values, double value) {
    if (value > values[size - 1]) {
      return Double.NaN;
    }
    if (value <= values[0]) {
      return 0;
    }
    int low = 0;
    int high = size - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (values[middle] >= value) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return STEP * (low + (value - values[low]) / (values[high] - values[low]));
  }

  /** Mean of power over charge, kW. */
  public double meanOverCharge(double from, double to) {
    double sum = 0;
    for (int i = 0; i + 1 < size; i++) {
      double low = Math.max(from, charge[i]);
      double high = Math.min(to, charge[i + 1]);
      if (high > low) {
        sum += power[i] * (high - low);
      }
    }
    return sum / (to - from);
  }

  /** Longest continuous time at or above a power, s. */
  public double longestAbove(double threshold) {
    int best = 0;
    int run = 0;
    for (int i = 0; i < size; i++) {
      run = power[i] >= threshold ? run + 1 : 0;
      best = Math.max(best, run);
    }
    return best * STEP;
  }
}
