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
import taperbook.chart.render.Figure;
import taperbook.i18n.Texts;
import taperbook.result.CommonGround;

/** The chart of power over time, of all sessions. */
final class PowersOverTime {
  private PowersOverTime() {}

  static Optional<Figure> draw(Lineup lineup) {
    List<Entry> entries =
        lineup.entries(
            m ->
                m.result()
                    .curves()
                    .powerOverTime()
                    .map(c -> new PlotLine(c, seconds -> seconds / 60, y -> y)));
    return entries.size() < 2 ? Optional.empty() : Optional.of(draw(lineup, entries));
  }

  private static Figure draw(Lineup lineup, List<Entry> entries) {
    double last = entries.stream().mapToDouble(e -> e.line().lastX()).max().orElse(0);
    Axis x = Axis.time(last);
    Axis y = Axis.power(Overlay.top(entries)).withRoom();
    Chart chart =
        new Chart(
            "compare-over-time",
            lineup.heading(finding(lineup, entries), Texts.of("chart.powers_over_time")),
            x,
            y,
            Overlay.series(entries),
            Chart.Marks.common(Optional.empty()));
    TextAlternative axes =
        new TextAlternative(
            FigureText.range(Texts.of("figure.powers_over_time.time_since_plugging_in_in"), x),
            FigureText.range(Texts.of("figure.common.charging_power_in_kw"), y));
    FigureText texts = entries.get(0).member().texts();
    return Overlay.draw(
        chart,
        axes,
        (line, i) ->
            Texts.of("figure.common.kw", texts.time(line.x(i) * 60), FigureText.plain(line.y(i))),
        List.of(added(entries), sameEnergy(lineup), lineup.leftOut(entries)));
  }

  private static String finding(Lineup lineup, List<Entry> entries) {
    return lineup
        .onlyPair()
        .flatMap(p -> lineup.result().common().shared().flatMap(p::timeFinding))
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
        parts.add(
            Texts.of(
                "figure.powers_over_time.adds_in",
                member.named(),
                energy.get(),
                charges(member),
                time.get()));
      }
    }
    return parts.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", parts) + ".");
  }

  private static String charges(Member member) {
    Optional<String> from = member.texts().value("start_soc");
    Optional<String> to = member.texts().value("end_soc");
    return from.isPresent() && to.isPresent()
        ? Texts.of("figure.powers_over_time.from_to", from.get(), to.get())
        : "";
  }

  /** Describes the time of each session for the same energy from the same state of charge. */
  private static Optional<String> sameEnergy(Lineup lineup) {
    CommonGround common = lineup.result().common();
    if (common.shared().isEmpty() || common.energyKilowattHours().isEmpty()) {
      return Optional.empty();
    }
    int from = common.shared().get().from();
    int energy = common.energyKilowattHours().getAsInt();
    return lineup
        .each(CommonGround.timeToAddId(energy, from))
        .map(each -> Texts.of("figure.powers_over_time.time_to_add_kwh_from", energy, from, each));
  }
}
