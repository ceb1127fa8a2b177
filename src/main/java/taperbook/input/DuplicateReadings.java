package taperbook.input;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.session.InputHash;

/** Finds sessions with identical readings, byte for byte: one of them is most likely a copy. */
public final class DuplicateReadings {
  private static final Set<String> NO_READINGS =
      Set.of("columns.csv", "conditions.csv", "range-test.csv", "legs.csv");

  private DuplicateReadings() {}

  /**
   * Returns a notice for each file of readings with the same bytes as an earlier file.
   *
   * @param files files of sessions, sorted by name; other files are ignored
   */
  public static List<Problem> check(List<InputHash> files) {
    Map<String, String> first = new HashMap<>();
    List<Problem> problems = new ArrayList<>();
    for (InputHash file : files) {
      if (isReadings(file)) {
        String other = first.putIfAbsent(file.sha256(), file.path());
        if (other != null && !other.equals(file.path())) {
          problems.addAll(notice(file.path(), other));
        }
      }
    }
    return problems;
  }

  private static boolean isReadings(InputHash file) {
    String name = file.path().substring(file.path().lastIndexOf('/') + 1);
    return file.path().startsWith("sessions/")
        && name.endsWith(".csv")
        && !file.sha256().isEmpty()
        && !NO_READINGS.contains(name);
  }

  private static List<Problem> notice(String path, String other) {
    ProblemLog log = new ProblemLog(path);
    log.add(
        ProblemCode.SESSION_TWICE,
        "the same bytes as in " + other,
        "readings of its own for each session",
        "put the right file there, or take one of the two sessions away");
    return log.list();
  }
}
