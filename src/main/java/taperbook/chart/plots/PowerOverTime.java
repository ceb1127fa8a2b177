package taperbook.chart.plots;

import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.TextAlternative;
import taperbook.chart.render.Draft;
import taperbook.format.Labels;
import taperbook.result.Curve;

/** The chart of power over time. */
public final class PowerOverTime {
  private PowerOverTime() {}

  /**
   * Creates the figure.
   *
   * @param curve power
   * @param charge state of charge, drawn below it
   */
  public static Draft draft(Curve curve, Optional<Curve> charge, FigureText texts) {
    PlotLine line = new PlotLine(curve, seconds -> seconds / 60, y -> y);
    PeakText peak = new PeakText(texts);
    String after =
        "after "
            + texts.value("peak_reached_time").orElseGet(() -> texts.time(curve.x(line.peak())));
    EventMarks events = new EventMarks(texts);
    double last = charge.map(c -> c.x(c.size() - 1) / 60).orElse(0.0);
    Axis time = Axis.time(Math.max(line.lastX(), last));
    Chart chart =
        new Chart(
            "power-over-time",
            texts.heading(finding(line, texts), Labels.of("chart.power_over_time")),
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
    return draft(both, curve, charge, after, texts);
  }

  /** Describes the time axis. */
  static String timeInWords(Chart chart, Curve curve, FigureText texts) {
    return "time since plugging in, from 0 to "
        + texts.time(chart.x().max() * 60)
        + ", recorded from "
        + texts.time(curve.x(0))
        + " to "
        + texts.time(curve.x(curve.size() - 1));
  }

  private static Draft draft(
      Chart chart, Curve curve, Optional<Curve> charge, String after, FigureText texts) {
    PlotLine line = chart.line();
    PeakText peak = new PeakText(texts);
    Optional<String> peaks =
        Optional.of("Power first reads its peak of " + peak.power(line) + " " + after + ".");
    Optional<String> added =
        texts
            .full("energy_added")
            .flatMap(
                energy ->
                    texts
                        .value("session_time")
                        .map(time -> "The session adds " + energy + " in " + time + "."));
    String caption =
        FigureText.sentences(
            List.of(peaks, peak.holdSentence(), added, new EventMarks(texts).sentence()));
    String axis =
        "charging power in kW, from 0 to " + FigureText.plain(Math.floor(chart.y().max()));
    String description =
        new TextAlternative(timeInWords(chart, curve, texts), axis)
            .curve(chart, i -> texts.time(curve.x(i)) + ": " + FigureText.plain(line.y(i)) + " kW")
            .add(charge.map(c -> "Second panel, on the same time. " + draft(c, texts)).orElse(""))
            .add(caption)
            .add(new SocMarks(texts).sentences())
            .text();
    return new Draft(chart, caption, description);
  }

  private static String draft(Curve charge, FigureText texts) {
    return SocOverTime.draft(charge, texts).textAlternative();
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
    String charged = Labels.of("finding.charged", from.get(), to.get(), time.get());
    return FigureText.capital(
        energy.map(e -> Labels.of("finding.added", e, charged)).orElse(charged));
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
