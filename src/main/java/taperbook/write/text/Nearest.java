package taperbook.write.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Finds the names that a mistyped one was most likely meant to be. */
final class Nearest {
  private static final int MOST = 3;

  private Nearest() {}

  /** Up to three names, nearest first; perhaps none. */
  static List<String> names(String typed, Collection<String> known) {
    int reach = Math.max(2, typed.length() / 3);
    return known.stream()
        .distinct()
        .filter(name -> distance(typed, name) <= reach || name.startsWith(typed))
        .sorted(
            Comparator.comparingInt((String name) -> distance(typed, name))
                .thenComparing(Comparator.naturalOrder()))
        .limit(MOST)
        .toList();
  }

  /** Edit distance: letters to put in, take out or replace (Levenshtein 1965). */
  static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
