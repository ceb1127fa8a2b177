package taperbook.chart.library;

import java.awt.Color;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.TextRun.Face;
import taperbook.chart.model.Typeface;

/** Text sizes of dense pictures: smaller than in a chart of one session. */
final class SmallType {
  /** Factor on a chart's own size: 8 pt in print. */
  private static final double SHARE = 0.89;

  private final ChartStyle style;

  SmallType(ChartStyle style) {
    this.style = style;
  }

  /** Returns the text size in pixels. */
  double size() {
    return SHARE * style.type().tick();
  }

  double leading() {
    return 1.25 * size();
  }

  Face face(boolean bold, Color color) {
    return new Face(size(), bold, color);
  }

  /** Returns the style with labels of this size. */
  ChartStyle labels() {
    ChartStyle.Type type = style.type();
    return new ChartStyle(
        style.width(),
        style.height(),
        style.edges(),
        new ChartStyle.Type(type.tick(), size(), type.title(), type.slack()),
        style.weights(),
        style.words(),
        style.background());
  }

  /** Truncates a text with an ellipsis if it is too wide. */
  static String fitting(String text, Face face, double room) {
    String shown = text;
    int end = text.length();
    while (end > 0 && Typeface.width(shown, face.bold(), face.size()) > room) {
      end = text.offsetByCodePoints(end, -1);
      shown = text.substring(0, end).stripTrailing() + "\u2026";
    }
    return shown;
  }
}
