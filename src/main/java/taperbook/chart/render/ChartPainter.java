package taperbook.chart.render;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import taperbook.chart.model.Box;
import taperbook.chart.model.Brush;
import taperbook.chart.model.Chart;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Palette;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.TextRun.Anchor;
import taperbook.chart.model.TextRun.Face;
import taperbook.chart.model.Thumbnail;

/** Paints a chart in a style: paints all shapes and returns the texts. */
final class ChartPainter {
  private ChartPainter() {}

  /** Paints the shapes of a chart and returns its texts. */
  public static List<TextRun> paint(Graphics2D g, Chart whole, ChartStyle style) {
    Chart chart = Thumbnail.of(whole, style);
    List<TextRun> texts = new ArrayList<>(chart.heading(style).texts(style));
    List<PlotArea> frames = PlotArea.all(chart, style);
    for (int i = 0; i < frames.size(); i++) {
      boolean lowest = i == frames.size() - 1;
      texts.addAll(panel(g, chart.panels().get(i), frames.get(i), lowest, style));
    }
    return texts;
  }

  private static List<TextRun> panel(
      Graphics2D g, Chart chart, PlotArea area, boolean lowest, ChartStyle style) {
    PlacedLabels.Placement placement = PlacedLabels.place(chart, area, style);
    Brush brush = new Brush(g, style);
    MarkLayer marks = new MarkLayer(brush, chart, area);
    LineLayer lines = new LineLayer(brush, area);
    AxisLayer axes = new AxisLayer(brush, area);
    marks.paintBelow();
    axes.paintGrid();
    SolidLines.paint(g, chart, area, style);
    lines.dashes(chart);
    axes.paintLines();
    FlagLayer flags = new FlagLayer(chart, area, style);
    flags.paint(brush);
    marks.paintAbove(placement);
    lines.readings(chart);
    List<TextRun> texts = new ArrayList<>(axes.texts(lowest));
    LeadLayer strip = new LeadLayer(brush, area);
    chart.marks().leads().ifPresent(s -> texts.addAll(strip.paint(s)));
    placement.labels().forEach(lines::key);
    placement.labels().forEach(label -> texts.addAll(runs(label, style)));
    texts.addAll(flags.texts());
    return texts;
  }

  /** Returns the lines of a label, aligned on the side that faces its point. */
  public static List<TextRun> runs(Callout.Placed label, ChartStyle style) {
    Box box = label.box();
    double key = label.callout().keyWidth(style);
    Anchor anchor = key > 0 ? Anchor.START : facing(box, label.spot().x());
    double at =
        switch (anchor) {
          case START -> box.left() + key;
          case END -> box.right();
          case MIDDLE -> box.left() + box.width() / 2;
        };
    List<TextRun> runs = new ArrayList<>();
    List<String> lines = label.callout().lines();
    for (int i = 0; i < lines.size(); i++) {
      double baseline = box.top() + (i + 0.78) * style.leading();
      Face face =
          new Face(
              style.type().label(),
              label.callout().isBold(i),
              i == 0 ? label.callout().color() : Palette.INK);
      runs.add(new TextRun(lines.get(i), at, baseline, anchor, face));
    }
    return runs;
  }

  /** Returns the side of a box that faces an abscissa. */
  private static Anchor facing(Box box, double x) {
    return box.left() > x ? Anchor.START : box.right() < x ? Anchor.END : Anchor.MIDDLE;
  }
}
