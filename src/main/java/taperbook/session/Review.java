package taperbook.session;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;

/**
 * The result of checking a session's readings for consistency, and what the tester recorded about
 * rechecked readings.
 *
 * @param asRead readings that were rechecked, in file order
 * @param misreads readings that do not fit the others, worst first
 */
public record Review(List<AsRead> asRead, List<Misread> misreads) {
  /** A review without rechecked readings or misreads. */
  public static final Review NONE = new Review(List.of(), List.of());

  public Review {
    asRead = List.copyOf(asRead);
    misreads = List.copyOf(misreads);
  }

  /**
   * Readings of one row that the tester rechecked.
   *
   * @param row the row
   * @param channels the rechecked channels that have a value in the row
   * @param isConfirmed true if the readings were confirmed, false if they remain doubtful
   */
  public record AsRead(RowRef row, List<Channel> channels, boolean isConfirmed) {
    public AsRead {
      channels = List.copyOf(channels);
    }
  }

  /**
   * A reading that does not fit the others.
   *
   * @param channel the channel that was read; empty if it is the time of the row
   * @param row the row
   * @param column its column in the file, from 1; 0 if not known
   * @param second time of the row as read, s
   * @param read the reading, in the channel's base unit, or s
   * @param halfStep half the display's step in that unit
   * @param fitting a value that would fit, in the same unit
   * @param slip the writing error that explains it, if exactly one does, such as {@code 26: digits
   *     swapped?}
   * @param isImpossible true if the reading cannot be correct under any circumstances
   */
  public record Misread(
      Optional<Channel> channel,
      RowRef row,
      int column,
      double second,
      double read,
      double halfStep,
      Interval fitting,
      Optional<String> slip,
      boolean isImpossible) {
    /** Returns the unit of the reading. */
    public Unit unit() {
      return channel.map(c -> Unit.base(c.quantity())).orElse(Unit.SECOND);
    }

    public String name() {
      return channel.map(Channel::columnName).orElse("time");
    }
  }

  /** Returns true if a reading was rechecked and confirmed. */
  public boolean isConfirmed(Channel channel, RowRef row) {
    return asRead.stream()
        .anyMatch(a -> a.isConfirmed() && a.row().equals(row) && a.channels().contains(channel));
  }

  /** Returns the same review with the given misreads. */
  public Review with(List<Misread> found) {
    return new Review(asRead, found);
  }
}
