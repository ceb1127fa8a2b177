package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.TextAlternative;
import taperbook.chart.plots.Lineup.Entry;
import taperbook.chart.plots.Lineup.Member;
import taperbook.chart.render.Figure;
import taperbook.i18n.Joined;
import taperbook.i18n.Texts;
import taperbook.quantity.Estimate;
import taperbook.session.ConditionItem;

/**
 * The chart of power per kWh of usable energy over state of charge, which compares batteries of
 * different sizes. Commonly called the C-rate; by energy rather than by charge.
 */
final class ChargeRates {
  private static final String UNIT = "kW/kWh";

  /**
   * Batteries whose usable energies differ by no more than this share look the same in this chart.
   */
  private static final double ALIKE = 0.02;

  private ChargeRates() {}

  /** Returns the chart, if every session's usable energy is known and they differ. */
  static Optional<Figure> draw(Lineup lineup) {
    List<Double> energies =
        lineup.members().stream().flatMap(m -> usableKilowattHours(m).stream()).toList();
    double most = energies.stream().mapToDouble(e -> e).max().orElse(0);
    double least = energies.stream().mapToDouble(e -> e).min().orElse(0);
    if (energies.size() < lineup.members().size() || !(most > least * (1 + ALIKE))) {
      return Optional.empty();
    }
    List<Entry> entries = lineup.entries(ChargeRates::line);
    return entries.size() < 2 ? Optional.empty() : Optional.of(draw(lineup, entries));
  }

  private static Figure draw(Lineup lineup, List<Entry> entries) {
    Axis y = Axis.power(Texts.of("axis.charge_rate"), UNIT, Overlay.top(entries)).withRoom();
    Chart chart =
        new Chart(
            "c-rate-over-soc",
            lineup.heading(finding(entries), Texts.of("chart.charge_rates")),
            Axis.stateOfCharge(10),
            y,
            Overlay.series(entries),
            lineup.commonMarks());
    TextAlternative axes =
        new TextAlternative(
            Texts.of("figure.common.state_of_charge_in_from"),
            FigureText.range(Texts.of("figure.charge_rates.power_per_usable_energy_in"), y));
    return Overlay.draw(
        chart,
        axes,
        (line, i) -> FigureText.plain(line.x(i)) + " %: " + hundredths(line.y(i)),
        List.of(Optional.of(peaks(entries)), lineup.leftOut(entries)));
  }

  private static String finding(List<Entry> entries) {
    List<String> peaks = new ArrayList<>();
    for (Entry entry : entries) {
      double peak = entry.line().y(entry.line().peak());
      peaks.add(entry.member().letter() + " " + hundredths(peak));
    }
    return Texts.of("finding.peaks", String.join(", ", peaks));
  }

  private static String peaks(List<Entry> entries) {
    List<String> peaks = new ArrayList<>();
    for (Entry entry : entries) {
      String peak = hundredths(entry.line().y(entry.line().peak()));
      String energy = FigureText.plain(usableKilowattHours(entry.member()).orElseThrow());
      peaks.add(Texts.of("figure.charge_rates.in_with_kwh", peak, entry.member().named(), energy));
    }
    return Texts.of("figure.charge_rates.for_each_kwh_of_usable", Joined.all(peaks));
  }

  private static String hundredths(double rate) {
    return String.format(Locale.ROOT, "%.2f\u00a0" + UNIT, rate);
  }

  private static Optional<PlotLine> line(Member member) {
    double energy = usableKilowattHours(member).orElseThrow();
    return member
        .result()
        .curves()
        .powerOverSoc()
        .map(c -> new PlotLine(c, x -> x, power -> power / energy));
  }

  /** Returns the usable energy as stated, or else as implied by the session. */
  private static Optional<Double> usableKilowattHours(Member member) {
    return member
        .result()
        .session()
        .conditions()
        .amount(ConditionItem.BATTERY_USABLE_ENERGY)
        .or(() -> member.texts().estimate("implied_full_energy"))
        .map(Estimate::value)
        .filter(e -> e > 0);
  }
}
