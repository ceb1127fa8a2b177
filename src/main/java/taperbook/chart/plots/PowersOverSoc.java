package taperbook.chart.plots;

import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Axis;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.TextAlternative;
import taperbook.chart.plots.Lineup.Entry;
import taperbook.chart.render.Draft;
import taperbook.format.Labels;
import taperbook.format.NumberFormatter;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;

/** The chart of power over state of charge, of all sessions. */
final class PowersOverSoc {
  private PowersOverSoc() {}

  static Optional<Draft> draft(Lineup lineup) {
    List<Entry> entries =
        lineup.entries(
            m ->
                m.result()
                    .curves()
                    .powerOverSoc()
                    .filter(c -> c.size() > 0)
                    .map(c -> new PlotLine(c, x -> x, y -> y)));
    return entries.size() < 2 ? Optional.empty() : Optional.of(draft(lineup, entries));
  }

  private static Draft draft(Lineup lineup, List<Entry> entries) {
    Axis y = Axis.power(Overlay.top(entries)).withRoom();
    Overlay overlay =
        Overlay.of(
            "compare-over-soc",
            lineup.heading(finding(lineup, entries), Labels.of("chart.powers_over_soc")),
            Axis.stateOfCharge(10),
            y,
            entries,
            CommonSoc.marks(lineup));
    TextAlternative axes =
        new TextAlternative(
            "state of charge in %, from 0 to 100", SessionPhrases.range("charging power in kW", y));
    return overlay.draft(
        axes,
        (line, i) -> FigureText.plain(line.x(i)) + " %: " + FigureText.plain(line.y(i)) + " kW",
        List.of(
            Optional.of("Power peaks at " + peaks(entries) + "."),
            times(lineup),
            CommonSoc.missing(entries),
            lineup.leftOut(entries)));
  }

  /** Describes for two sessions which takes more power, for more their peaks. */
  private static String finding(Lineup lineup, List<Entry> entries) {
    return lineup
        .onlyPair()
        .filter(p -> !lineup.pairs().get(0).stretches().isEmpty())
        .map(p -> p.finding(lineup.members().get(0).words(), lineup.members().get(1).words()))
        .orElseGet(() -> peaksInShort(entries));
  }

  /** Returns the peaks by the letters of their sessions. */
  static String peaksInShort(List<Entry> entries) {
    List<String> peaks = entries.stream().map(e -> e.member().letter() + " " + peak(e)).toList();
    return Labels.of("finding.peaks", String.join(", ", peaks));
  }

  private static String peaks(List<Entry> entries) {
    return SessionPhrases.listed(
        entries.stream().map(e -> peak(e) + " in " + e.member().named()).toList());
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
            SessionPhrases.each(lineup.members(), "time_soc_" + window.idPart())
                .map(
                    each ->
                        "The time from "
                            + window.from()
                            + " % to "
                            + window.to()
                            + " %, which all have in common: "
                            + each
                            + "."));
  }
}
