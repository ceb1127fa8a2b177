package taperbook.result;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.session.Channel;
import taperbook.session.RowRef;

/**
 * Something that happened in a session, as its table of events lists it.
 *
 * @param kind what it is
 * @param channel the display that was not read; empty for all other kinds
 * @param start when it began, s since plugging in: somewhere between the ends
 * @param end when it ended, s since plugging in; the same as the start of a note
 * @param charge state of charge at its start, %, if that was read around it
 * @param note what the tester wrote beside it; perhaps empty
 * @param rows where it stands
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
    rows = List.copyOf(rows);
    if (!(start.low() <= end.low() && start.high() <= end.high())) {
      throw new IllegalArgumentException("an event cannot end before it begins: " + start);
    }
  }

  /** What an event is. */
  public enum Kind {
    /** Charging stood still while the clock went on. */
    INTERRUPTION,
    /** A display was not read while others were. */
    NOT_READ,
    /** The tester's note alone. */
    NOTE
  }

  /** How long it lasted, s: what its ends allow. */
  public Interval seconds() {
    return new Interval(Math.max(0, end.low() - start.high()), end.high() - start.low());
  }
}
