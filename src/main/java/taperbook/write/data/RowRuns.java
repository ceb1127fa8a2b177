package taperbook.write.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import taperbook.model.RowRef;

/** Rows of input as text: each by itself, or unbroken runs of lines together. */
public final class RowRuns {
  private static final int MOST_LISTED = 100;
  private static final int MOST_RUNS_IN_WORDS = 6;

  private RowRuns() {}

  /**
   * Rows for data files: {@code file:line} each, or from 101 rows on unbroken runs as {@code
   * file:first-last}.
   */
  public static List<String> listed(List<RowRef> rows) {
    if (rows.size() <= MOST_LISTED) {
      return rows.stream().map(RowRef::toString).toList();
    }
    List<String> texts = new ArrayList<>();
    byFile(rows)
        .forEach((file, lines) -> runs(lines, "-").forEach(run -> texts.add(file + ":" + run)));
    return texts;
  }

  /** Rows for readers, one text for each file: {@code file:2–9, 12}. */
  public static List<String> words(List<RowRef> rows) {
    List<String> texts = new ArrayList<>();
    lines(rows).forEach((file, lines) -> texts.add(file + ":" + lines));
    return texts;
  }

  /** Rows for readers, by file: {@code 2–9, 12}. */
  public static Map<String, String> lines(List<RowRef> rows) {
    Map<String, String> texts = new TreeMap<>();
    byFile(rows)
        .forEach(
            (file, lines) -> {
              List<String> runs = runs(lines, "\u2013");
              texts.put(file, runs.size() <= MOST_RUNS_IN_WORDS ? text(runs) : span(lines));
            });
    return texts;
  }

  private static String text(List<String> runs) {
    return String.join(", ", runs);
  }

  private static String span(List<Integer> lines) {
    return lines.get(0)
        + "\u2013"
        + lines.get(lines.size() - 1)
        + " ("
        + lines.size()
        + " rows of these)";
  }

  private static Map<String, List<Integer>> byFile(List<RowRef> rows) {
    Map<String, List<Integer>> byFile = new TreeMap<>();
    rows.stream()
        .sorted()
        .distinct()
        .forEach(r -> byFile.computeIfAbsent(r.file(), f -> new ArrayList<>()).add(r.line()));
    return byFile;
  }

  private static List<String> runs(List<Integer> lines, String dash) {
    List<String> runs = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= lines.size(); i++) {
      if (i == lines.size() || lines.get(i) != lines.get(i - 1) + 1) {
        int first = lines.get(start);
        int last = lines.get(i - 1);
        runs.add(first == last ? String.valueOf(first) : first + dash + last);
        start = i;
      }
    }
    return runs;
  }
}
