package taperbook.input;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.i18n.Texts;
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
        Texts.of("input.duplicate_readings.same_bytes_as_in", other),
        Texts.of("input.duplicate_readings.readings_of_its_own_for"),
        Texts.of("input.duplicate_readings.put_right_file_there_or"));
    return log.list();
  }
}
