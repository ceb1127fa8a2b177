package taperbook.check;

import java.util.ArrayList;
import java.util.List;
import taperbook.check.facts.ConditionsCheck;
import taperbook.check.facts.FactSheet;
import taperbook.check.foreign.ColumnMap;
import taperbook.check.foreign.MappedTable;
import taperbook.check.readings.Readings;
import taperbook.model.ConditionItem;
import taperbook.model.Facts;
import taperbook.model.Review;
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
    return joined(name, readings.then(SessionCheck::rows), conditions);
  }

  /**
   * The session of a foreign file, or every problem of its files.
   *
   * @param name name of its folder
   * @param map what its {@code columns.csv} says
   * @param readings the rows of the foreign file, if it is a table
   * @param conditions the rows of {@code conditions.csv}, if it is a table
   */
  public static Checked<Session> check(
      String name, ColumnMap map, Checked<CsvTable> readings, Checked<CsvTable> conditions) {
    return joined(name, readings.then(table -> rows(map, table)), conditions);
  }

  private static Checked<Session> joined(
      String name, Checked<Readings> rows, Checked<CsvTable> conditions) {
    Checked<Facts<ConditionItem>> facts = conditions.then(SessionCheck::facts);
    List<Problem> problems = new ArrayList<>(rows.problems());
    problems.addAll(facts.problems());
    if (rows.value().isEmpty() || facts.value().isEmpty()) {
      return Checked.refused(problems);
    }
    CsvTable table = conditions.value().orElseThrow();
    ProblemLog doorLog = new ProblemLog(table.file());
    int valueColumn =
        new FactSheet<>(table, ConditionItem.class, new ProblemLog(table.file())).valueNumber();
    DoorTimes door = new DoorTimes(valueColumn, doorLog);
    Session session =
        session(name, rows.value().get(), door.placed(facts.value().get(), rows.value().get()));
    door.order(session);
    problems.addAll(doorLog.list());
    ProblemLog log = new ProblemLog(rows.value().get().file());
    BatteryCheck.check(session, log);
    problems.addAll(log.list());
    return Checked.of(session, problems);
  }

  private static Session session(String name, Readings rows, Facts<ConditionItem> facts) {
    return new Session(
        name,
        facts,
        rows.traces(facts),
        rows.notes(),
        rows.recorded(),
        rows.caveats(),
        new Review(rows.asRead(), List.of()));
  }

  private static Checked<Readings> rows(ColumnMap map, CsvTable foreign) {
    ProblemLog mapLog = new ProblemLog(map.path());
    MappedTable mapped = new MappedTable(map, foreign, mapLog);
    if (mapLog.hasErrors()) {
      return Checked.refused(mapLog.list());
    }
    ProblemLog log = new ProblemLog(foreign.file());
    Readings rows = mapped.readings(log);
    rows.check();
    List<Problem> problems = new ArrayList<>(mapLog.list());
    problems.addAll(log.list());
    return Checked.of(rows, problems);
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
