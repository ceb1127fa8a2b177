package taperbook.chart.plots;

import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.TextAlternative;
import taperbook.chart.plots.Lineup.Entry;
import taperbook.chart.render.Figure;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Joined;
import taperbook.i18n.Texts;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;

/** The chart of power over state of charge, of all sessions. */
final class PowersOverSoc {
  private PowersOverSoc() {}

  static Optional<Figure> draw(Lineup lineup) {
    List<Entry> entries =
        lineup.entries(
            m -> m.result().curves().powerOverSoc().map(c -> new PlotLine(c, x -> x, y -> y)));
    return entries.size() < 2 ? Optional.empty() : Optional.of(draw(lineup, entries));
  }

  private static Figure draw(Lineup lineup, List<Entry> entries) {
    Axis y = Axis.power(Overlay.top(entries)).withRoom();
    Chart chart =
        new Chart(
            "compare-over-soc",
            lineup.heading(finding(lineup, entries), Texts.of("chart.powers_over_soc")),
            Axis.stateOfCharge(10),
            y,
            Overlay.series(entries),
            lineup.commonMarks());
    TextAlternative axes =
        new TextAlternative(
            Texts.of("figure.common.state_of_charge_in_from"),
            FigureText.range(Texts.of("figure.common.charging_power_in_kw"), y));
    return Overlay.draw(
        chart,
        axes,
        Overlay::kilowatts,
        List.of(
            Optional.of(Texts.of("figure.powers_over_soc.power_peaks_at", peaks(entries))),
            times(lineup),
            apart(entries),
            lineup.leftOut(entries)));
  }

  /** Describes for two sessions which takes more power, for more their peaks. */
  private static String finding(Lineup lineup, List<Entry> entries) {
    return lineup
        .onlyPair()
        .filter(p -> !lineup.pairs().get(0).stretches().isEmpty())
        .map(PairCaption::finding)
        .orElseGet(() -> peaksInShort(entries));
  }

  /** Returns a sentence if the lines have no state of charge in common. */
  private static Optional<String> apart(List<Entry> entries) {
    double from = entries.stream().mapToDouble(e -> e.line().x(0)).max().orElse(0);
    double to = entries.stream().mapToDouble(e -> e.line().lastX()).min().orElse(0);
    return to > from
        ? Optional.empty()
        : Optional.of(Texts.of("figure.common_soc.there_is_no_state_of"));
  }

  /** Returns the peaks by the letters of their sessions. */
  static String peaksInShort(List<Entry> entries) {
    List<String> peaks = entries.stream().map(e -> e.member().letter() + " " + peak(e)).toList();
    return Texts.of("finding.peaks", String.join(", ", peaks));
  }

  private static String peaks(List<Entry> entries) {
    return Joined.all(
        entries.stream()
            .map(e -> Texts.of("figure.common.in", peak(e), e.member().named()))
            .toList());
  }

  private static String peak(Entry entry) {
    PlotLine line = entry.line();
    String read =
        FigureText.plain(line.y(line.peak())) + "\u00a0" + NumberFormatter.name(Unit.KILOWATT);
    return entry.member().texts().value("peak_power").orElse(read);
  }

  /** Describes the time of each session for the common window. */
  private static Optional<String> times(Lineup lineup) {
    Optional<SocWindow> shared = lineup.result().common().shared();
    return shared.flatMap(
        window ->
            lineup
                .each("time_soc_" + window.idPart())
                .map(
                    each ->
                        Texts.of(
                            "figure.powers_over_soc.time_from_to_which_all",
                            window.from(),
                            window.to(),
                            each)));
  }
}
