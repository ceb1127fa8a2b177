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
  private final PlotArea frame;
  private final ChartStyle style;

  AxisLayer(PlotArea frame, ChartStyle style) {
    this.frame = frame;
    this.style = style;
  }

  /** Paints a line across the plot at each tick; XChart omits ticks in low plots. */
  void paintGrid(Brush brush) {
    BasicStroke thin = style.solid(style.weights().thin());
    for (double tick : frame.up(style).keySet()) {
      if (tick > frame.y().min()) {
        brush.stroke(across(Math.rint(frame.py(tick))), thin, Palette.GRID);
      }
    }
  }

  /** Paints the baseline with its ticks. */
  void paintLines(Brush brush) {
    Box plot = frame.box();
    BasicStroke thin = style.solid(style.weights().thin());
    if (frame.y().min() < 0) {
      brush.stroke(across(frame.py(0)), style.solid(style.weights().mark()), Palette.GREY);
    }
    brush.stroke(across(plot.bottom()), thin, Palette.GREY);
    for (double tick : frame.x().ticks()) {
      double x = frame.px(tick);
      double foot = plot.bottom() + style.type().tick() * 0.35;
      brush.stroke(new Line2D.Double(x, plot.bottom(), x, foot), thin, Palette.GREY);
    }
  }

  private Line2D across(double y) {
    return new Line2D.Double(frame.box().left(), y, frame.box().right(), y);
  }

  /**
   * Returns the tick labels.
   *
   * @param lowest whether this is the lowest plot on its horizontal axis
   */
  List<TextRun> texts(boolean lowest) {
    List<TextRun> texts = new ArrayList<>();
    double size = style.type().tick();
    Box plot = frame.box();
    Face face = new Face(size, false, Palette.INK);
    if (lowest) {
      double baseline = plot.bottom() + size * 1.4;
      frame
          .across(style)
          .forEach(
              (tick, text) ->
                  texts.add(new TextRun(text, frame.px(tick), baseline, Anchor.MIDDLE, face)));
    }
    double x = plot.left() - size * 0.5;
    frame
        .up(style)
        .forEach(
            (tick, text) ->
                texts.add(new TextRun(text, x, frame.py(tick) + size * 0.35, Anchor.END, face)));
    return texts;
  }
}
