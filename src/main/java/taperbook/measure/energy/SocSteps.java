package taperbook.measure.energy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import taperbook.model.Trace;

/**
 * One reading for each displayed state of charge. The rows of a logger repeat a displayed value
 * many times with one and the same rounding error, so that they are not independent; of all rows
 * with a value the one nearest to the middle of their time is taken, where the truth lies closest
 * to the displayed value. A reading taken by hand stands for itself.
 */
final class SocSteps {
  private SocSteps() {}

  /**
   * Indices of the readings to use, in order of the displayed value.
   *
   * @param soc state of charge
   * @param usable which readings may be used at all
   */
  static int[] of(Trace soc, IntPredicate usable) {
    Map<Double, List<Integer>> byValue = new TreeMap<>();
    IntStream.range(0, soc.size())
        .filter(usable)
        .forEach(i -> byValue.computeIfAbsent(soc.value(i), v -> new ArrayList<>()).add(i));
    return byValue.values().stream().mapToInt(rows -> middle(soc, rows)).toArray();
  }

  private static int middle(Trace soc, List<Integer> rows) {
    double first = soc.second(rows.get(0));
    double middle = first + (soc.second(rows.get(rows.size() - 1)) - first) / 2;
    int best = rows.get(0);
    for (int i : rows) {
      if (Math.abs(soc.second(i) - middle) < Math.abs(soc.second(best) - middle)) {
        best = i;
      }
    }
    return best;
  }
}
