package taperbook.input.readings;

import java.util.Arrays;
import java.util.Optional;
import taperbook.input.csv.CsvRow;

/**
 * Determines the step of a display from the decimal places of a column's numbers. A single number
 * with more places than all others does not come from a display.
 */
final class DecimalPlaces {
  /** Digits finer than millionths are errors of binary fractions. */
  private static final int FINEST = -6;

  private static final int COARSEST = 6;

  /** A digit finer than this is not read from a display but computed. */
  private static final int FINEST_BY_EYE = -2;

  /** Fewer numbers do not show the number of places of a column. */
  private static final int MANY = 8;

  /** Number of non-zero numbers by the place of their last digit, the finest first. */
  private final int[] counts = new int[COARSEST - FINEST + 1];

  private final CsvRow[] first = new CsvRow[counts.length];

  /** Place of the first zero; zeros are written with any number of places. */
  private int placeOfZero = FINEST;

  /**
   * Adds a number.
   *
   * @param lastPlace power of ten of its last digit
   * @param isZero true for zero
   */
  void add(CsvRow row, int lastPlace, boolean isZero) {
    int place = Math.min(COARSEST, Math.max(FINEST, lastPlace));
    if (isZero) {
      placeOfZero = place;
      return;
    }
    int i = place - FINEST;
    if (counts[i]++ == 0) {
      first[i] = row;
    }
  }

  /** Returns the row of a number with more places than all others, if there is exactly one. */
  Optional<CsvRow> lone() {
    int finest = from(0);
    boolean lone =
        finest >= FINEST_BY_EYE - FINEST && finest < counts.length && counts[finest] == 1;
    return lone && Arrays.stream(counts).sum() >= MANY && from(finest + 1) < counts.length
        ? Optional.of(first[finest])
        : Optional.empty();
  }

  /**
   * Returns the power of ten of the finest digit, ignoring a single outlier; there must be a
   * number.
   */
  int finest() {
    int finest = lone().isPresent() ? from(from(0) + 1) : from(0);
    return finest < counts.length ? FINEST + finest : placeOfZero;
  }

  /** Returns the index of the first place, starting at an index, that numbers have. */
  private int from(int index) {
    int i = index;
    while (i < counts.length && counts[i] == 0) {
      i++;
    }
    return i;
  }
}
