package taperbook.input.readings;

import java.util.Arrays;
import java.util.Optional;
import taperbook.input.csv.CsvRow;

/**
 * How finely the numbers of a column are written, from which the step of its display follows. One
 * number alone that is written more finely than all others is no display's.
 */
final class DecimalPlaces {
  /** Finer digits than millionths are what is left of binary fractions. */
  private static final int FINEST = -6;

  private static final int COARSEST = 6;

  /** Nobody reads a finer digit than this off a display; what has one was computed. */
  private static final int FINEST_BY_EYE = -2;

  /** Fewer numbers do not show how a column is written. */
  private static final int MANY = 8;

  /** Numbers but zero by the place of their last digit, the finest first. */
  private final int[] counts = new int[COARSEST - FINEST + 1];

  private final CsvRow[] first = new CsvRow[counts.length];

  /** Place of the first zero, which is written in any way. */
  private int placeOfZero = FINEST;

  /**
   * Takes a number.
   *
   * @param lastPlace power of ten of its last digit
   * @param isZero true of zero
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

  /** The row of a number that is written more finely than all others, if there is just one. */
  Optional<CsvRow> lone() {
    int finest = from(0);
    boolean lone =
        finest >= FINEST_BY_EYE - FINEST && finest < counts.length && counts[finest] == 1;
    return lone && Arrays.stream(counts).sum() >= MANY && from(finest + 1) < counts.length
        ? Optional.of(first[finest])
        : Optional.empty();
  }

  /** Power of ten of the finest digit, that of a lone number left out; a number was taken. */
  int finest() {
    int finest = lone().isPresent() ? from(from(0) + 1) : from(0);
    return finest < counts.length ? FINEST + finest : placeOfZero;
  }

  /** Index of the first place from one on that numbers have. */
  private int from(int index) {
    int i = index;
    while (i < counts.length && counts[i] == 0) {
      i++;
    }
    return i;
  }
}
