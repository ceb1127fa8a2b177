package taperbook.metric.recording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import taperbook.metric.bounds.GapRule;
import taperbook.quantity.DistinctNumbers;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Event;
import taperbook.session.Channel;
import taperbook.session.Session;
import taperbook.session.Trace;

/** Finds the events of a session: interruptions, displays not read, and notes. */
public final class EventFinder {
  /** A display that is read in a smaller share of rows counts as recorded only occasionally. */
  private static final double MOSTLY_READ = 0.8;

  private EventFinder() {}

  /** Returns all events of a session, in order. Equal notes of consecutive rows are one event. */
  public static List<Event> of(Session session) {
    List<Event> events = new ArrayList<>(interruptions(session));
    events.addAll(notRead(session));
    List<Event> found = List.copyOf(events);
    Session.Note before = null;
    for (Session.Note note : session.notes()) {
      boolean again = before != null && before.text().equals(note.text());
      if (!again && found.stream().noneMatch(e -> isWithin(note, e))) {
        events.add(note(session, note));
      }
      before = note;
    }
    events.sort(
        Comparator.comparingDouble((Event e) -> e.start().low())
            .thenComparingDouble(e -> e.start().high()));
    return events;
  }

  /** Returns the interruptions of charging, in order. */
  public static List<Event> interruptions(Session session) {
    return Interruptions.of(session);
  }

  /**
   * Returns the times at which a display that is read in most rows was skipped while others were
   * read, and the tester added a note.
   */
  public static List<Event> notRead(Session session) {
    if (session.notes().isEmpty()) {
      return List.of();
    }
    DistinctNumbers rows = session.rowTimes();
    List<Event> events = new ArrayList<>();
    for (Channel channel : List.of(Channel.SOC, Channel.POWER)) {
      session
          .trace(channel)
          .filter(t -> t.size() >= MOSTLY_READ * rows.size())
          .ifPresent(t -> notRead(session, channel, t, rows, events));
    }
    return events;
  }

  private static void notRead(
      Session session, Channel channel, Trace trace, DistinctNumbers rows, List<Event> events) {
    for (int i = 0; i + 1 < trace.size(); i++) {
      int without = rows.countBetween(trace.second(i), trace.second(i + 1));
      String note = notes(session, trace.second(i), trace.second(i + 1));
      if (without > 0 && !note.isEmpty() && (without > 1 || GapRule.isWide(trace, i))) {
        events.add(
            new Event(
                Event.Kind.NOT_READ,
                Optional.of(channel),
                Interval.exactly(trace.second(i)),
                Interval.exactly(trace.second(i + 1)),
                chargeAt(session, trace.second(i)),
                note,
                trace.rows(i, i + 1)));
      }
    }
  }

  private static Event note(Session session, Session.Note note) {
    return new Event(
        Event.Kind.NOTE,
        Optional.empty(),
        Interval.exactly(note.second()),
        Interval.exactly(note.second()),
        chargeAt(session, note.second()),
        note.text(),
        List.of(note.row()));
  }

  private static boolean isWithin(Session.Note note, Event event) {
    return event.start().low() < note.second() && note.second() < event.end().high();
  }

  /** Returns the tester's notes between two times, both exclusive, each distinct text once. */
  public static String notes(Session session, double from, double to) {
    return session.notes().stream()
        .filter(n -> from < n.second() && n.second() < to)
        .map(Session.Note::text)
        .distinct()
        .collect(Collectors.joining("; "));
  }

  /** Returns the displayed charge at a time; between two readings, the interval between them. */
  static Optional<Estimate> chargeAt(Session session, double second) {
    return session
        .trace(Channel.SOC)
        .filter(t -> t.firstSecond() <= second && second <= t.lastSecond())
        .map(
            t -> {
              int i = t.indexAtOrBefore(second);
              double value = t.value(i);
              double next = t.second(i) == second ? value : t.value(i + 1);
              Interval shown = Interval.between(value, next);
              return new Estimate(
                  shown.middle(),
                  new Interval(shown.low() - t.halfStep(), shown.high() + t.halfStep()));
            });
  }
}
