package taperbook.chart.render;

import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import taperbook.chart.model.Box;
import taperbook.chart.model.Brush;
import taperbook.chart.model.Chart;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Palette;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.Typeface;

/**
 * Paints numbers along the top of a plot, each with a dotted line down to the curve. Numbers that
 * would overlap share a flag.
 */
final class FlagLayer {
  private final Chart chart;
  private final PlotArea area;
  private final ChartStyle style;
  private final List<Flag> flags;

  /** A range of numbers and the positions of their lines. */
  private record Flag(int first, int last, List<Double> minutes, Box box) {
    String text() {
      return first == last ? "" + first : first + (last == first + 1 ? ", " : "\u2013") + last;
    }
  }

  FlagLayer(Chart chart, PlotArea area, ChartStyle style) {
    this.chart = chart;
    this.area = area;
    this.style = style;
    this.flags = placed();
  }

  private List<Flag> placed() {
    List<Flag> placed = new ArrayList<>();
    for (Chart.Flag flag : chart.marks().flags()) {
      placed.add(flag(flag.number(), flag.number(), List.of(flag.x())));
      while (placed.size() > 1 && overlap(placed.get(placed.size() - 2), last(placed))) {
        Flag later = placed.remove(placed.size() - 1);
        Flag earlier = placed.remove(placed.size() - 1);
        List<Double> minutes = new ArrayList<>(earlier.minutes());
        minutes.addAll(later.minutes());
        placed.add(flag(earlier.first(), later.last(), minutes));
      }
    }
    return placed;
  }

  private static Flag last(List<Flag> flags) {
    return flags.get(flags.size() - 1);
  }

  private boolean overlap(Flag one, Flag other) {
    return one.box().grown(style.gap() / 4).overlaps(other.box());
  }

  /** Returns a flag centred over its lines, within the plot. */
  private Flag flag(int first, int last, List<Double> minutes) {
    double height = 1.35 * size();
    Flag unplaced = new Flag(first, last, minutes, new Box(0, 0, 0, 0));
    double text = Typeface.width(unplaced.text(), true, size()) * style.type().slack();
    double width = Math.max(height, text + 0.7 * size());
    double middle = area.px((minutes.get(0) + minutes.get(minutes.size() - 1)) / 2);
    double top = area.box().top() + style.weights().mark();
    Box box = new Box(middle - width / 2, top, width, height);
    return new Flag(first, last, minutes, box.shiftedInto(area.box()));
  }

  private double size() {
    return 0.85 * style.type().label();
  }

  /** Keeps labels off the flags and, if possible, off their lines. */
  void avoid(Obstacles around) {
    for (Flag flag : flags) {
      around.block(flag.box().grown(style.weights().mark()));
      flag.minutes().forEach(x -> around.avoidIfCheap(line(x, flag.box())));
    }
  }

  void paint(Brush brush) {
    for (Flag flag : flags) {
      flag.minutes().forEach(x -> brush.stroke(line(x, flag.box()), style.dotted(), Palette.GREY));
    }
    for (Flag flag : flags) {
      Box box = flag.box();
      double round = box.height();
      RoundRectangle2D shape =
          new RoundRectangle2D.Double(
              box.left(), box.top(), box.width(), box.height(), round, round);
      brush.fill(shape, Palette.PAPER);
      brush.stroke(shape, style.solid(style.weights().mark()), Palette.INK);
    }
  }

  /** Returns the line from the flag down to the curve. */
  private Line2D line(double minute, Box flag) {
    OptionalDouble y = chart.line().yAt(minute);
    double x = area.px(minute);
    double end = y.isPresent() ? area.py(y.getAsDouble()) : area.box().bottom();
    return new Line2D.Double(x, flag.bottom(), x, Math.max(flag.bottom(), end));
  }

  List<TextRun> texts() {
    TextRun.Face face = new TextRun.Face(size(), true, Palette.INK);
    return flags.stream()
        .map(
            f ->
                new TextRun(
                    f.text(),
                    f.box().left() + f.box().width() / 2,
                    f.box().top() + f.box().height() / 2 + 0.35 * size(),
                    TextRun.Anchor.MIDDLE,
                    face))
        .toList();
  }
}
