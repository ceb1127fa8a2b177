package taperbook.chart.plots;

import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.TextAlternative;
import taperbook.chart.model.Thumbnail;
import taperbook.chart.render.Draft;
import taperbook.format.Labels;
import taperbook.result.Curve;

/** The chart of state of charge over time, with the requested states marked. */
public final class SocOverTime {
  private static final int MOST_MARKS = 3;

  private SocOverTime() {}

  /** Creates the figure of a session without power. */
  public static Draft draft(Curve curve, FigureText texts) {
    Chart chart = chart(curve, Axis.time(curve.x(curve.size() - 1) / 60), texts);
    return draft(chart, curve, new SocMarks(texts), texts);
  }

  /** Creates the chart on a time axis. */
  static Chart chart(Curve curve, Axis time, FigureText texts) {
    PlotLine line = new PlotLine(curve, seconds -> seconds / 60, y -> y);
    return new Chart(
        "soc-over-time",
        texts.heading(finding(curve, texts), Labels.of("chart.soc_over_time")),
        time,
        Axis.stateOfCharge(20),
        line,
        new Chart.Marks(
            Optional.empty(),
            Optional.empty(),
            Thumbnail.spread(new SocMarks(texts).ofSoc(), MOST_MARKS)));
  }

  private static String finding(Curve curve, FigureText texts) {
    int last = curve.size() - 1;
    return Labels.of(
        "finding.charged",
        texts.value("start_soc").orElseGet(() -> FigureText.plain(curve.y(0)) + " %"),
        texts.value("end_soc").orElseGet(() -> FigureText.plain(curve.y(last)) + " %"),
        texts.about("session_time").orElseGet(() -> texts.time(curve.x(last) - curve.x(0))));
  }

  private static Draft draft(Chart chart, Curve curve, SocMarks marks, FigureText texts) {
    PlotLine line = chart.line();
    int last = line.size() - 1;
    String rises =
        "Charge rises from "
            + texts.value("start_soc").orElseGet(() -> soc(line, 0))
            + " to "
            + texts.value("end_soc").orElseGet(() -> soc(line, last))
            + " in "
            + texts.time(curve.x(last) - curve.x(0))
            + ".";
    String caption =
        FigureText.sentences(List.of(Optional.of(rises), PowerOverSoc.windowSentence(texts)));
    String description =
        new TextAlternative(
                PowerOverTime.timeInWords(chart, curve, texts),
                "state of charge in %, from 0 to 100")
            .curve(chart, i -> texts.time(curve.x(i)) + ": " + soc(line, i))
            .add(caption)
            .add(marks.sentences())
            .text();
    return new Draft(chart, caption, description);
  }

  private static String soc(PlotLine line, int i) {
    return FigureText.plain(line.y(i)) + " %";
  }
}
