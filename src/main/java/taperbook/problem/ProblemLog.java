package taperbook.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Collects the problems of one file, so that all of them are told at once: at most 50, errors
 * before notices, and then one that counts the rest.
 */
public final class ProblemLog {
  private static final int MOST = 50;

  private final String file;
  private final List<Problem> errors = new ArrayList<>();
  private final List<Problem> notices = new ArrayList<>();
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
    List<Problem> list = code.severity() == Severity.ERROR ? errors : notices;
    if (list.size() < MOST) {
      list.add(new Problem(code, new SourcePlace(file, line, column), found, expected, remedy));
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
    int room = Math.min(notices.size(), MOST - errors.size());
    List<Problem> all = new ArrayList<>(errors);
    all.addAll(notices.subList(0, room));
    all.sort(
        Comparator.comparingInt((Problem p) -> p.place().line())
            .thenComparingInt(p -> p.place().column()));
    int rest = unlisted + notices.size() - room;
    if (rest > 0) {
      all.add(
          new Problem(
              ProblemCode.MORE_PROBLEMS,
              SourcePlace.file(file),
              rest == 1 ? "one more problem" : rest + " more problems",
              "a file without problems",
              "mend those above, then check again"));
    }
    return all;
  }
}
