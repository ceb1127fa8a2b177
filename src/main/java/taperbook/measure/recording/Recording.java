package taperbook.measure.recording;

import java.util.Optional;
import taperbook.measure.curve.EnergyCounter;
import taperbook.measure.curve.EnergyOverTime;
import taperbook.measure.curve.Envelope;
import taperbook.measure.curve.PowerIntegral;
import taperbook.model.Channel;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.Session;
import taperbook.model.Trace;
import taperbook.model.Unit;
import taperbook.words.Wording;

/**
 * A session made ready for measuring: its channels with the bounds that follow from them, and the
 * words to say why something cannot be measured.
 *
 * @param session the session
 * @param soc state of charge, if recorded
 * @param envelope bounds of the true state of charge, if recorded
 * @param power power, if recorded
 * @param counter energy by the counter, if recorded
 * @param integral energy by integrating power, if recorded twice or more
 * @param wording words in the units of the report
 */
public record Recording(
    Session session,
    Optional<Trace> soc,
    Optional<Envelope> envelope,
    Optional<Trace> power,
    Optional<EnergyCounter> counter,
    Optional<PowerIntegral> integral,
    Wording wording) {

  public static final String NO_SOC = "no state of charge was recorded";
  public static final String SOC_NOT_READ_THEN = "the state of charge was not read at that time";
  public static final String NO_POWER = "no power was recorded";
  public static final String NO_ENERGY = "neither energy nor power was recorded";

  public static Recording of(Session session, Wording wording) {
    Optional<Trace> soc = session.trace(Channel.SOC);
    Optional<Trace> power = session.trace(Channel.POWER);
    return new Recording(
        session,
        soc,
        soc.map(Envelope::new),
        power,
        session.trace(Channel.ENERGY_ADDED).filter(t -> t.size() > 1).map(EnergyCounter::new),
        power.filter(t -> t.size() > 1).map(PowerIntegral::new),
        wording);
  }

  /** The energy channel that covers a stretch of time; the counter wins over integrated power. */
  public Optional<EnergyOverTime> energyOver(double from, double to) {
    if (counter.filter(c -> c.covers(from, to)).isPresent()) {
      return counter.map(c -> c);
    }
    return integral.filter(p -> p.covers(from, to)).map(p -> p);
  }

  /** The energy channel of the whole session; the counter wins over integrated power. */
  public Optional<EnergyOverTime> energy() {
    return counter.<EnergyOverTime>map(c -> c).or(() -> integral.map(p -> p));
  }

  /**
   * The state of charge at a time that is known within bounds; empty if it was not read then.
   *
   * @param second the time, s
   * @param times earliest and latest time, s
   */
  public Optional<Estimate> socAt(double second, Interval times) {
    boolean read =
        soc.filter(q -> q.firstSecond() <= second && second <= q.lastSecond()).isPresent();
    if (!read) {
      return Optional.empty();
    }
    Envelope bounds = envelope.orElseThrow();
    double low = bounds.at(times.low()).low();
    double high = bounds.at(times.high()).high();
    double value = soc.orElseThrow().at(second);
    return Optional.of(new Estimate(value, Interval.between(low, high).hull(value)));
  }

  /** Why no energy is known over a stretch for which {@link #energyOver} gives nothing. */
  public String whyNoEnergy() {
    return counter.isEmpty() && integral.isEmpty()
        ? NO_ENERGY
        : "neither energy nor power was read over the whole of that time";
  }

  /** Why the session has no clock over its state of charge. */
  public String whyNoClock() {
    return soc.isEmpty()
        ? NO_SOC
        : "the state of charge gained is not more than its display can tell";
  }

  /** Why a state of charge was not reached within the readings. */
  public String whyNotReached(Trace readings, double percent) {
    return readings.firstValue() > percent
        ? "the session began at " + percent(readings.firstValue(), readings)
        : "the session ended at " + percent(readings.lastValue(), readings);
  }

  /** Why a distance is not reached: the same for all, so that they can be listed together. */
  public String beyondTheEnd(Trace readings) {
    return "the distance is reached only beyond the "
        + percent(readings.lastValue(), readings)
        + " that the session ended at";
  }

  public String percent(double value, Trace readings) {
    return wording.reading(value, readings.halfStep(), Unit.PERCENT);
  }
}
