package taperbook.session;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * The readings of one channel over time: only rows in which the channel has a value. Lines rise and
 * times never decrease; there is at least one reading.
 *
 * <p>A final class and not a record because it contains arrays, which it copies and never exposes.
 */
public final class Trace {
  /** Maximum number of readings that are treated as written by hand. */
  public static final int MOST_BY_HAND = 200;

  private final String file;
  private final double[] seconds;
  private final double[] values;
  private final int[] lines;

  /**
   * Decimal places as recorded, in the base unit; {@link Samples#NOT_WRITTEN} for computed values.
   */
  private final byte[] places;

  private final double halfStep;
  private final double clockHalfStep;
  private final int column;
  private final int indexOfMax;

  /**
   * Copies the readings.
   *
   * @param file path of the file
   * @param seconds time since plugging in, s, never decreasing
   * @param values the readings in the channel's base unit, finite
   * @param lines the line of each reading, from 1, rising
   * @param halfStep half the display's resolution in the base unit, not negative
   * @param clockHalfStep half the resolution of the clock, s, not negative
   * @throws IllegalArgumentException if there is no reading, lengths differ, times decrease, or a
   *     value is not finite
   */
  public Trace(
      String file,
      double[] seconds,
      double[] values,
      int[] lines,
      double halfStep,
      double clockHalfStep) {
    this(
        file,
        0,
        halfStep,
        clockHalfStep,
        seconds.clone(),
        values.clone(),
        lines.clone(),
        notWritten(seconds.length));
  }

  /**
   * Takes over collected readings.
   *
   * @param file path of the file
   * @param samples the readings, at least one; their times never decrease
   * @param halfStep half the display's resolution in the base unit, not negative
   * @param clockHalfStep half the resolution of the clock, s, not negative
   */
  public Trace(String file, Samples samples, double halfStep, double clockHalfStep) {
    this(
        file,
        0,
        halfStep,
        clockHalfStep,
        samples.takeSeconds(),
        samples.takeValues(),
        samples.takeLines(),
        samples.takePlaces());
  }

  private static byte[] notWritten(int size) {
    byte[] places = new byte[size];
    Arrays.fill(places, Samples.NOT_WRITTEN);
    return places;
  }

  /** Takes ownership of the arrays without copying them. */
  private Trace(
      String file,
      int column,
      double halfStep,
      double clockHalfStep,
      double[] seconds,
      double[] values,
      int[] lines,
      byte[] places) {
    if (seconds.length == 0 || seconds.length != values.length || seconds.length != lines.length) {
      throw new IllegalArgumentException("a trace needs readings of one length");
    }
    if (!(halfStep >= 0 && clockHalfStep >= 0)) {
      throw new IllegalArgumentException("steps must not be negative");
    }
    int max = 0;
    for (int i = 0; i < seconds.length; i++) {
      max = values[i] > values[max] ? i : max;
      if (!Double.isFinite(values[i])
          || !Double.isFinite(seconds[i])
          || (i > 0 && seconds[i] < seconds[i - 1])) {
        throw new IllegalArgumentException("reading " + i + " is out of order or not finite");
      }
    }
    this.indexOfMax = max;
    this.file = file;
    this.column = column;
    this.seconds = seconds;
    this.values = values;
    this.lines = lines;
    this.places = places;
    this.halfStep = halfStep;
    this.clockHalfStep = clockHalfStep;
  }

  /** Returns the same readings with the number of their column in the file, from 1. */
  public Trace inColumn(int number) {
    return new Trace(file, number, halfStep, clockHalfStep, seconds, values, lines, places);
  }

  /** Returns the column of the readings in the file, from 1; 0 if not known. */
  public int column() {
    return column;
  }

  /** Returns the readings without those of a row; empty if none remain. */
  public Optional<Trace> withoutRow(RowRef row) {
    int[] kept = IntStream.range(0, size()).filter(i -> !row(i).equals(row)).toArray();
    if (kept.length == 0) {
      return Optional.empty();
    }
    byte[] keptPlaces = new byte[kept.length];
    for (int i = 0; i < kept.length; i++) {
      keptPlaces[i] = places[kept[i]];
    }
    return Optional.of(
        new Trace(
            file,
            column,
            halfStep,
            clockHalfStep,
            Arrays.stream(kept).mapToDouble(i -> seconds[i]).toArray(),
            Arrays.stream(kept).mapToDouble(i -> values[i]).toArray(),
            Arrays.stream(kept).map(i -> lines[i]).toArray(),
            keptPlaces));
  }

  /** Returns the number of readings, at least 1. */
  public int size() {
    return seconds.length;
  }

