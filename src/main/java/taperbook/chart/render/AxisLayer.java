package taperbook.chart.render;

import java.awt.BasicStroke;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import taperbook.chart.model.Box;
import taperbook.chart.model.Brush;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Palette;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.TextRun.Anchor;
import taperbook.chart.model.TextRun.Face;

/** The axes of a plot: baseline and tick labels, the last one with the unit. */
final class AxisLayer {
  private final PlotArea area;
  private final ChartStyle style;

  AxisLayer(PlotArea area, ChartStyle style) {
    this.area = area;
    this.style = style;
  }

  /** Paints a line across the plot at each tick; XChart omits ticks in low plots. */
  void paintGrid(Brush brush) {
    BasicStroke thin = style.solid(style.weights().thin());
    for (double tick : area.up(style).keySet()) {
      if (tick > area.y().min()) {
        brush.stroke(across(Math.rint(area.py(tick))), thin, Palette.GRID);
      }
    }
  }

  /** Paints the baseline with its ticks. */
  void paintLines(Brush brush) {
    Box plot = area.box();
    BasicStroke thin = style.solid(style.weights().thin());
    if (area.y().min() < 0) {
      brush.stroke(across(area.py(0)), style.solid(style.weights().mark()), Palette.GREY);
    }
    brush.stroke(across(plot.bottom()), thin, Palette.GREY);
    for (double tick : area.x().ticks()) {
      double x = area.px(tick);
      double tickEnd = plot.bottom() + style.type().tick() * 0.35;
      brush.stroke(new Line2D.Double(x, plot.bottom(), x, tickEnd), thin, Palette.GREY);
    }
  }

  private Line2D across(double y) {
    return new Line2D.Double(area.box().left(), y, area.box().right(), y);
  }

  /**
   * Returns the tick labels.
   *
   * @param lowest whether this is the lowest plot on its horizontal axis
   */
  List<TextRun> texts(boolean lowest) {
    List<TextRun> texts = new ArrayList<>();
    double size = style.type().tick();
    Box plot = area.box();
    Face face = new Face(size, false, Palette.INK);
    if (lowest) {
      double baseline = plot.bottom() + size * 1.4;
      area.across(style)
          .forEach(
              (tick, text) ->
                  texts.add(new TextRun(text, area.px(tick), baseline, Anchor.MIDDLE, face)));
    }
    double x = plot.left() - size * 0.5;
    area.up(style)
        .forEach(
            (tick, text) ->
                texts.add(new TextRun(text, x, area.py(tick) + size * 0.35, Anchor.END, face)));
    return texts;
  }
}
