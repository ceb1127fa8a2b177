package taperbook.draw.paint;

import java.util.ArrayList;
import java.util.List;
import taperbook.draw.chart.Frame;
import taperbook.draw.style.Box;
import taperbook.draw.style.ChartStyle;
import taperbook.draw.style.Palette;
import taperbook.draw.style.TextRun;
import taperbook.draw.style.TextRun.Anchor;
import taperbook.draw.style.TextRun.Face;
import taperbook.words.Labels;

/**
 * What stands around the plot of a thumbnail: both axes by name, the ends of the horizontal one and
 * the highest round value of the vertical one.
 */
final class SmallRim {
  private static final double EDGE = 8;

  private final Frame frame;
  private final ChartStyle style;

  SmallRim(Frame frame, ChartStyle style) {
    this.frame = frame;
    this.style = style;
  }

  List<TextRun> texts() {
    List<TextRun> texts = new ArrayList<>();
    double size = style.type().tick();
    Box plot = frame.box();
    Face plain = new Face(size, false, Palette.INK);
    double foot = plot.bottom() + size * 1.25;
    double end = frame.x().min() + Math.floor(frame.x().length() + 1e-9);
    TextRun last = new TextRun(tick(end), plot.right(), foot, Anchor.END, plain);
    texts.add(new TextRun(tick(frame.x().min()), plot.left(), foot, Anchor.START, plain));
    texts.add(last);
    for (String name : shorter(frame.x().title())) {
      double middle = (plot.left() + last.left()) / 2 + size / 4;
      TextRun title = new TextRun(name, middle, foot, Anchor.MIDDLE, plain);
      if (title.left() > plot.left() + size && title.left() + title.width() < last.left() - 4) {
        texts.add(title);
        break;
      }
    }
    vertical(texts);
    return texts;
  }

  private void vertical(List<TextRun> texts) {
    double size = style.type().title();
    Face bold = new Face(size, true, Palette.INK);
    for (String name : shorter(frame.y().title())) {
      TextRun title = new TextRun(name, EDGE, size * 1.2, Anchor.START, bold);
      if (title.width() <= style.width() - 2 * EDGE) {
        texts.add(title);
        break;
      }
    }
    double tickSize = style.type().tick();
    Face plain = new Face(tickSize, false, Palette.INK);
    for (double tick : ends()) {
      double baseline = frame.py(tick) + tickSize * 0.35;
      texts.add(
          new TextRun(
              frame.y().tickText(tick), frame.box().left() - 5, baseline, Anchor.END, plain));
    }
  }

  /** Zero, and the tick that lies farthest from it. */
  private List<Double> ends() {
    List<Double> ticks = frame.y().ticks();
    double lowest = ticks.get(0);
    double highest = ticks.get(ticks.size() - 1);
    return List.of(0.0, highest >= -lowest ? highest : lowest);
  }

  private static String tick(double value) {
    return String.valueOf(Math.round(value));
  }

  /** An axis title in full, and without what a glance can spare. */
  private static List<String> shorter(String title) {
    String unit = title.contains("(") ? " " + title.substring(title.lastIndexOf('(')) : "";
    String first = title.split("[ (]", 2)[0];
    String second = title.equals(Labels.of("axis.time")) ? Labels.of("axis.time_short") : title;
    return List.of(title, second, first + unit);
  }
}
