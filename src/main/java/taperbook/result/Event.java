package taperbook.result;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.session.Channel;
import taperbook.session.RowRef;
import taperbook.session.RowRun;

/**
 * An entry in a session's table of events.
 *
 * @param kind the kind of event
 * @param channel the display that was not read; empty for all other kinds
 * @param start bounds of its start, s since plugging in
 * @param end bounds of its end, s since plugging in; the same as the start for a note
 * @param charge state of charge at its start, %, if it was read around that time
 * @param note the tester's note; may be empty
 * @param rows input rows
 */
public record Event(
    Kind kind,
    Optional<Channel> channel,
    Interval start,
    Interval end,
    Optional<Estimate> charge,
    String note,
    List<RowRef> rows) {
  /** Copies the rows and checks the order of the ends. */
  public Event {
    rows = RowRun.packed(rows);
    if (!(start.low() <= end.low() && start.high() <= end.high())) {
      throw new IllegalArgumentException("an event cannot end before it begins: " + start);
    }
  }

  /** Kinds of events. */
  public enum Kind {
    /** Charging paused while the clock continued. */
    INTERRUPTION,
    /** A display was not read while others were. */
    NOT_READ,
    /** Only a note by the tester. */
    NOTE
  }

  /** Returns the bounds of the duration, s. */
  public Interval seconds() {
    return new Interval(Math.max(0, end.low() - start.high()), end.high() - start.low());
  }
}
