package taperbook.metric.recording;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.bounds.Crossing;
import taperbook.metric.bounds.EnergyCounter;
import taperbook.metric.bounds.EnergyOverTime;
import taperbook.metric.bounds.MonotoneBounds;
import taperbook.metric.bounds.PowerIntegral;
import taperbook.metric.course.Courses;
import taperbook.metric.course.Draw;
import taperbook.metric.trip.ChargeTimes;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Event;
import taperbook.result.Outcome;
import taperbook.session.Channel;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;
import taperbook.session.Samples;
import taperbook.session.Session;
import taperbook.session.Trace;

/**
 * A session prepared for measuring: its channels, the courses consistent with them, and the wording
 * for reasons why something cannot be measured.
 *
 * @param session the session
 * @param soc state of charge, if recorded
 * @param socBounds bounds of the true state of charge, if recorded
 * @param power power, if recorded
 * @param counter energy by the counter, if recorded
 * @param integral energy by integrating power, if recorded twice or more
 * @param courses the courses consistent with all readings and the drive
 * @param formatter number format in the units of the report
 */
public record Recording(
    Session session,
    Optional<Trace> soc,
    Optional<MonotoneBounds> socBounds,
    Optional<Trace> power,
    Optional<EnergyCounter> counter,
    Optional<PowerIntegral> integral,
    Courses courses,
    NumberFormatter formatter) {

  private static final Message NO_SOC = Message.of("metric.recording.no_state_of_charge_was");
  private static final Message SOC_NOT_READ_THEN =
      Message.of("metric.recording.state_of_charge_was_not");
  public static final Message NO_POWER = Message.of("metric.recording.no_power_was_recorded");
  public static final Message NO_ENERGY =
      Message.of("metric.recording.neither_energy_nor_power_was");
  public static final Message NO_GAIN = Message.of("metric.common.state_of_charge_gained_is");

  /** The reason why times and averages are withheld if {@link #hasFewRows()}. */
  public static final Message FEW_ROWS = Message.of("metric.recording.fewer_than_4_rows_were");

  private static final int FEWEST_ROWS = 4;

  /** Minimum spacing of charges in the clock, %. */
  private static final double CLOCK_STEP = 0.5;

  /**
   * Prepares a session.
   *
   * @param session the session
   * @param test the drive that distances use, if there is one
   * @param draws number of courses to draw
   * @param formatter number format in the units of the report
   */
  public static Recording of(
      Session session, Optional<RangeTest> test, int draws, NumberFormatter formatter) {
    return of(session, new Courses(session, test, draws), formatter);
  }

  /** Prepares a session with existing courses. */
  public static Recording of(Session session, Courses courses, NumberFormatter formatter) {
    Optional<Trace> soc = session.trace(Channel.SOC);
    Optional<Trace> power = session.trace(Channel.POWER);
    return new Recording(
        session,
        soc,
        soc.map(MonotoneBounds::new),
        power,
        session.trace(Channel.ENERGY_ADDED).filter(t -> t.size() > 1).map(EnergyCounter::new),
        power.filter(t -> t.size() > 1).map(PowerIntegral::new),
        courses,
        formatter);
  }

  /** Returns the state of charge, if it was recorded. */
  public Finding<Trace> charge() {
    return Finding.of(soc, NO_SOC);
  }

  /** Returns the power, if it was recorded. */
  public Finding<Trace> powers() {
    return Finding.of(power, NO_POWER);
  }

  /**
   * Returns the energy channel of the whole session, preferring the counter to integrated power.
   */
  public Finding<EnergyOverTime> energy() {
    return Finding.of(counter.<EnergyOverTime>map(c -> c).or(() -> integral), NO_ENERGY);
  }

  /** Returns the state of charge if it rises over enough rows to measure the time between them. */
  public Finding<Trace> rising() {
    return charge().filter(q -> rises(), NO_GAIN).filter(q -> !hasFewRows(), FEW_ROWS);
  }

  /**
   * Returns the power readings without those of interruptions and of the climb after each, for
   * metrics of how the battery accepts power rather than when.
   */
  public Optional<Trace> steadyPower() {
    List<Event> interruptions = EventFinder.interruptions(session);
    return interruptions.isEmpty() ? power : power.map(p -> SteadyPower.of(p, interruptions));
  }

  /**
   * Returns true if there are too few rows to estimate the power between them. Totals are not
   * affected.
   */
  public boolean hasFewRows() {
    return courses.rowCount() < FEWEST_ROWS;
  }

  /** Returns the rows between which the display first showed a charge. */
  public Finding<Trace> reached(double percent) {
    return charge()
        .flatMap(
            q ->
                Finding.of(Crossing.first(q, percent), () -> whyNotReached(q, percent))
                    .from(Crossing::rows))
        .flatMap(c -> rising());
  }

  /** Returns the rows around two charges. */
  public Finding<Trace> between(double fromPercent, double toPercent) {
    return reached(fromPercent).and(reached(toPercent));
  }

  /** Returns when the display first showed each of its steps, on the mean of the courses. */
  public Finding<ChargeTimes> clock() {
    return rising().flatMap(q -> Finding.of(clock(q), FEW_ROWS));
  }

  private Optional<ChargeTimes> clock(Trace readings) {
    double step = Math.max(2 * readings.halfStep(), CLOCK_STEP);
    double first = readings.firstValue();
    int marks = (int) Math.floor((readings.lastValue() - first) / step + 1e-9);
    double[] percents = new double[marks + 1];
    for (int i = 0; i <= marks; i++) {
      percents[i] = first + i * step;
    }
    double[] seconds = new double[marks + 1];
    for (Draw draw : courses.draws()) {
      for (int i = 0; i <= marks; i++) {
        seconds[i] += draw.course().timeOfCharge(percents[i]) / courses.draws().size();
      }
    }
    return ChargeTimes.of(percents, seconds);
  }

  /** Returns true if the display showed more at the end than at the start. */
  public boolean rises() {
    return soc.filter(q -> q.lastValue() > q.firstValue()).isPresent();
  }

  /** Measures as {@link Courses#measure}. */
  public Outcome measure(ToDoubleFunction<Draw> quantity) {
    return courses.measure(quantity);
  }

  /** Returns the power rows within a stretch of time, and those next to it. */
  public List<RowRef> powerRows(double from, double to) {
    return integral.map(p -> p.rows(p.clamp(from), p.clamp(Math.max(from, to)))).orElse(List.of());
  }

  /** Returns the rows that the energy of a stretch of time is computed from. */
  public List<RowRef> energyRows(double from, double to) {
    return counter
        .<EnergyOverTime>map(c -> c)
        .filter(c -> c.covers(from, to))
        .or(() -> integral.filter(p -> p.covers(from, to)))
        .or(() -> energy().value())
        .map(e -> e.rows(e.clamp(from), e.clamp(Math.max(from, to))))
        .orElse(List.of());
  }

  /**
   * Returns when the display first showed a charge, s: after the last row that shows less, and not
   * after the first row that shows as much, which is certain for a figure that the display has.
   */
  public ToDoubleFunction<Draw> firstShown(double percent) {
    Optional<Interval> between = soc.flatMap(q -> shownBetween(q, percent));
    if (between.isEmpty()) {
      return d -> d.course().timeOfCharge(percent);
    }
    double earliest = between.get().low();
    double latest = between.get().high();
    return d -> Math.min(latest, Math.max(earliest, d.course().timeOfCharge(percent)));
  }

  /**
   * Returns the times between which the rows place the moment; empty for a figure between two
   * steps.
   */
  private static Optional<Interval> shownBetween(Trace readings, double percent) {
    double step = 2 * readings.halfStep();
    double steps = step > 0 ? (percent - readings.firstValue()) / step : 0.5;
    if (Math.abs(steps - Math.rint(steps)) > 1e-6) {
      return Optional.empty();
    }
    for (int i = 1; i < readings.size(); i++) {
      if (readings.value(i) >= percent) {
        double clock = readings.clockHalfStep();
        return readings.value(i - 1) < percent
            ? Optional.of(new Interval(readings.second(i - 1) - clock, readings.second(i) + clock))
            : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** Returns when the display first showed a charge, on the mean of the courses, s. */
  public double secondOf(double percent) {
    return courses.estimate(firstShown(percent)).map(Estimate::value).orElse(0.0);
  }

  /** Returns the state of charge if it was read before and after a time. */
  public Finding<Trace> chargeAround(Interval times) {
    return charge()
        .filter(
            q -> q.firstSecond() <= times.high() && times.low() <= q.lastSecond(),
            SOC_NOT_READ_THEN);
  }

  /** Returns the power if it was read within a stretch of time. */
  public Finding<Trace> powersWithin(double from, double to, Message otherwise) {
    return powers().filter(p -> p.firstSecond() <= to && from <= p.lastSecond(), otherwise);
  }

  /** Explains why a state of charge was not reached within the readings. */
  public Message whyNotReached(Trace readings, double percent) {
    return readings.firstValue() > percent
        ? Message.of("metric.recording.session_began_at", percent(readings.firstValue(), readings))
        : Message.of("metric.recording.session_ended_at", percent(readings.lastValue(), readings));
  }

  /** Explains why a distance is not reached; the same text for all, so that they can be grouped. */
  public Message beyondTheEnd(Trace readings) {
    return Message.of(
        "metric.recording.distance_is_reached_only_beyond",
        percent(readings.lastValue(), readings));
  }

  /** Describes time zero: plugging in, or the first row if power flows in it. */
  public String zero() {
    return session.countsFromPluggingIn()
        ? Texts.of("label.plugging_in")
        : Texts.of("label.first_row");
  }

  public String percent(double value, Trace readings) {
    return formatter.value(Estimate.around(value, readings.halfStep()), Unit.PERCENT);
  }

  /** Selects the power readings without interruptions, which show how a battery accepts power. */
  private static final class SteadyPower {
    /** A climb after an interruption ends at this share of the previous power; common practice. */
    private static final double CLIMBED = 0.9;

    private SteadyPower() {}

    /** Returns the readings outside of interruptions and of the climbs that follow them. */
    static Trace of(Trace power, List<Event> interruptions) {
      boolean[] left = new boolean[power.size()];
      interruptions.forEach(e -> leaveOut(power, e, left));
      Samples kept = new Samples(power.size());
      for (int i = 0; i < power.size(); i++) {
        if (!left[i]) {
          kept.add(power.second(i), power.value(i), power.row(i).line());
        }
      }
      return kept.isEmpty()
          ? power
          : new Trace(power.row(0).file(), kept, power.halfStep(), power.clockHalfStep());
    }

    private static void leaveOut(Trace power, Event interruption, boolean[] left) {
      int before = power.indexAtOrBefore(interruption.start().low());
      int i = before + 1;
      while (i < power.size() && power.second(i) <= interruption.end().low()) {
        left[i++] = true;
      }
      double full = CLIMBED * (before >= 0 ? power.value(before) : 0);
      while (i + 1 < power.size() && power.value(i) < full && power.value(i + 1) > power.value(i)) {
        left[i++] = true;
      }
    }
  }
}
