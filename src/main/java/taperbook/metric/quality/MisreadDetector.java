package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import taperbook.metric.course.ReadingFit;
import taperbook.metric.recording.EventFinder;
import taperbook.quantity.DistinctNumbers;
import taperbook.quantity.Interval;
import taperbook.result.Event;
import taperbook.session.Channel;
import taperbook.session.Review.Misread;
import taperbook.session.RowRef;
import taperbook.session.Session;
import taperbook.session.Trace;

/**
 * Finds readings that cannot be right or do not fit the others: compares each with one course of
 * the session and reports the cell, or the time of a row, without which the course fits best.
 */
public final class MisreadDetector {
  /** Minimum gain in fit of a reported reading; calibrated on correct sessions. */
  private static final double LEAST_GAIN = 7.5;

  /** Sessions with fewer rows require more gain, by the square of this divided by their number. */
  private static final double MANY_ROWS = 12;

  private static final int FEWEST_ROWS = 5;

  /** Number of worst readings that are tried and reported. */
  private static final int TRIED = 8;

  private static final int MOST_REPORTED = 6;

  /** Minimum gain of blaming a row's time beyond blaming one of its cells. */
  private static final double GAIN_OF_TIME = 4;

  private final Session session;
  private final PhysicalLimits ratings;
  private final List<Event> interruptions;
  private final List<Misread> found = new ArrayList<>();

  private MisreadDetector(Session session) {
    this.session = session;
    this.ratings = new PhysicalLimits(session);
    this.interruptions = EventFinder.interruptions(session);
  }

  /** Returns the readings that do not fit, worst first, without those that the tester confirmed. */
  public static List<Misread> find(Session session) {
    MisreadDetector search = new MisreadDetector(session);
    search.findImpossiblePowers();
    int rows = session.rowTimes().size();
    if (rows > Trace.MOST_BY_HAND) {
      search.findLoggedSpikes();
    } else if (rows >= FEWEST_ROWS) {
      search.findInconsistentReadings(rows);
    }
    return search.found;
  }

  /** Finds powers that are impossible whatever the other readings are. */
  private void findImpossiblePowers() {
    Optional<Trace> power = session.trace(Channel.POWER);
    for (int i = 0; power.isPresent() && i < power.get().size(); i++) {
      Optional<Interval> possible = ratings.possibleUnless(power.get(), i);
      if (possible.isPresent() && !isConfirmed(power.get(), Channel.POWER, i)) {
        double half = power.get().halfStep();
        Interval fitting = new Interval(possible.get().low() - half, possible.get().high() + half);
        add(Channel.POWER, power.get(), i, fitting, true);
      }
    }
  }

  private void findLoggedSpikes() {
    for (Channel channel : List.of(Channel.SOC, Channel.POWER, Channel.ENERGY_ADDED)) {
      session
          .trace(channel)
          .ifPresent(
              trace ->
                  LoggedSpikes.of(trace)
                      .forEach(
                          (i, fitting) -> {
                            if (!isKnown(trace.row(i), channel)
                                && !isConfirmed(trace, channel, i)
                                && found.size() < MOST_REPORTED) {
                              add(channel, trace, i, fitting, false);
                            }
                          }));
    }
  }

  private boolean isKnown(RowRef row, Channel channel) {
    return found.stream()
        .anyMatch(m -> m.row().equals(row) && m.channel().filter(c -> c == channel).isPresent());
  }

  private void findInconsistentReadings(int rows) {
    double scarce = MANY_ROWS / Math.min(MANY_ROWS, rows);
    double least = LEAST_GAIN * scarce * scarce;
    ReadingFit fit = new ReadingFit(session);
    BitSet impossible = new BitSet();
    for (int i = 0; i < fit.size(); i++) {
      if (isKnown(row(fit, i), fit.channel(i))) {
        impossible.set(i);
      }
    }
    if (!impossible.isEmpty()) {
      fit.leaveOut(impossible);
    }
    while (found.size() < MOST_REPORTED) {
      Optional<Blame> worst = worst(fit);
      if (worst.isEmpty() || worst.get().gain() < least) {
        return;
      }
      report(fit, worst.get());
    }
  }

