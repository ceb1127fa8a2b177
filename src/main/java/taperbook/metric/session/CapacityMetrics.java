package taperbook.metric.session;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import taperbook.format.Labels;
import taperbook.metric.fit.EnergyFit;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.Caveat;
import taperbook.session.Channel;

/** Computes the energy per per cent from a curve through all readings of a session. */
public final class CapacityMetrics {
  private static final Metric PER_SHARE =
      Metric.charging(
              "energy_per_soc_fitted",
              Labels.of("number.energy_per_soc_fitted"),
              Unit.KILOWATT_HOUR_PER_PERCENT,
              Method.ENERGY_LINE)
          .in(Role.ENERGY);
  private static final Metric FULL =
      Metric.charging(
              "implied_full_energy_fitted",
              Labels.of("number.implied_full_energy_fitted"),
              Unit.KILOWATT_HOUR,
              Method.ENERGY_LINE)
          .in(Role.ENERGY);
  private static final Metric RESIDUAL =
      Metric.charging(
          "energy_fit_residual",
          Labels.of("number.energy_fit_residual"),
          Unit.KILOWATT_HOUR,
          Method.ENERGY_LINE);
  private static final Metric CONSISTENCY =
      Metric.charging(
          "energy_fit_consistency",
          Labels.of("number.energy_fit_consistency"),
          Unit.ONE,
          Method.ENERGY_LINE);

  private final Recording recording;
  private final Optional<EnergyFit> line;
  private final MetricCollector collector;

  public CapacityMetrics(Recording recording, Optional<EnergyFit> line, MetricCollector collector) {
    this.recording = recording;
    this.line = line;
    this.collector = collector;
  }

  /** Returns the fitted line of a session, if its readings determine one. */
  public static Optional<EnergyFit> fit(Recording recording) {
    return recording
        .soc()
        .flatMap(
            soc ->
                EnergyFit.of(
                    soc, recording.session().trace(Channel.ENERGY_ADDED), recording.integral()));
  }

  /** Explains why {@link #fit} is empty. */
  static String whyNoFit(Recording recording) {
    if (recording.soc().isEmpty()) {
      return Recording.NO_SOC;
    }
    if (recording.counter().isEmpty() && recording.integral().isEmpty()) {
      return Recording.NO_ENERGY;
    }
    return "fewer than "
        + EnergyFit.LEAST_POINTS
        + " different states of charge were read together with an energy, or they lie too close"
        + " together for their displays";
  }

  public void measure() {
    if (line.isEmpty()) {
      for (Metric metric : List.of(PER_SHARE, FULL, RESIDUAL, CONSISTENCY)) {
        collector.withheld(metric, whyNoFit(recording));
      }
      return;
    }
    EnergyFit fit = line.get();
    List<Caveat> own = fit.widening() > 1 ? List.of(scatter(fit.widening())) : List.of();
    Estimate perShare = fit.perPercent();
    collector.covered(PER_SHARE, perShare, EnergyFit.COVERAGE, fit.rows(), own);
    collector.covered(FULL, perShare.times(100), EnergyFit.COVERAGE, fit.rows(), own);
    collector.measured(RESIDUAL, Estimate.exactly(fit.residual()), fit.rows(), own);
    collector.measured(CONSISTENCY, Estimate.exactly(fit.consistency()), fit.rows(), own);
  }

  private static Caveat scatter(double widening) {
    BigDecimal times = BigDecimal.valueOf(widening).setScale(2, RoundingMode.HALF_UP);
    return new Caveat(
        Caveat.Kind.ENERGY_LINE,
        "The energies leave a smooth curve over the state of charge farther, or in longer runs,"
            + " than independent rounding explains; the standard uncertainty of its mean rise is"
            + " widened "
            + times.toPlainString()
            + " times.");
  }
}
