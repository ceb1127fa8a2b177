package taperbook.chart.render;

import static taperbook.chart.model.TextRun.Anchor.END;
import static taperbook.chart.model.TextRun.Anchor.MIDDLE;
import static taperbook.chart.model.TextRun.Anchor.START;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import taperbook.chart.model.Box;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Palette;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.TextRun.Face;

/**
 * The axes of a thumbnail: the vertical axis by name with its outermost tick, and the ends of the
 * horizontal one.
 */
final class ThumbnailAxisLayer {
  private final PlotArea area;
  private final ChartStyle style;

  ThumbnailAxisLayer(PlotArea area, ChartStyle style) {
    this.area = area;
    this.style = style;
  }

  List<TextRun> texts() {
    List<TextRun> texts = new ArrayList<>();
    double size = style.type().tick();
    Box plot = area.box();
    Face plain = new Face(size, false, Palette.INK);
    double tickBaseline = plot.bottom() + size * 1.15;
    Map<Double, String> across = area.x().figures(1);
    ends(across)
        .forEach(
            x ->
                texts.add(
                    new TextRun(x.getValue(), area.px(x.getKey()), tickBaseline, MIDDLE, plain)));
    double left = plot.left() - size * 0.5;
    ends(area.y().figures(1))
        .forEach(
            y -> {
              double baseline = area.py(y.getKey()) + size * 0.35;
              texts.add(new TextRun(y.getValue(), left, baseline, END, plain));
            });
    Face bold = new Face(style.type().title(), true, Palette.INK);
    double top = style.edges().down() + style.type().title();
    TextRun name = new TextRun(area.y().title(), style.edges().across(), top, START, bold);
    if (name.left() + name.width() <= style.width() - style.edges().across()) {
      texts.add(name);
    }
    return texts;
  }

  /** Returns zero, and the tick farthest from it. */
  private static List<Map.Entry<Double, String>> ends(Map<Double, String> figures) {
    Comparator<Map.Entry<Double, String>> nearness =
        Comparator.comparingDouble(f -> Math.abs(f.getKey()));
    List<Map.Entry<Double, String>> rising = figures.entrySet().stream().sorted(nearness).toList();
    return List.of(rising.get(0), rising.get(rising.size() - 1));
  }
}
