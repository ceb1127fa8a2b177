package taperbook.metric.session;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.session.Caveat;
import taperbook.session.ConditionItem;
import taperbook.session.Facts;
import taperbook.session.RowRef;

/**
 * Computes power over the usable energy of the battery, 1/h: the stated energy, or else the implied
 * energy of a full charge.
 *
 * <p>Combines the intervals of both numbers in the worst case. For normal errors the coverage is at
 * least that of either, whatever their correlation.
 */
public final class CRateMetrics {
  private final Numbers numbers;
  private final MetricCollector collector;
  private final Optional<Energy> energy;

  /**
   * Usable energy of the battery.
   *
   * @param words its name in a label
   * @param estimate the energy, kWh
   * @param coverage coverage of its interval
   * @param rows rows that it is computed from
   */
  private record Energy(String words, Estimate estimate, double coverage, List<RowRef> rows) {}

  private CRateMetrics(Recording recording, Numbers numbers, List<Caveat> caveats) {
    this.numbers = numbers;
    this.collector = new MetricCollector(recording.session().name(), caveats);
    this.energy =
        stated(recording.session().conditions())
            .or(this::implied)
            .filter(e -> e.estimate().bounds().low() > 0);
  }

  /**
   * Computes the C-rates of a session.
   *
   * @param recording the session
   * @param numbers its numbers
   * @param windows windows whose average power is among the numbers
   * @param caveats caveats of the session
   */
  public static Numbers of(
      Recording recording, Numbers numbers, List<SocWindow> windows, List<Caveat> caveats) {
    CRateMetrics rates = new CRateMetrics(recording, numbers, caveats);
    rates.rate("peak_c_rate", over -> Texts.of("number.peak_c_rate", over), "peak_power");
    for (SocWindow window : windows) {
      rates.rate(
          "average_c_rate_" + window.idPart(),
          over -> Texts.of("number.average_c_rate", window.from(), window.to(), over),
          "average_power_" + window.idPart());
    }
    return rates.collector.numbers();
  }

  private static Optional<Energy> stated(Facts<ConditionItem> facts) {
    ConditionItem item = ConditionItem.BATTERY_USABLE_ENERGY;
    return facts
        .amount(item)
        .map(e -> new Energy(Texts.of("label.usable_energy_stated"), e, 1, facts.rows(item)));
  }

  private Optional<Energy> implied() {
    return numbers
        .find("implied_full_energy")
        .filter(n -> n.estimate().isPresent())
        .map(
            n ->
                new Energy(
                    Texts.of("label.usable_energy_implied"),
                    n.estimate().orElseThrow(),
                    n.coverage(),
                    n.origin().rows()));
  }

  private void rate(String id, UnaryOperator<String> label, String powerId) {
    String over = energy.map(Energy::words).orElse(Texts.of("label.usable_energy"));
    Metric metric = Metric.charging(id, label.apply(over), Unit.PER_HOUR, Method.C_RATE);
    ReportNumber power = numbers.get(powerId);
    collector.covered(
        metric,
        Finding.of(energy, Message.of("metric.crate_metrics.usable_energy_is_not_stated"))
            .from(Energy::rows)
            .flatMap(e -> Finding.of(power).map(p -> p.over(e.estimate()))),
        Math.min(power.coverage(), energy.map(Energy::coverage).orElse(1.0)));
  }
}
