package taperbook.chart.library;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Box;
import taperbook.chart.model.Brush;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Heading;
import taperbook.chart.model.Palette;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.TextRun.Anchor;
import taperbook.chart.model.TextRun.Face;
import taperbook.chart.render.Painting;
import taperbook.i18n.Texts;
import taperbook.quantity.Interval;

/**
 * A list of sessions, each with a dot at its value, a line over its interval, and the formatted
 * value. The name is beside the dot, or above it in a narrow picture.
 *
 * @param rows the sessions in their order, at most {@link #MOST}
 * @param unit unit of the axis
 * @param heading the title texts
 */
record DotPlot(List<Row> rows, String unit, Heading heading) implements Painting {
  /** Maximum number of sessions whose names and values are legible in every rendition. */
  static final int MOST = 8;

  /** Maximum share of the names in a wide picture. */
  private static final double NAMES = 0.46;

  private static final int MOST_TICKS = 6;

  /**
   * One session.
   *
   * @param car its car
   * @param detail detail that distinguishes it from others of the same car; may be empty
   * @param value its value in the axis's unit
   * @param interval the interval, in the same unit
   * @param words the formatted value with its unit
   */
  record Row(String car, String detail, double value, Interval interval, String words) {
    /** Returns car and detail. */
    String name() {
      return detail.isEmpty() ? car : car + ", " + detail;
    }
  }

  DotPlot {
    rows = List.copyOf(rows);
    if (rows.isEmpty() || rows.size() > MOST) {
      throw new IllegalArgumentException(rows.size() + " rows in a list");
    }
  }

  /** The positions of the parts of the list: dots in the plot, values to its right. */
  private record Layout(PlotArea plot, double rowHeight, double nameRoom, double leading) {
    /** Returns the centre line of a row's dot. */
    double middle(int row, boolean wide) {
      double top = plot.box().top() + row * rowHeight;
      return wide ? top + rowHeight / 2 : top + rowHeight - 0.62 * leading;
    }
  }

  @Override
  public List<TextRun> paint(Graphics2D g, ChartStyle style) {
    Layout layout = layout(style);
    Brush brush = new Brush(g, style);
    PlotArea plot = layout.plot();
    Box box = plot.box();
    for (double tick : plot.x().ticks()) {
      double x = plot.px(tick);
      brush.line(x, box.top(), x, box.bottom(), style.solid(style.weights().thin()), Palette.GRID);
    }
    List<TextRun> texts = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Interval interval = rows.get(i).interval();
      double y = layout.middle(i, style.isWide());
      BasicStroke thick = style.solid(3 * style.weights().mark());
      brush.line(plot.px(interval.low()), y, plot.px(interval.high()), y, thick, Palette.GAP);
      double x = plot.px(rows.get(i).value());
      brush.fill(Brush.circle(x, y, 1.2 * style.weights().dot()), Palette.CURVE);
      texts.addAll(words(layout, i, style));
    }
    texts.addAll(ticks(plot, style));
    texts.addAll(noted(style).texts(style));
    return texts;
  }

  private List<TextRun> words(Layout layout, int i, ChartStyle style) {
    Row row = rows.get(i);
    Face plain = face(style, false);
    double down = 0.35 * plain.size();
    double y = layout.middle(i, style.isWide());
    double right = style.width() - style.edges().across();
    double left = style.edges().across();
    List<TextRun> texts = new ArrayList<>();
    texts.add(new TextRun(row.words(), right, y + down, Anchor.END, face(style, true)));
    List<String> name = name(row, plain, layout, style);
    double first =
        style.isWide()
            ? y + down - (name.size() - 1) * layout.leading() / 2
            : y - 0.62 * layout.leading() - 0.3 * plain.size();
    for (int line = 0; line < name.size(); line++) {
      double baseline = first + line * layout.leading();
      texts.add(new TextRun(name.get(line), left, baseline, Anchor.START, plain));
    }
    return texts;
  }

  private static Face face(ChartStyle style, boolean bold) {
    return new Face(style.dense().type().label(), bold, Palette.INK);
  }

  /**
   * Returns the name in as many lines as a row has room for; truncates the car if it is too long.
   */
  private static List<String> name(Row row, Face face, Layout layout, ChartStyle style) {
    double room = layout.nameRoom() / style.type().slack();
    List<String> lines = face.wrapped(row.name(), room);
    if (lines.size() <= 1) {
      return List.of(row.name());
    }
    boolean two = style.isWide() && layout.rowHeight() >= 2 * layout.leading();
    if (two && lines.size() == 2) {
      return lines;
    }
    String end = row.detail().isEmpty() ? "" : ", " + row.detail();
    if (two && !end.isEmpty()) {
      return List.of(face.truncated(row.car(), room), face.truncated(row.detail(), room));
    }
    String car = face.truncated(row.car(), Math.max(room - face.width(end), room / 3));
    return List.of(face.truncated(car + end, room));
  }

  private static List<TextRun> ticks(PlotArea plot, ChartStyle style) {
    Face face = new Face(style.type().tick(), false, Palette.GREY);
    double below = plot.box().bottom() + 1.25 * face.size();
    List<TextRun> texts = new ArrayList<>();
    plot.x()
        .figures(1)
        .forEach(
            (tick, text) -> {
              // The unit follows the last tick label, which stays centred on its line.
              double left = plot.px(tick) - face.width(plot.x().tickText(tick)) / 2;
              texts.add(new TextRun(text, left, below, Anchor.START, face));
            });
    return texts;
  }

  private Layout layout(ChartStyle style) {
    Face plain = face(style, false);
    double slack = style.type().slack();
    Box room = noted(style).room(style);
    double values = 0;
    double names = 0;
    for (Row row : rows) {
      values = Math.max(values, slack * face(style, true).width(row.words()));
      // The width of the lines after breaking at words.
      for (String line : plain.wrapped(row.name(), NAMES * room.width() / slack)) {
        names = Math.max(names, slack * plain.width(line));
      }
    }
    double gap = plain.size();
    double leading = style.dense().leading();
    double nameRoom = style.isWide() ? Math.min(names + 1, NAMES * room.width()) : room.width();
    double left = style.isWide() ? room.left() + nameRoom + 1.5 * gap : room.left() + gap;
    double width = room.right() - values - 1.5 * gap - left;
    double height = room.height() - 1.6 * style.type().tick();
    double row = Math.min(height / rows.size(), 3.4 * leading);
    Box box = new Box(left, room.top(), width, row * rows.size());
    Axis noAxis = Axis.upTo("", "", 1, 1);
    return new Layout(new PlotArea(box, axis(), noAxis), row, nameRoom, leading);
  }

  /** Returns the axis over all intervals, with a margin on both sides, never below zero. */
  private Axis axis() {
    double least = rows.stream().mapToDouble(r -> r.interval().low()).min().orElseThrow();
    double most = rows.stream().mapToDouble(r -> r.interval().high()).max().orElseThrow();
    double room = Math.max(0.06 * (most - least), 0.02 * Math.max(1, most));
    return Axis.between("", unit, Math.max(0, least - room), most + room, MOST_TICKS);
  }

  private Heading noted(ChartStyle style) {
    return heading.with(Texts.of("note.intervals"), style);
  }
}
