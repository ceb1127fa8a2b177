package taperbook.metric.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import taperbook.metric.bounds.PowerIntegral;
import taperbook.quantity.Estimate;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * The points of energy added over state of charge of a session, from the best source with enough
 * points: the energy counter in the rows of the state of charge, else integrated power. Energies
 * are not interpolated between rows of the counter.
 *
 * @param points one for each displayed state of charge, x in %, y in kWh
 * @param rows the rows they come from
 * @param relativeScale relative standard uncertainty of the common scale of all energies, which
 *     does not appear as scatter; zero for a counter
 */
record EnergyReadings(List<LinePoint> points, List<RowRef> rows, double relativeScale) {
  /** Fewer points leave too few degrees of freedom to assess the fit. */
  static final int LEAST_POINTS = 2 + Quantiles.MIN_DEGREES;

  static Optional<EnergyReadings> of(
      Trace soc, Optional<Trace> energy, Optional<PowerIntegral> integral) {
    return energy
        .flatMap(e -> enough(inSameRows(soc, e)))
        .or(() -> integral.flatMap(p -> enough(integrated(soc, p))));
  }

  private static Optional<EnergyReadings> enough(EnergyReadings readings) {
    return Optional.of(readings).filter(r -> r.points.size() >= LEAST_POINTS);
  }

  private static EnergyReadings inSameRows(Trace soc, Trace energy) {
    List<LinePoint> points = new ArrayList<>();
    List<RowRef> rows = new ArrayList<>();
    if (soc.halfStep() + energy.halfStep() > 0) {
      for (SocStep step : SocStep.of(soc, i -> energy.indexOf(soc.row(i)).isPresent())) {
        double added =
            step.mean(i -> WithinStep.value(energy, energy.indexOf(soc.row(i)).orElseThrow()));
        points.add(
            LinePoint.rounded(soc.value(step.lower()), added, soc.halfStep(), energy.halfStep()));
        step.indices().forEach(i -> rows.add(soc.row(i)));
      }
    }
    return new EnergyReadings(points, rows, 0);
  }

  /**
   * Returns the points of integrated power. Errors of an integral accumulate rather than scatter,
   * so the points count as exact in energy, and the bounds of the whole integral define the scale
   * uncertainty.
   */
  private static EnergyReadings integrated(Trace soc, PowerIntegral integral) {
    List<LinePoint> points = new ArrayList<>();
    List<RowRef> rows = new ArrayList<>();
    if (soc.halfStep() == 0) {
      return new EnergyReadings(points, rows, 0);
    }
    double start = integral.span().low();
    double end = start;
    for (SocStep step : SocStep.of(soc, i -> integral.covers(soc.second(i), soc.second(i)))) {
      end = Math.max(end, step.mean(soc::second));
      double added = integral.between(start, step.mean(soc::second)).value();
      points.add(LinePoint.rounded(soc.value(step.lower()), added, soc.halfStep(), 0));
      step.indices().forEach(i -> rows.add(soc.row(i)));
    }
    rows.addAll(integral.rows(start, end));
    return new EnergyReadings(points, rows, relativeScale(integral.between(start, end)));
  }

  private static double relativeScale(Estimate whole) {
    return whole.value() > 0 ? whole.bounds().width() / 2 / Math.sqrt(3) / whole.value() : 0;
  }

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

  /**
   * Estimates a rising quantity within a display step from the times at which the display changed.
   *
   * <p>Between two changes by one step the true value rises from half a step below the displayed
   * value to half a step above it:
   *
   * <pre>
   *   e(t) = v - h + 2 h (t - t_a) / (t_b - t_a)
   * </pre>
   *
   * with the changes at <i>t<sub>a</sub></i> and <i>t<sub>b</sub></i>, each halfway between the
   * adjacent rows. Otherwise a logger's coarse counter, read at every per cent, beats against the
   * state of charge, and its rounding errors are autocorrelated.
   */
  static final class WithinStep {
    /** Minimum rows per step to determine when the display changed. */
    private static final int LEAST_ROWS = 3;

    private WithinStep() {}

    /**
     * Returns the value at a reading, within half a step of the displayed value.
     *
     * @param trace readings of a quantity that does not decrease
     * @param i index of the reading
     * @return the value; the reading itself if the rows do not show both changes
     */
    static double value(Trace trace, int i) {
      double shown = trace.value(i);
      int first = i;
      while (first > 0 && trace.value(first - 1) == shown) {
        first--;
      }
      int last = i;
      while (last + 1 < trace.size() && trace.value(last + 1) == shown) {
        last++;
      }
      boolean dense = last - first + 1 >= LEAST_ROWS && first > 0 && last + 1 < trace.size();
      if (!dense
          || !isOneStep(trace, shown - trace.value(first - 1))
          || !isOneStep(trace, trace.value(last + 1) - shown)) {
        return shown;
      }
      double since = (trace.second(first - 1) + trace.second(first)) / 2;
      double until = (trace.second(last) + trace.second(last + 1)) / 2;
      if (until <= since) {
        // All rows of the step have the same time.
        return shown;
      }
      double share = (trace.second(i) - since) / (until - since);
      return shown + trace.halfStep() * (2 * share - 1);
    }

    private static boolean isOneStep(Trace trace, double rise) {
      return rise > 0 && rise < 3 * trace.halfStep();
    }
  }
}
