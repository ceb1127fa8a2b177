package taperbook.draw;

import java.util.ArrayList;
import java.util.List;
import taperbook.draw.TextRun.Anchor;
import taperbook.draw.TextRun.Face;

/** The words around a sheet: on film title and subtitle above, in both styles a line below. */
final class SheetHead {
  private static final double BASELINE = 0.35;

  private SheetHead() {}

  static List<TextRun> texts(String title, String subtitle, String foot, ChartStyle style) {
    List<TextRun> texts = new ArrayList<>();
    double size = style.type().tick();
    double edge = edge(style);
    if (style.titled()) {
      double titleSize = style.type().title();
      Face bold = new Face(titleSize, true, Palette.INK);
      Face below = new Face(style.type().label(), false, Palette.GREY);
      texts.add(new TextRun(title, edge, titleSize * 1.5, Anchor.START, bold));
      texts.add(new TextRun(subtitle, edge, titleSize * 2.45, Anchor.START, below));
    }
    if (style.isSmall()) {
      return texts;
    }
    Face quiet = new Face(size, false, Palette.GREY);
    double baseline = style.height() - size * 0.75;
    texts.add(new TextRun(foot, edge, baseline, Anchor.START, quiet));
    return texts;
  }

  /** Left edge of all that stands on a sheet. */
  static double edge(ChartStyle style) {
    return style.margins().left() * 0.4;
  }

  /** Where the drawing may stand: below the title, above the line at the foot. */
  static Box room(ChartStyle style) {
    double edge = edge(style);
    double top = style.titled() ? style.type().title() * 3.1 : style.type().tick() * 0.4;
    double bottom = style.height() - style.type().tick() * (style.isSmall() ? 0.4 : 2.2);
    return new Box(edge, top, style.width() - 2 * edge, bottom - top);
  }

  /** Baseline of a text that stands in the middle of a line at a height. */
  static double baseline(double middle, double size) {
    return middle + size * BASELINE;
  }
}
