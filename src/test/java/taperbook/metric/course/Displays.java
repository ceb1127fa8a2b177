package taperbook.metric.course;

import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import taperbook.metric.Sessions;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.DisplayRounding;
import taperbook.session.RowsWritten;
import taperbook.session.Session;

/** Readings of true sessions by displays and recording habits of all kinds. */
public final class Displays {
  /**
   * How a session is recorded.
   *
   * @param rounding how the display of the charge rounds
   * @param written when rows are written
   * @param energyEvery every how many rows the counter is read; 0 if never
   * @param declared whether rounding and habit are declared
   */
  public record Way(
      DisplayRounding rounding, RowsWritten written, int energyEvery, boolean declared) {}

  /**
   * How a logger records a session.
   *
   * @param period time between rows, s
   * @param socStep step of the charge, %
   * @param powerStep step of the power, kW; 0 if it is not logged
   * @param energyStep step of the counter, kWh; 0 if it is not logged
   * @param noise standard deviation of the power's readings, kW
   * @param gap time without rows, s
   */
  public record Log(
      double period,
      double socStep,
      double powerStep,
      double energyStep,
      double noise,
      double gap) {
    /** Returns any logger of power, with a counter or without one. */
    public static Log any(Random random) {
      return new Log(
          one(random, 0.5, 1, 2, 5),
          one(random, 0.1, 0.5, 1),
          one(random, 0.1, 0.5, 1),
          one(random, 0, 0.01, 0.1, 0.5),
          random.nextBoolean() ? 0 : 1.5 * random.nextDouble(),
          random.nextBoolean() ? 0 : 60 * random.nextDouble());
    }

    private static double one(Random random, double... values) {
      return values[random.nextInt(values.length)];
    }

    /** Returns the same logger without power, and with a counter. */
    public Log withoutPower() {
      return new Log(period, socStep, 0, energyStep > 0 ? energyStep : 0.1, 0, gap);
    }
  }

  private Displays() {}

  /** Offset of a charge for which its display shows the integer part. */
  public static double above(DisplayRounding rounding) {
    return switch (rounding) {
      case NEAREST -> 0.5;
      case UP -> 1;
      default -> 0;
    };
  }

  public static double shown(DisplayRounding rounding, double charge, double step) {
    return rounding == DisplayRounding.UP
        ? Math.ceil(charge / step) * step
        : Math.floor(charge / step + above(rounding)) * step;
  }

  public static Session byHand(TrueSession truth, Way way, int rows, Random random) {
    double end = truth.end() - 0.3;
    TreeSet<Double> moments = new TreeSet<>();
    moments.add(0.0);
    for (int i = 1; i < rows - 1; i++) {
      double moment = end * (i + 0.7 * (random.nextDouble() - 0.5)) / (rows - 1);
      boolean change =
          way.written() == RowsWritten.AT_CHANGES
              || (way.written() == RowsWritten.MIXED && random.nextBoolean());
      if (change) {
        double up = above(way.rounding());
        double next = Math.floor(truth.charge(moment) + up) + 1 - up;
        moment = truth.timeOf(next) + 0.2 * random.nextDouble();
      }
      if (moment > 0 && moment < end) {
        moments.add(moment);
      }
    }
    moments.add(end);
    int n = moments.size();
    double[] seconds = new double[n];
    double[] soc = new double[n];
    double[] power = new double[n];
    double[] energy = new double[n];
    double energyStep = random.nextInt(3) == 0 ? 1 : 0.1;
    int i = 0;
    for (double moment : moments) {
      seconds[i] = Math.rint(moment);
      soc[i] = shown(way.rounding(), truth.charge(moment), 1);
      power[i] = Math.rint(truth.power(moment));
      boolean read = way.energyEvery() > 0 && (i % way.energyEvery() == 0 || i == n - 1);
      energy[i] = read ? Math.rint(truth.energy(moment) / energyStep) * energyStep : Double.NaN;
      if (way.energyEvery() == 1 && i > 0 && i < n - 1 && random.nextInt(4) == 0) {
        energy[i] = Double.NaN;
      }
      i++;
    }
    Sessions built =
        Sessions.session()
            .named("test-session")
            .clockHalfStep(0.5)
            .channel(Channel.SOC, 0.5, seconds, soc)
            .channel(Channel.POWER, 0.5, seconds, power);
    if (way.energyEvery() > 0) {
      built.channel(Channel.ENERGY_ADDED, energyStep / 2, seconds, energy);
    }
    return declared(built, way).build();
  }

  private static Sessions declared(Sessions built, Way way) {
    if (way.declared()) {
      built.text(ConditionItem.DISPLAY_ROUNDS, way.rounding().words());
      built.text(ConditionItem.ROWS_WRITTEN, way.written().words());
    }
    return built;
  }

  /** A session of a logger with a row every second. */
  public static Session logged(TrueSession truth, Way way, Random random) {
    int n = (int) truth.end();
    double[] seconds = new double[n];
    double[] soc = new double[n];
    double[] power = new double[n];
    double[] energy = new double[n];
    double step = random.nextBoolean() ? 0.5 : 1;
    for (int i = 0; i < n; i++) {
      double moment = i;
      seconds[i] = i;
      soc[i] = shown(way.rounding(), truth.charge(moment), step);
      power[i] = Math.rint(10 * truth.power(moment)) / 10;
      energy[i] = Math.rint(100 * truth.energy(moment)) / 100;
    }
    Sessions built =
        Sessions.session()
            .named("test-session")
            .clockHalfStep(0.5)
            .text(ConditionItem.READ_FROM, "log")
            .channel(Channel.SOC, step / 2, seconds, soc)
            .channel(Channel.POWER, 0.05, seconds, power);
    if (way.energyEvery() > 0) {
      built.channel(Channel.ENERGY_ADDED, 0.005, seconds, energy);
    }
    return built.build();
  }

  /** A session of a logger of any kind, read at set times, with a gap somewhere. */
  public static Session logged(
      TrueSession truth, DisplayRounding rounding, Log log, Random random) {
    double gapFrom = truth.end() * random.nextDouble();
    int last = (int) ((truth.end() - 1) / log.period());
    double[] seconds =
        IntStream.rangeClosed(0, last)
            .mapToDouble(i -> i * log.period())
            .filter(t -> t < gapFrom || t > gapFrom + log.gap())
            .toArray();
    int n = seconds.length;
    double[] soc = new double[n];
    double[] power = new double[n];
    double[] energy = new double[n];
    for (int i = 0; i < n; i++) {
      double kilowatt = truth.power(seconds[i]) + log.noise() * random.nextGaussian();
      soc[i] = shown(rounding, truth.charge(seconds[i]), log.socStep());
      power[i] = nearest(kilowatt, log.powerStep());
      energy[i] = nearest(truth.energy(seconds[i]), log.energyStep());
    }
    Sessions built =
        Sessions.session()
            .named("test-session")
            .clockHalfStep(0.5)
            .text(ConditionItem.READ_FROM, "log")
            .channel(Channel.SOC, log.socStep() / 2, seconds, soc);
    if (log.powerStep() > 0) {
      built.channel(Channel.POWER, log.powerStep() / 2, seconds, power);
    }
    if (log.energyStep() > 0) {
      built.channel(Channel.ENERGY_ADDED, log.energyStep() / 2, seconds, energy);
    }
    Way way = new Way(rounding, RowsWritten.AT_SET_TIMES, 1, true);
    return declared(built, way).build();
  }

  private static double nearest(double value, double step) {
    return Math.rint(value / step) * step;
  }
}
