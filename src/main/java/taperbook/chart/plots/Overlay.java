package taperbook.chart.plots;

import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.Heading;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.Series;
import taperbook.chart.model.TextAlternative;
import taperbook.chart.plots.Lineup.Entry;
import taperbook.chart.render.Figure;

/**
 * A chart of one line per session, with its texts.
 *
 * @param chart the chart
 * @param entries the sessions with their lines, in the order of the chart's lines
 */
record Overlay(Chart chart, List<Entry> entries) {
  /** Formats a point of a line. */
  @FunctionalInterface
  interface Point {
    String words(PlotLine line, int index);
  }

  /** Creates the chart of the entries between two axes. */
  static Overlay of(
      String id, Heading title, Axis x, Axis y, List<Entry> entries, Chart.Marks marks) {
    Chart chart = new Chart(id, title, x, y, entries.stream().map(Entry::series).toList(), marks);
    return new Overlay(chart, entries);
  }

  /** Returns the highest point of all lines. */
  static double top(List<Entry> entries) {
    return entries.stream().mapToDouble(e -> e.line().top()).max().orElse(0);
  }

  /**
   * Creates the figure with a text alternative of each line.
   *
   * @param axes description of both axes
   * @param point formats a point of a line
   * @param caption the findings of the chart
   */
  Figure draw(TextAlternative axes, Point point, List<Optional<String>> caption) {
    for (Series series : chart.series()) {
      axes.line(series, i -> point.words(series.line(), i));
    }
    chart.marks().window().ifPresent(w -> axes.add(CommonSoc.sentence(w)));
    String finding = FigureText.sentences(caption);
    return Figure.of(chart, finding, axes.add(finding).text());
  }
}
