package taperbook.draw.style;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;

/** Slanted lines that fill a box, so that a meaning does not hang on colour. */
public final class Hatch {
  private Hatch() {}

  /**
   * Fills a box; colour and stroke are those of the graphics.
   *
   * @param gap distance between two lines along the level, in pixels, above zero
   */
  public static void fill(Graphics2D g, Box box, double gap) {
    // Lines rise to the right at 45 degrees; each is cut at the box by hand, so that no clip is
    // needed.
    for (double x = box.left() - box.height() + gap / 2; x < box.right(); x += gap) {
      double from = Math.max(0, box.left() - x);
      double to = Math.min(box.height(), box.right() - x);
      if (from < to) {
        g.draw(new Line2D.Double(x + from, box.bottom() - from, x + to, box.bottom() - to));
      }
    }
  }
}
