package taperbook.draw.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import taperbook.draw.chart.Frame;
import taperbook.draw.chart.Standings;
import taperbook.draw.label.Obstacles;
import taperbook.draw.style.Box;
import taperbook.draw.style.Brush;
import taperbook.draw.style.ChartStyle;
import taperbook.draw.style.Palette;
import taperbook.draw.style.Pen;

/** What shows who is ahead where: a bar along the foot of the plot, and crossings on zero. */
final class StandingsLayer {
  /** Height of the bar, as a share of the plot's. */
  private static final double BAR = 0.045;

  private final Brush brush;
  private final Frame frame;
  private final ChartStyle style;

  StandingsLayer(Brush brush, Frame frame, ChartStyle style) {
    this.brush = brush;
    this.frame = frame;
    this.style = style;
  }

  /** A piece of the bar. */
  static Box piece(Standings.Part part, Frame frame) {
    double height = BAR * frame.box().height();
    double left = frame.px(part.from());
    return new Box(left, frame.box().bottom() - height, frame.px(part.to()) - left, height);
  }

  /** What labels must keep off. */
  static void keepOff(Standings standings, Frame frame, ChartStyle style, Obstacles around) {
    standings.parts().forEach(p -> around.block(piece(p, frame)));
    around.keepOffLightly(
        new Line2D.Double(frame.box().left(), frame.py(0), frame.box().right(), frame.py(0)));
    for (Standings.Crossing crossing : standings.crossings()) {
      double r = style.weights().markDot() + style.weights().mark();
      double left = frame.px(crossing.low());
      around.block(new Box(left, frame.py(0) - r, frame.px(crossing.high()) - left, 2 * r));
    }
  }

  void paint(Standings standings) {
    standings.parts().forEach(this::part);
    standings.crossings().forEach(this::crossing);
  }

  private void part(Standings.Part part) {
    Box piece = piece(part, frame);
    Color color = part.pen().map(Pen::color).orElse(Palette.GREY);
    brush.fill(piece.shape(), part.fill() == Standings.Fill.FULL ? color : Palette.PAPER);
    if (part.fill() == Standings.Fill.HATCHED) {
      hatch(piece, color);
    }
    brush.stroke(piece.shape(), style.solid(style.weights().mark()), color);
  }

  /** Lines that rise to the right at half a right angle, cut at the ends of the piece. */
  private void hatch(Box piece, Color color) {
    BasicStroke stroke = style.solid(1.4 * style.weights().mark());
    double step = 4 * style.weights().mark();
    for (double foot = piece.left() - piece.height() + step; foot < piece.right(); foot += step) {
      double from = Math.max(foot, piece.left());
      double to = Math.min(foot + piece.height(), piece.right());
      double bottom = piece.bottom() - (from - foot);
      brush.stroke(new Line2D.Double(from, bottom, to, bottom - (to - from)), stroke, color);
    }
  }

  /** A ring on zero, with a whisker over the abscissae that the readings allow. */
  private void crossing(Standings.Crossing crossing) {
    double y = frame.py(0);
    double low = frame.px(crossing.low());
    double high = frame.px(crossing.high());
    double tip = style.gap() / 2;
    BasicStroke line = style.solid(1.6 * style.weights().mark());
    brush.stroke(new Line2D.Double(low, y, high, y), line, Palette.ACCENT);
    for (double x : new double[] {low, high}) {
      brush.stroke(new Line2D.Double(x, y - tip, x, y + tip), line, Palette.ACCENT);
    }
    double r = style.weights().markDot();
    Ellipse2D ring = new Ellipse2D.Double(frame.px(crossing.x()) - r, y - r, 2 * r, 2 * r);
    brush.fill(ring, Palette.PAPER);
    brush.stroke(ring, line, Palette.ACCENT);
  }
}
