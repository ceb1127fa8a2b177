package taperbook.draw.session;

import java.util.List;
import java.util.Optional;
import taperbook.draw.chart.Axis;
import taperbook.draw.chart.Chart;
import taperbook.draw.chart.PlotLine;
import taperbook.draw.chart.Said;
import taperbook.draw.chart.Telling;
import taperbook.draw.chart.Thumbnail;
import taperbook.draw.picture.Draft;
import taperbook.model.Curve;
import taperbook.words.Labels;

/** The chart of state of charge over time, with the wanted states marked. */
public final class SocOverTime {
  private static final int MOST_MARKS = 3;

  private SocOverTime() {}

  /** The figure of a session without power. */
  public static Draft draft(Curve curve, Said said) {
    Chart chart = chart(curve, Axis.time(curve.x(curve.size() - 1) / 60), said);
    return told(chart, curve, new SocMarks(said), said);
  }

  /** The chart on a time axis. */
  static Chart chart(Curve curve, Axis time, Said said) {
    PlotLine line = new PlotLine(curve, seconds -> seconds / 60, y -> y);
    return new Chart(
        "soc-over-time",
        said.heading(finding(curve, said), Labels.of("chart.soc_over_time")),
        time,
        Axis.stateOfCharge(20),
        line,
        new Chart.Marks(
            Optional.empty(),
            Optional.empty(),
            Thumbnail.spread(new SocMarks(said).ofSoc(), MOST_MARKS)));
  }

  private static String finding(Curve curve, Said said) {
    int last = curve.size() - 1;
    return Labels.of(
        "finding.charged",
        said.value("start_soc").orElseGet(() -> Said.plain(curve.y(0)) + " %"),
        said.value("end_soc").orElseGet(() -> Said.plain(curve.y(last)) + " %"),
        said.about("session_time").orElseGet(() -> said.time(curve.x(last) - curve.x(0))));
  }

  private static Draft told(Chart chart, Curve curve, SocMarks marks, Said said) {
    PlotLine line = chart.line();
    int last = line.size() - 1;
    String rises =
        "Charge rises from "
            + said.value("start_soc").orElseGet(() -> soc(line, 0))
            + " to "
            + said.value("end_soc").orElseGet(() -> soc(line, last))
            + " in "
            + said.time(curve.x(last) - curve.x(0))
            + ".";
    String caption = Said.sentences(List.of(Optional.of(rises), PowerOverSoc.windowSentence(said)));
    String told =
        new Telling(
                PowerOverTime.timeInWords(chart, curve, said),
                "state of charge in %, from 0 to 100")
            .curve(chart, i -> said.time(curve.x(i)) + ": " + soc(line, i))
            .add(caption)
            .add(marks.sentences())
            .text();
    return new Draft(chart, caption, told);
  }

  private static String soc(PlotLine line, int i) {
    return Said.plain(line.y(i)) + " %";
  }
}
