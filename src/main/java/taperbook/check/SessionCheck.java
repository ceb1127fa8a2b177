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
    ProblemLog readingsLog = new ProblemLog(readings.file());
    ProblemLog conditionsLog = new ProblemLog(conditions.file());
    Readings rows = new Readings(readings, readingsLog);
    rows.check();
    Facts<ConditionItem> facts = ConditionsCheck.check(conditions, conditionsLog);
    List<Problem> problems = new ArrayList<>(readingsLog.list());
    problems.addAll(conditionsLog.list());
    if (readingsLog.hasErrors() || conditionsLog.hasErrors()) {
      return Checked.refused(problems);
    }
    return Checked.of(
        new Session(name, facts, rows.traces(facts), rows.notes(), rows.recorded()), problems);
  }
}
