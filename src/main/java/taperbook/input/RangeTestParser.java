package taperbook.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.csv.CsvTable;
import taperbook.input.facts.FactsParser;
import taperbook.input.facts.LegsParser;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.Leg;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;

/** Parses the files of a range test. */
public final class RangeTestParser {
  private RangeTestParser() {}

  /**
   * Returns the range test, or all problems of its files.
   *
   * @param name name of its folder
   * @param rangeTest the rows of {@code range-test.csv}
   * @param legs the rows of {@code legs.csv}, if there is one
   */
  public static Checked<RangeTest> check(String name, CsvTable rangeTest, Optional<CsvTable> legs) {
    return checkRead(name, Checked.good(rangeTest), legs.map(Checked::good));
  }

  /**
   * Returns the range test, or all problems of its files; a file that is not a table does not
   * prevent the check of the other.
   *
   * @param name name of its folder
   * @param rangeTest the rows of {@code range-test.csv}, if it is a table
   * @param legs the rows of {@code legs.csv}, if there is one and it is a table
   */
  public static Checked<RangeTest> checkRead(
      String name, Checked<CsvTable> rangeTest, Optional<Checked<CsvTable>> legs) {
    Checked<Facts<RangeItem>> facts = rangeTest.then(RangeTestParser::facts);
    Checked<List<Leg>> checkedLegs =
        legs.map(l -> l.then(RangeTestParser::legs)).orElseGet(() -> Checked.good(List.of()));
    List<Problem> problems = new ArrayList<>(facts.problems());
    problems.addAll(checkedLegs.problems());
    if (facts.value().isEmpty() || checkedLegs.value().isEmpty()) {
      return Checked.refused(problems);
    }
    return Checked.of(
        new RangeTest(name, facts.value().get(), checkedLegs.value().get()), problems);
  }

  private static Checked<Facts<RangeItem>> facts(CsvTable table) {
    ProblemLog log = new ProblemLog(table.file());
    FactsParser<RangeItem> sheet = new FactsParser<>(table, RangeItem.class, log);
    Facts<RangeItem> facts = sheet.check();
    checkSoc(facts, sheet, log);
    return Checked.of(facts, log.list());
  }

  private static Checked<List<Leg>> legs(CsvTable table) {
    ProblemLog log = new ProblemLog(table.file());
    List<Leg> legs = LegsParser.check(table, log);
    return Checked.of(legs, log.list());
  }

  private static void checkSoc(
      Facts<RangeItem> facts, FactsParser<RangeItem> sheet, ProblemLog log) {
    Optional<Fact> start = facts.known(RangeItem.START_SOC);
    Optional<Fact> end = facts.known(RangeItem.END_SOC);
    if (start.isEmpty() || end.isEmpty()) {
      return;
    }
    double startPercent = start.get().amount().orElseThrow().value();
    double endPercent = end.get().amount().orElseThrow().value();
    if (!(startPercent > endPercent)) {
      log.add(
          ProblemCode.FACTS_CONTRADICT,
          end.get().row().line(),
          sheet.valueNumber(),
          "end soc "
              + Quoted.of(end.get().written())
              + " with start soc "
              + Quoted.of(start.get().written())
              + " on line "
              + start.get().row().line(),
          "a state of charge that is lower at the end of the drive than at its start",
          "correct one of the two");
    }
  }
}
