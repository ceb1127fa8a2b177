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
 * @param g what is painted on
 * @param ground what the picture lies on
 */
public record Brush(Graphics2D g, Background ground) {
  public void fill(Shape shape, Color color) {
    g.setColor(ground.of(color));
    Composite before = g.getComposite();
    if (ground == Background.CLEAR) {
      // What is filled takes the place of what was there, also where it lets the film through.
      g.setComposite(AlphaComposite.Src);
    }
    g.fill(shape);
    g.setComposite(before);
  }

  public void stroke(Shape shape, BasicStroke stroke, Color color) {
    g.setColor(ground.of(color));
    g.setStroke(stroke);
    g.draw(shape);
  }
}
