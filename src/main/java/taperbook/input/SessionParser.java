package taperbook.input;

import java.util.ArrayList;
import java.util.List;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemLog;
import taperbook.input.csv.CsvTable;
import taperbook.input.facts.ConditionsParser;
import taperbook.input.facts.FactsParser;
import taperbook.input.mapping.ColumnMap;
import taperbook.input.mapping.MappedTable;
import taperbook.input.readings.ReadingsParser;
import taperbook.session.ConditionItem;
import taperbook.session.Facts;
import taperbook.session.Review;
import taperbook.session.Session;

/** Parses the two files of a charging session. */
public final class SessionParser {
  private SessionParser() {}

  /**
   * Returns the session, or all problems of its files.
   *
   * @param name name of its folder
   * @param readings the rows of {@code readings.csv}
   * @param conditions the rows of {@code conditions.csv}
   */
  public static Checked<Session> check(String name, CsvTable readings, CsvTable conditions) {
    return check(name, Checked.good(readings), Checked.good(conditions));
  }

  /**
   * Returns the session, or all problems of its files; a file that is not a table does not prevent
   * the check of the other.
   *
   * @param name name of its folder
   * @param readings the rows of {@code readings.csv}, if it is a table
   * @param conditions the rows of {@code conditions.csv}, if it is a table
   */
  public static Checked<Session> check(
      String name, Checked<CsvTable> readings, Checked<CsvTable> conditions) {
    return joined(name, readings.then(SessionParser::rows), conditions);
  }

  /**
   * Returns the session of an external file, or all problems of its files.
   *
   * @param name name of its folder
   * @param map the parsed {@code columns.csv}
   * @param readings the rows of the external file, if it is a table
   * @param conditions the rows of {@code conditions.csv}, if it is a table
   */
  public static Checked<Session> check(
      String name, ColumnMap map, Checked<CsvTable> readings, Checked<CsvTable> conditions) {
    return joined(name, readings.then(table -> rows(map, table)), conditions);
  }

  private static Checked<Session> joined(
      String name, Checked<ReadingsParser> rows, Checked<CsvTable> conditions) {
    Checked<Facts<ConditionItem>> facts = conditions.then(SessionParser::facts);
    List<Problem> problems = new ArrayList<>(rows.problems());
    problems.addAll(facts.problems());
    if (rows.value().isEmpty() || facts.value().isEmpty()) {
      return Checked.refused(problems);
    }
    CsvTable table = conditions.value().orElseThrow();
    ProblemLog doorLog = new ProblemLog(table.file());
    int valueColumn =
        new FactsParser<>(table, ConditionItem.class, new ProblemLog(table.file())).valueNumber();
    StopTimestamps door = new StopTimestamps(valueColumn, doorLog);
    Session session =
        session(
            name,
            rows.value().get(),
            door.onReadingsClock(facts.value().get(), rows.value().get()));
    door.checkOrder(session);
    problems.addAll(doorLog.list());
    ProblemLog log = new ProblemLog(rows.value().get().file());
    BatteryCheck.check(session, log);
    problems.addAll(log.list());
    return Checked.of(session, problems);
  }

  private static Session session(String name, ReadingsParser rows, Facts<ConditionItem> facts) {
    return new Session(
        name,
        facts,
        rows.traces(facts),
        rows.notes(),
        rows.recorded(),
        rows.caveats(),
        new Review(rows.asRead(), List.of()));
  }

  private static Checked<ReadingsParser> rows(ColumnMap map, CsvTable foreign) {
    ProblemLog mapLog = new ProblemLog(map.path());
    MappedTable mapped = new MappedTable(map, foreign, mapLog);
    if (mapLog.hasErrors()) {
      return Checked.refused(mapLog.list());
    }
    ProblemLog log = new ProblemLog(foreign.file());
    ReadingsParser rows = mapped.readings(log);
    rows.check();
    List<Problem> problems = new ArrayList<>(mapLog.list());
    problems.addAll(log.list());
    return Checked.of(rows, problems);
  }

  private static Checked<ReadingsParser> rows(CsvTable table) {
    ProblemLog log = new ProblemLog(table.file());
    ReadingsParser rows = new ReadingsParser(table, log);
    rows.check();
    return Checked.of(rows, log.list());
  }

  private static Checked<Facts<ConditionItem>> facts(CsvTable table) {
    ProblemLog log = new ProblemLog(table.file());
    Facts<ConditionItem> facts = ConditionsParser.check(table, log);
    return Checked.of(facts, log.list());
  }
}
