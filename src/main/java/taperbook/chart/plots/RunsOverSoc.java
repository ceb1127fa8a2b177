package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.Pen;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.Series;
import taperbook.chart.model.TextAlternative;
import taperbook.chart.render.Draft;
import taperbook.format.Labels;
import taperbook.format.NumberFormatter;
import taperbook.format.SessionNames;
import taperbook.result.Curve;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.ConditionItem;

/** The chart of the power of all runs of a session over charge, with their mean and its band. */
final class RunsOverSoc {
  /** The first pen is reserved for the mean. */
  private static final int MOST = SessionNames.MOST - 1;

  private RunsOverSoc() {}

  /** Returns the chart, if the session has repeats that share a stretch of charge. */
  static Optional<Draft> draft(ReportResult result) {
    return result.runs().mean().map(mean -> draft(result, mean));
  }

  private static Draft draft(ReportResult result, Curve mean) {
    List<SessionResult> runs = new ArrayList<>(List.of(result.main()));
    runs.addAll(result.runs().repeats());
    List<Series> series = new ArrayList<>();
    PlotLine middle = PlotLine.computed(mean, x -> x, y -> y);
    series.add(new Series(middle, Pen.COMPUTED, Labels.of("label.run_mean", runs.size())));
    for (int i = 0; i < Math.min(runs.size(), MOST); i++) {
      Pen pen = Pen.ofSession(i + 1);
      String name = Labels.of("label.run", i + 1, day(runs.get(i)));
      runs.get(i)
          .curves()
          .powerOverSoc()
          .filter(c -> c.size() > 0)
          .ifPresent(c -> series.add(new Series(new PlotLine(c, x -> x, y -> y), pen, name)));
    }
    double top = series.stream().mapToDouble(s -> s.line().top()).max().orElse(0);
    Axis y = Axis.power(top).withRoom();
    Chart chart =
        new Chart(
            "runs-over-soc",
            new FigureText(result)
                .heading(Labels.of("finding.runs", runs.size()), Labels.of("chart.runs")),
            Axis.stateOfCharge(10),
            y,
            series,
            Chart.Marks.common(Optional.empty()));
    String caption = caption(runs.size());
    TextAlternative description =
        new TextAlternative(
            "state of charge in %, from 0 to 100", SessionPhrases.range("charging power in kW", y));
    for (Series line : series) {
      description.line(
          line,
          i ->
              FigureText.plain(line.line().x(i))
                  + " %: "
                  + FigureText.plain(line.line().y(i))
                  + " kW");
    }
    return new Draft(chart, caption, description.add(caption).text());
  }

  private static String caption(int runs) {
    String drawn = runs > MOST ? "Only the first " + MOST + " runs are drawn. " : "";
    return drawn
        + (runs == 2
            ? "The mean of two runs has no band, as two runs say too little of the spread."
            : "The band holds the mean of all runs at each state of charge (95\u00a0%, Student).");
  }

  private static String day(SessionResult run) {
    return run.session()
        .conditions()
        .text(ConditionItem.DATE)
        .map(NumberFormatter::dateOrAsIs)
        .orElse(run.session().name());
  }
}
