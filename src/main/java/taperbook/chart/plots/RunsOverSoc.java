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
import taperbook.chart.render.Figure;
import taperbook.format.NumberFormatter;
import taperbook.format.SessionNames;
import taperbook.i18n.Texts;
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
  static Optional<Figure> draw(ReportResult result) {
    return result.runs().mean().map(mean -> draw(result, mean));
  }

  private static Figure draw(ReportResult result, Curve mean) {
    List<SessionResult> runs = new ArrayList<>(List.of(result.main()));
    runs.addAll(result.runs().repeats());
    List<Series> series = new ArrayList<>();
    PlotLine middle = PlotLine.computed(mean, x -> x, y -> y);
    series.add(new Series(middle, Pen.COMPUTED, Texts.of("label.run_mean", runs.size())));
    for (int i = 0; i < Math.min(runs.size(), MOST); i++) {
      Pen pen = Pen.ofSession(i + 1);
      String name = Texts.of("label.run", i + 1, day(runs.get(i)));
      runs.get(i)
          .curves()
          .powerOverSoc()
          .ifPresent(c -> series.add(new Series(new PlotLine(c, x -> x, y -> y), pen, name)));
    }
    double top = series.stream().mapToDouble(s -> s.line().top()).max().orElse(0);
    Axis y = Axis.power(top).withRoom();
    Chart chart =
        new Chart(
            "runs-over-soc",
            new FigureText(result)
                .heading(Texts.of("finding.runs", runs.size()), Texts.of("chart.runs")),
            Axis.stateOfCharge(10),
            y,
            series,
            Chart.Marks.common(Optional.empty()));
    TextAlternative axes =
        new TextAlternative(
            Texts.of("figure.common.state_of_charge_in_from"),
            FigureText.range(Texts.of("figure.common.charging_power_in_kw"), y));
    return Overlay.draw(
        chart, axes, Overlay::kilowatts, List.of(Optional.of(caption(runs.size()))));
  }

  private static String caption(int runs) {
    String drawn =
        runs > MOST ? Texts.of("figure.runs_over_soc.only_first_runs_are_drawn", MOST) : "";
    return drawn
        + (runs == 2
            ? Texts.of("figure.runs_over_soc.mean_of_two_runs_has")
            : Texts.of("figure.runs_over_soc.band_holds_mean_of_all"));
  }

  private static String day(SessionResult run) {
    return run.session()
        .conditions()
        .text(ConditionItem.DATE)
        .map(NumberFormatter::dateOrAsIs)
        .orElse(run.session().name());
  }
}
