package taperbook.chart.library;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import taperbook.chart.model.Brush;
import taperbook.chart.model.ChartStyle;

/** Paints shapes in the sizes of a style. */
final class PanelBrush {
  private final Brush brush;
  private final ChartStyle style;

  PanelBrush(Graphics2D g, ChartStyle style) {
    this.brush = new Brush(g, style.background());
    this.style = style;
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  ChartStyle style() {
    return style;
  }

  void line(double x1, double y1, double x2, double y2, BasicStroke stroke, Color color) {
    stroke(new Line2D.Double(x1, y1, x2, y2), stroke, color);
  }

  void stroke(Shape shape, BasicStroke stroke, Color color) {
    brush.stroke(shape, stroke, color);
  }

  void fill(Shape shape, Color color) {
    brush.fill(shape, color);
  }

  static Ellipse2D circle(double x, double y, double radius) {
    return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
  }
}
