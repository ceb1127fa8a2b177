package taperbook.measure.simulate;

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

  private final Session session;
  private final @Nullable RisingCourse socCourse;
  private final @Nullable RisingCourse counterCourse;
  private final @Nullable PowerCourse power;
  private final @Nullable DriveCourse drive;
  private final double clockHalfStep;
  private final double holdTolerance;
  private @Nullable Path soc;
  private @Nullable Path counter;
  private double endSecond;
  private double peak;
  private double peakSecond;
  private final double[] holdEnds = new double[2];

  DrawnSession(Session session, Optional<RangeTest> test) {
    this.session = session;
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
    this.drive = test.map(DriveCourse::new).orElse(null);
    this.clockHalfStep =
        session.traces().values().stream().mapToDouble(Trace::clockHalfStep).max().orElse(0);
    this.holdTolerance = session.trace(Channel.POWER).map(NearPeak::tolerance).orElse(0.0);
  }

  /** Draws everything anew. */
  void draw(Draws draws) {
    boolean habit =
        draws.has(UncertaintySource.READING_HABIT)
            && draws.share(UncertaintySource.READING_HABIT) < AS_IT_CHANGED;
    if (socCourse != null) {
      soc = socCourse.draw(draws, habit);
    }
    if (counterCourse != null) {
      counter = counterCourse.draw(draws, false);
    }
    if (power != null) {
      power.draw(draws);
      peak = power.peak(draws);
      peakSecond = power.peakSecond(draws);
      if (!power.isDense()) {
        power.longestAbove(peak - holdTolerance, holdEnds);
      }
    }
    if (drive != null) {
      drive.draw(draws);
    }
    endSecond =
        session.recorded().high() + clockHalfStep * draws.symmetric(UncertaintySource.CLOCK);
  }

  Path soc() {
    return present(soc);
  }

  PowerCourse power() {
    return present(power);
  }

  DriveCourse drive() {
    return present(drive);
  }

  double endSecond() {
    return endSecond;
  }

  double peak() {
    return peak;
  }

  double peakSecond() {
    return peakSecond;
  }

  double holdFrom() {
    return holdEnds[0];
  }

  double holdTo() {
    return holdEnds[1];
  }

  /** Energy added between two times, kWh, by the counter or by power. */
  double energy(boolean byCounter, double from, double to) {
    return byCounter
        ? present(counter).at(to) - present(counter).at(from)
        : power().energy(to) - power().energy(from);
  }

  /** When an energy has been added since the channel began, s since it began. */
  double timeOfEnergy(boolean byCounter, double kilowattHours) {
    if (byCounter) {
      Path path = present(counter);
      return path.timeOf(path.firstValue() + kilowattHours) - path.second(0);
    }
    return power().timeOf(kilowattHours)
        - session.trace(Channel.POWER).map(Trace::firstSecond).orElse(0.0);
  }

  /** When an energy has been added since a time, s after that time. */
  double timeOfEnergySince(double second, boolean byCounter, double kilowattHours) {
    if (byCounter) {
      Path path = present(counter);
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

  private static <T> T present(@Nullable T channel) {
    if (channel == null) {
      throw new IllegalStateException("a channel was asked for that was not recorded");
    }
    return channel;
  }
}
