package taperbook.draw;

import java.awt.Graphics2D;
import java.util.List;

/** A picture that paints itself in a style: all shapes at once, while texts are handed back. */
interface Sheet {
  /** Paints the shapes and returns the texts to be set. */
  List<TextRun> paint(Graphics2D g, ChartStyle style);
}
