package taperbook.measure.simulate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import taperbook.model.UncertaintySource;

/**
 * States the shortest 95 % coverage interval and the uncertainty budget of every number that can be
 * simulated, in place of its bounds.
 *
 * @see <a href="https://doi.org/10.59161/JCGM101-2008">JCGM 101:2008, clause 7 and annex B</a>
 */
public final class SessionSimulation {
  private static final double COVERAGE = 0.95;

  /** Any fixed number will do: the same readings must give the same intervals. */
  private static final long SEED = 0x7a9e_4b00_c0ff_ee11L;

  /** Stable to one digit of the standard uncertainty, or after this many blocks. */
  private static final int DIGITS = 1;

  private static final int MOST_BLOCKS = 10;

  /** Trials for the contribution of one source: enough for two per cent of it. */
  private static final int TRIALS_FOR_A_SOURCE = 2000;

  private final DrawnSession drawn;
  private final List<Outputs.Output> outputs;

  private SessionSimulation(DrawnSession drawn, List<Outputs.Output> outputs) {
    this.drawn = drawn;
    this.outputs = outputs;
  }

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
    SessionSimulation simulation = new SessionSimulation(new DrawnSession(session, test), outputs);
    MonteCarlo.Run run = simulation.run(procedure);
    List<List<Contribution>> budgets = simulation.budgets();
    Map<String, Integer> places = new HashMap<>();
    for (int k = 0; k < outputs.size(); k++) {
      places.put(outputs.get(k).id(), k);
    }
    List<ReportNumber> refined = new ArrayList<>();
    for (ReportNumber number : numbers.all()) {
      Integer k = places.get(number.id());
      refined.add(k == null ? number : refined(number, run.outputs().get(k), budgets.get(k)));
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

  private MonteCarlo.Run run(MonteCarlo procedure) {
    Draws draws = new Draws(SEED, EnumSet.allOf(UncertaintySource.class));
    return procedure.run(values -> trial(draws, values), outputs.size());
  }

  private void trial(Draws draws, double[] values) {
    drawn.draw(draws);
    for (int k = 0; k < values.length; k++) {
      values[k] = outputs.get(k).value().applyAsDouble(drawn);
    }
  }

  /** The budget of each output: one source at a time, the others at their central values. */
  private List<List<Contribution>> budgets() {
    Map<UncertaintySource, double[]> alone = new EnumMap<>(UncertaintySource.class);
    for (UncertaintySource source : UncertaintySource.values()) {
      alone.put(source, standardUncertainties(EnumSet.of(source)));
    }
    List<List<Contribution>> budgets = new ArrayList<>();
    for (int k = 0; k < outputs.size(); k++) {
      budgets.add(budget(alone, k));
    }
    return budgets;
  }

  private static List<Contribution> budget(Map<UncertaintySource, double[]> alone, int output) {
    double squares = 0;
    for (double[] u : alone.values()) {
      squares += u[output] * u[output];
    }
    List<Contribution> budget = new ArrayList<>();
    for (Map.Entry<UncertaintySource, double[]> entry : alone.entrySet()) {
      double u = entry.getValue()[output];
      double share = squares > 0 ? u * u / squares : 0;
      if (share >= 0.001) {
        budget.add(new Contribution(entry.getKey(), u, share));
      }
    }
    budget.sort(Comparator.comparingDouble(Contribution::share).reversed());
    return budget;
  }

  private double[] standardUncertainties(Set<UncertaintySource> active) {
    Draws draws = new Draws(SEED, active);
    double[] values = new double[outputs.size()];
    double[] means = new double[outputs.size()];
    double[] squares = new double[outputs.size()];
    for (int i = 1; i <= TRIALS_FOR_A_SOURCE; i++) {
      trial(draws, values);
      for (int k = 0; k < values.length; k++) {
        // Welford's running sums, which keep their digits where the spread is small.
        double off = values[k] - means[k];
        means[k] += off / i;
        squares[k] += off * (values[k] - means[k]);
      }
    }
    double[] result = new double[values.length];
    for (int k = 0; k < values.length; k++) {
      result[k] = Math.sqrt(squares[k] / (TRIALS_FOR_A_SOURCE - 1));
    }
    return result;
  }
}
