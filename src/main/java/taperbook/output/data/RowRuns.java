package taperbook.output.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import taperbook.session.RowRef;
import taperbook.session.RowRun;

/** Formats rows of input: individually, or as runs of consecutive lines. */
public final class RowRuns {
  private static final int MOST_LISTED = 100;
  private static final int MOST_RUNS_IN_WORDS = 6;

  private RowRuns() {}

  /**
   * Returns rows for data files: {@code file:line} each, or for more than 100 rows consecutive runs
   * as {@code file:first-last}.
   */
  public static List<String> listed(List<RowRef> rows) {
    if (rows.size() <= MOST_LISTED) {
      return rows.stream().map(RowRef::toString).toList();
    }
    return RowRun.of(rows).stream().map(RowRuns::listed).toList();
  }

  private static String listed(RowRun run) {
    return run.file() + ":" + lines(run, "-");
  }

  /** Returns rows for readers, one text per file: {@code file:2-9, 12} with an en dash. */
  public static List<String> words(List<RowRef> rows) {
    List<String> texts = new ArrayList<>();
    lines(rows).forEach((file, lines) -> texts.add(file + ":" + lines));
    return texts;
  }

  /** Returns rows for readers, by file: {@code 2-9, 12} with an en dash. */
  public static Map<String, String> lines(List<RowRef> rows) {
    Map<String, List<RowRun>> byFile = new TreeMap<>();
    RowRun.of(rows)
        .forEach(run -> byFile.computeIfAbsent(run.file(), f -> new ArrayList<>()).add(run));
    Map<String, String> texts = new TreeMap<>();
    byFile.forEach((file, runs) -> texts.put(file, inWords(runs)));
    return texts;
  }

  private static String inWords(List<RowRun> runs) {
    return runs.size() <= MOST_RUNS_IN_WORDS
        ? String.join(", ", runs.stream().map(r -> lines(r, "\u2013")).toList())
        : span(runs);
  }

  private static String span(List<RowRun> runs) {
    int count = runs.stream().mapToInt(r -> r.lastLine() - r.firstLine() + 1).sum();
    return runs.get(0).firstLine()
        + "\u2013"
        + runs.get(runs.size() - 1).lastLine()
        + " ("
        + count
        + " rows of these)";
  }

  private static String lines(RowRun run, String dash) {
    return run.firstLine() == run.lastLine()
        ? String.valueOf(run.firstLine())
        : run.firstLine() + dash + run.lastLine();
  }
}
