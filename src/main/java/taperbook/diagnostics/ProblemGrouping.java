package taperbook.diagnostics;

import java.util.ArrayList;
import java.util.List;

/** Problems of one file that differ only in their lines and in the content that was found. */
final class ProblemGrouping {
  /** Maximum number of problems that are listed one by one. */
  private static final int FEW = 5;

  /** Number of problems listed if there are more. */
  private static final int LISTED = 3;

  private static final int MAX_RUNS = 6;

  /** A run of consecutive lines. */
  private record Run(int first, int last) {
    @Override
    public String toString() {
      return first == last ? String.valueOf(first) : first + " to " + last;
    }
  }

  private final List<Problem> few = new ArrayList<>();
  private final List<Run> runs = new ArrayList<>();
  private int count;
  private int lastLine;

  void add(Problem problem) {
    count++;
    if (count <= FEW) {
      few.add(problem);
    }
    lastLine = Math.max(lastLine, problem.place().line());
    if (count > LISTED && problem.place().line() > 0) {
      addLine(problem.place().line());
    }
  }

  private void addLine(int line) {
    Run last = runs.isEmpty() ? new Run(0, -1) : runs.get(runs.size() - 1);
    if (line == last.last() + 1 || line == last.last()) {
      runs.set(runs.size() - 1, new Run(last.first(), line));
    } else if (runs.size() <= MAX_RUNS) {
      runs.add(new Run(line, line));
    }
  }

  /** Returns all problems, or the first ones and a summary of the others. */
  List<Problem> list() {
    if (count <= FEW) {
      return few;
    }
    List<Problem> listed = new ArrayList<>(few.subList(0, LISTED));
    Problem next = few.get(LISTED);
    String found = count - LISTED + " more like these" + lines();
    listed.add(new Problem(next.code(), next.place(), found, next.expected(), next.remedy()));
    return listed;
  }

  private String lines() {
    if (runs.isEmpty()) {
      return "";
    }
    List<String> shown = runs.stream().limit(MAX_RUNS).map(Run::toString).toList();
    boolean cut = runs.size() > MAX_RUNS;
    return ", on lines " + String.join(", ", shown) + (cut ? " and on to " + lastLine : "");
  }
}
