package taperbook.measure.simulate;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import taperbook.model.Channel;
import taperbook.model.Session;
import taperbook.model.Trace;
import taperbook.model.UncertaintySource;

/**
 * Courses of one session that its readings allow, drawn many times: for each trial the time and the
 * power at given states of charge, each at the first time that it is reached.
 *
 * <p>The draws depend on the readings of state of charge and power alone, so that a session gives
 * the same ones whatever it is held against. A logger's power is taken as it is, but for one error
 * within half a step of its display that all readings of a trial share.
 */
public final class DrawnCurves {
  private final double[][] seconds;
  private final double[][] kilowatts;

  private DrawnCurves(double[][] seconds, double[][] kilowatts) {
    this.seconds = seconds;
    this.kilowatts = kilowatts;
  }

  /**
   * Draws courses.
   *
   * @param session a session with state of charge and at least two readings of power
   * @param percents states of charge, %, never falling
   * @param trials number of courses, at least 1
   */
  public static DrawnCurves of(Session session, double[] percents, int trials) {
    Trace soc = session.trace(Channel.SOC).orElseThrow();
    Trace power = session.trace(Channel.POWER).orElseThrow();
    Session bare =
        new Session(
            session.name(),
            session.conditions(),
            Map.of(Channel.SOC, soc, Channel.POWER, power),
            session.notes(),
            session.recorded());
    DrawnSession drawn = new DrawnSession(bare, Optional.empty());
    Draws draws = new Draws(seed(soc, power), EnumSet.allOf(UncertaintySource.class));
    double[][] seconds = new double[trials][percents.length];
    double[][] kilowatts = new double[trials][percents.length];
    for (int k = 0; k < trials; k++) {
      drawn.draw(draws);
      double error =
          drawn.power().isDense()
              ? power.halfStep() * draws.symmetric(UncertaintySource.POWER_DISPLAY)
              : 0;
      drawn.soc().timesOf(percents, seconds[k]);
      int gap = 0;
      for (int i = 0; i < percents.length; i++) {
        gap = drawn.power().gapFrom(gap, seconds[k][i]);
        kilowatts[k][i] = drawn.power().inGap(gap, seconds[k][i]) + error;
      }
    }
    return new DrawnCurves(seconds, kilowatts);
  }

  private static long seed(Trace soc, Trace power) {
    return 31 * seed(soc) + seed(power);
  }

  private static long seed(Trace trace) {
    long seed = Double.doubleToLongBits(trace.halfStep());
    for (int i = 0; i < trace.size(); i++) {
      seed = mixed(seed, trace.second(i));
      seed = mixed(seed, trace.value(i));
    }
    return seed;
  }

  /** One step of FNV-1a on whole words, with a shift that carries high bits down. */
  private static long mixed(long seed, double value) {
    long mixed = (seed ^ Double.doubleToLongBits(value)) * 0x100000001b3L;
    return mixed ^ (mixed >>> 32);
  }

  /** Number of courses. */
  public int trials() {
    return seconds.length;
  }

  /** Time at which a trial first reaches a state of charge, s since plugging in. */
  public double second(int trial, int point) {
    return seconds[trial][point];
  }

  /** Power of a trial when it first reaches a state of charge, kW. */
  public double kilowatts(int trial, int point) {
    return kilowatts[trial][point];
  }
}
