package taperbook.quantity;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Distinct numbers in ascending order. An array and not a set of objects because a log may have a
 * million rows.
 */
public final class DistinctNumbers {
  private final double[] numbers;

  private DistinctNumbers(double[] numbers) {
    this.numbers = numbers;
  }

  /** Sorts numbers, which may repeat. */
  public static DistinctNumbers of(DoubleStream numbers) {
    double[] sorted = numbers.toArray();
    Arrays.sort(sorted);
    int size = 0;
    for (double number : sorted) {
      if (size == 0 || number != sorted[size - 1]) {
        sorted[size] = number;
        size++;
      }
    }
    return new DistinctNumbers(Arrays.copyOf(sorted, size));
  }

  /** Returns these numbers and another one. */
  public DistinctNumbers with(double number) {
    return of(DoubleStream.concat(stream(), DoubleStream.of(number)));
  }

  /** Returns the numbers in ascending order. */
  public DoubleStream stream() {
    return Arrays.stream(numbers);
  }

  /** Returns the number of numbers. */
  public int size() {
    return numbers.length;
  }

  /** Returns the lowest number; there must be one. */
  public double lowest() {
    return numbers[0];
  }

  /** Returns the highest number; there must be one. */
  public double highest() {
    return numbers[numbers.length - 1];
  }

  /** Returns the highest number below another one. */
  public OptionalDouble below(double number) {
    int from = firstFrom(number);
    return from == 0 ? OptionalDouble.empty() : OptionalDouble.of(numbers[from - 1]);
  }

  /** Returns the lowest number above another one. */
  public OptionalDouble above(double number) {
    int after = firstAfter(number);
    return after == size() ? OptionalDouble.empty() : OptionalDouble.of(numbers[after]);
  }

  /** Returns the number of numbers between two others, both exclusive. */
  public int countBetween(double from, double to) {
    return Math.max(0, firstFrom(to) - firstAfter(from));
  }

  private int firstFrom(double number) {
    int found = Arrays.binarySearch(numbers, number);
    return found >= 0 ? found : -found - 1;
  }

  private int firstAfter(double number) {
    int found = Arrays.binarySearch(numbers, number);
    return found >= 0 ? found + 1 : -found - 1;
  }
}
