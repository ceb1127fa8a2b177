package taperbook.diagnostics;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/** Suggests known names for a mistyped one. */
public final class NearestNames {
  private static final int MOST = 3;
  private static final Pattern WORD_ENDS = Pattern.compile("[ _-]+");

  private NearestNames() {}

  /** Returns up to three names, nearest first; may be empty. */
  public static List<String> names(String typed, Collection<String> known) {
    int reach = Math.max(2, typed.length() / 3);
    return known.stream()
        .distinct()
        .filter(name -> isNear(typed, name, reach))
        .sorted(
            Comparator.comparingInt((String name) -> EditDistance.between(typed, name))
                .thenComparing(Comparator.naturalOrder()))
        .limit(MOST)
        .toList();
  }

  private static boolean isNear(String typed, String name, int reach) {
    // The distance is at least the difference of the lengths; this avoids large tables for long
    // texts.
    return name.startsWith(typed)
        || hasAllWords(typed, name)
        || (Math.abs(typed.length() - name.length()) <= reach
            && EditDistance.between(typed, name) <= reach);
  }

  /**
   * Returns true if two or more words were typed and a name contains each of them, in any order.
   */
  private static boolean hasAllWords(String typed, String name) {
    List<String> words = List.of(WORD_ENDS.split(typed));
    return words.size() > 1 && List.of(WORD_ENDS.split(name)).containsAll(words);
  }
}
