package taperbook.chart.render;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import taperbook.chart.model.Background;
import taperbook.chart.model.Chart;
import taperbook.chart.model.ChartStyle;

/** Writes a chart as PNG. */
final class PngPicture {
  private PngPicture() {}

  /** Returns the picture's bytes; the same chart gives the same bytes. */
  static byte[] write(Chart chart, ChartStyle style) {
    return write(SvgPicture.painting(chart), style);
  }

  /** Writes any picture, as {@link #write(Chart, ChartStyle)}. */
  static byte[] write(Painting painting, ChartStyle style) {
    boolean clear = style.background() == Background.CLEAR;
    int kind = clear ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB;
    BufferedImage image = new BufferedImage(style.width(), style.height(), kind);
    Graphics2D g = image.createGraphics();
    if (!clear) {
      g.setColor(style.background().color());
      g.fillRect(0, 0, style.width(), style.height());
    }
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    painting.whole(g, style);
    g.dispose();
    return PngEncoder.of(clear ? Halo.below(image) : image);
  }
}
