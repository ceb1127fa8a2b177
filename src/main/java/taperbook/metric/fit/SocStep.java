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
 * One reading for each displayed state of charge. A logger repeats a displayed value many times
 * with the same rounding error, so its rows are not independent. The middle row of each value is
 * used, where the true value is closest to the displayed one, or the mean of the two middle rows.
 * Using the earlier of two would shift steps with an even number of rows and bias the slope. A
 * hand-recorded reading is used as is.
 *
 * @param lower index of the middle reading, or the earlier of the two
 * @param upper index of the middle reading, or the later of the two
 */
record SocStep(int lower, int upper) {
  /**
   * Returns the readings to use, in order of the displayed value.
   *
   * @param soc state of charge
   * @param usable selects the readings that may be used
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

  /** Returns the mean of a quantity over the one or two middle readings. */
  double mean(IntToDoubleFunction quantity) {
    return (quantity.applyAsDouble(lower) + quantity.applyAsDouble(upper)) / 2;
  }

  /** Returns the one or two middle readings. */
  IntStream indices() {
    return IntStream.of(lower, upper).distinct();
  }
}
