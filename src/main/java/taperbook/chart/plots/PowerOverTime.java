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
  public static Draft draft(Curve curve, Optional<Curve> charge, FigureText said) {
    PlotLine line = new PlotLine(curve, seconds -> seconds / 60, y -> y);
    PeakText peak = new PeakText(said);
    String after =
        "after " + said.value("peak_reached_time").orElseGet(() -> said.time(curve.x(line.peak())));
    EventMarks events = new EventMarks(said);
    double last = charge.map(c -> c.x(c.size() - 1) / 60).orElse(0.0);
    Axis time = Axis.time(Math.max(line.lastX(), last));
    Chart chart =
        new Chart(
            "power-over-time",
            said.heading(finding(line, said), Labels.of("chart.power_over_time")),
            time,
            Axis.power(line.top()).withRoom(),
            line,
            new Chart.Marks(
                Optional.of(peak.mark(line, stretch(curve, said), after)),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                events.flags(line.lastX())));
    Chart both = charge.map(c -> chart.over(SocOverTime.chart(c, chart.x(), said))).orElse(chart);
    return told(both, curve, charge, after, said);
  }

  /** Describes the time axis. */
  static String timeInWords(Chart chart, Curve curve, FigureText said) {
    return "time since plugging in, from 0 to "
        + said.time(chart.x().max() * 60)
        + ", recorded from "
        + said.time(curve.x(0))
        + " to "
        + said.time(curve.x(curve.size() - 1));
  }

  private static Draft told(
      Chart chart, Curve curve, Optional<Curve> charge, String after, FigureText said) {
    PlotLine line = chart.line();
    PeakText peak = new PeakText(said);
    Optional<String> peaks =
        Optional.of("Power first reads its peak of " + peak.power(line) + " " + after + ".");
    Optional<String> added =
        said.full("energy_added")
            .flatMap(
                energy ->
                    said.value("session_time")
                        .map(time -> "The session adds " + energy + " in " + time + "."));
    String caption =
        FigureText.sentences(
            List.of(peaks, peak.holdSentence(), added, new EventMarks(said).sentence()));
    String axis =
        "charging power in kW, from 0 to " + FigureText.plain(Math.floor(chart.y().max()));
    String told =
        new TextAlternative(timeInWords(chart, curve, said), axis)
            .curve(chart, i -> said.time(curve.x(i)) + ": " + FigureText.plain(line.y(i)) + " kW")
            .add(charge.map(c -> "Second panel, on the same time. " + told(c, said)).orElse(""))
            .add(caption)
            .add(new SocMarks(said).sentences())
            .text();
    return new Draft(chart, caption, told);
  }

  private static String told(Curve charge, FigureText said) {
    return SocOverTime.draft(charge, said).textAlternative();
  }

  /** Describes what the session adds in which time, or else the course of the power. */
  private static String finding(PlotLine line, FigureText said) {
    Optional<String> energy = said.about("energy_added");
    Optional<String> time = said.about("session_time");
    Optional<String> from = said.value("start_soc");
    Optional<String> to = said.value("end_soc");
    if (time.isEmpty() || from.isEmpty() || to.isEmpty()) {
      return new PeakText(said).overTime(line);
    }
    String charged = Labels.of("finding.charged", from.get(), to.get(), time.get());
    return FigureText.capital(
        energy.map(e -> Labels.of("finding.added", e, charged)).orElse(charged));
  }

  private static Optional<double[]> stretch(Curve curve, FigureText said) {
    return said.estimate("peak_hold_time")
        .filter(hold -> hold.value() > 0)
        .map(
            hold -> {
              double start = PeakText.stretchStart(curve, hold.value());
              return new double[] {start / 60, (start + hold.value()) / 60};
            });
  }
}
