package taperbook.measure.simulate;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import taperbook.measure.curve.NearPeak;
import taperbook.model.Channel;
import taperbook.model.ConditionItem;
import taperbook.model.RangeTest;
import taperbook.model.Session;
import taperbook.model.Trace;
import taperbook.model.UncertaintySource;

/**
 * A session and a drive that the readings allow, drawn anew for each trial, and the quantities that
 * numbers are computed from. Asking for a channel that was not recorded is a fault of the caller.
 */
final class DrawnSession {
  /** Share of trials in which readings were written down just as the display changed. */
  private static final double AS_IT_CHANGED = 0.45;

  /** Parts of a drawn session, as a set of bits: asked for with each quantity of each trial. */
  static final int SOC = 1;

  static final int COUNTER = 2;
  static final int POWER = 4;
  static final int DRIVE = 8;
  static final int END = 16;
  static final int ALL = 31;

  private final @Nullable RisingCourse socCourse;
  private final @Nullable RisingCourse counterCourse;
  private final @Nullable PowerCourse power;
  private final @Nullable DriveCourse drive;
  private final double recordedEnd;
  private final double powerBegins;
  private final double clockHalfStep;
  private final double holdTolerance;
  private @Nullable Path soc;
  private @Nullable Path counter;
  private int asked;
  private double endSecond;
  private double peak;
  private double peakSecond;
  private final double[] holdEnds = new double[2];

  DrawnSession(Session session, Optional<RangeTest> test) {
    boolean byHand =
        session.conditions().text(ConditionItem.READ_FROM).filter("log"::equals).isEmpty();
    this.socCourse =
        session.trace(Channel.SOC).map(t -> RisingCourse.ofSoc(t, byHand)).orElse(null);
    this.counterCourse =
        session
            .trace(Channel.ENERGY_ADDED)
            .filter(t -> t.size() > 1)
            .map(RisingCourse::ofCounter)
            .orElse(null);
    this.power =
        session.trace(Channel.POWER).filter(t -> t.size() > 1).map(PowerCourse::new).orElse(null);
    this.drive = test.map(t -> new DriveCourse(t, session.displayRounding())).orElse(null);
    this.recordedEnd = session.recorded().high();
    this.powerBegins = session.trace(Channel.POWER).map(Trace::firstSecond).orElse(0.0);
    this.clockHalfStep =
        session.traces().values().stream().mapToDouble(Trace::clockHalfStep).max().orElse(0);
    this.holdTolerance = session.trace(Channel.POWER).map(NearPeak::tolerance).orElse(0.0);
  }

  /** Draws everything anew. */
  void draw(Draws draws) {
    redraw(draws, ALL);
  }

  /**
   * Draws some parts anew, each from a stream of its own: a number's trials are the same whatever
   * else is asked for.
   *
   * @return those of them that took a draw: all others are the same whenever they are drawn again
   *     by the same sources
   */
  int redraw(Draws draws, int parts) {
    int moved = 0;
    int stream = 0;
    for (int part = SOC; part <= END; part *= 2) {
      stream++;
      if ((parts & part) != 0) {
        draws.turnTo(stream);
        long before = draws.state();
        drawPart(draws, part);
        moved |= draws.state() == before ? 0 : part;
      }
    }
    return moved;
  }

  private void drawPart(Draws draws, int part) {
    switch (part) {
      case SOC -> drawSoc(draws);
      case COUNTER -> counter = counterCourse == null ? null : counterCourse.draw(draws, false);
      case POWER -> drawPower(draws);
      case DRIVE -> {
        if (drive != null) {
          drive.draw(draws);
        }
      }
      default -> endSecond = recordedEnd + clockHalfStep * draws.symmetric(UncertaintySource.CLOCK);
    }
  }

  private void drawSoc(Draws draws) {
    boolean habit =
        draws.has(UncertaintySource.READING_HABIT)
            && draws.share(UncertaintySource.READING_HABIT) < AS_IT_CHANGED;
    if (socCourse != null) {
      soc = socCourse.draw(draws, habit);
    }
  }

  private void drawPower(Draws draws) {
    if (power == null) {
      return;
    }
    power.draw(draws);
    peak = power.peak(draws);
    peakSecond = power.peakSecond(draws);
    if (!power.isDense()) {
      power.longestAbove(peak - holdTolerance, holdEnds);
    }
  }

  /**
   * Works outputs out of the session as it is drawn. What each asks for shows when it is asked.
   *
   * @param values filled in with their values
   * @param parts filled in with the parts that each asked for
   */
  void work(List<Outputs.Output> outputs, double[] values, int[] parts) {
    for (int k = 0; k < values.length; k++) {
      asked = 0;
      values[k] = outputs.get(k).value().applyAsDouble(this);
      parts[k] = asked;
    }
  }

  Path soc() {
    return present(soc, SOC);
  }

  PowerCourse power() {
    return present(power, POWER);
  }

  DriveCourse drive() {
    return present(drive, DRIVE);
  }

  double endSecond() {
    asked |= END;
    return endSecond;
  }

  double peak() {
    asked |= POWER;
    return peak;
  }

  double peakSecond() {
    asked |= POWER;
    return peakSecond;
  }

  double holdFrom() {
    asked |= POWER;
    return holdEnds[0];
  }

  double holdTo() {
    asked |= POWER;
    return holdEnds[1];
  }

  /** Energy added between two times, kWh, by the counter or by power. */
  double energy(boolean byCounter, double from, double to) {
    return byCounter
        ? present(counter, COUNTER).at(to) - present(counter, COUNTER).at(from)
        : power().energy(to) - power().energy(from);
  }

  /** When an energy has been added since the channel began, s since it began. */
  double timeOfEnergy(boolean byCounter, double kilowattHours) {
    if (byCounter) {
      Path path = present(counter, COUNTER);
      return path.timeOf(path.firstValue() + kilowattHours) - path.second(0);
    }
    return power().timeOf(kilowattHours) - powerBegins;
  }

  /** When an energy has been added since a time, s after that time. */
  double timeOfEnergySince(double second, boolean byCounter, double kilowattHours) {
    if (byCounter) {
      Path path = present(counter, COUNTER);
      return path.timeOf(path.at(second) + kilowattHours) - second;
    }
    return power().timeOf(power().energy(second) + kilowattHours) - second;
  }

  /** Mean of power over state of charge between two of its values, kW. */
  double meanOverSoc(double fromPercent, double toPercent) {
    Path path = soc();
    PowerCourse course = power();
    double from = path.timeOf(fromPercent);
    double to = path.timeOf(toPercent);
    double sum = 0;
    double lastSoc = fromPercent;
    double lastPower = course.at(from);
    int gap = 0;
    for (int i = 0; i < path.size(); i++) {
      double second = path.second(i);
      if (second > from && second < to) {
        gap = course.gapFrom(gap, second);
        double kilowatts = course.inGap(gap, second);
        sum += (kilowatts + lastPower) / 2 * (path.value(i) - lastSoc);
        lastSoc = path.value(i);
        lastPower = kilowatts;
      }
    }
    sum += (course.at(to) + lastPower) / 2 * (toPercent - lastSoc);
    return sum / (toPercent - fromPercent);
  }

  private <T> T present(@Nullable T channel, int part) {
    asked |= part;
    if (channel == null) {
      throw new IllegalStateException("a channel was asked for that was not recorded");
    }
    return channel;
  }
}
