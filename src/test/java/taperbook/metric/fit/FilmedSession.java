package taperbook.metric.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import taperbook.metric.Sessions;
import taperbook.session.Channel;
import taperbook.session.Session;

/**
 * A session with known truth, recorded as by a person. The power is constant at its peak up to a
 * share of the energy and then falls linearly:
 *
 * <pre>
 *   s(t) = s0 + P t / 3600 k                                until the power starts to fall at s1
 *   s(t) = s1 + P / g (1 - exp(-g (t - t1) / 3600 k))       from then on, g in kW per %
 *   E(t) = k (s(t) - s0)
 * </pre>
 *
 * with s the share of the energy of a full battery. It equals the state of charge q if each per
 * cent takes the same energy. In a curved session the energy per 1 % follows a voltage that rises
 * with q and drops towards an empty battery:
 *
 * <pre>
 *   s(q) = 100 e(q) / e(100)        e(q) = q + a q^2 / 200 + 6 d (exp(-q / 6) - 1)
 * </pre>
 */
final class FilmedSession {
  private static final double END_PERCENT = 84;

  private final Random random;
  private final double rise;
  private final double dip;
  private final double start;
  private final double bend;
  private final double peak;
  private final double fall;
  private final double energyPerPercent;
  private final double socStep;
  private final double energyStep;
  private final List<double[]> rows = new ArrayList<>();

  FilmedSession(int seed) {
    this(seed, false);
  }

  FilmedSession(int seed, boolean curved) {
    Random shape = new Random(-seed);
    rise = curved ? 0.06 + 0.12 * shape.nextDouble() : 0;
    dip = curved ? 0.12 * shape.nextDouble() : 0;
    random = new Random(seed);
    start = 3 + 25 * random.nextDouble();
    bend = 30 + 30 * random.nextDouble();
    peak = 60 + 180 * random.nextDouble();
    // The power at 100 % is 10 to 50 % of the peak.
    fall = peak * (0.5 + 0.4 * random.nextDouble()) / (100 - bend);
    energyPerPercent = 0.35 + 0.8 * random.nextDouble();
    socStep = random.nextBoolean() ? 1 : 0.5;
    energyStep = new double[] {0.01, 0.1, 0.1, 0.5}[random.nextInt(4)];
    switch (random.nextInt(3)) {
      case 0 -> readNowAndThen();
      case 1 -> readAtChanges();
      default -> log();
    }
  }

  /** The true energy per 1 % between the first and the last row with energy, kWh. */
  double truth() {
    double[] read =
        rows.stream().filter(r -> !Double.isNaN(r[2])).mapToDouble(r -> r[1]).sorted().toArray();
    double from = read[0];
    double to = read[read.length - 1];
    return energyPerPercent * (share(to) - share(from)) / (to - from);
  }

  private double energyTo(double soc) {
    return soc + rise * soc * soc / 200 + 6 * dip * (Math.exp(-soc / 6) - 1);
  }

  private double share(double soc) {
    return 100 * energyTo(soc) / energyTo(100);
  }

  /** The state of charge at a share of the energy, by bisection. */
  private double socOf(double share) {
    double low = 0;
    double high = 100;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (share(middle) < share) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  Session session() {
    double[] seconds = rows.stream().mapToDouble(r -> r[0]).toArray();
    return Sessions.session()
        .clockHalfStep(0.5)
        .channel(Channel.SOC, socStep / 2, seconds, rows.stream().mapToDouble(r -> r[1]).toArray())
        .channel(
            Channel.ENERGY_ADDED,
            energyStep / 2,
            seconds,
            rows.stream().mapToDouble(r -> r[2]).toArray())
        .build();
  }

  private double shareAt(double second) {
    double bendSecond = (bend - start) * 3600 * energyPerPercent / peak;
    if (second <= bendSecond) {
      return start + peak * second / (3600 * energyPerPercent);
    }
    double past = (second - bendSecond) / (3600 * energyPerPercent);
    return bend + peak / fall * (1 - Math.exp(-fall * past));
  }

  private double secondAt(double share) {
    double bendSecond = (bend - start) * 3600 * energyPerPercent / peak;
    if (share <= bend) {
      return (share - start) * 3600 * energyPerPercent / peak;
    }
    return bendSecond - Math.log(1 - (share - bend) * fall / peak) * 3600 * energyPerPercent / fall;
  }

  private void read(double second, double soc, double shareWithEnergy) {
    double energy = energyPerPercent * (shareAt(second) - start);
    boolean noted = rows.isEmpty() || random.nextDouble() < shareWithEnergy;
    double shown = Math.rint(energy / energyStep) * energyStep;
    rows.add(new double[] {Math.rint(second), soc, noted ? shown : Double.NaN});
  }

  private double shownSoc(double second) {
    return Math.rint(socOf(shareAt(second)) / socStep) * socStep;
  }

  /** Rows at random times, as from a film that is stopped at random. */
  private void readNowAndThen() {
    double gap = 15 + 100 * random.nextDouble();
    for (double t = 0; shareAt(t) < END_PERCENT; t += gap * (0.3 + 1.4 * random.nextDouble())) {
      read(t, shownSoc(t), 0.7);
    }
  }

  /** Rows at changes of the display, of which most are omitted. */
  private void readAtChanges() {
    double left = 1 + 6 * random.nextDouble();
    for (double soc = Math.rint(socOf(start) + 1); soc < END_PERCENT; soc += socStep) {
      if (random.nextDouble() < 1 / left) {
        read(secondAt(share(soc - socStep / 2)), soc, 0.8);
      }
    }
  }

  /** A row every one to five seconds. */
  private void log() {
    int gap = 1 + random.nextInt(5);
    for (double t = 0; shareAt(t) < END_PERCENT; t += gap) {
      read(t, shownSoc(t), 1);
    }
  }
}
