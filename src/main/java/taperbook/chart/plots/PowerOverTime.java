package taperbook.chart.plots;

import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.TextAlternative;
import taperbook.chart.render.Figure;
import taperbook.i18n.Texts;
import taperbook.result.Curve;

/** The chart of power over time. */
final class PowerOverTime {
  private PowerOverTime() {}

  /**
   * Creates the figure.
   *
   * @param curve power
   * @param charge state of charge, drawn below it
   */
  public static Figure draw(Curve curve, Optional<Curve> charge, FigureText texts) {
    PlotLine line = new PlotLine(curve, seconds -> seconds / 60, y -> y);
    PeakText peak = new PeakText(texts);
    String after =
        Texts.of(
            "figure.power_over_time.after",
            texts.value("peak_reached_time").orElseGet(() -> texts.time(curve.x(line.peak()))));
    EventMarks events = new EventMarks(texts);
    double last = charge.map(c -> c.x(c.size() - 1) / 60).orElse(0.0);
    Axis time = Axis.time(Math.max(line.lastX(), last));
    Chart chart =
        new Chart(
            "power-over-time",
            texts.heading(finding(line, texts), Texts.of("chart.power_over_time")),
            time,
            Axis.power(line.top()).withRoom(),
            line,
            new Chart.Marks(
                Optional.of(peak.mark(line, stretch(curve, texts), after)),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                events.flags(line.lastX())));
    Chart both = charge.map(c -> chart.over(SocOverTime.chart(c, chart.x(), texts))).orElse(chart);
    return draw(both, curve, charge, after, texts);
  }

  /** Describes the time axis. */
  static String timeInWords(Chart chart, Curve curve, FigureText texts) {
    return Texts.of(
        "figure.power_over_time.time_since_plugging_in_from",
        texts.time(chart.x().max() * 60),
        texts.time(curve.x(0)),
        texts.time(curve.x(curve.size() - 1)));
  }

  private static Figure draw(
      Chart chart, Curve curve, Optional<Curve> charge, String after, FigureText texts) {
    PlotLine line = chart.line();
    PeakText peak = new PeakText(texts);
    Optional<String> peaks =
        Optional.of(
            Texts.of("figure.power_over_time.power_first_reads_its_peak", peak.power(line), after));
    Optional<String> added =
        texts
            .full("energy_added")
            .flatMap(
                energy ->
                    texts
                        .value("session_time")
                        .map(
                            time ->
                                Texts.of("figure.power_over_time.session_adds_in", energy, time)));
    String caption =
        FigureText.sentences(
            List.of(peaks, peak.holdSentence(), added, new EventMarks(texts).sentence()));
    String axis =
        Texts.of(
            "figure.common.charging_power_in_kw_from",
            FigureText.plain(Math.floor(chart.y().max())));
    String description =
        new TextAlternative(timeInWords(chart, curve, texts), axis)
            .curve(
                chart,
                i ->
                    Texts.of(
                        "figure.common.kw", texts.time(curve.x(i)), FigureText.plain(line.y(i))))
            .add(
                charge
                    .map(
                        c ->
                            Texts.of(
                                "figure.power_over_time.second_panel_on_same_time",
                                SocOverTime.draw(c, texts).textAlternative()))
                    .orElse(""))
            .add(caption)
            .add(new SocMarks(texts).sentences())
            .text();
    return Figure.of(chart, caption, description);
  }

  /** Describes what the session adds in which time, or else the course of the power. */
  private static String finding(PlotLine line, FigureText texts) {
    Optional<String> energy = texts.about("energy_added");
    Optional<String> time = texts.about("session_time");
    Optional<String> from = texts.value("start_soc");
    Optional<String> to = texts.value("end_soc");
    if (time.isEmpty() || from.isEmpty() || to.isEmpty()) {
      return new PeakText(texts).overTime(line);
    }
    String charged = Texts.of("finding.charged", from.get(), to.get(), time.get());
    return FigureText.capital(
        energy.map(e -> Texts.of("finding.added", e, charged)).orElse(charged));
  }

  private static Optional<double[]> stretch(Curve curve, FigureText texts) {
    return texts
        .estimate("peak_hold_time")
        .filter(hold -> hold.value() > 0)
        .map(
            hold -> {
              double start = PeakText.stretchStart(curve, hold.value());
              return new double[] {start / 60, (start + hold.value()) / 60};
            });
  }
}
