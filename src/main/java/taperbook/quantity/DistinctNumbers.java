package taperbook.session;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * The distinct times of rows in ascending order, s. An array and not a set of objects because a log
 * may have a million rows.
 */
public final class RowTimes {
  private final double[] seconds;

  private RowTimes(double[] seconds) {
    this.seconds = seconds;
  }

  /** Sorts times, which may repeat. */
  static RowTimes of(Stream<Trace> traces) {
    return distinct(traces.map(Trace::seconds).flatMapToDouble(Arrays::stream));
  }

  private static RowTimes distinct(DoubleStream times) {
    double[] sorted = times.toArray();
    Arrays.sort(sorted);
    int size = 0;
    for (double second : sorted) {
      if (size == 0 || second != sorted[size - 1]) {
        sorted[size] = second;
        size++;
      }
    }
    return new RowTimes(Arrays.copyOf(sorted, size));
  }

  /** Returns these times and another one. */
  public RowTimes with(double second) {
    return distinct(DoubleStream.concat(stream(), DoubleStream.of(second)));
  }

  /** Returns the times in ascending order. */
  public DoubleStream stream() {
    return Arrays.stream(seconds);
  }

  /** Returns the number of times. */
  public int size() {
    return seconds.length;
  }

  /** Returns the first time; there must be one. */
  public double first() {
    return seconds[0];
  }

  /** Returns the last time; there must be one. */
  public double last() {
    return seconds[seconds.length - 1];
  }

  /** Returns the last time before another one. */
  public OptionalDouble before(double second) {
    int from = firstFrom(second);
    return from == 0 ? OptionalDouble.empty() : OptionalDouble.of(seconds[from - 1]);
  }

  /** Returns the first time after another one. */
  public OptionalDouble after(double second) {
    int after = firstAfter(second);
    return after == size() ? OptionalDouble.empty() : OptionalDouble.of(seconds[after]);
  }

  /** Returns the number of times between two others, both exclusive. */
  public int countBetween(double from, double to) {
    return Math.max(0, firstFrom(to) - firstAfter(from));
  }

  private int firstFrom(double second) {
    int found = Arrays.binarySearch(seconds, second);
    return found >= 0 ? found : -found - 1;
  }

  private int firstAfter(double second) {
    int found = Arrays.binarySearch(seconds, second);
    return found >= 0 ? found + 1 : -found - 1;
  }
}
