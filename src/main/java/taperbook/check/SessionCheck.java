package taperbook.check;

import java.util.ArrayList;
import java.util.List;
import taperbook.model.ConditionItem;
import taperbook.model.Facts;
import taperbook.model.Session;
import taperbook.problem.Checked;
import taperbook.problem.Problem;
import taperbook.problem.ProblemLog;
import taperbook.read.CsvTable;

/** Checks the two files of a charging session and makes the session of them. */
public final class SessionCheck {
  private SessionCheck() {}

  /**
   * The session, or every problem of its files.
   *
   * @param name name of its folder
   * @param readings the rows of {@code readings.csv}
   * @param conditions the rows of {@code conditions.csv}
   */
  public static Checked<Session> check(String name, CsvTable readings, CsvTable conditions) {
    ProblemLog log = new ProblemLog(readings.file());
    return check(name, new Readings(readings, log), log, List.of(), conditions);
  }

  /**
   * The session of a foreign file, or every problem of its files.
   *
   * @param name name of its folder
   * @param map what its {@code columns.csv} says
   * @param readings the rows of the foreign file
   * @param conditions the rows of {@code conditions.csv}
   */
  public static Checked<Session> check(
      String name, ColumnMap map, CsvTable readings, CsvTable conditions) {
    ProblemLog mapLog = new ProblemLog(map.path());
    MappedTable mapped = new MappedTable(map, readings, mapLog);
    if (mapLog.hasErrors()) {
      ProblemLog conditionsLog = new ProblemLog(conditions.file());
      ConditionsCheck.check(conditions, conditionsLog);
      List<Problem> problems = new ArrayList<>(mapLog.list());
      problems.addAll(conditionsLog.list());
      return Checked.refused(problems);
    }
    ProblemLog log = new ProblemLog(readings.file());
    return check(name, mapped.readings(log), log, mapLog.list(), conditions);
  }

  private static Checked<Session> check(
      String name,
      Readings readings,
      ProblemLog readingsLog,
      List<Problem> earlier,
      CsvTable conditions) {
    ProblemLog conditionsLog = new ProblemLog(conditions.file());
    readings.check();
    Facts<ConditionItem> facts = ConditionsCheck.check(conditions, conditionsLog);
    List<Problem> problems = new ArrayList<>(earlier);
    problems.addAll(readingsLog.list());
    problems.addAll(conditionsLog.list());
    if (readingsLog.hasErrors() || conditionsLog.hasErrors()) {
      return Checked.refused(problems);
    }
    return Checked.of(
        new Session(
            name,
            facts,
            readings.traces(facts),
            readings.notes(),
            readings.recorded(),
            readings.caveats()),
        problems);
  }
}
