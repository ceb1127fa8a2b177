package taperbook.chart.library;

import java.awt.BasicStroke;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import taperbook.chart.model.Box;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Palette;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.TextRun.Anchor;
import taperbook.chart.model.TextRun.Face;
import taperbook.chart.model.Typeface;
import taperbook.format.Labels;
import taperbook.format.NumberFormatter;
import taperbook.quantity.Unit;
import taperbook.result.Curve;

/** One panel of small multiples: grid, curve, the ring at its peak, and its texts. */
final class PanelPainter {
  private final PanelBrush brush;
  private final PanelPlotArea plot;
  private final Panel panel;
  private final ChartStyle style;
  private final SmallType type;

  PanelPainter(PanelBrush brush, PanelPlotArea plot, Panel panel) {
    this.brush = brush;
    this.plot = plot;
    this.panel = panel;
    this.style = brush.style();
    this.type = new SmallType(style);
  }

  void shapes() {
    Box box = plot.box();
    BasicStroke thin = style.solid(style.weights().thin());
    for (double tick : plot.y().ticks()) {
      brush.line(box.left(), plot.py(tick), box.right(), plot.py(tick), thin, Palette.GRID);
    }
    for (double tick : plot.x().ticks()) {
      brush.line(plot.px(tick), box.top(), plot.px(tick), box.bottom(), thin, Palette.GRID);
    }
    brush.line(box.left(), box.bottom(), box.right(), box.bottom(), thin, Palette.GREY);
    curve();
    int peak = panel.peakIndex();
    if (peak >= 0) {
      double radius = 0.75 * style.weights().markDot();
      var ring = PanelBrush.circle(peakX(peak), peakY(peak), radius);
      brush.fill(ring, Palette.PAPER);
      brush.stroke(ring, style.solid(1.4 * style.weights().mark()), Palette.ACCENT);
    }
  }

  private double peakX(int peak) {
    return plot.pxWithin(panel.curve().x(peak));
  }

  private double peakY(int peak) {
    return plot.pyWithin(panel.curve().y(peak));
  }

  private void curve() {
    Curve curve = panel.curve();
    float width = (float) (0.8 * style.weights().curve());
    BasicStroke solid = new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    Path2D path = new Path2D.Double();
    boolean open = false;
    for (int i = 0; i < curve.size(); i++) {
      double x = plot.pxWithin(curve.x(i));
      double y = plot.pyWithin(curve.y(i));
      if (open) {
        path.lineTo(x, y);
      } else {
        path.moveTo(x, y);
      }
      open = !curve.wideGapAfter(i);
      if (!open && i + 1 < curve.size()) {
        brush.line(
            x,
            y,
            plot.pxWithin(curve.x(i + 1)),
            plot.pyWithin(curve.y(i + 1)),
            style.gapDash(),
            Palette.GAP);
      }
    }
    if (curve.size() > 1) {
      brush.stroke(path, solid, Palette.CURVE);
    }
  }

  /** Returns the heading and the peak label. */
  List<TextRun> texts() {
    Box box = plot.box();
    List<TextRun> texts = new ArrayList<>();
    double first = box.top() - 0.45 * type.size() - type.leading() - 0.22 * type.size();
    Face bold = type.face(true, Palette.INK);
    Face quiet = type.face(false, Palette.GREY);
    double room = box.width() / style.type().slack();
    texts.add(heading(panel.title(), first, bold, room));
    texts.add(heading(panel.subtitle(), first + type.leading(), quiet, room));
    int peak = panel.peakIndex();
    if (peak < 0) {
      texts.add(
          new TextRun(
              SmallType.fitting(Labels.of("mark.no_power"), quiet, room),
              box.left() + box.width() / 2,
              box.top() + box.height() / 2,
              Anchor.MIDDLE,
              quiet));
    } else if (!panel.peak().isEmpty()) {
      texts.add(peakLabel(peak));
    }
    texts.removeIf(t -> t.text().isEmpty());
    return texts;
  }

  private TextRun heading(String text, double baseline, Face face, double room) {
    return new TextRun(
        SmallType.fitting(text, face, room), plot.box().left(), baseline, Anchor.START, face);
  }

  /** Places the label above the ring, which the scale keeps free of the curve. */
  private TextRun peakLabel(int peak) {
    Face face = type.face(true, Palette.ACCENT);
    double width = Typeface.width(panel.peak(), true, type.size()) * style.type().slack();
    double left = peakX(peak) - width / 2;
    double shifted = Math.max(plot.box().left(), Math.min(left, plot.box().right() - width));
    double above = peakY(peak) - style.weights().markDot() - 0.3 * type.size();
    double baseline = Math.max(above, plot.box().top() + 0.8 * type.size());
    return new TextRun(panel.peak(), shifted, baseline, Anchor.START, face);
  }

  /** Returns the tick labels of the axes at this panel. */
  List<TextRun> ticks(boolean left, boolean bottom) {
    Box box = plot.box();
    Face face = type.face(false, Palette.INK);
    List<TextRun> texts = new ArrayList<>();
    double step = box.height() * plot.y().share(plot.y().from() + plot.y().step());
    double every = Math.ceil(1.15 * type.size() / step) * plot.y().step();
    for (double tick : left ? plot.y().ticks() : List.<Double>of()) {
      if (tick % every != 0) {
        continue;
      }
      texts.add(
          new TextRun(
              plot.y().text(tick, NumberFormatter.name(Unit.KILOWATT)),
              box.left() - 0.45 * type.size(),
              plot.py(tick) + 0.35 * type.size(),
              Anchor.END,
              face));
    }
    for (double tick : bottom ? plot.x().ticks() : List.<Double>of()) {
      Anchor anchor = tick == 0 ? Anchor.START : tick == 100 ? Anchor.END : Anchor.MIDDLE;
      texts.add(
          new TextRun(
              plot.x().text(tick, NumberFormatter.name(Unit.PERCENT)),
              plot.px(tick),
              box.bottom() + 1.2 * type.size(),
              anchor,
              face));
    }
    return texts;
  }
}
