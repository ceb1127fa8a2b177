package taperbook.chart.model;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;

/**
 * Fills and strokes shapes.
 *
 * @param g the target
 * @param style the sizes of the picture, and its background
 */
public record Brush(Graphics2D g, ChartStyle style) {
  public void fill(Shape shape, Color color) {
    g.setColor(style.background().of(color));
    Composite before = g.getComposite();
    if (style.background() == Background.CLEAR) {
      // Fills replace what was painted before, even where they are translucent.
      g.setComposite(AlphaComposite.Src);
    }
    g.fill(shape);
    g.setComposite(before);
  }

  public void stroke(Shape shape, BasicStroke stroke, Color color) {
    g.setColor(style.background().of(color));
    g.setStroke(stroke);
    g.draw(shape);
  }

  /** Strokes a line between two points. */
  public void line(double x1, double y1, double x2, double y2, BasicStroke stroke, Color color) {
    stroke(new Line2D.Double(x1, y1, x2, y2), stroke, color);
  }

  /** Paints a mark as a ring, so that it differs from a reading by more than colour. */
  public void ring(double x, double y) {
    Ellipse2D circle = circle(x, y, style.weights().markDot());
    fill(circle, Palette.PAPER);
    stroke(circle, style.solid(1.6 * style.weights().mark()), Palette.ACCENT);
  }

  /** Returns the circle around a point. */
  public static Ellipse2D circle(double x, double y, double radius) {
    return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
  }
}
