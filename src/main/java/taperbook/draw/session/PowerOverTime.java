package taperbook.draw.session;

import java.util.List;
import java.util.Optional;
import taperbook.draw.chart.Axis;
import taperbook.draw.chart.Chart;
import taperbook.draw.chart.PlotLine;
import taperbook.draw.chart.Said;
import taperbook.draw.chart.Telling;
import taperbook.draw.picture.Draft;
import taperbook.model.Curve;
import taperbook.words.Labels;

/** The chart of power over time: what a driver at the station sees. */
public final class PowerOverTime {
  private PowerOverTime() {}

  public static Draft draft(Curve curve, Said said) {
    PlotLine line = new PlotLine(curve, seconds -> seconds / 60, y -> y);
    Peak peak = new Peak(said);
    SocMarks marks = new SocMarks(said);
    String after =
        "after " + said.value("peak_reached_time").orElseGet(() -> said.time(curve.x(line.peak())));
    EventMarks events = new EventMarks(said);
    Axis power = Axis.power(line.top());
    Chart chart =
        new Chart(
            "power-over-time",
            new Chart.Title(Labels.of("chart.power_over_time"), said.vehicle()),
            Axis.time(line.lastX()),
            events.isEmpty() ? power : power.withRoom(),
            line,
            new Chart.Marks(
                Optional.of(peak.mark(line, stretch(curve, said), after)),
                Optional.empty(),
                marks.overTime(line),
                Optional.empty(),
                events.flags(line.lastX())));
    return told(chart, curve, after, said);
  }

  /** The time axis in words. */
  static String timeInWords(Chart chart, Curve curve, Said said) {
    return "time since plugging in, from 0 to "
        + said.time(chart.x().max() * 60)
        + ", recorded from "
        + said.time(curve.x(0))
        + " to "
        + said.time(curve.x(curve.size() - 1));
  }

  private static Draft told(Chart chart, Curve curve, String after, Said said) {
    PlotLine line = chart.line();
    Peak peak = new Peak(said);
    Optional<String> peaks =
        Optional.of("Power first reads its peak of " + peak.power(line) + " " + after + ".");
    Optional<String> added =
        said.full("energy_added")
            .flatMap(
                energy ->
                    said.value("session_time")
                        .map(time -> "The session adds " + energy + " in " + time + "."));
    String caption =
        Said.sentences(List.of(peaks, peak.holdSentence(), added, new EventMarks(said).sentence()));
    String axis = "charging power in kW, from 0 to " + Said.plain(Math.floor(chart.y().max()));
    String told =
        new Telling(timeInWords(chart, curve, said), axis)
            .curve(chart, i -> said.time(curve.x(i)) + ": " + Said.plain(line.y(i)) + " kW")
            .add(caption)
            .add(new SocMarks(said).sentences())
            .text();
    return new Draft(chart, caption, told);
  }

  private static Optional<double[]> stretch(Curve curve, Said said) {
    return said.estimate("peak_hold_time")
        .filter(hold -> hold.value() > 0)
        .map(
            hold -> {
              double start = Peak.stretchStart(curve, hold.value());
              return new double[] {start / 60, (start + hold.value()) / 60};
            });
  }
}
