package taperbook.metric.course;

import java.util.Random;
import java.util.TreeSet;
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
}
