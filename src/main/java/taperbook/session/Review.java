package taperbook.session;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;

/**
 * What came of holding the readings of a session against each other, and what the tester states of
 * those that were looked at again.
 *
 * @param asRead readings that were looked at again, in the order of the file
 * @param misreads readings that do not fit the others, the worst first
 */
public record Review(List<AsRead> asRead, List<Misread> misreads) {
  /** Nothing stated, nothing found. */
  public static final Review NONE = new Review(List.of(), List.of());

  /** Copies the lists. */
  public Review {
    asRead = List.copyOf(asRead);
    misreads = List.copyOf(misreads);
  }

  /**
   * Readings of one row that the tester looked at again.
   *
   * @param row the row
   * @param channels what was looked at, of those that the row has
   * @param isConfirmed true if they were read like that, false if that remains in doubt
   */
  public record AsRead(RowRef row, List<Channel> channels, boolean isConfirmed) {
    /** Copies the channels. */
    public AsRead {
      channels = List.copyOf(channels);
    }
  }

  /**
   * A reading that does not fit the others.
   *
   * @param channel what was read; empty if it is the time of the row
   * @param row the row
   * @param column its column in the file, from 1; 0 if that is not known
   * @param second time of the row as it was read, s
   * @param read the reading, in the channel's base unit, or s
   * @param halfStep half the display's step in that unit
   * @param fitting what would fit, in the same unit
   * @param slip the slip of the pen that explains it, if exactly one does, such as {@code 26:
   *     digits swapped?}
   * @param isImpossible true if it cannot be right whatever happened
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
    /** Unit of what was read. */
    public Unit unit() {
      return channel.map(c -> Unit.base(c.quantity())).orElse(Unit.SECOND);
    }

    /** Name of its column. */
    public String name() {
      return channel.map(Channel::columnName).orElse("time");
    }
  }

  /** True if a reading was looked at again and confirmed. */
  public boolean isConfirmed(Channel channel, RowRef row) {
    return asRead.stream()
        .anyMatch(a -> a.isConfirmed() && a.row().equals(row) && a.channels().contains(channel));
  }

  /** The same with misreads that were found. */
  public Review with(List<Misread> found) {
    return new Review(asRead, found);
  }
}
