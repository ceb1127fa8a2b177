package taperbook.draw;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;

/**
 * Fills and strokes shapes.
 *
 * @param g what is painted on
 */
record Brush(Graphics2D g) {
  void fill(Shape shape, Color color) {
    g.setColor(color);
    g.fill(shape);
  }

  void stroke(Shape shape, BasicStroke stroke, Color color) {
    g.setColor(color);
    g.setStroke(stroke);
    g.draw(shape);
  }
}
