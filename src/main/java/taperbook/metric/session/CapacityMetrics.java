package taperbook.metric.session;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import taperbook.i18n.Message;
import taperbook.metric.fit.EnergyFit;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.Trace;

/** Computes the energy per per cent from a curve through all readings of a session. */
public final class CapacityMetrics {
  private static final Metric PER_SHARE =
      Metric.charging("energy_per_soc_fitted", Unit.KILOWATT_HOUR_PER_PERCENT, Method.ENERGY_LINE)
          .in(Role.ENERGY);
  private static final Metric FULL =
      Metric.charging("implied_full_energy_fitted", Unit.KILOWATT_HOUR, Method.ENERGY_LINE)
          .in(Role.ENERGY);
  private static final Metric RESIDUAL =
      Metric.charging("energy_fit_residual", Unit.KILOWATT_HOUR, Method.ENERGY_LINE);
  private static final Metric CONSISTENCY =
      Metric.charging("energy_fit_consistency", Unit.ONE, Method.ENERGY_LINE);

  private CapacityMetrics() {}

  /** Returns the fitted line of a session, if its readings determine one. */
  public static Finding<EnergyFit> fit(Recording recording) {
    Optional<Trace> energy = recording.session().trace(Channel.ENERGY_ADDED);
    return recording
        .charge()
        .flatMap(
            soc ->
                recording
                    .energy()
                    .flatMap(
                        e ->
                            Finding.of(
                                EnergyFit.of(soc, energy, recording.integral()),
                                Message.of(
                                    "metric.capacity_metrics.fewer_than_different_states_of",
                                    EnergyFit.LEAST_POINTS))))
        .from(EnergyFit::rows);
  }

  /** Adds the numbers of a fitted line. */
  public static void measure(Finding<EnergyFit> line, MetricCollector collector) {
    List<Caveat> own =
        line.value()
            .filter(fit -> fit.widening() > 1)
            .map(fit -> List.of(scatter(fit.widening())))
            .orElse(List.of());
    Finding<Estimate> perShare = line.map(EnergyFit::perPercent);
    collector.covered(PER_SHARE, perShare, EnergyFit.COVERAGE, own);
    collector.covered(FULL, perShare.map(e -> e.times(100)), EnergyFit.COVERAGE, own);
    collector.measured(RESIDUAL, line.map(fit -> Estimate.exactly(fit.residual())), own);
    collector.measured(CONSISTENCY, line.map(fit -> Estimate.exactly(fit.consistency())), own);
  }

  private static Caveat scatter(double widening) {
    BigDecimal times = BigDecimal.valueOf(widening).setScale(2, RoundingMode.HALF_UP);
    return new Caveat(
        Caveat.Kind.ENERGY_LINE,
        Message.of(
            "metric.capacity_metrics.energies_leave_smooth_curve_over", times.toPlainString()));
  }
}
