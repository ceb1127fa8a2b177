package taperbook.measure.simulate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import taperbook.measure.montecarlo.Distribution;
import taperbook.measure.montecarlo.MonteCarlo;
import taperbook.model.CommonGround;
import taperbook.model.Contribution;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.Numbers;
import taperbook.model.Outcome;
import taperbook.model.RangeTest;
import taperbook.model.ReportNumber;
import taperbook.model.ReportPlan;
import taperbook.model.Session;

/**
 * States the shortest 95 % coverage interval and the uncertainty budget of every number that can be
 * simulated, in place of its bounds.
 *
 * @see <a href="https://doi.org/10.59161/JCGM101-2008">JCGM 101:2008, clause 7 and annex B</a>
 */
public final class SessionSimulation {
  private static final double COVERAGE = 0.95;

  /** Any fixed number will do: the same readings must give the same intervals. */
  static final long SEED = 0x7a9e_4b00_c0ff_ee11L;

  /** Stable to one digit of the standard uncertainty, or after this many blocks. */
  private static final int DIGITS = 1;

  private static final int MOST_BLOCKS = 10;

  private SessionSimulation() {}

  /**
   * Numbers with coverage intervals.
   *
   * @param plan what the report asks for
   * @param ground what all sessions of the report went through
   * @param session the session
   * @param test the drive that distances rest on, if there is one
   * @param numbers the session's numbers with bounds
   * @return the same numbers in the same order, those that can be simulated with a 95 % interval
   */
  public static Numbers refine(
      ReportPlan plan,
      CommonGround ground,
      Session session,
      Optional<RangeTest> test,
      Numbers numbers) {
    MonteCarlo procedure = new MonteCarlo(DIGITS, COVERAGE, MOST_BLOCKS);
    return refine(Outputs.of(plan, ground, session, numbers), session, test, numbers, procedure);
  }

  static Numbers refine(
      ReportPlan plan,
      Session session,
      Optional<RangeTest> test,
      Numbers numbers,
      MonteCarlo procedure) {
    List<Outputs.Output> outputs = Outputs.of(plan, CommonGround.NONE, session, numbers);
    return refine(outputs, session, test, numbers, procedure);
  }

  private static Numbers refine(
      List<Outputs.Output> outputs,
      Session session,
      Optional<RangeTest> test,
      Numbers numbers,
      MonteCarlo procedure) {
    if (outputs.isEmpty()) {
      return numbers;
    }
    // Run and budgets draw from streams of their own, so that both can be made at once.
    CompletableFuture<List<List<Contribution>>> budgeting =
        CompletableFuture.supplyAsync(() -> new SourceBudgets(session, test, outputs).all());
    List<MonteCarlo.Result> results =
        procedure.run(new SessionTrial(new DrawnSession(session, test), outputs), outputs.size());
    List<List<Contribution>> budgets = budgeting.join();
    Map<String, Integer> places = new HashMap<>();
    for (int k = 0; k < outputs.size(); k++) {
      places.put(outputs.get(k).id(), k);
    }
    List<ReportNumber> refined = new ArrayList<>();
    for (ReportNumber number : numbers.all()) {
      Integer k = places.get(number.id());
      refined.add(
          k == null ? number : refined(number, results.get(k).distribution(), budgets.get(k)));
    }
    return new Numbers(refined);
  }

  private static ReportNumber refined(
      ReportNumber number, Distribution distribution, List<Contribution> budget) {
    // No width means that nothing drawn bears on the number, such as a logger's power: its bounds
    // then say more.
    boolean usable =
        Double.isFinite(distribution.low())
            && Double.isFinite(distribution.high())
            && distribution.low() < distribution.high();
    Optional<Estimate> estimate = number.estimate();
    if (!usable || estimate.isEmpty()) {
      return number;
    }
    double value = estimate.get().value();
    Interval interval = new Interval(distribution.low(), distribution.high()).hull(value);
    return new ReportNumber(
        number.id(),
        number.label(),
        number.unit(),
        new Outcome.Measured(new Estimate(value, interval), COVERAGE, budget),
        number.origin(),
        number.caveats(),
        number.method());
  }
}
