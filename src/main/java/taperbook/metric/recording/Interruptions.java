package taperbook.metric.recording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import taperbook.quantity.DistinctNumbers;
import taperbook.quantity.Interval;
import taperbook.result.Event;
import taperbook.session.Channel;
import taperbook.session.RowRef;
import taperbook.session.Session;
import taperbook.session.Trace;

/**
 * Finds interruptions of charging: the power reads zero between rows with power, a counter or the
 * charge is unchanged for much longer than around it, or the tester noted a pause. Idle time at the
 * start or the end of a session is not an interruption. Thresholds are choices of this program.
 */
final class Interruptions {
  /** Powers up to this share of the highest count as zero: a car at rest still draws a little. */
  private static final double IDLE_SHARE = 0.01;

  /** A counter or charge is idle if a step takes this many times as long as those around it. */
  private static final double REST = 3;

  /** Minimum duration of an idle phase, s. */
  private static final double LEAST_REST_SECONDS = 60;

  /** Number of steps on each side that define the usual pace. */
  private static final int BESIDE = 2;

  /** Minimum share of the energy that a single zero would cost that must be missing. */
  private static final double MISSING_SHARE = 0.1;

  private final Session session;
  private final List<Event> found = new ArrayList<>();

  private Interruptions(Session session) {
    this.session = session;
  }

  /** Returns all interruptions of a session, in order. */
  static List<Event> of(Session session) {
    Interruptions all = new Interruptions(session);
    session.trace(Channel.POWER).ifPresent(all::byPower);
    all.byNotes();
    session.trace(Channel.ENERGY_ADDED).ifPresent(all::byRest);
    session.trace(Channel.SOC).ifPresent(all::byRest);
    all.found.sort(Comparator.comparingDouble(e -> e.start().low()));
    return all.found;
  }

  /** Returns the highest power that counts as none. */
  private static double idle(Trace power) {
    return Math.max(power.halfStep(), IDLE_SHARE * power.max());
  }

  private static boolean isIdle(Trace power, int i) {
    return power.value(i) <= idle(power);
  }

  private void byPower(Trace power) {
    int last = power.size() - 1;
    double idle = idle(power);
    for (int i = 1; i < last; i++) {
      if (power.value(i) > idle || power.value(i - 1) <= idle) {
        continue;
      }
      int j = i;
      while (j < last && power.value(j + 1) <= idle) {
        j++;
      }
      if (j < last && !continues(power, i, j)) {
        Interval start = new Interval(power.second(i - 1), power.second(i));
        Interval end = new Interval(power.second(j), power.second(j + 1));
        add(start, end, power.rows(i - 1, j + 1));
      }
      i = j;
    }
  }

  /**
   * Returns true if charge or energy continue to rise as if power flowed: the zeros are then wrong.
   */
  private boolean continues(Trace power, int i, int j) {
    boolean rises =
        Stream.of(Channel.SOC, Channel.ENERGY_ADDED)
            .flatMap(c -> session.trace(c).stream())
            .anyMatch(t -> rise(t, power.second(i), power.second(j)) > 2 * step(t));
    if (rises || i < j) {
      return rises;
    }
    double seconds = power.second(j + 1) - power.second(i - 1);
    double whole = (power.value(i - 1) + power.value(j + 1)) / 2 * seconds / 3600;
    Optional<Trace> counter = session.trace(Channel.ENERGY_ADDED);
    return counter
        .filter(t -> isReadAt(t, power.second(i - 1)) && isReadAt(t, power.second(j + 1)))
        .filter(
            t ->
                rise(t, power.second(i - 1), power.second(j + 1)) + step(t)
                    > (1 - MISSING_SHARE) * whole)
        .isPresent();
  }

  private static double step(Trace trace) {
    return Math.max(2 * trace.halfStep(), 1e-3);
  }

  private static boolean isReadAt(Trace trace, double second) {
    int i = trace.indexAtOrBefore(second);
    return i >= 0 && trace.second(i) == second;
  }

  /** Returns the rise of the readings between two times, inclusive; 0 if fewer than two. */
  private static double rise(Trace trace, double from, double to) {
    int before = trace.indexAtOrBefore(from);
    int first = before >= 0 && trace.second(before) == from ? before : before + 1;
    int last = trace.indexAtOrBefore(to);
    return first <= last ? trace.value(last) - trace.value(first) : 0;
  }

  /** Finds runs of equal readings that last much longer than the surrounding readings suggest. */
  private void byRest(Trace trace) {
    int n = trace.size();
    for (int i = 1; i < n - 1; i++) {
      int j = i;
      while (j + 1 < n && trace.value(j + 1) == trace.value(i)) {
        j++;
      }
      double dwell = j > i && j < n - 1 ? dwell(trace, i, j) : Double.POSITIVE_INFINITY;
      double rest = trace.second(j) - trace.second(i);
      if (rest > Math.max(LEAST_REST_SECONDS, REST * dwell) && !isPowered(trace, i, j)) {
        Interval start =
            new Interval(trace.second(i - 1), Math.min(trace.second(j), trace.second(i) + dwell));
        Interval end =
            new Interval(Math.max(trace.second(i), trace.second(j) - dwell), trace.second(j + 1));
        addRest(start, end, trace.rows(i - 1, j + 1));
      }
      i = j;
    }
  }

