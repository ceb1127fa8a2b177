package taperbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.model.Fact;
import taperbook.model.Facts;
import taperbook.model.Leg;
import taperbook.model.RangeItem;
import taperbook.model.RangeTest;
import taperbook.problem.Checked;
import taperbook.problem.Problem;
import taperbook.problem.ProblemCode;
import taperbook.problem.ProblemLog;
import taperbook.problem.Quoted;
import taperbook.read.CsvTable;

/** Checks the files of a range test and makes the range test of them. */
public final class RangeTestCheck {
  private RangeTestCheck() {}

  /**
   * The range test, or every problem of its files.
   *
   * @param name name of its folder
   * @param rangeTest the rows of {@code range-test.csv}
   * @param legs the rows of {@code legs.csv}, if there is one
   */
  public static Checked<RangeTest> check(String name, CsvTable rangeTest, Optional<CsvTable> legs) {
    ProblemLog log = new ProblemLog(rangeTest.file());
    FactSheet<RangeItem> sheet = new FactSheet<>(rangeTest, RangeItem.class, log);
    Facts<RangeItem> facts = sheet.check();
    checkSoc(facts, sheet, log);
    List<Problem> problems = new ArrayList<>(log.list());
    boolean refused = log.hasErrors();
    List<Leg> checkedLegs = List.of();
    if (legs.isPresent()) {
      ProblemLog legsLog = new ProblemLog(legs.get().file());
      checkedLegs = LegsCheck.check(legs.get(), legsLog);
      problems.addAll(legsLog.list());
      refused |= legsLog.hasErrors();
    }
    return refused
        ? Checked.refused(problems)
        : Checked.of(new RangeTest(name, facts, checkedLegs), problems);
  }

  private static void checkSoc(Facts<RangeItem> facts, FactSheet<RangeItem> sheet, ProblemLog log) {
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
