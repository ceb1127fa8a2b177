package taperbook.metric.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
  static final int LEAST_POINTS = 2 + Student.LEAST_DEGREES;

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
    Map<RowRef, Integer> energies = new HashMap<>();
    for (int i = 0; i < energy.size(); i++) {
      energies.put(energy.row(i), i);
    }
    List<LinePoint> points = new ArrayList<>();
    List<RowRef> rows = new ArrayList<>();
    if (soc.halfStep() + energy.halfStep() > 0) {
      for (SocStep step : SocStep.of(soc, i -> energies.containsKey(soc.row(i)))) {
        double added =
            step.mean(i -> WithinStep.value(energy, energies.getOrDefault(soc.row(i), 0)));
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
}
