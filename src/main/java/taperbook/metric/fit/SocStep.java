package taperbook.metric.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import taperbook.session.Trace;

/**
 * One reading for each displayed state of charge. The rows of a logger repeat a displayed value
 * many times with one and the same rounding error, so that they are not independent; of all rows
 * with a value the middle one is taken, where the truth lies closest to the displayed value, or the
 * mean of the two middle ones. Taking the earlier of two would shift the steps with an even number
 * of rows against those with an odd one, and so the slope. A reading taken by hand stands for
 * itself.
 *
 * @param lower index of the middle reading, or the earlier of the two
 * @param upper index of the middle reading, or the later of the two
 */
record SocStep(int lower, int upper) {
  /**
   * The readings to use, in order of the displayed value.
   *
   * @param soc state of charge
   * @param usable which readings may be used at all
   */
  static List<SocStep> of(Trace soc, IntPredicate usable) {
    Map<Double, List<Integer>> byValue = new TreeMap<>();
    IntStream.range(0, soc.size())
        .filter(usable)
        .forEach(i -> byValue.computeIfAbsent(soc.value(i), v -> new ArrayList<>()).add(i));
    return byValue.values().stream()
        .map(rows -> new SocStep(rows.get((rows.size() - 1) / 2), rows.get(rows.size() / 2)))
        .toList();
  }

  /** Mean of a quantity over the one or two middle readings. */
  double mean(IntToDoubleFunction quantity) {
    return (quantity.applyAsDouble(lower) + quantity.applyAsDouble(upper)) / 2;
  }

  /** The one or two middle readings. */
  IntStream indices() {
    return IntStream.of(lower, upper).distinct();
  }
}
