package taperbook.chart.plots;

import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.TextAlternative;
import taperbook.chart.model.Thumbnail;
import taperbook.chart.render.Figure;
import taperbook.i18n.Texts;
import taperbook.result.Curve;

/** The chart of state of charge over time, with the requested states marked. */
final class SocOverTime {
  private static final int MOST_MARKS = 3;

  private SocOverTime() {}

  /** Creates the figure of a session without power. */
  public static Figure draw(Curve curve, FigureText texts) {
    Chart chart = chart(curve, Axis.time(curve.x(curve.size() - 1) / 60), texts);
    return draw(chart, curve, new SocMarks(texts), texts);
  }

  /** Creates the chart on a time axis. */
  static Chart chart(Curve curve, Axis time, FigureText texts) {
    PlotLine line = new PlotLine(curve, seconds -> seconds / 60, y -> y);
    return new Chart(
        "soc-over-time",
        texts.heading(finding(curve, texts), Texts.of("chart.soc_over_time")),
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
    return Texts.of(
        "finding.charged",
        texts.value("start_soc").orElseGet(() -> FigureText.plain(curve.y(0)) + " %"),
        texts.value("end_soc").orElseGet(() -> FigureText.plain(curve.y(last)) + " %"),
        texts.about("session_time").orElseGet(() -> texts.time(curve.x(last) - curve.x(0))));
  }

  private static Figure draw(Chart chart, Curve curve, SocMarks marks, FigureText texts) {
    PlotLine line = chart.line();
    int last = line.size() - 1;
    String rises =
        Texts.of(
            "figure.soc_over_time.charge_rises_from_to_in",
            texts.value("start_soc").orElseGet(() -> soc(line, 0)),
            texts.value("end_soc").orElseGet(() -> soc(line, last)),
            texts.time(curve.x(last) - curve.x(0)));
    String caption =
        FigureText.sentences(List.of(Optional.of(rises), PowerOverSoc.windowSentence(texts)));
    String description =
        new TextAlternative(
                PowerOverTime.timeInWords(chart, curve, texts),
                Texts.of("figure.common.state_of_charge_in_from"))
            .curve(chart, i -> texts.time(curve.x(i)) + ": " + soc(line, i))
            .add(caption)
            .add(marks.sentences())
            .text();
    return Figure.of(chart, caption, description);
  }

  private static String soc(PlotLine line, int i) {
    return FigureText.plain(line.y(i)) + " %";
  }
}
