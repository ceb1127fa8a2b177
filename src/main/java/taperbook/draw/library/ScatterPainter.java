package taperbook.draw.library;

import java.awt.BasicStroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.draw.label.Callout;
import taperbook.draw.label.LabelPlacer;
import taperbook.draw.label.LineLabel;
import taperbook.draw.paint.Painter;
import taperbook.draw.style.Box;
import taperbook.draw.style.ChartStyle;
import taperbook.draw.style.Palette;
import taperbook.draw.style.Pen;
import taperbook.draw.style.TextRun;
import taperbook.draw.style.TextRun.Anchor;

/**
 * The plot of a scatter: grid, line of equality, whiskers, dots, and labels where there is room.
 */
final class ScatterPainter {
  /** With more dots than these only those at the edges are labelled. */
  static final int MOST_LABELLED = 40;

  /** Longest line of a name, in characters. */
  private static final int NAME_LENGTH = 22;

  /** With more dots than these labels are set smaller. */
  private static final int MOST_LARGE = 6;

  private static final List<Callout.Side> SIDES =
      List.of(
          Callout.Side.RIGHT,
          Callout.Side.ABOVE_RIGHT,
          Callout.Side.BELOW_RIGHT,
          Callout.Side.LEFT,
          Callout.Side.ABOVE,
          Callout.Side.BELOW,
          Callout.Side.ABOVE_LEFT,
          Callout.Side.BELOW_LEFT);

  private final PanelBrush brush;
  private final Plot plot;
  private final List<Dot> dots;
  private final ChartStyle style;

  ScatterPainter(PanelBrush brush, Plot plot, List<Dot> dots) {
    this.brush = brush;
    this.plot = plot;
    this.dots = dots;
    this.style = brush.style();
  }

  void grid() {
    Box box = plot.box();
    BasicStroke thin = style.solid(style.weights().thin());
    for (double tick : plot.y().ticks()) {
      brush.line(box.left(), plot.py(tick), box.right(), plot.py(tick), thin, Palette.GRID);
    }
    for (double tick : plot.x().ticks()) {
      brush.line(plot.px(tick), box.top(), plot.px(tick), box.bottom(), thin, Palette.GRID);
    }
    brush.line(box.left(), box.bottom(), box.right(), box.bottom(), thin, Palette.GREY);
  }

  /** The figures at the ticks, with the unit at the last one of each axis. */
  List<TextRun> ticks(String xUnit, String yUnit) {
    double size = style.type().tick();
    TextRun.Face face = new TextRun.Face(size, false, Palette.INK);
    List<TextRun> texts = new ArrayList<>();
    double below = plot.box().bottom() + size * 1.5;
    for (double tick : plot.x().ticks()) {
      texts.add(new TextRun(plot.x().text(tick, xUnit), plot.px(tick), below, Anchor.MIDDLE, face));
    }
    double left = plot.box().left() - size * 0.6;
    for (double tick : plot.y().ticks()) {
      double baseline = plot.py(tick) + size * 0.35;
      texts.add(new TextRun(plot.y().text(tick, yUnit), left, baseline, Anchor.END, face));
    }
    return texts;
  }

  /** Paints all that stands for sessions and returns the labels. */
  List<TextRun> marks(Optional<String> equality) {
    ChartStyle labels = dots.size() > MOST_LARGE ? new SmallType(style).labels() : style;
    LabelPlacer placer = new LabelPlacer(plot.box(), labels);
    List<Callout> wanted = new ArrayList<>();
    equality.ifPresent(words -> wanted.add(equalityLine(words, placer)));
    double radius = dots.size() > MOST_LABELLED ? style.weights().dot() : style.weights().markDot();
    for (Dot dot : dots) {
      whiskers(dot, placer);
      placer.obstacles().block(new Box(x(dot) - radius, y(dot) - radius, 2 * radius, 2 * radius));
    }
    labelled().forEach(dot -> wanted.add(callout(dot)));
    List<TextRun> texts = new ArrayList<>();
    for (Callout callout : wanted) {
      placer.place(callout).ifPresent(placed -> label(placed, placer, labels, texts));
    }
    for (Dot dot : dots) {
      Ellipse2D circle = PanelBrush.circle(x(dot), y(dot), radius);
      brush.fill(circle, Palette.PAPER);
      brush.stroke(circle, style.solid(1.5 * style.weights().mark()), Palette.CURVE);
    }
    return texts;
  }

  /** The dots to label, those at the edges first. */
  Set<Dot> labelled() {
    Set<Dot> order = new LinkedHashSet<>(Outermost.of(dots));
    if (dots.size() <= MOST_LABELLED) {
      order.addAll(dots);
    }
    return order;
  }

  private Callout equalityLine(String words, LabelPlacer placer) {
    double from = plot.x().from();
    double end = Math.min(plot.x().to(), plot.y().to());
    Line2D line = new Line2D.Double(plot.px(from), plot.py(from), plot.px(end), plot.py(end));
    brush.stroke(line, style.gapDash(), Palette.GREY);
    placer.obstacles().keepOff(line, Pen.SINGLE);
    double at = from + 0.9 * (end - from);
    List<Callout.Side> sides =
        List.of(Callout.Side.LEFT, Callout.Side.ABOVE_LEFT, Callout.Side.BELOW_RIGHT);
    return new Callout(
        new Callout.Spot(plot.px(at), plot.py(at), 0), List.of(words), Palette.GREY, sides, true);
  }

  private void whiskers(Dot dot, LabelPlacer placer) {
    if (!dot.hasBounds()) {
      return;
    }
    double left = plot.pxWithin(dot.x().bounds().low());
    double right = plot.pxWithin(dot.x().bounds().high());
    double low = plot.pyWithin(dot.y().bounds().low());
    double high = plot.pyWithin(dot.y().bounds().high());
    for (Line2D line :
        List.of(
            new Line2D.Double(left, y(dot), right, y(dot)),
            new Line2D.Double(x(dot), low, x(dot), high))) {
      brush.stroke(line, style.solid(style.weights().mark()), Palette.GAP);
      placer.obstacles().keepOffLightly(line);
    }
  }

  private double x(Dot dot) {
    return plot.px(dot.x().value());
  }

  private double y(Dot dot) {
    return plot.py(dot.y().value());
  }

  private Callout callout(Dot dot) {
    return new Callout(
        new Callout.Spot(x(dot), y(dot), 0),
        LineLabel.wrapped(dot.name(), NAME_LENGTH),
        Palette.INK,
        SIDES,
        false);
  }

  private void label(
      Callout.Placed placed, LabelPlacer placer, ChartStyle labels, List<TextRun> texts) {
    placer
        .leader(placed)
        .ifPresent(l -> brush.stroke(l, style.solid(style.weights().thin()), Palette.GREY));
    Box ground = placed.box().grown(labels.gap() / 5);
    brush.fill(
        new Rectangle2D.Double(ground.left(), ground.top(), ground.width(), ground.height()),
        Palette.PAPER);
    texts.addAll(Painter.runs(placed, labels));
  }
}
