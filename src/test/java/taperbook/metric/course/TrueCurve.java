package taperbook.metric.course;

import java.util.Arrays;
import java.util.Random;

/**
 * A charging curve with an exact solution: power is linear in state of charge between nodes, so
 * that the time for a stretch is 36 C / k ln(P2 / P1) seconds for C kWh and a slope of k kW per 1
 * %.
 */
public final class TrueCurve {
  private final double capacity;
  private final double[] soc;
  private final double[] power;

  public TrueCurve(double capacity, double[] soc, double[] power) {
    this.capacity = capacity;
    this.soc = soc.clone();
    this.power = power.clone();
  }

  /** Warm-up climb, plateau, ramp, a step in half of the cases, and a tail. */
  public static TrueCurve random(Random random, double start) {
    double peak = 90 + 110 * random.nextDouble();
    double climbEnd = start + 3 + 6 * random.nextDouble();
    double plateauEnd = climbEnd + 8 + 25 * random.nextDouble();
    double stepAt = plateauEnd + 8 + 10 * random.nextDouble();
    double beforeStep = peak * (0.75 + 0.15 * random.nextDouble());
    double afterStep = beforeStep * (random.nextBoolean() ? 0.85 : 0.99);
    double tail = peak * (0.25 + 0.2 * random.nextDouble());
    return new TrueCurve(
        50 + 45 * random.nextDouble(),
        new double[] {start, climbEnd, plateauEnd, stepAt, stepAt + 0.6, 100},
        new double[] {
          peak * (0.6 + 0.3 * random.nextDouble()),
          peak,
          peak * (0.985 + 0.014 * random.nextDouble()),
          beforeStep,
          afterStep,
          tail
        });
  }

  /** The same curve with its power multiplied by a factor. */
  public TrueCurve times(double factor) {
    return new TrueCurve(capacity, soc, Arrays.stream(power).map(p -> factor * p).toArray());
  }

  public double capacity() {
    return capacity;
  }

  public double start() {
    return soc[0];
  }

  /** Time from the start to a state of charge, s. */
  public double second(double target) {
    double sum = 0;
    for (int i = 0; i + 1 < soc.length && soc[i] < target; i++) {
      double to = Math.min(target, soc[i + 1]);
      sum += time(power[i], slope(i), to - soc[i]);
    }
    return sum;
  }

  private double time(double from, double slope, double rise) {
    double k = Math.abs(slope) < 1e-9 ? 1e-9 : slope;
    return 36 * capacity / k * Math.log((from + k * rise) / from);
  }

  private double slope(int i) {
    return (power[i + 1] - power[i]) / (soc[i + 1] - soc[i]);
  }

  /** State of charge at a time, %. */
  public double soc(double second) {
    double left = second;
    for (int i = 0; i + 1 < soc.length; i++) {
      double whole = time(power[i], slope(i), soc[i + 1] - soc[i]);
      if (left <= whole) {
        double k = Math.abs(slope(i)) < 1e-9 ? 1e-9 : slope(i);
        return soc[i] + power[i] * Math.expm1(k * left / (36 * capacity)) / k;
      }
      left -= whole;
    }
    return 100;
  }

  /** Power at a state of charge, kW. */
  public double power(double percent) {
    for (int i = 0; i + 1 < soc.length; i++) {
      if (percent <= soc[i + 1]) {
        return power[i] + slope(i) * (percent - soc[i]);
      }
    }
    return power[power.length - 1];
  }

  public double peak() {
    double most = 0;
    for (double p : power) {
      most = Math.max(most, p);
    }
    return most;
  }

  /** Longest continuous time at or above a power below the peak, s. */
  double secondsAbove(double threshold) {
    double first = Double.NaN;
    double last = Double.NaN;
    for (double s = soc[0]; s <= 100; s += 0.001) {
      if (power(s) >= threshold) {
        first = Double.isNaN(first) ? s : first;
        last = s;
      } else if (!Double.isNaN(first)) {
        break;
      }
    }
    return second(last) - second(first);
  }
}
