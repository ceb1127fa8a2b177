package taperbook.diagnostics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Collects the problems of one file, so that all of them are told at once. Of more than five that
 * expect the same in the same column, three are listed and one counts the others with their lines.
 * At most 50 are listed, errors before notices, and then one that counts the rest.
 */
public final class ProblemLog {
  private static final int MOST = 50;

  /** What problems have in common that differ only in line and in what was found. */
  private record Kind(ProblemCode code, int column, String expected, String remedy) {}

  private final String file;
  private final Map<Kind, ProblemGrouping> errors = new LinkedHashMap<>();
  private final Map<Kind, ProblemGrouping> notices = new LinkedHashMap<>();
  private int unlisted;

  /** A log without problems for the file with this path. */
  public ProblemLog(String file) {
    this.file = file;
  }

  /** The file that the problems are in. */
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

  /** True if one of the problems is an error. */
  public boolean hasErrors() {
    return !errors.isEmpty();
  }

  /** The problems in the order of their places; the one that counts the rest comes last. */
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
