package taperbook.chart.render;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import taperbook.chart.model.Box;
import taperbook.chart.model.Brush;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.LeadStrip;
import taperbook.chart.model.Palette;
import taperbook.chart.model.Pen;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.TextRun.Anchor;
import taperbook.chart.model.TextRun.Face;

/**
 * Shows which session is ahead: a strip below the axis with names, and crossings on the zero line.
 */
final class LeadLayer {
  /** Forms of a name: full name, with its letter, the letter alone. */
  private static final int FORMS = 3;

  private final Brush brush;
  private final PlotArea area;
  private final ChartStyle style;

  LeadLayer(Brush brush, PlotArea area) {
    this.brush = brush;
    this.area = area;
    this.style = brush.style();
  }

  /** Returns the box of a part of the strip. */
  private Box piece(LeadStrip.Part part) {
    double size = style.type().tick();
    double left = area.px(part.from());
    double top = area.box().bottom() + 1.85 * size;
    return new Box(left, top, area.px(part.to()) - left, 0.5 * size);
  }

  /** Registers the obstacles of labels. */
  static void avoid(LeadStrip leads, PlotArea area, ChartStyle style, Obstacles around) {
    around.avoidIfCheap(
        new Line2D.Double(area.box().left(), area.py(0), area.box().right(), area.py(0)));
    for (LeadStrip.Crossing crossing : leads.crossings()) {
      double r = style.weights().markDot() + style.weights().mark();
      double left = area.px(crossing.low());
      around.block(new Box(left, area.py(0) - r, area.px(crossing.high()) - left, 2 * r));
    }
  }

  /** Paints strip and crossings and returns the names below the strip. */
  List<TextRun> paint(LeadStrip leads) {
    leads.parts().forEach(this::part);
    leads.crossings().forEach(this::crossing);
    return names(leads);
  }

  /** Returns each name once, below its widest part, in the longest forms that fit. */
  private List<TextRun> names(LeadStrip leads) {
    List<TextRun> texts = new ArrayList<>();
    for (int form = 0; form < FORMS; form++) {
      texts.clear();
      Set<String> named = new HashSet<>();
      for (LeadStrip.Part part : leads.widestFirst()) {
        String name = part.names().get(Math.min(form, part.names().size() - 1));
        if (named.add(name)) {
          name(name, part, texts).ifPresent(texts::add);
        }
      }
      if (texts.size() == named.size()) {
        break;
      }
    }
    return texts;
  }

  /**
   * Returns the name below its part, centred or at one of its ends; empty if others are in the way.
   */
  private Optional<TextRun> name(String name, LeadStrip.Part part, List<TextRun> others) {
    Color color = part.pen().map(Pen::color).orElse(Palette.GREY);
    Face face = new Face(style.type().tick(), false, color);
    double half = face.width(name) * style.type().slack() / 2;
    Box piece = piece(part);
    double baseline = piece.bottom() + 1.15 * face.size();
    double least = style.edges().across() + half;
    double most = style.width() - least;
    return DoubleStream.of(
            piece.left() + piece.width() / 2, piece.left() + half, piece.right() - half)
        .map(x -> Math.max(least, Math.min(x, most)))
        .mapToObj(x -> new TextRun(name, x, baseline, Anchor.MIDDLE, face))
        .filter(t -> least <= most && others.stream().noneMatch(o -> touch(t, o)))
        .findFirst();
  }

  private static boolean touch(TextRun one, TextRun other) {
    return one.box().grown(one.font().size() / 2).overlaps(other.box());
  }

  private void part(LeadStrip.Part part) {
    Box piece = piece(part);
    Color color = part.pen().map(Pen::color).orElse(Palette.GREY);
    brush.fill(piece.shape(), part.fill() == LeadStrip.Fill.FULL ? color : Palette.PAPER);
    if (part.fill() == LeadStrip.Fill.HATCHED) {
      hatch(piece, color);
    }
    brush.stroke(piece.shape(), style.solid(style.weights().mark()), color);
  }

  /** Paints diagonal lines rising to the right, clipped at the ends of the part. */
  private void hatch(Box piece, Color color) {
    BasicStroke stroke = style.solid(1.4 * style.weights().mark());
    double step = 4 * style.weights().mark();
    for (double start = piece.left() - piece.height() + step;
        start < piece.right();
        start += step) {
      double from = Math.max(start, piece.left());
      double to = Math.min(start + piece.height(), piece.right());
      double bottom = piece.bottom() - (from - start);
      brush.line(from, bottom, to, bottom - (to - from), stroke, color);
    }
  }

  /** Paints a ring on zero, with a whisker over the possible abscissae. */
  private void crossing(LeadStrip.Crossing crossing) {
    double y = area.py(0);
    double low = area.px(crossing.low());
    double high = area.px(crossing.high());
    double tip = style.gap() / 2;
    BasicStroke line = style.solid(1.6 * style.weights().mark());
    brush.line(low, y, high, y, line, Palette.ACCENT);
    for (double x : new double[] {low, high}) {
      brush.line(x, y - tip, x, y + tip, line, Palette.ACCENT);
    }
    brush.ring(area.px(crossing.x()), y);
  }
}
