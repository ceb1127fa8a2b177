package taperbook.diagnostics;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/** Finds the names that a mistyped one was most likely meant to be. */
public final class NearestNames {
  private static final int MOST = 3;
  private static final Pattern WORD_ENDS = Pattern.compile("[ _-]+");

  private NearestNames() {}

  /** Up to three names, nearest first; perhaps none. */
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
    // At least as many edits as the lengths differ by; this keeps long texts out of the table.
    return name.startsWith(typed)
        || hasAllWords(typed, name)
        || (Math.abs(typed.length() - name.length()) <= reach
            && EditDistance.between(typed, name) <= reach);
  }

  /** True if a name has each of two or more words that were typed, in any order. */
  private static boolean hasAllWords(String typed, String name) {
    List<String> words = List.of(WORD_ENDS.split(typed));
    return words.size() > 1 && List.of(WORD_ENDS.split(name)).containsAll(words);
  }
}
