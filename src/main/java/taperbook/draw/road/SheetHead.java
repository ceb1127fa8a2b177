package taperbook.draw.road;

import java.util.ArrayList;
import java.util.List;
import taperbook.draw.style.Box;
import taperbook.draw.style.ChartStyle;
import taperbook.draw.style.Palette;
import taperbook.draw.style.TextRun;
import taperbook.draw.style.TextRun.Anchor;
import taperbook.draw.style.TextRun.Face;

/** The words around a sheet: on film title and subtitle above, in both styles a line below. */
final class SheetHead {
  private static final double BASELINE = 0.35;
  private static final double LEADING = 1.25;
  private static final String SPACE = " ";

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
    List<String> lines = lines(foot, style);
    double last = style.height() - size * 0.75;
    for (int i = 0; i < lines.size(); i++) {
      double baseline = last - (lines.size() - 1 - i) * size * LEADING;
      texts.add(new TextRun(lines.get(i), edge, baseline, Anchor.START, quiet));
    }
    return texts;
  }

  /** The line at the foot, cut at words where the picture is too narrow for it. */
  private static List<String> lines(String foot, ChartStyle style) {
    double width = style.width() - 2 * edge(style);
    Face face = new Face(style.type().tick(), false, Palette.GREY);
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : foot.split(SPACE, -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      double longerWidth = new TextRun(longer, 0, 0, Anchor.START, face).width();
      if (!line.isEmpty() && longerWidth * style.type().slack() > width) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }

  /** Left edge of all that stands on a sheet. */
  static double edge(ChartStyle style) {
    return style.margins().left() * 0.4;
  }

  /** Where the drawing may stand: below the title, above the lines at the foot. */
  static Box room(String foot, ChartStyle style) {
    double edge = edge(style);
    double top = style.titled() ? style.type().title() * 3.1 : style.type().tick() * 0.4;
    double further = (lines(foot, style).size() - 1) * LEADING;
    double below = style.isSmall() ? 0.4 : 2.2 + further;
    double bottom = style.height() - style.type().tick() * below;
    return new Box(edge, top, style.width() - 2 * edge, bottom - top);
  }

  /** Baseline of a text that stands in the middle of a line at a height. */
  static double baseline(double middle, double size) {
    return middle + size * BASELINE;
  }
}
