package taperbook.chart.plots;

import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.Series;
import taperbook.chart.model.TextAlternative;
import taperbook.chart.plots.Lineup.Entry;
import taperbook.chart.render.Figure;
import taperbook.i18n.Texts;

/** Charts of one line per session, with their texts. */
final class Overlay {
  private Overlay() {}

  /** Formats a point of a line. */
  @FunctionalInterface
  interface Point {
    String words(PlotLine line, int index);
  }

  static List<Series> series(List<Entry> entries) {
    return entries.stream().map(Entry::series).toList();
  }

  /** Returns the highest point of all lines. */
  static double top(List<Entry> entries) {
    return entries.stream().mapToDouble(e -> e.line().top()).max().orElse(0);
  }

  /** Formats a power by state of charge. */
  static String kilowatts(PlotLine line, int i) {
    return Texts.of("figure.common.kw_2", FigureText.plain(line.x(i)), FigureText.plain(line.y(i)));
  }

  /**
   * Creates the figure with a text alternative of each line.
   *
   * @param axes description of both axes
   * @param point formats a point of a line
   * @param caption the findings of the chart
   */
  static Figure draw(
      Chart chart, TextAlternative axes, Point point, List<Optional<String>> caption) {
    for (Series series : chart.series()) {
      axes.line(series, i -> point.words(series.line(), i));
    }
    chart
        .marks()
        .window()
        .ifPresent(
            w ->
                axes.add(
                    Texts.of(
                        "figure.common_soc.dotted_lines_bound_what_all",
                        FigureText.plain(w.from()),
                        FigureText.plain(w.to()))));
    String finding = FigureText.sentences(caption);
    return Figure.of(chart, finding, axes.add(finding).text());
  }
}