  /** Returns the duration of a step at the slower of the paces before and after, s. */
  private static double dwell(Trace trace, int i, int j) {
    double steps = BESIDE * step(trace);
    int from = i;
    while (from > 0 && trace.value(i) - trace.value(from) < steps) {
      from--;
    }
    while (from > 0 && trace.value(from - 1) == trace.value(from)) {
      from--;
    }
    int next = j + 1;
    int to = next;
    while (to + 1 < trace.size() && trace.value(to) - trace.value(next) < steps) {
      to++;
    }
    double before = trace.value(i) - trace.value(from);
    double after = trace.value(to) - trace.value(next);
    if (!(before > 0 && after > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    double slower =
        Math.max(
            (trace.second(i) - trace.second(from)) / before,
            (trace.second(to) - trace.second(next)) / after);
    return slower * step(trace);
  }

  /** Returns true if a power reading, or another counter, shows that charging continued. */
  private boolean isPowered(Trace trace, int i, int j) {
    double from = trace.second(i);
    double to = trace.second(j);
    boolean flows =
        session
            .trace(Channel.POWER)
            .filter(
                p -> {
                  int last = p.indexAtOrBefore(to - 1e-9);
                  return last >= 0 && p.second(last) > from && !isIdle(p, last);
                })
            .isPresent();
    return flows
        || Stream.of(Channel.SOC, Channel.ENERGY_ADDED)
            .flatMap(c -> session.trace(c).stream())
            .anyMatch(t -> rise(t, from, to) > 2 * step(t));
  }

  /** Finds rows with a note of a pause and merges adjacent ones. */
  private void byNotes() {
    List<Session.Note> pauses = session.notes().stream().filter(this::isPause).toList();
    DistinctNumbers rows = session.rowTimes();
    for (int i = 0; i < pauses.size(); i++) {
      int j = i;
      while (j + 1 < pauses.size()
          && rows.countBetween(pauses.get(j).second(), pauses.get(j + 1).second()) == 0) {
        j++;
      }
      OptionalDouble before = rows.below(pauses.get(i).second());
      OptionalDouble after = rows.above(pauses.get(j).second());
      if (before.isPresent() && after.isPresent()) {
        List<RowRef> noted = pauses.subList(i, j + 1).stream().map(Session.Note::row).toList();
        addUnlessKnown(
            new Interval(before.getAsDouble(), pauses.get(i).second()),
            new Interval(pauses.get(j).second(), after.getAsDouble()),
            noted);
      }
      i = j;
    }
  }

  /** A noted pause next to a power reading is not a pause; the input check reports it. */
  private boolean isPause(Session.Note note) {
    boolean powered =
        session
            .trace(Channel.POWER)
            .filter(p -> isReadAt(p, note.second()))
            .filter(p -> !isIdle(p, p.indexAtOrBefore(note.second())))
            .isPresent();
    return note.isPause() && !powered;
  }

  /** Adds an idle phase, or merges it with the noted pause that it contains. */
  private void addRest(Interval start, Interval end, List<RowRef> rows) {
    Interval whole = new Interval(start.low(), end.high());
    Optional<Event> pause =
        found.stream().filter(e -> isNoted(e) && whole(e).overlaps(whole)).findFirst();
    if (pause.isEmpty()) {
      addUnlessKnown(start, end, rows);
      return;
    }
    found.remove(pause.get());
    List<RowRef> all = new ArrayList<>(pause.get().rows());
    all.addAll(rows);
    add(
        both(pause.get().start(), start, Math.min(pause.get().start().low(), start.low())),
        both(pause.get().end(), end, Math.max(pause.get().end().low(), end.low())),
        all);
  }

  /** Intersects two intervals; if that is empty, returns the one that begins at the given time. */
  private static Interval both(Interval one, Interval other, double begin) {
    if (!one.overlaps(other)) {
      return one.low() == begin ? one : other;
    }
    return new Interval(Math.max(one.low(), other.low()), Math.min(one.high(), other.high()));
  }

  /** Returns true for a pause that is known from notes, whose rows have no power. */
  private boolean isNoted(Event event) {
    return session.notes().stream()
        .anyMatch(n -> n.isPause() && event.rows().contains(n.row()) && isWithoutPower(n));
  }

  private boolean isWithoutPower(Session.Note note) {
    return session.trace(Channel.POWER).filter(p -> isReadAt(p, note.second())).isEmpty();
  }

  private static Interval whole(Event event) {
    return new Interval(event.start().low(), event.end().high());
  }

  private void addUnlessKnown(Interval start, Interval end, List<RowRef> rows) {
    Interval whole = new Interval(start.low(), end.high());
    boolean known =
        found.stream().anyMatch(e -> new Interval(e.start().low(), e.end().high()).overlaps(whole));
    if (!known) {
      add(start, end, rows);
    }
  }

  private void add(Interval start, Interval end, List<RowRef> rows) {
    String note = EventFinder.notes(session, start.low(), end.high());
    found.add(
        new Event(
            Event.Kind.INTERRUPTION,
            Optional.empty(),
            start,
            end,
            EventFinder.chargeAt(session, start.high()),
            note,
            rows));
  }
}
