package taperbook.chart.render;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.List;
import taperbook.chart.model.Box;
import taperbook.chart.model.Brush;
import taperbook.chart.model.Chart;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.LineThinning;
import taperbook.chart.model.Marker;
import taperbook.chart.model.Palette;
import taperbook.chart.model.Pen;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.Series;

/** Paints lines, with dashes over wide gaps, readings, and samples of labels. */
public final class LineLayer {
  private final Brush brush;
  private final PlotArea area;
  private final ChartStyle style;

  /**
   * Creates the layer of a plot.
   *
   * @param area the plot
   */
  public LineLayer(Brush brush, PlotArea area) {
    this.brush = brush;
    this.area = area;
    this.style = brush.style();
  }

  /** Paints dashed lines, and lines over wide gaps. */
  void dashes(Chart chart) {
    for (Series series : chart.series()) {
      if (series.pen().isDashed()) {
        paint(series);
      } else {
        gaps(series);
      }
    }
  }

  /** Paints a line, each stretch without a wide gap in one stroke, and lines over the gaps. */
  public void paint(Series series) {
    series.line().runs().forEach(run -> stretch(series, run));
    gaps(series);
  }

  /** Paints the lines over wide gaps; dashes continue over a reading between two gaps. */
  private void gaps(Series series) {
    PlotLine line = series.line();
    List<PlotLine.Run> runs = line.runs();
    Path2D path = new Path2D.Double();
    for (int k = 0; k + 1 < runs.size(); k++) {
      int from = runs.get(k).last();
      if (k == 0 || runs.get(k).first() < from) {
        path.moveTo(area.px(line.x(from)), area.py(line.y(from)));
      }
      path.lineTo(area.px(line.x(from + 1)), area.py(line.y(from + 1)));
    }
    if (runs.size() > 1) {
      brush.stroke(path, series.pen().gap(style), series.pen().gapColor());
    }
  }

  /** Paints markers at readings. */
  void readings(Chart chart) {
    for (Series series : chart.series()) {
      PlotLine line = series.line();
      for (int i : series.marked(chart.markersApart())) {
        marker(series.pen(), area.px(line.x(i)), area.py(line.y(i)));
      }
    }
  }

  /** Paints the sample of the line before its label. */
  void key(Callout.Placed label) {
    label.callout().key().ifPresent(pen -> key(pen, label));
  }

  private void key(Pen pen, Callout.Placed label) {
    Box box = label.box();
    double y = box.top() + style.leading() / 2;
    double length = label.callout().keyWidth(style) - style.gap();
    Line2D piece = new Line2D.Double(box.left(), y, box.left() + length, y);
    brush.stroke(piece, pen.line(style), pen.color());
    marker(pen, box.left() + length / 2, y);
  }

  private void stretch(Series series, PlotLine.Run run) {
    PlotLine line = series.line();
    if (run.first() == run.last()) {
      return;
    }
    List<Integer> kept = LineThinning.keep(line, run, area, 0.3 * style.weights().curve());
    Path2D path = new Path2D.Double();
    path.moveTo(area.px(line.x(run.first())), area.py(line.y(run.first())));
    kept.subList(1, kept.size()).forEach(i -> path.lineTo(area.px(line.x(i)), area.py(line.y(i))));
    brush.stroke(path, series.pen().line(style), series.pen().color());
  }

  private void marker(Pen pen, double x, double y) {
    Marker marker = pen.marker();
    Shape shape = marker.at(x, y, style.weights().dot());
    Color inside = marker.isFilled() ? pen.color() : Palette.PAPER;
    brush.fill(shape, inside);
    if (!marker.isFilled()) {
      BasicStroke edge = style.solid(0.6 * style.weights().curve());
      brush.stroke(shape, edge, pen.color());
    }
  }
}
