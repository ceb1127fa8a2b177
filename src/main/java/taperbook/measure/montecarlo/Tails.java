package taperbook.measure.montecarlo;

import java.util.Arrays;

/**
 * Finds the lowest and the highest of samples that come in blocks, such as those of one output.
 * Ends of intervals need no more than these, and to find them costs a small part of sorting all.
 *
 * <p>Blocks are alike, so the tails of one tell nearly where those of the next begin: one look at
 * each sample then leaves few to sort. Where that leaves too few, the whole block is parted. The
 * tails come out the same either way.
 */
final class Tails {
  /** In the next block, so many times what is wanted is looked for, as blocks are not the same. */
  private static final double AMPLE = 1.3;

  private double below = Double.NaN;
  private double above = Double.NaN;

  /**
   * Rearranges a block so that its lowest samples come first and its highest last, both rising.
   *
   * @param samples samples in any order
   * @param count how many at each end, from 1 to all of them
   */
  void part(double[] samples, int count) {
    int n = samples.length;
    if (!areNumbers(samples)) {
      Arrays.sort(samples);
      return;
    }
    int ample = Math.min(n, (int) (AMPLE * count));
    int low = toFront(samples, below);
    if (low < count) {
      place(samples, 0, ample - 1);
      low = ample;
    }
    Arrays.sort(samples, 0, low);
    below = samples[Math.min(low, ample) - 1];
    int high = toBack(samples, low, above);
    if (n - high < count) {
      high = Math.max(low, n - ample);
      place(samples, low, high);
    }
    Arrays.sort(samples, high, n);
    above = samples[n - Math.min(ample, Math.max(1, n - high))];
  }

  /** Moves samples up to a bound to the front, and tells how many they are. */
  private static int toFront(double[] samples, double bound) {
    int moved = 0;
    for (int i = 0; i < samples.length; i++) {
      if (samples[i] <= bound) {
        swap(samples, i, moved);
        moved++;
      }
    }
    return moved;
  }

  /** Moves samples from a bound on, among those from a place on, to the back; tells the first. */
  private static int toBack(double[] samples, int from, double bound) {
    int first = samples.length;
    for (int i = samples.length - 1; i >= from; i--) {
      if (samples[i] >= bound) {
        first--;
        swap(samples, i, first);
      }
    }
    return first;
  }

  /**
   * Rearranges samples from one place on so that none before another place is higher and none after
   * it lower than what stands there: Hoare's selection.
   *
   * @see <a href="https://doi.org/10.1145/366622.366647">Hoare, Algorithm 65, CACM 4 (1961) 321</a>
   */
  private static void place(double[] samples, int from, int place) {
    int low = from;
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
          swap(samples, i, j);
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

  private static void swap(double[] samples, int i, int j) {
    double moved = samples[i];
    samples[i] = samples[j];
    samples[j] = moved;
  }

  private static boolean areNumbers(double[] samples) {
    for (double sample : samples) {
      if (Double.isNaN(sample)) {
        return false;
      }
    }
    return true;
  }

  private static double middle(double a, double b, double c) {
    return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  }
}
