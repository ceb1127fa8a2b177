package taperbook.session;

import java.util.Arrays;

/**
 * Collects the readings of one channel: time, value and line. Once a {@link Trace} is created from
 * them, none can be added or changed.
 */
public final class Samples {
  /** Number of decimal places of a computed reading, which has no written form. */
  static final byte NOT_WRITTEN = -1;

  private static final int MIN_CAPACITY = 16;

  private double[] seconds;
  private double[] values;
  private int[] lines;
  private byte[] places;
  private int size;
  private boolean taken;

  /**
   * Creates an empty collection.
   *
   * @param capacity expected number of readings; the capacity grows if there are more
   */
  public Samples(int capacity) {
    int started = Math.max(MIN_CAPACITY, capacity);
    this.seconds = new double[started];
    this.values = new double[started];
    this.lines = new int[started];
    this.places = new byte[started];
  }

  /**
   * Adds a computed reading.
   *
   * @param second its time, s
   * @param value the reading in the channel's base unit
   * @param line its line in the file
   */
  public void add(double second, double value, int line) {
    add(second, value, line, NOT_WRITTEN);
  }

  /**
   * Adds a reading as recorded.
   *
   * @param second its time, s
   * @param value the reading in the channel's base unit
   * @param line its line in the file
   * @param written its decimal places in the base unit, from 0 to 127
   */
  public void addWritten(double second, double value, int line, int written) {
    if (written < 0 || written > Byte.MAX_VALUE) {
      throw new IllegalArgumentException(written + " decimal places");
    }
    add(second, value, line, (byte) written);
  }

  private void add(double second, double value, int line, byte written) {
    checkOpen();
    if (size == seconds.length) {
      seconds = Arrays.copyOf(seconds, 2 * size);
      values = Arrays.copyOf(values, 2 * size);
      lines = Arrays.copyOf(lines, 2 * size);
      places = Arrays.copyOf(places, 2 * size);
    }
    seconds[size] = second;
    values[size] = value;
    lines[size] = line;
    places[size] = written;
    size++;
  }

  /** Replaces all values. */
  public void show(double[] others) {
    checkOpen();
    for (int i = 0; i < size; i++) {
      places[i] = others[i] == values[i] ? places[i] : NOT_WRITTEN;
      values[i] = others[i];
    }
  }

  private void checkOpen() {
    if (taken) {
      throw new IllegalStateException("a trace was made of these readings");
    }
  }

  /**
   * Returns the times, s. Does not copy the array if it is full, because nothing changes
   * afterwards.
   */
  double[] takeSeconds() {
    taken = true;
    return size == seconds.length ? seconds : seconds();
  }

  /** Returns the values, likewise. */
  double[] takeValues() {
    taken = true;
    return size == values.length ? values : values();
  }

  /** Returns the lines, likewise. */
  int[] takeLines() {
    taken = true;
    return size == lines.length ? lines : lines();
  }

  /** Returns the decimal places, likewise. */
  byte[] takePlaces() {
    taken = true;
    return size == places.length ? places : Arrays.copyOf(places, size);
  }

  /** Number of readings. */
  public int size() {
    return size;
  }

  /** True if there is no reading. */
  public boolean isEmpty() {
    return size == 0;
  }

  /** The time of a reading, s. */
  public double second(int index) {
    return seconds[index];
  }

  /** Returns the line of a reading. */
  public int line(int index) {
    return lines[index];
  }

  /** Times, s. */
  public double[] seconds() {
    return Arrays.copyOf(seconds, size);
  }

  /** Readings in the channel's base unit. */
  public double[] values() {
    return Arrays.copyOf(values, size);
  }

  public int[] lines() {
    return Arrays.copyOf(lines, size);
  }
}
