package taperbook.measure.taper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.model.Interval;

/**
 * How many segments the points support. For each number K of segments, with n points, p = 2 K + 1
 * parameters and S the residual sum of squares,
 *
 * <pre>
 *   C(K) = n ln(max(S, S0) / n) + max(p ln n, 2 p n / (n - p - 1))
 * </pre>
 *
 * and the K with the least C is chosen. The first penalty is that of BIC, which finds the true
 * number as points grow many; the second is that of AICc, which is the stricter one where points
 * are few for the parameters, as in most sessions read by hand, and where BIC's is too weak. The
 * stricter one counts. S0 is the sum that the rounding of the displays alone leaves, so that no
 * segment is spent on following the steps of a display.
 *
 * @see <a href="https://doi.org/10.1214/aos/1176344136">G. Schwarz, Estimating the dimension of a
 *     model, Annals of Statistics 6 (1978) 461-464, for BIC</a>
 * @see <a href="https://doi.org/10.1093/biomet/76.2.297">C. M. Hurvich, C.-L. Tsai, Regression and
 *     time series model selection in small samples, Biometrika 76 (1989) 297-307, for AICc</a>
 */
final class SegmentCount {
  static final int MOST = 6;

  /**
   * A difference of 6 in twice the log of the Bayes factor, which C approximates, is odds of 20 to
   * 1. Source: R. E. Kass, A. E. Raftery, Journal of the American Statistical Association 90 (1995)
   * 773-795, doi 10.1080/01621459.1995.10476572, 3.2.
   */
  private static final double TWENTY_TO_ONE = 6;

  private final List<BrokenLine> lines = new ArrayList<>();
  private final List<Double> criteria = new ArrayList<>();

  /** Fits one segment, two, and so on to {@link #MOST}, as far as the points allow. */
  SegmentCount(TaperPoints points) {
    double[] soc = points.socs();
    double[] power = points.powers();
    for (double[] breaks : new KnotSearch(soc, power).best(MOST)) {
      if (points.size() - parameters(breaks.length + 1) - 1 > 0) {
        BrokenLine.through(soc, power, breaks)
            .map(start -> Refinement.of(soc, power, start))
            .ifPresent(line -> add(points, line));
      }
    }
  }

  private static int parameters(int segments) {
    return 2 * segments + 1;
  }

  private void add(TaperPoints points, BrokenLine line) {
    int n = points.size();
    int p = parameters(line.segments());
    double sum = Math.max(line.residualSumOfSquares(), FitUncertainty.sumOfRounding(points, line));
    double penalty = Math.max(p * Math.log(n), 2.0 * p * n / (n - p - 1));
    lines.add(line);
    criteria.add(n * Math.log(sum / n) + penalty);
  }

  /** The line with the least criterion; of equal ones that with fewer segments. */
  BrokenLine chosen() {
    return lines.get(criteria.indexOf(least()));
  }

  /** The best line with a given number of segments, if the points allow one. */
  Optional<BrokenLine> line(int segments) {
    return lines.stream().filter(l -> l.segments() == segments).findFirst();
  }

  private double least() {
    return criteria.stream().mapToDouble(c -> c).min().orElseThrow();
  }

  /** The fewest and the most segments that the readings do not rule out at odds of 20 to 1. */
  Interval notRuledOut() {
    double limit = least() + TWENTY_TO_ONE;
    Interval counts = Interval.exactly(chosen().segments());
    for (int i = 0; i < lines.size(); i++) {
      if (criteria.get(i) <= limit) {
        counts = counts.hull(lines.get(i).segments());
      }
    }
    return counts;
  }
}
