package taperbook.chart.library;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import taperbook.chart.model.Box;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Heading;
import taperbook.chart.model.Palette;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.TextRun.Anchor;
import taperbook.chart.model.TextRun.Face;
import taperbook.chart.model.Typeface;
import taperbook.chart.render.Painting;
import taperbook.format.Labels;
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
  private record Layout(PanelPlotArea plot, double rowHeight, double nameRoom, SmallType type) {
    /** Returns the centre line of a row's dot. */
    double middle(int row, boolean wide) {
      double top = plot.box().top() + row * rowHeight;
      return wide ? top + rowHeight / 2 : top + rowHeight - 0.62 * type.leading();
    }
  }

  @Override
  public List<TextRun> paint(Graphics2D g, ChartStyle style) {
    Layout layout = layout(style);
    PanelBrush brush = new PanelBrush(g, style);
    Box box = layout.plot().box();
    for (double tick : layout.plot().x().ticks()) {
      double x = layout.plot().px(tick);
      brush.line(x, box.top(), x, box.bottom(), style.solid(style.weights().thin()), Palette.GRID);
    }
    List<TextRun> texts = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      dot(brush, layout, i);
      texts.addAll(words(layout, i, style));
    }
    texts.addAll(ticks(layout, style));
    texts.addAll(noted(style).texts(style));
    return texts;
  }

  private void dot(PanelBrush brush, Layout layout, int i) {
    ChartStyle style = brush.style();
    Row row = rows.get(i);
    double y = layout.middle(i, style.isWide());
    double low = layout.plot().pxWithin(row.interval().low());
    double high = layout.plot().pxWithin(row.interval().high());
    brush.stroke(
        new Line2D.Double(low, y, high, y), style.solid(3 * style.weights().mark()), Palette.GAP);
    double x = layout.plot().pxWithin(row.value());
    brush.fill(PanelBrush.circle(x, y, 1.2 * style.weights().dot()), Palette.CURVE);
  }

  private List<TextRun> words(Layout layout, int i, ChartStyle style) {
    Row row = rows.get(i);
    SmallType type = layout.type();
    Face plain = type.face(false, Palette.INK);
    Face bold = type.face(true, Palette.INK);
    double down = 0.35 * type.size();
    double y = layout.middle(i, style.isWide());
    double right = style.width() - style.edges().across();
    double left = style.edges().across();
    List<TextRun> texts = new ArrayList<>();
    texts.add(new TextRun(row.words(), right, y + down, Anchor.END, bold));
    List<String> name = name(row, plain, layout, style);
    double first =
        style.isWide()
            ? y + down - (name.size() - 1) * type.leading() / 2
            : y - 0.62 * type.leading() - 0.3 * type.size();
    for (int line = 0; line < name.size(); line++) {
      double baseline = first + line * type.leading();
      texts.add(new TextRun(name.get(line), left, baseline, Anchor.START, plain));
    }
    return texts;
  }

  /**
   * Returns the name in as many lines as a row has room for; truncates the car if it is too long.
   */
  private static List<String> name(Row row, Face face, Layout layout, ChartStyle style) {
    double room = layout.nameRoom() / style.type().slack();
    List<String> lines = Typeface.wrapped(row.name(), face.bold(), face.size(), room);
    if (lines.size() <= 1) {
      return List.of(row.name());
    }
    boolean two = style.isWide() && layout.rowHeight() >= 2 * layout.type().leading();
    if (two && lines.size() == 2) {
      return lines;
    }
    String end = row.detail().isEmpty() ? "" : ", " + row.detail();
    if (two && !end.isEmpty()) {
      return List.of(
          SmallType.fitting(row.car(), face, room), SmallType.fitting(row.detail(), face, room));
    }
    double left = room - Typeface.width(end, face.bold(), face.size());
    String car = SmallType.fitting(row.car(), face, Math.max(left, room / 3));
    return List.of(SmallType.fitting(car + end, face, room));
  }

  private List<TextRun> ticks(Layout layout, ChartStyle style) {
    double size = style.type().tick();
    Face face = new Face(size, false, Palette.GREY);
    double below = layout.plot().box().bottom() + 1.25 * size;
    PanelScale scale = layout.plot().x();
    List<TextRun> texts = new ArrayList<>();
    for (double tick : scale.ticks()) {
      // The unit follows the last tick label, which stays centred on its line.
      double half = Typeface.width(scale.text(tick), false, size) / 2;
      double left = layout.plot().px(tick) - half;
      texts.add(new TextRun(scale.text(tick, unit), left, below, Anchor.START, face));
    }
    return texts;
  }

  private Layout layout(ChartStyle style) {
    SmallType type = new SmallType(style);
    Face face = type.face(false, Palette.INK);
    double slack = style.type().slack();
    Box room = noted(style).room(style);
    double values = 0;
    double names = 0;
    for (Row row : rows) {
      values = Math.max(values, slack * Typeface.width(row.words(), true, type.size()));
      // The width of the lines after breaking at words.
      for (String line :
          Typeface.wrapped(row.name(), face.bold(), face.size(), NAMES * room.width() / slack)) {
        names = Math.max(names, slack * Typeface.width(line, face.bold(), face.size()));
      }
    }
    double gap = type.size();
    double nameRoom = style.isWide() ? Math.min(names + 1, NAMES * room.width()) : room.width();
    double left = style.isWide() ? room.left() + nameRoom + 1.5 * gap : room.left() + gap;
    double width = room.right() - values - 1.5 * gap - left;
    double height = room.height() - 1.6 * style.type().tick();
    double row = Math.min(height / rows.size(), 3.4 * type.leading());
    Box box = new Box(left, room.top(), width, row * rows.size());
    return new Layout(new PanelPlotArea(box, scale(), PanelScale.upTo(1, 1)), row, nameRoom, type);
  }

  private PanelScale scale() {
    double least = rows.stream().mapToDouble(r -> r.interval().low()).min().orElseThrow();
    double most = rows.stream().mapToDouble(r -> r.interval().high()).max().orElseThrow();
    return PanelScale.over(least, most, MOST_TICKS);
  }

  private Heading noted(ChartStyle style) {
    return heading.with(Labels.of("note.intervals"), style);
  }
}
