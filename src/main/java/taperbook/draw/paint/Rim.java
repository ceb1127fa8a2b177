package taperbook.draw.paint;

import java.awt.BasicStroke;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import taperbook.draw.chart.Chart;
import taperbook.draw.chart.Frame;
import taperbook.draw.chart.Note;
import taperbook.draw.style.Box;
import taperbook.draw.style.Brush;
import taperbook.draw.style.ChartStyle;
import taperbook.draw.style.Palette;
import taperbook.draw.style.TextRun;
import taperbook.draw.style.TextRun.Anchor;
import taperbook.draw.style.TextRun.Face;
import taperbook.draw.style.Typeface;

/** What stands around the plot: foot line, ticks, axis titles, note, and title on film. */
final class Rim {
  private final Chart chart;
  private final Frame frame;
  private final ChartStyle style;

  Rim(Chart chart, Frame frame, ChartStyle style) {
    this.chart = chart;
    this.frame = frame;
    this.style = style;
  }

  /** Paints the foot line with its ticks. */
  void paintLines(Brush brush) {
    Box plot = frame.box();
    BasicStroke thin = style.solid(style.weights().thin());
    List<Double> ticks = frame.y().ticks();
    double top = ticks.get(ticks.size() - 1);
    if (frame.py(top) - plot.top() < 0.5) {
      // The grid leaves out what lies on the plot's very edge.
      brush.stroke(across(plot.top()), thin, Palette.GRID);
    }
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

  /** All texts around the plot. */
  List<TextRun> texts() {
    List<TextRun> texts = new ArrayList<>();
    double size = style.type().tick();
    Box plot = frame.box();
    Face ticks = new Face(size, false, Palette.INK);
    for (double tick : frame.x().ticks()) {
      String text = frame.x().tickText(tick);
      texts.add(
          new TextRun(text, frame.px(tick), plot.bottom() + size * 1.5, Anchor.MIDDLE, ticks));
    }
    for (double tick : frame.y().ticks()) {
      String text = frame.y().tickText(tick);
      double baseline = frame.py(tick) + size * 0.35;
      texts.add(new TextRun(text, plot.left() - size * 0.6, baseline, Anchor.END, ticks));
    }
    titles(texts);
    return texts;
  }

  private void titles(List<TextRun> texts) {
    double size = style.type().tick();
    Box plot = frame.box();
    double foot = plot.bottom() + size * 3.1;
    Face axis = new Face(size, true, Palette.INK);
    TextRun x = new TextRun(frame.x().title(), plot.right(), foot, Anchor.END, axis);
    texts.add(x);
    texts.add(new TextRun(frame.y().title(), edge(), plot.top() - 1.25 * size, Anchor.START, axis));
    Face quiet = new Face(size, false, Palette.GREY);
    TextRun note = new TextRun(Note.of(chart), edge(), foot, Anchor.START, quiet);
    if (note.left() + note.width() * style.type().slack() < x.left() - size) {
      texts.add(note);
    }
    if (style.titled()) {
      double titleSize = style.type().title();
      Face bold = new Face(titleSize, true, Palette.INK);
      texts.add(new TextRun(chart.title().text(), edge(), titleSize * 1.5, Anchor.START, bold));
      Face below = new Face(style.type().label(), false, Palette.GREY);
      String subtitle = fitting(chart.title().subtitle(), below);
      texts.add(new TextRun(subtitle, edge(), titleSize * 2.45, Anchor.START, below));
    }
  }

  private String fitting(String text, Face face) {
    double room = frame.box().right() - edge();
    int end = text.length();
    String shown = text;
    while (Typeface.width(shown, face.bold(), face.size()) > room) {
      end = text.offsetByCodePoints(end, -1);
      shown = text.substring(0, end).stripTrailing() + "\u2026";
    }
    return shown;
  }

  /** Left edge of all that is not tied to the plot. */
  private double edge() {
    return style.margins().left() * 0.4;
  }
}
