package taperbook.check;

import java.util.Collection;
import java.util.Optional;

/**
 * Finds the name that was most likely meant. The distance counts inserted, left-out and changed
 * letters and swaps of neighbours; each letter is edited at most once (optimal string alignment).
 *
 * @see <a href="https://doi.org/10.1145/363958.363994">F. J. Damerau, Communications of the ACM 7
 *     (1964) 171</a>
 */
final class Suggestion {
  private Suggestion() {}

  /**
   * The nearest of the known names, letter case aside, if it is at most 2 edits or a third of its
   * length away, and fewer edits than it has letters; of equals the first.
   */
  static Optional<String> of(String written, Collection<String> known) {
    String label = Label.of(written);
    Optional<String> best = Optional.empty();
    int least = Integer.MAX_VALUE;
    for (String name : known) {
      int most = Math.min(Math.max(2, name.length() / 3), name.length() - 1);
      // At least as many edits as the lengths differ by; this keeps long texts out of the table.
      boolean near = Math.abs(label.length() - Label.of(name).length()) <= most;
      int distance = near ? distance(label, Label.of(name)) : Integer.MAX_VALUE;
      if (distance <= most && distance < least) {
        best = Optional.of(name);
        least = distance;
      }
    }
    return best;
  }

  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      d[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      d[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
