package taperbook.chart.model;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Graphics2D;
import java.awt.Shape;

/**
 * Fills and strokes shapes.
 *
 * @param g the target
 * @param background the background of the picture
 */
public record Brush(Graphics2D g, Background background) {
  public void fill(Shape shape, Color color) {
    g.setColor(background.of(color));
    Composite before = g.getComposite();
    if (background == Background.CLEAR) {
      // Fills replace what was painted before, even where they are translucent.
      g.setComposite(AlphaComposite.Src);
    }
    g.fill(shape);
    g.setComposite(before);
  }

  public void stroke(Shape shape, BasicStroke stroke, Color color) {
    g.setColor(background.of(color));
    g.setStroke(stroke);
    g.draw(shape);
  }
}
