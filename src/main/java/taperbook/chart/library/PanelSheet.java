package taperbook.chart.library;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import taperbook.chart.model.Box;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Heading;
import taperbook.chart.model.TextRun;
import taperbook.chart.render.Painting;
import taperbook.format.Labels;

/**
 * Small multiples: the curves of several sessions, one panel each, with the same axes.
 *
 * @param panels the sessions in reading order, at most {@code columns * rows}
 * @param columns number of columns
 * @param rows number of rows
 * @param power the vertical scale of all panels, kW
 * @param heading the title texts
 */
record PanelSheet(List<Panel> panels, int columns, int rows, PanelScale power, Heading heading)
    implements Painting {
  private static final PanelScale CHARGE = new PanelScale(0, 100, 50);

  PanelSheet {
    panels = List.copyOf(panels);
    if (panels.size() > columns * rows) {
      throw new IllegalArgumentException(panels.size() + " panels on one sheet");
    }
  }

  @Override
  public List<TextRun> paint(Graphics2D g, ChartStyle style) {
    PanelBrush brush = new PanelBrush(g, style);
    List<TextRun> texts = new ArrayList<>();
    for (int i = 0; i < panels.size(); i++) {
      PanelPlotArea plot = new PanelPlotArea(plot(i, style), CHARGE, power);
      PanelPainter painter = new PanelPainter(brush, plot, panels.get(i));
      painter.shapes();
      texts.addAll(painter.texts());
      texts.addAll(painter.ticks(i % columns == 0, i + columns >= panels.size()));
    }
    texts.addAll(noted(style).texts(style));
    return texts;
  }

  /** Returns the plot of panel {@code i}, below its two lines of heading. */
  private Box plot(int i, ChartStyle style) {
    SmallType type = new SmallType(style);
    Box area = area(style);
    double gapX = 1.3 * type.size();
    double gapY = 0.7 * type.size();
    double width = (area.width() - gapX * (columns - 1)) / columns;
    double height = (area.height() - gapY * (rows - 1)) / rows;
    double heading = 2 * type.leading() + 0.3 * type.size();
    int row = i / columns;
    double left = area.left() + (i % columns) * (width + gapX);
    double top = area.top() + row * (height + gapY);
    return new Box(left, top + heading, width, height - heading);
  }

  /** Returns the area of the panels, without the tick labels. */
  private Box area(ChartStyle style) {
    SmallType type = new SmallType(style);
    Box room = noted(style).room(style);
    double left = 4 * type.size();
    double height = room.height() - 1.6 * type.size();
    return new Box(room.left() + left, room.top(), room.width() - left, height);
  }

  private Heading noted(ChartStyle style) {
    String ring = Labels.of("note.ring");
    boolean gaps = panels.stream().anyMatch(Panel::hasGaps);
    return heading.with(gaps ? ring + " " + Labels.of("note.dashes") : ring, style);
  }
}
