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
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.result.Curve;
import taperbook.result.Metric;

/** The chart of power over state of charge. */
final class PowerOverSoc {
  private PowerOverSoc() {}

  /**
   * Creates the figure.
   *
   * @param curve power as read
   * @param band the band of the true power, if there are draws of it
   */
  public static Figure draw(Curve curve, Optional<Curve> band, FigureText texts) {
    PlotLine read = new PlotLine(curve, x -> x, y -> y);
    PlotLine line = band.map(b -> read.within(PlotLine.computed(b, x -> x, y -> y))).orElse(read);
    PeakText peak = new PeakText(texts);
    SocMarks marks = new SocMarks(texts);
    String at =
        Texts.of(
            "figure.power_over_soc.at",
            texts.value("peak_reached_soc").orElseGet(() -> soc(line, line.peak())));
    Chart chart =
        new Chart(
            "power-over-soc",
            texts.heading(peak.finding(line), Texts.of("chart.power_over_soc")),
            Axis.stateOfCharge(10),
            Axis.power(line.top()).withRoom(),
            line,
            new Chart.Marks(
                Optional.of(peak.mark(line, stretch(texts), at)),
                window(texts),
                marks.overSoc(line)));
    return draw(chart, peak, marks, at, texts);
  }

  private static Figure draw(
      Chart chart, PeakText peak, SocMarks marks, String at, FigureText texts) {
    PlotLine line = chart.line();
    Optional<String> peaks =
        Optional.of(
            Texts.of("figure.power_over_soc.power_peaks_at_first_read", peak.power(line), at));
    String caption =
        FigureText.sentences(List.of(peaks, peak.holdSentence(), windowSentence(texts)));
    String axis =
        Texts.of(
            "figure.common.charging_power_in_kw_from",
            FigureText.plain(Math.floor(chart.y().max())));
    String description =
        new TextAlternative(Texts.of("figure.common.state_of_charge_in_from"), axis)
            .curve(
                chart, i -> Texts.of("figure.common.kw", soc(line, i), FigureText.plain(line.y(i))))
            .add(caption)
            .add(marks.sentences())
            .text();
    return Figure.of(chart, caption, description);
  }

  private static Optional<double[]> stretch(FigureText texts) {
    Optional<Estimate> from = texts.estimate("peak_hold_soc_from");
    Optional<Estimate> to = texts.estimate("peak_hold_soc_to");
    return from.isPresent() && to.isPresent()
        ? Optional.of(new double[] {from.get().value(), to.get().value()})
        : Optional.empty();
  }

  private static Optional<Chart.Window> window(FigureText texts) {
    SocWindow window = texts.window();
    return texts
        .value(windowId(window))
        .map(
            time ->
                new Chart.Window(
                    window.from(),
                    window.to(),
                    List.of(
                        Texts.of("mark.window", window.from(), window.to(), time),
                        texts.aside(windowId(window)).orElseThrow())));
  }

  /** Describes the time of the headline window, or why it is unknown. */
  static Optional<String> windowSentence(FigureText texts) {
    SocWindow window = texts.window();
    String edges = Texts.of("figure.power_over_soc.to", window.from(), window.to());
    Optional<String> sentence =
        texts.sentence(
            Texts.of("figure.power_over_soc.from_it_takes", edges),
            Texts.of("figure.power_over_soc.time_from", edges),
            windowId(window));
    Optional<String> without = texts.full(Metric.withoutInterruptions(windowId(window)));
    return sentence.map(
        s ->
            without
                .map(
                    w ->
                        Texts.of(
                            "figure.power_over_soc.that_includes_interruption_without_it", s, w))
                .orElse(s));
  }

  private static String windowId(SocWindow window) {
    return "time_soc_" + window.idPart();
  }

  private static String soc(PlotLine line, int i) {
    return FigureText.plain(line.x(i)) + " %";
  }
}
