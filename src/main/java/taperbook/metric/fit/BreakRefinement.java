package taperbook.metric.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Moves breakpoints between the abscissae to minimise the sum of squares, by iterative
 * linearisation: with the current breakpoints the model is linear in
 *
 * <pre>
 *   1, q, max(0, q - psi[j]), -(q > psi[j])
 * </pre>
 *
 * and each breakpoint moves by the coefficient of its last column divided by its change of slope.
 * Moves that do not reduce the sum of squares are halved. The sum of squares has a kink wherever a
 * breakpoint passes a reading, so each breakpoint is also tried in the adjacent gaps. Steps are not
 * moved.
 *
 * @see <a href="https://doi.org/10.1002/sim.1545">V. M. R. Muggeo, Estimating regression models
 *     with unknown break-points, Statistics in Medicine 22 (2003) 3055-3071</a>
 */
final class BreakRefinement {
  private static final int MOST_STEPS = 60;
  private static final int MOST_HALVINGS = 6;
  private static final int MOST_ROUNDS = 12;

  /** Convergence: maximum move of the breakpoints as a share of the span. */
  private static final double ARRIVED = 1e-10;

  /** Minimum relative reduction of the sum of squares that counts, */
  private static final double LEAST_GAIN = 1e-9;

  /** or as a share of the sum of the squared powers, for points on a line. */
  private static final double LEAST_SHARE = 1e-20;

  private final double negligible;
  private final double[] soc;
  private final double[] power;
  private final UnresolvedBreaks rule;
  private final boolean[] unresolved;

  private BreakRefinement(double[] soc, double[] power, List<Break> breaks) {
    this.soc = soc;
    this.power = power;
    this.negligible = LEAST_SHARE * Arrays.stream(power).map(p -> p * p).sum();
    this.rule = new UnresolvedBreaks(soc);
    this.unresolved = rule.of(breaks);
  }

  /**
   * Refines a line.
   *
   * @param soc abscissae, %, non-decreasing
   * @param power ordinates, kW
   * @param start the line to begin with
   * @return the line with the least sum of squares that was found
   */
  static PiecewiseLine of(double[] soc, double[] power, PiecewiseLine start) {
    return new BreakRefinement(soc, power, start.breaks()).refine(start);
  }

  /** Refines a line without trying other gaps: faster, and close to the minimum. */
  static PiecewiseLine nearby(double[] soc, double[] power, PiecewiseLine start) {
    return new BreakRefinement(soc, power, start.breaks()).descend(start);
  }

  private PiecewiseLine refine(PiecewiseLine start) {
    PiecewiseLine best = descend(start);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      PiecewiseLine better = inAdjacentGaps(best);
      if (!lower(better, best)) {
        return best;
      }
      best = better;
    }
    return best;
  }

  /** Returns true if a line is better than another by more than rounding error. */
  private boolean lower(PiecewiseLine one, PiecewiseLine other) {
    double sum = other.residualSumOfSquares();
    return one.residualSumOfSquares() < sum - LEAST_GAIN * sum - negligible;
  }

  private PiecewiseLine inAdjacentGaps(PiecewiseLine line) {
    PiecewiseLine best = line;
    for (int j = 0; j < unresolved.length; j++) {
      for (double place : unresolved[j] ? new double[0] : adjacentGaps(line.at(j))) {
        List<Break> moved = new ArrayList<>(best.breaks());
        moved.set(j, new Break(place, false));
        Optional<PiecewiseLine> tried = allowed(moved).map(this::descend);
        if (tried.isPresent() && lower(tried.get(), best)) {
          best = tried.get();
        }
      }
    }
    return best;
  }

  /** Returns the middles of the gaps below and above. */
  private double[] adjacentGaps(double place) {
    double left = rule.below(place);
    double right = rule.above(place);
    return new double[] {(rule.below(left) + left) / 2, (right + rule.above(right)) / 2};
  }

  private PiecewiseLine descend(PiecewiseLine start) {
    PiecewiseLine line = start;
    for (int step = 0; step < MOST_STEPS; step++) {
      Optional<PiecewiseLine> next = downhill(line);
      if (next.isEmpty()) {
        return line;
      }
      boolean converged = distance(line, next.get()) < ARRIVED * (rule.highest() - rule.lowest());
      line = next.get();
      if (converged) {
        return line;
      }
    }
    return line;
  }

  private static double distance(PiecewiseLine one, PiecewiseLine other) {
    double most = 0;
    for (int j = 0; j + 1 < one.segments(); j++) {
      most = Math.max(most, Math.abs(one.at(j) - other.at(j)));
    }
    return most;
  }

  private Optional<PiecewiseLine> downhill(PiecewiseLine line) {
    for (double[] move : moves(line)) {
      double share = 1;
      for (int h = 0; h < MOST_HALVINGS; h++, share /= 2) {
        List<Break> moved = new ArrayList<>(line.breaks());
        for (int j = 0; j < move.length; j++) {
          moved.set(j, new Break(line.at(j) + share * move[j], line.isStep(j)));
        }
        Optional<PiecewiseLine> tried = allowed(moved);
        if (tried.isPresent() && lower(tried.get(), line)) {
          return tried;
        }
      }
    }
    return Optional.empty();
  }

  /** Returns the moves given by the right and left derivatives at the breakpoints. */
  private List<double[]> moves(PiecewiseLine line) {
    List<double[]> moves = new ArrayList<>();
    for (boolean right : new boolean[] {true, false}) {
      List<double[]> columns = PiecewiseLine.columns(soc, line.breaks());
      int first = columns.size();
      for (int j = 0; j < unresolved.length; j++) {
        if (!unresolved[j]) {
          columns.add(jump(line.at(j), right));
        }
      }
      LeastSquares.solve(columns, power).ifPresent(fit -> moves.add(move(fit, first)));
    }
    return moves;
  }

  private double[] jump(double at, boolean right) {
    double[] column = new double[soc.length];
    for (int i = 0; i < soc.length; i++) {
      column[i] = soc[i] > at || (!right && soc[i] == at) ? -1 : 0;
    }
    return column;
  }

  private double[] move(LeastSquares fit, int first) {
    double[] move = new double[unresolved.length];
    int column = first;
    for (int j = 0; j < unresolved.length; j++) {
      if (!unresolved[j]) {
        double ratio = fit.coefficient(column) / fit.coefficient(2 + j);
        move[j] = Double.isFinite(ratio) ? ratio : 0;
        column++;
      }
    }
    return move;
  }

  /** Returns the line through breakpoints if they stay in order and none becomes unresolved. */
  private Optional<PiecewiseLine> allowed(List<Break> breaks) {
    double before = rule.lowest();
    boolean[] now = rule.of(breaks);
    for (int j = 0; j < now.length; j++) {
      double at = breaks.get(j).soc();
      if (!(at > before && at < rule.highest()) || (now[j] && !unresolved[j])) {
        return Optional.empty();
      }
      before = at;
    }
    return PiecewiseLine.through(soc, power, breaks);
  }
}
