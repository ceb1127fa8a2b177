package taperbook.chart.library;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Box;
import taperbook.chart.model.Brush;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Heading;
import taperbook.chart.model.Palette;
import taperbook.chart.model.Pen;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.Series;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.TextRun.Anchor;
import taperbook.chart.model.TextRun.Face;
import taperbook.chart.render.LineLayer;
import taperbook.chart.render.Painting;
import taperbook.i18n.Texts;

/**
 * Small multiples: the curves of several sessions, one panel each, with the same axes.
 *
 * @param panels the sessions in reading order, at most {@code columns * rows}
 * @param columns number of columns
 * @param rows number of rows
 * @param power the vertical axis of all panels
 * @param heading the title texts
 */
record PanelSheet(List<Panel> panels, int columns, int rows, Axis power, Heading heading)
    implements Painting {
  /** Least height of a plot below a heading of three lines, in lines of text. */
  private static final int LOWEST_PLOT = 4;

  /**
   * One session.
   *
   * @param car the car
   * @param detail the day and the rest of the car's name
   * @param line power over state of charge, may have no points
   * @param peak the formatted peak, empty if there is none
   */
  record Panel(String car, String detail, PlotLine line, String peak) {}

  PanelSheet {
    panels = List.copyOf(panels);
    if (panels.size() > columns * rows) {
      throw new IllegalArgumentException(panels.size() + " panels on one sheet");
    }
  }

  @Override
  public List<TextRun> paint(Graphics2D g, ChartStyle style) {
    Heading noted = noted(style);
    Box room = noted.room(style);
    Brush brush = new Brush(g, style.dense());
    double size = brush.style().type().tick();
    double gapX = 1.3 * size;
    double gapY = 0.7 * size;
    double left = room.left() + 4 * size;
    double width = (room.right() - left + gapX) / columns - gapX;
    double height = (room.height() - 1.6 * size + gapY) / rows - gapY;
    double leading = brush.style().leading();
    // A second line only if the plots remain high enough.
    int most = height >= (3 + LOWEST_PLOT) * leading ? 2 : 1;
    List<List<String>> details =
        panels.stream().map(p -> detail(p, width, most, brush.style())).toList();
    int lines = 1 + details.stream().mapToInt(List::size).max().orElse(0);
    double above = lines * leading + 0.3 * size;
    List<TextRun> texts = new ArrayList<>();
    for (int i = 0; i < panels.size(); i++) {
      int row = i / columns;
      double x = left + i % columns * (width + gapX);
      double y = room.top() + row * (height + gapY);
      Box box = new Box(x, y + above, width, height - above);
      PlotArea plot = new PlotArea(box, Axis.stateOfCharge(50), power);
      shapes(brush, plot, panels.get(i).line());
      heading(panels.get(i), details.get(i), plot, brush.style(), texts);
      peak(panels.get(i), plot, brush.style(), texts);
      ticks(i % columns == 0, i + columns >= panels.size(), plot, brush.style(), texts);
    }
    texts.addAll(noted.texts(style));
    return texts;
  }

  private Heading noted(ChartStyle style) {
    String ring = Texts.of("note.ring");
    boolean gaps = panels.stream().anyMatch(p -> p.line().wideGaps() > 0);
    return heading.with(gaps ? ring + " " + Texts.of("note.dashes") : ring, style);
  }

  /** Returns the detail in at most some lines, ending with an ellipsis if there is more. */
  private static List<String> detail(Panel panel, double width, int most, ChartStyle style) {
    Face face = new Face(style.type().label(), false, Palette.GREY);
    double room = width / style.type().slack();
    List<String> lines = face.wrapped(panel.detail(), room);
    if (lines.size() > most) {
      lines = lines.subList(0, most);
      lines.set(most - 1, lines.get(most - 1) + "\u2026");
    }
    return lines.stream().map(line -> face.truncated(line, room)).toList();
  }

  private static void shapes(Brush brush, PlotArea plot, PlotLine line) {
    Box box = plot.box();
    var thin = brush.style().solid(brush.style().weights().thin());
    for (double tick : plot.y().ticks()) {
      brush.line(box.left(), plot.py(tick), box.right(), plot.py(tick), thin, Palette.GRID);
    }
    for (double tick : plot.x().ticks()) {
      brush.line(plot.px(tick), box.top(), plot.px(tick), box.bottom(), thin, Palette.GRID);
    }
    brush.line(box.left(), box.bottom(), box.right(), box.bottom(), thin, Palette.GREY);
    new LineLayer(brush, plot).paint(new Series(line, Pen.COMPUTED, ""));
    if (line.size() > 0) {
      brush.ring(plot.px(line.x(line.peak())), plot.py(line.y(line.peak())));
    }
  }

  /** Adds the car and its detail above a plot. */
  private static void heading(
      Panel panel, List<String> detail, PlotArea plot, ChartStyle style, List<TextRun> texts) {
    Face bold = new Face(style.type().label(), true, Palette.INK);
    Face plain = new Face(style.type().label(), false, Palette.GREY);
    double left = plot.box().left();
    double last = plot.box().top() - 0.67 * style.type().label();
    String car = bold.truncated(panel.car(), plot.box().width() / style.type().slack());
    double first = last - detail.size() * style.leading();
    texts.add(new TextRun(car, left, first, Anchor.START, bold));
    for (int k = 0; k < detail.size() && !panel.detail().isEmpty(); k++) {
      double baseline = first + (k + 1) * style.leading();
      texts.add(new TextRun(detail.get(k), left, baseline, Anchor.START, plain));
    }
  }

  /** Adds the peak above its ring, which the axis keeps free of the curve. */
  private static void peak(Panel panel, PlotArea plot, ChartStyle style, List<TextRun> texts) {
    Box box = plot.box();
    double size = style.type().label();
    PlotLine line = panel.line();
    if (line.size() == 0) {
      Face face = new Face(size, false, Palette.GREY);
      String none = face.truncated(Texts.of("mark.no_power"), box.width() / style.type().slack());
      double middle = box.left() + box.width() / 2;
      double down = box.top() + box.height() / 2;
      texts.add(new TextRun(none, middle, down, Anchor.MIDDLE, face));
    } else if (!panel.peak().isEmpty()) {
      Face face = new Face(size, true, Palette.ACCENT);
      double width = face.width(panel.peak()) * style.type().slack();
      double above = plot.py(line.y(line.peak())) - style.gap() / 2 - style.weights().markDot();
      double baseline = Math.max(above, box.top() + 0.8 * size);
      Box label = new Box(plot.px(line.x(line.peak())) - width / 2, above, width, 0);
      texts.add(
          new TextRun(panel.peak(), label.shiftedInto(box).left(), baseline, Anchor.START, face));
    }
  }

  /** Adds the tick labels at the left and below. */
  private static void ticks(
      boolean left, boolean below, PlotArea plot, ChartStyle style, List<TextRun> texts) {
    Box box = plot.box();
    double size = style.type().tick();
    Face face = new Face(size, false, Palette.INK);
    if (left) {
      double x = box.left() - 0.45 * size;
      plot.up(style)
          .forEach(
              (tick, text) ->
                  texts.add(new TextRun(text, x, plot.py(tick) + 0.35 * size, Anchor.END, face)));
    }
    if (below) {
      double baseline = box.bottom() + 1.2 * size;
      plot.x()
          .figures(1)
          .forEach(
              (tick, text) -> {
                Anchor anchor = tick == 0 ? Anchor.START : tick == 100 ? Anchor.END : Anchor.MIDDLE;
                texts.add(new TextRun(text, plot.px(tick), baseline, anchor, face));
              });
    }
  }
}