  /** A reading, and the gain in fit without it. */
  private record Blame(int reading, double gain) {}

  private Optional<Blame> worst(ReadingFit fit) {
    return fit.likely(TRIED).stream()
        .filter(i -> !fit.isLeftOut(i))
        .filter(i -> !isConfirmed(trace(fit.channel(i)), fit.channel(i), fit.index(i)))
        .filter(i -> fit.channel(i) != Channel.POWER || !isInterrupted(fit.second(i)))
        .map(i -> new Blame(i, fit.gainWithout(only(i)) - fit.excusedGain(i)))
        .max(Comparator.comparingDouble(Blame::gain));
  }

  /**
   * Returns true if charging was interrupted or about to be: the displayed power is then correct.
   */
  private boolean isInterrupted(double second) {
    return interruptions.stream()
        .anyMatch(e -> e.start().low() <= second && second <= e.end().high());
  }

  private static BitSet only(int i) {
    BitSet one = new BitSet();
    one.set(i);
    return one;
  }

  private void report(ReadingFit fit, Blame worst) {
    int i = worst.reading();
    BitSet row = new BitSet();
    for (int k = 0; k < fit.size(); k++) {
      if (!fit.isLeftOut(k) && row(fit, k).equals(row(fit, i))) {
        row.set(k);
      }
    }
    boolean wholeRow = row.cardinality() > 1 && fit.gainWithout(row) > worst.gain() + GAIN_OF_TIME;
    if (wholeRow) {
      fit.leaveOut(row);
      Optional<Interval> times = fit.timesThatFit(row, between(fit.second(i)));
      if (times.isPresent()) {
        addTime(fit, i, times.get());
        return;
      }
    } else {
      fit.leaveOut(only(i));
    }
    Trace trace = trace(fit.channel(i));
    Interval fitting = possible(fit.channel(i), fit.fitting(i));
    add(
        fit.channel(i),
        trace,
        fit.index(i),
        fitting,
        fit.channel(i) == Channel.SOC && PhysicalLimits.jumps(trace, fit.index(i)));
  }

  private static Interval possible(Channel channel, Interval fitting) {
    double most = channel == Channel.SOC ? 100 : Double.POSITIVE_INFINITY;
    double low = Math.min(most, Math.max(0, fitting.low()));
    return new Interval(low, Math.max(low, Math.min(most, fitting.high())));
  }

  /** Returns the times between the rows before and after. */
  private Interval between(double second) {
    DistinctNumbers rows = session.rowTimes();
    OptionalDouble before = rows.below(second);
    OptionalDouble after = rows.above(second);
    return new Interval(
        before.isEmpty() ? second : before.getAsDouble() + 1,
        after.isEmpty() ? second + (second - before.orElse(second)) : after.getAsDouble() - 1);
  }

  private Trace trace(Channel channel) {
    return session.trace(channel).orElseThrow();
  }

  private RowRef row(ReadingFit fit, int i) {
    return trace(fit.channel(i)).row(fit.index(i));
  }

  private boolean isConfirmed(Trace trace, Channel channel, int i) {
    return session.review().isConfirmed(channel, trace.row(i));
  }

  private void add(Channel channel, Trace trace, int i, Interval fitting, boolean impossible) {
    found.add(
        new Misread(
            Optional.of(channel),
            trace.row(i),
            trace.column(),
            trace.second(i),
            trace.value(i),
            trace.halfStep(),
            fitting,
            TranscriptionSlip.explaining(trace, i, fitting),
            impossible));
  }

  private void addTime(ReadingFit fit, int i, Interval times) {
    Trace trace = trace(fit.channel(i));
    double second = fit.second(i);
    found.add(
        new Misread(
            Optional.empty(),
            row(fit, i),
            0,
            second,
            second,
            trace.clockHalfStep(),
            times,
            TranscriptionSlip.explainingTime(second, times),
            false));
  }
}
