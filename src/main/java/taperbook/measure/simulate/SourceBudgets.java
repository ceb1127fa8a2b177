package taperbook.measure.simulate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import taperbook.model.Contribution;
import taperbook.model.RangeTest;
import taperbook.model.Session;
import taperbook.model.UncertaintySource;

/**
 * The uncertainty budget of each output: one source switched on at a time, the others at their
 * central values.
 *
 * <p>A source moves some parts of a session only, and an output that asks for none of them stays as
 * it is: neither is worked out again.
 *
 * @see <a href="https://doi.org/10.59161/JCGM101-2008">JCGM 101:2008, annex B</a>
 */
final class SourceBudgets {
  /** Trials for the contribution of one source: enough for two per cent of it. */
  private static final int TRIALS = 2000;

  /** Less than this share of the squared uncertainty is not told. */
  private static final double LEAST_SHARE = 0.001;

  private final DrawnSession drawn;
  private final List<Outputs.Output> outputs;
  private final double[] values;
  private final int[] asked;

  SourceBudgets(Session session, Optional<RangeTest> test, List<Outputs.Output> outputs) {
    this.drawn = new DrawnSession(session, test);
    this.outputs = outputs;
    this.values = new double[outputs.size()];
    this.asked = new int[outputs.size()];
  }

  /** The budgets in the order of the outputs, the largest contribution first. */
  List<List<Contribution>> all() {
    Map<UncertaintySource, double[]> alone = new EnumMap<>(UncertaintySource.class);
    for (UncertaintySource source : UncertaintySource.values()) {
      alone.put(source, standardUncertainties(source));
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
      if (share >= LEAST_SHARE) {
        budget.add(new Contribution(entry.getKey(), u, share));
      }
    }
    budget.sort(Comparator.comparingDouble(Contribution::share).reversed());
    return budget;
  }

  private double[] standardUncertainties(UncertaintySource source) {
    Draws draws = new Draws(SessionSimulation.SEED, EnumSet.of(source));
    int moving = firstTrial(draws);
    int[] moved = IntStream.range(0, values.length).filter(k -> (asked[k] & moving) != 0).toArray();
    double[] means = values.clone();
    double[] squares = new double[values.length];
    for (int i = 2; i <= TRIALS && moved.length > 0; i++) {
      drawn.redraw(draws, moving);
      for (int k : moved) {
        // Welford's running sums, which keep their digits where the spread is small.
        double value = outputs.get(k).value().applyAsDouble(drawn);
        double off = value - means[k];
        means[k] += off / i;
        squares[k] += off * (value - means[k]);
      }
    }
    double[] result = new double[values.length];
    for (int k = 0; k < values.length; k++) {
      result[k] = Math.sqrt(squares[k] / (TRIALS - 1));
    }
    return result;
  }

  /**
   * Draws everything and works every output out.
   *
   * @return the parts of the session that the source moves
   */
  private int firstTrial(Draws draws) {
    int moving = drawn.redraw(draws, DrawnSession.ALL);
    drawn.work(outputs, values, asked);
    return moving;
  }
}