  /** Returns true if it has so many readings that a logger wrote them: more than 200. */
  public boolean isLog() {
    return size() > MOST_BY_HAND;
  }

  /** Returns the time of reading {@code i} since plugging in, s. */
  public double second(int i) {
    return seconds[i];
  }

  /** Returns reading {@code i} in the channel's base unit. */
  public double value(int i) {
    return values[i];
  }

  /**
   * Returns the recorded decimal places of reading {@code i}, in the base unit; empty if it is
   * computed.
   */
  public OptionalInt places(int i) {
    return places[i] == Samples.NOT_WRITTEN ? OptionalInt.empty() : OptionalInt.of(places[i]);
  }

  /** Returns the input row of reading {@code i}. */
  public RowRef row(int i) {
    return new RowRef(file, lines[i]);
  }

  /** Returns the index of the reading of an input row, if it has one. */
  public OptionalInt indexOf(RowRef row) {
    int i = row.file().equals(file) ? Arrays.binarySearch(lines, row.line()) : -1;
    return i >= 0 ? OptionalInt.of(i) : OptionalInt.empty();
  }

  /** Returns the input rows of a range of readings, both ends included. */
  public List<RowRef> rows(int first, int last) {
    List<RowRun> runs = new ArrayList<>();
    int begin = first;
    for (int i = first; i <= last; i++) {
      if (i == last || lines[i + 1] != lines[i] + 1) {
        runs.add(new RowRun(file, lines[begin], lines[i]));
        begin = i + 1;
      }
    }
    return RowList.ofRuns(runs);
  }

  /** Returns a copy of all times, s. */
  public double[] seconds() {
    return seconds.clone();
  }

  /** Returns a copy of all values, in the channel's base unit. */
  public double[] values() {
    return values.clone();
  }

  /** Returns half the display's resolution, in the channel's base unit. */
  public double halfStep() {
    return halfStep;
  }

  /** Returns half the clock's resolution, s. */
  public double clockHalfStep() {
    return clockHalfStep;
  }

  /** Returns the time of the first reading, s. */
  public double firstSecond() {
    return seconds[0];
  }

  /** Returns the time of the last reading, s. */
  public double lastSecond() {
    return seconds[seconds.length - 1];
  }

  public double firstValue() {
    return values[0];
  }

  public double lastValue() {
    return values[values.length - 1];
  }

  /** Returns the index of the first maximum. */
  public int indexOfMax() {
    return indexOfMax;
  }

  /** Returns the index of the first reading above a value. */
  public OptionalInt firstAbove(double value) {
    return IntStream.range(0, size()).filter(i -> value(i) > value).findFirst();
  }

  /** Returns the index of the last reading above a value. */
  public OptionalInt lastAbove(double value) {
    return IntStream.range(0, size())
        .map(i -> size() - 1 - i)
        .filter(i -> value(i) > value)
        .findFirst();
  }

  public double max() {
    return values[indexOfMax];
  }

  /**
   * Returns the index of the last reading at or before a time, or -1 if there is none. If several
   * readings have that time, returns the last of them.
   */
  public int indexAtOrBefore(double second) {
    int likely = likelyIndex(second);
    if (likely >= 0) {
      return likely;
    }
    int low = 0;
    int high = seconds.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (seconds[middle] <= second) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low - 1;
  }

  /**
   * Computes the index directly for evenly spaced readings, as in a log; returns -1 if a search is
   * needed.
   */
  private int likelyIndex(double second) {
    int last = seconds.length - 1;
    double share = (second - seconds[0]) / (seconds[last] - seconds[0]);
    if (!(share >= 0 && share < 1)) {
      return -1;
    }
    int i = (int) (share * last);
    i = i > 0 && seconds[i] > second ? i - 1 : i;
    i = i < last && seconds[i + 1] <= second ? i + 1 : i;
    return i < last && seconds[i] <= second && second < seconds[i + 1] ? i : -1;
  }

  /**
   * Returns the piecewise-linear interpolation at a time within the recorded span.
   *
   * @throws IllegalArgumentException if the time lies before the first or after the last reading
   */
  public double at(double second) {
    if (!(second >= firstSecond() && second <= lastSecond())) {
      throw new IllegalArgumentException(second + " s was not recorded");
    }
    int i = indexAtOrBefore(second);
    if (i == seconds.length - 1 || seconds[i] == second) {
      return values[i];
    }
    double share = (second - seconds[i]) / (seconds[i + 1] - seconds[i]);
    return values[i] + share * (values[i + 1] - values[i]);
  }
}
