package taperbook.chart.render;

import java.awt.Color;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Brush;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Palette;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.TextRun.Anchor;
import taperbook.chart.model.TextRun.Face;

/**
 * The axes of a plot: baseline and tick labels, the last one with the unit. A thumbnail has only
 * the ends of its axes, and the name of the vertical one.
 */
final class AxisLayer {
  private final Brush brush;
  private final PlotArea area;
  private final ChartStyle style;

  AxisLayer(Brush brush, PlotArea area) {
    this.brush = brush;
    this.area = area;
    this.style = brush.style();
  }

  /** Paints a line across the plot at each tick; XChart omits ticks in low plots. */
  void paintGrid() {
    for (double tick : area.up(style).keySet()) {
      if (tick > area.y().min()) {
        across(Math.rint(area.py(tick)), style.weights().thin(), Palette.GRID);
      }
    }
  }

  /** Paints the baseline with its ticks. */
  void paintLines() {
    double bottom = area.box().bottom();
    double thin = style.weights().thin();
    if (area.y().min() < 0) {
      across(area.py(0), style.weights().mark(), Palette.GREY);
    }
    across(bottom, thin, Palette.GREY);
    for (double tick : area.x().ticks()) {
      double x = area.px(tick);
      double end = bottom + style.type().tick() * 0.35;
      brush.line(x, bottom, x, end, style.solid(thin), Palette.GREY);
    }
  }

  private void across(double y, double width, Color color) {
    brush.line(area.box().left(), y, area.box().right(), y, style.solid(width), color);
  }

  /**
   * Returns the tick labels.
   *
   * @param lowest whether this is the lowest plot on its horizontal axis
   */
  List<TextRun> texts(boolean lowest) {
    List<TextRun> texts = new ArrayList<>();
    double size = style.type().tick();
    Face face = new Face(size, false, Palette.INK);
    if (lowest) {
      double baseline = area.box().bottom() + size * (style.isSmall() ? 1.15 : 1.4);
      Map<Double, String> across = style.isSmall() ? ends(area.x()) : area.across(style);
      across.forEach(
          (tick, text) ->
              texts.add(new TextRun(text, area.px(tick), baseline, Anchor.MIDDLE, face)));
    }
    double x = area.box().left() - size * 0.5;
    Map<Double, String> up = style.isSmall() ? ends(area.y()) : area.up(style);
    up.forEach(
        (tick, text) ->
            texts.add(new TextRun(text, x, area.py(tick) + size * 0.35, Anchor.END, face)));
    if (style.isSmall()) {
      Face bold = new Face(style.type().title(), true, Palette.INK);
      double top = style.edges().down() + style.type().title();
      double left = style.edges().across();
      TextRun name = new TextRun(area.y().title(), left, top, Anchor.START, bold);
      if (name.left() + name.width() <= style.width() - left) {
        texts.add(name);
      }
    }
    return texts;
  }

  /** Returns zero, and the tick farthest from it. */
  private static Map<Double, String> ends(Axis axis) {
    Map<Double, String> figures = new LinkedHashMap<>(axis.figures(1));
    double farthest =
        figures.keySet().stream().reduce((a, b) -> Math.abs(b) < Math.abs(a) ? a : b).orElse(0.0);
    figures.keySet().removeIf(tick -> tick != 0 && tick != farthest);
    return figures;
  }
}
