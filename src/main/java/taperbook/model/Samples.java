package taperbook.check;

import java.util.Arrays;

/** Readings of one channel while they are gathered: when, how much, and on which line. */
final class Series {
  private static final int FIRST_ROOM = 64;

  private double[] seconds = new double[FIRST_ROOM];
  private double[] values = new double[FIRST_ROOM];
  private int[] lines = new int[FIRST_ROOM];
  private int size;

  /**
   * Adds a reading.
   *
   * @param second its time, s
   * @param value the reading in the channel's base unit
   * @param line the line it stands on
   */
  void add(double second, double value, int line) {
    if (size == seconds.length) {
      seconds = Arrays.copyOf(seconds, 2 * size);
      values = Arrays.copyOf(values, 2 * size);
      lines = Arrays.copyOf(lines, 2 * size);
    }
    seconds[size] = second;
    values[size] = value;
    lines[size] = line;
    size++;
  }

  /** Puts other values in the place of all there are. */
  void show(double[] others) {
    System.arraycopy(others, 0, values, 0, size);
  }

  int size() {
    return size;
  }

  boolean isEmpty() {
    return size == 0;
  }

  /** The line that a reading stands on. */
  int line(int index) {
    return lines[index];
  }

  /** Times, s. */
  double[] seconds() {
    return Arrays.copyOf(seconds, size);
  }

  /** Readings in the channel's base unit. */
  double[] values() {
    return Arrays.copyOf(values, size);
  }

  /** The lines they stand on. */
  int[] lines() {
    return Arrays.copyOf(lines, size);
  }
}
