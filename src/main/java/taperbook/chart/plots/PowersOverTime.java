package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.TextAlternative;
import taperbook.chart.plots.Lineup.Entry;
import taperbook.chart.plots.Lineup.Member;
import taperbook.chart.render.Draft;
import taperbook.format.Labels;
import taperbook.result.CommonGround;

/** The chart of power over time, of all sessions. */
final class PowersOverTime {
  private PowersOverTime() {}

  static Optional<Draft> draft(Lineup lineup) {
    List<Entry> entries =
        lineup.entries(
            m ->
                m.result()
                    .curves()
                    .powerOverTime()
                    .filter(c -> c.size() > 0)
                    .map(c -> new PlotLine(c, seconds -> seconds / 60, y -> y)));
    return entries.size() < 2 ? Optional.empty() : Optional.of(draft(lineup, entries));
  }

  private static Draft draft(Lineup lineup, List<Entry> entries) {
    double last = entries.stream().mapToDouble(e -> e.line().lastX()).max().orElse(0);
    Axis x = Axis.time(last);
    Axis y = Axis.power(Overlay.top(entries)).withRoom();
    Overlay overlay =
        Overlay.of(
            "compare-over-time",
            lineup.heading(finding(lineup, entries), Labels.of("chart.powers_over_time")),
            x,
            y,
            entries,
            Chart.Marks.common(Optional.empty()));
    TextAlternative axes =
        new TextAlternative(
            SessionPhrases.range("time since plugging in, in minutes", x),
            SessionPhrases.range("charging power in kW", y));
    FigureText texts = entries.get(0).member().texts();
    return overlay.draft(
        axes,
        (line, i) -> texts.time(line.x(i) * 60) + ": " + FigureText.plain(line.y(i)) + " kW",
        List.of(added(entries), sameEnergy(lineup), lineup.leftOut(entries)));
  }

  private static String finding(Lineup lineup, List<Entry> entries) {
    return lineup
        .onlyPair()
        .flatMap(
            p ->
                lineup
                    .result()
                    .common()
                    .shared()
                    .flatMap(
                        shared ->
                            p.timeFinding(
                                lineup.members().get(0).words(),
                                lineup.members().get(1).words(),
                                shared)))
        .orElseGet(() -> PowersOverSoc.peaksInShort(entries));
  }

  /** Describes what each session added in which time. */
  private static Optional<String> added(List<Entry> entries) {
    List<String> parts = new ArrayList<>();
    for (Entry entry : entries) {
      Member member = entry.member();
      Optional<String> energy = member.texts().value("energy_added");
      Optional<String> time = member.texts().value("session_time");
      if (energy.isPresent() && time.isPresent()) {
        parts.add(member.named() + " adds " + energy.get() + charges(member) + " in " + time.get());
      }
    }
    return parts.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", parts) + ".");
  }

  private static String charges(Member member) {
    Optional<String> from = member.texts().value("start_soc");
    Optional<String> to = member.texts().value("end_soc");
    return from.isPresent() && to.isPresent() ? " from " + from.get() + " to " + to.get() : "";
  }

  /** Describes the time of each session for the same energy from the same state of charge. */
  private static Optional<String> sameEnergy(Lineup lineup) {
    CommonGround common = lineup.result().common();
    if (common.shared().isEmpty() || common.energyKilowattHours().isEmpty()) {
      return Optional.empty();
    }
    int from = common.shared().get().from();
    int energy = common.energyKilowattHours().getAsInt();
    return SessionPhrases.each(lineup.members(), CommonGround.timeToAddId(energy, from))
        .map(
            each ->
                "The time to add " + energy + "\u00a0kWh from " + from + " % on: " + each + ".");
  }
}
