package taperbook.draw.library;

import java.util.List;
import taperbook.draw.style.ChartStyle;
import taperbook.draw.style.Palette;
import taperbook.draw.style.TextRun;
import taperbook.draw.style.TextRun.Anchor;
import taperbook.draw.style.TextRun.Face;

/** Title and subtitle of a picture on film; in print they stand on the page. */
final class Headings {
  private Headings() {}

  static List<TextRun> of(String title, String subtitle, double left, ChartStyle style) {
    if (!style.titled()) {
      return List.of();
    }
    double size = style.type().title();
    double room = style.width() - 2 * left;
    Face bold = new Face(size, true, Palette.INK);
    Face below = new Face(style.type().label(), false, Palette.GREY);
    return List.of(
        new TextRun(SmallType.fitting(title, bold, room), left, size * 1.5, Anchor.START, bold),
        new TextRun(
            SmallType.fitting(subtitle, below, room), left, size * 2.45, Anchor.START, below));
  }
}
