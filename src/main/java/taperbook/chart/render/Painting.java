package taperbook.chart.render;

import java.awt.Graphics2D;
import java.util.List;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.Typeface;

/** A picture that can be painted at print and film sizes. */
@FunctionalInterface
public interface Painting {
  /**
   * Paints the shapes and returns the texts to be set on them.
   *
   * @param g the target
   * @param style the sizes of the rendering
   */
  List<TextRun> paint(Graphics2D g, ChartStyle style);

  /** Paints the shapes and draws the texts on them. */
  default void whole(Graphics2D g, ChartStyle style) {
    for (TextRun text : paint(g, style)) {
      g.setFont(Typeface.font(text.font().bold(), text.font().size()));
      g.setColor(style.background().of(text.font().color()));
      g.drawString(text.text(), (float) text.left(), (float) text.baseline());
    }
  }
}
