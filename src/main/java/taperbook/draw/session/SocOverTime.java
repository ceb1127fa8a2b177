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

/** The chart of state of charge over time, with the wanted states marked. */
public final class SocOverTime {
  private SocOverTime() {}

  public static Draft draft(Curve curve, Said said) {
    PlotLine line = new PlotLine(curve, seconds -> seconds / 60, y -> y);
    SocMarks marks = new SocMarks(said);
    Chart chart =
        new Chart(
            "soc-over-time",
            new Chart.Title(Labels.of("chart.soc_over_time"), said.vehicle()),
            Axis.time(line.lastX()),
            Axis.stateOfCharge(20),
            line,
            new Chart.Marks(Optional.empty(), Optional.empty(), marks.ofSoc()));
    return told(chart, curve, marks, said);
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
