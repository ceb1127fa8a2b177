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
    return check(name, Checked.good(readings), Checked.good(conditions));
  }

  /**
   * The session, or every problem of its files: that one of them is no table does not keep the
   * other from being checked.
   *
   * @param name name of its folder
   * @param readings the rows of {@code readings.csv}, if it is a table
   * @param conditions the rows of {@code conditions.csv}, if it is a table
   */
  public static Checked<Session> check(
      String name, Checked<CsvTable> readings, Checked<CsvTable> conditions) {
    Checked<Readings> rows = readings.then(SessionCheck::rows);
    Checked<Facts<ConditionItem>> facts = conditions.then(SessionCheck::facts);
    List<Problem> problems = new ArrayList<>(rows.problems());
    problems.addAll(facts.problems());
    if (rows.value().isEmpty() || facts.value().isEmpty()) {
      return Checked.refused(problems);
    }
    return Checked.of(session(name, rows.value().get(), facts.value().get()), problems);
  }

  private static Session session(String name, Readings rows, Facts<ConditionItem> facts) {
    return new Session(name, facts, rows.traces(facts), rows.notes(), rows.recorded());
  }

  private static Checked<Readings> rows(CsvTable table) {
    ProblemLog log = new ProblemLog(table.file());
    Readings rows = new Readings(table, log);
    rows.check();
    return Checked.of(rows, log.list());
  }

  private static Checked<Facts<ConditionItem>> facts(CsvTable table) {
    ProblemLog log = new ProblemLog(table.file());
    Facts<ConditionItem> facts = ConditionsCheck.check(table, log);
    return Checked.of(facts, log.list());
  }
}
