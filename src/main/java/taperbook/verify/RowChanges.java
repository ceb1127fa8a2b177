package taperbook.verify;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import taperbook.session.InputFile;

/**
 * Finds the lines of the input files that differ between two versions of a report. Lines at the
 * same position of a changed range count as changed, the surplus as added or removed.
 */
final class RowChanges {
  /**
   * Maximum length of a changed range that is searched for unchanged lines; in a longer range all
   * lines count as changed.
   */
  private static final int LONGEST_SEARCHED = 2000;

  private final List<RowChange> changes = new ArrayList<>();

  private RowChanges() {}

  /** Returns the changes from one set of files to another, by file and line. */
  static List<RowChange> between(Map<String, InputFile> before, Map<String, InputFile> after) {
    RowChanges found = new RowChanges();
    TreeSet<String> paths = new TreeSet<>(before.keySet());
    paths.addAll(after.keySet());
    for (String path : paths) {
      if (path.endsWith(".csv")) {
        found.file(path, lines(before.get(path)), lines(after.get(path)));
      }
    }
    return found.changes;
  }

  /**
   * Returns the lines of a file without byte order mark and line ends; none if there is no file.
   */
  static List<String> lines(@Nullable InputFile file) {
    if (file == null) {
      return List.of();
    }
    String text = file.decoded(StandardCharsets.UTF_8);
    return text.substring(text.startsWith("\ufeff") ? 1 : 0).lines().toList();
  }

  private void file(String path, List<String> one, List<String> other) {
    int head = 0;
    int max = Math.min(one.size(), other.size());
    while (head < max && one.get(head).equals(other.get(head))) {
      head++;
    }
    int tail = 0;
    while (tail < max - head
        && one.get(one.size() - 1 - tail).equals(other.get(other.size() - 1 - tail))) {
      tail++;
    }
    List<String> left = one.subList(head, one.size() - tail);
    List<String> right = other.subList(head, other.size() - tail);
    if (left.size() > LONGEST_SEARCHED || right.size() > LONGEST_SEARCHED) {
      stretch(path, head, left, head, right);
    } else {
      searched(path, head, left, right);
    }
  }

  /** Follows a longest common subsequence; the lines between its elements have changed. */
  private void searched(String path, int head, List<String> left, List<String> right) {
    int[][] common = new int[left.size() + 1][right.size() + 1];
    for (int i = left.size() - 1; i >= 0; i--) {
      for (int j = right.size() - 1; j >= 0; j--) {
        common[i][j] =
            left.get(i).equals(right.get(j))
                ? common[i + 1][j + 1] + 1
                : Math.max(common[i + 1][j], common[i][j + 1]);
      }
    }
    int i = 0;
    int j = 0;
    int fromLeft = 0;
    int fromRight = 0;
    while (i < left.size() && j < right.size()) {
      if (left.get(i).equals(right.get(j))) {
        stretch(
            path,
            head + fromLeft,
            left.subList(fromLeft, i),
            head + fromRight,
            right.subList(fromRight, j));
        fromLeft = ++i;
        fromRight = ++j;
      } else if (common[i + 1][j] >= common[i][j + 1]) {
        i++;
      } else {
        j++;
      }
    }
    stretch(
        path,
        head + fromLeft,
        left.subList(fromLeft, left.size()),
        head + fromRight,
        right.subList(fromRight, right.size()));
  }

  private void stretch(
      String path, int fromLeft, List<String> left, int fromRight, List<String> right) {
    for (int k = 0; k < Math.max(left.size(), right.size()); k++) {
      boolean hasBefore = k < left.size();
      boolean hasAfter = k < right.size();
      changes.add(
          new RowChange(
              path,
              hasBefore ? fromLeft + k + 1 : 0,
              hasAfter ? fromRight + k + 1 : 0,
              hasBefore ? left.get(k) : "",
              hasAfter ? right.get(k) : ""));
    }
  }
}
