package taperbook.measure.simulate;

import java.util.Arrays;

/**
 * The lowest and the highest of many samples, in order. Ends of intervals need no more than these,
 * and to find them costs a small part of sorting all.
 */
final class Tails {
  private Tails() {}

  /**
   * The lowest samples, rising.
   *
   * @param samples samples in any order; rearranged
   * @param count how many, at least 1
   */
  static double[] lowest(double[] samples, int count) {
    part(samples, count - 1);
    double[] tail = Arrays.copyOf(samples, count);
    Arrays.sort(tail);
    return tail;
  }

  /** As {@link #lowest}, the highest, rising too. */
  static double[] highest(double[] samples, int count) {
    int first = samples.length - count;
    part(samples, first);
    double[] tail = Arrays.copyOfRange(samples, first, samples.length);
    Arrays.sort(tail);
    return tail;
  }

  /**
   * Rearranges samples so that none before a place is higher and none after it lower than what
   * stands there: Hoare's selection. Samples that are not all finite are sorted.
   *
   * @see <a href="https://doi.org/10.1145/366622.366647">Hoare, Algorithm 65, CACM 4 (1961) 321</a>
   */
  private static void part(double[] samples, int place) {
    if (!areFinite(samples)) {
      Arrays.sort(samples);
      return;
    }
    int low = 0;
    int high = samples.length - 1;
    while (low < high) {
      double pivot = middle(samples[low], samples[(low + high) >>> 1], samples[high]);
      int i = low;
      int j = high;
      while (i <= j) {
        while (samples[i] < pivot) {
          i++;
        }
        while (samples[j] > pivot) {
          j--;
        }
        if (i <= j) {
          double moved = samples[i];
          samples[i] = samples[j];
          samples[j] = moved;
          i++;
          j--;
        }
      }
      if (place > j && place < i) {
        return;
      }
      low = place <= j ? low : i;
      high = place <= j ? j : high;
    }
  }

  private static boolean areFinite(double[] samples) {
    for (double sample : samples) {
      if (!Double.isFinite(sample)) {
        return false;
      }
    }
    return true;
  }

  private static double middle(double a, double b, double c) {
    return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  }
}
