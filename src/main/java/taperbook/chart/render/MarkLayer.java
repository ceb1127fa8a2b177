package taperbook.chart.render;

import java.awt.BasicStroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import taperbook.chart.model.Box;
import taperbook.chart.model.Brush;
import taperbook.chart.model.Chart;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Palette;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.PlotLine;

/** Paints what is below and above grid and lines: tints, marks, guides, and label backgrounds. */
final class MarkLayer {
  /** Position of the span of a window, as a share of the plot's height from its bottom. */
  private static final double SPAN_AT = 0.05;

  private final Brush brush;
  private final Chart chart;
  private final PlotArea area;
  private final ChartStyle style;

  MarkLayer(Brush brush, Chart chart, PlotArea area) {
    this.brush = brush;
    this.chart = chart;
    this.area = area;
    this.style = brush.style();
  }

  /** Returns the guide of a mark. */
  static Line2D guide(Chart.Point point, PlotArea area) {
    double x = area.px(point.x());
    double y = area.py(point.y());
    return point.guide() == Chart.Guide.DROP
        ? new Line2D.Double(x, area.box().bottom(), x, y)
        : new Line2D.Double(area.box().left(), y, x, y);
  }

  /** Returns the span of a window: its line along the bottom of the plot, as a flat box. */
  static Box span(Chart.Window window, PlotArea area) {
    double left = area.px(window.from());
    double y = area.box().bottom() - SPAN_AT * area.box().height();
    return new Box(left, y, area.px(window.to()) - left, 0);
  }

  /** Returns vertical lines at both ends of a window. */
  static List<Line2D> edges(Chart.Window window, PlotArea area) {
    List<Line2D> edges = new ArrayList<>();
    for (double end : new double[] {window.from(), window.to()}) {
      double x = area.px(end);
      edges.add(new Line2D.Double(x, area.box().bottom(), x, area.box().top()));
    }
    return edges;
  }

  /** Returns the area of a hold's bracket, slightly above the curve. */
  static Box bracket(Chart.Hold hold, PlotArea area, ChartStyle style) {
    double left = area.px(hold.from());
    double top = area.py(hold.y()) - 1.6 * style.gap() - style.weights().dot();
    return new Box(left, top, area.px(hold.to()) - left, 0.7 * style.gap());
  }

  /** Paints the tint of the band. */
  void paintBelow() {
    if (chart.hasVisibleBand()) {
      chart.line().band().bandRuns().forEach(this::tintBand);
    }
  }

  /** Paints guides, label backgrounds, and marks. */
  void paintAbove(PlacedLabels.Placement placement) {
    for (Chart.Point point : chart.marks().points()) {
      boolean drop = point.guide() == Chart.Guide.DROP;
      BasicStroke stroke = drop ? style.solid(style.weights().thin()) : style.dotted();
      brush.stroke(guide(point, area), stroke, Palette.GREY);
    }
    chart.marks().window().ifPresent(this::window);
    labelGround(placement);
    chart.marks().hold().filter(Chart.Hold::isStretch).ifPresent(this::bracket);
    chart.marks().points().forEach(p -> brush.ring(area.px(p.x()), area.py(p.y())));
    chart
        .marks()
        .hold()
        .filter(h -> !h.isStretch())
        .ifPresent(h -> brush.ring(area.px(h.from()), area.py(h.y())));
  }

  /** Paints leaders and the background of labels. */
  private void labelGround(PlacedLabels.Placement placement) {
    for (Line2D leader : placement.leaders()) {
      brush.stroke(leader, style.solid(style.weights().thin()), Palette.GREY);
    }
    for (Callout.Placed label : placement.labels()) {
      brush.fill(label.box().grown(style.gap() / 4).shape(), Palette.PAPER);
    }
  }

  private void bracket(Chart.Hold hold) {
    Box box = bracket(hold, area, style);
    Path2D bracket = new Path2D.Double();
    bracket.moveTo(box.left(), box.bottom());
    bracket.lineTo(box.left(), box.top());
    bracket.lineTo(box.right(), box.top());
    bracket.lineTo(box.right(), box.bottom());
    brush.stroke(bracket, style.solid(1.4 * style.weights().mark()), Palette.ACCENT);
  }

  private void tintBand(PlotLine.Run run) {
    PlotLine line = chart.line().band();
    List<Integer> kept = line.bandPoints(run, area, 0.3 * style.weights().curve());
    if (kept.size() < 2) {
      return;
    }
    Path2D band = new Path2D.Double();
    band.moveTo(area.px(line.x(kept.get(0))), clampedY(line.high(kept.get(0))));
    kept.forEach(i -> band.lineTo(area.px(line.x(i)), clampedY(line.high(i))));
    List<Integer> back = new ArrayList<>(kept);
    Collections.reverse(back);
    back.forEach(i -> band.lineTo(area.px(line.x(i)), clampedY(line.low(i))));
    band.closePath();
    brush.fill(band, Palette.BAND);
  }

  /** Clips a band that extends beyond the axis. */
  private double clampedY(double value) {
    return area.py(Math.max(area.y().min(), Math.min(value, area.y().max())));
  }

  /** Paints the span of a window and, if several lines share it, its edges. */
  private void window(Chart.Window window) {
    if (chart.series().size() > 1) {
      edges(window, area).forEach(edge -> brush.stroke(edge, style.dotted(), Palette.GREY));
    }
    Box span = span(window, area);
    double tip = style.gap() / 2;
    BasicStroke line = style.solid(style.weights().mark());
    brush.line(span.left(), span.top(), span.right(), span.top(), line, Palette.INK);
    for (double x : new double[] {span.left(), span.right()}) {
      brush.line(x, span.top() - tip, x, span.top() + tip, line, Palette.INK);
    }
  }
}
