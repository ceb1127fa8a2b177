package taperbook.diagnostics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Collects the problems of one file, so that all of them are reported at once. If more than five
 * problems expect the same in the same column, three are listed and a summary counts the others
 * with their lines. At most 50 are listed, errors before notices, followed by a count of the rest.
 */
public final class ProblemLog {
  private static final int MOST = 50;

  /**
   * The common properties of problems that differ only in their lines and in the content that was
   * found.
   */
  private record Kind(ProblemCode code, int column, String expected, String remedy) {}

  private final String file;
  private final Map<Kind, ProblemGrouping> errors = new LinkedHashMap<>();
  private final Map<Kind, ProblemGrouping> notices = new LinkedHashMap<>();
  private int unlisted;

  /** Creates an empty log for the file with this path. */
  public ProblemLog(String file) {
    this.file = file;
  }

  /** Returns the path of the file. */
  public String file() {
    return file;
  }

  /** Adds a problem of the file as a whole. */
  public void add(ProblemCode code, String found, String expected, String remedy) {
    add(code, 0, 0, found, expected, remedy);
  }

  /**
   * Adds a problem.
   *
   * @param line line number from 1, or 0 for the file as a whole
   * @param column column number from 1, or 0 for the line as a whole
   */
  public void add(
      ProblemCode code, int line, int column, String found, String expected, String remedy) {
    Map<Kind, ProblemGrouping> all = code.severity() == Severity.ERROR ? errors : notices;
    Kind kind = new Kind(code, column, expected, remedy);
    if (all.size() < MOST || all.containsKey(kind)) {
      all.computeIfAbsent(kind, k -> new ProblemGrouping())
          .add(new Problem(code, new SourceLocation(file, line, column), found, expected, remedy));
    } else {
      unlisted++;
    }
  }

  /** Returns true if one of the problems is an error. */
  public boolean hasErrors() {
    return !errors.isEmpty();
  }

  /** Returns the problems sorted by location; the count of the rest comes last. */
  public List<Problem> list() {
    List<Problem> listed =
        Stream.of(errors, notices)
            .flatMap(all -> all.values().stream())
            .flatMap(alike -> alike.list().stream())
            .toList();
    List<Problem> all = new ArrayList<>(listed.subList(0, Math.min(MOST, listed.size())));
    all.sort(
        Comparator.comparingInt((Problem p) -> p.place().line())
            .thenComparingInt(p -> p.place().column()));
    int rest = unlisted + listed.size() - all.size();
    if (rest > 0) {
      all.add(
          new Problem(
              ProblemCode.MORE_PROBLEMS,
              SourceLocation.file(file),
              rest == 1 ? "one more problem" : rest + " more problems",
              "a file without problems",
              "mend those above, then check again"));
    }
    return all;
  }
}
