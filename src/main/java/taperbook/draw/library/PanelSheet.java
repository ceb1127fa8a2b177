package taperbook.draw.library;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import taperbook.draw.picture.Painting;
import taperbook.draw.style.Box;
import taperbook.draw.style.ChartStyle;
import taperbook.draw.style.Palette;
import taperbook.draw.style.TextRun;
import taperbook.draw.style.TextRun.Anchor;
import taperbook.words.Labels;

/**
 * Small multiples: the curves of several sessions, a panel each, all on the same axes.
 *
 * @param panels the sessions in reading order, at most {@code columns * rows}
 * @param columns panels beside each other
 * @param rows panels below each other
 * @param power the vertical scale of all panels, kW
 * @param title what stands above them on film
 * @param subtitle what stands below the title on film
 */
record PanelSheet(
    List<Panel> panels, int columns, int rows, Scale power, String title, String subtitle)
    implements Painting {
  private static final Scale CHARGE = new Scale(0, 100, 50);

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
      Plot plot = new Plot(plot(i, style), CHARGE, power);
      PanelPainter painter = new PanelPainter(brush, plot, panels.get(i));
      painter.shapes();
      texts.addAll(painter.texts());
      texts.addAll(painter.ticks(i % columns == 0, i + columns >= panels.size()));
    }
    texts.addAll(rim(style));
    return texts;
  }

  /** The plot of panel {@code i}, below its two lines of heading. */
  private Box plot(int i, ChartStyle style) {
    SmallType type = new SmallType(style);
    Box area = area(style);
    double gapX = 1.3 * type.size();
    double gapY = 0.7 * type.size();
    double width = (area.width() - gapX * (columns - 1)) / columns;
    double height = (area.height() - gapY * (rows - 1)) / rows;
    double heading = 2 * type.leading() + 0.45 * type.size();
    int row = i / columns;
    double left = area.left() + (i % columns) * (width + gapX);
    double top = area.top() + row * (height + gapY);
    return new Box(left, top + heading, width, height - heading);
  }

  /** What the panels fill: between the titles of the axes. */
  private Box area(ChartStyle style) {
    SmallType type = new SmallType(style);
    double left = edge(style) + 2.4 * type.size();
    double top = head(style) + 1.9 * type.size();
    double right = style.width() - style.margins().right() * 0.7;
    double bottom = style.height() - 3.5 * type.size();
    return new Box(left, top, right - left, bottom - top);
  }

  /** What title and subtitle take on film. */
  private static double head(ChartStyle style) {
    return style.titled() ? 2.65 * style.type().title() : 0;
  }

  private static double edge(ChartStyle style) {
    return style.margins().left() * 0.4;
  }

  private List<TextRun> rim(ChartStyle style) {
    SmallType type = new SmallType(style);
    double foot = style.height() - 0.75 * type.size();
    double right = area(style).right();
    TextRun x =
        new TextRun(Labels.of("axis.soc"), right, foot, Anchor.END, type.face(true, Palette.INK));
    TextRun y =
        new TextRun(
            Labels.of("axis.power"),
            edge(style),
            head(style) + 1.3 * type.size(),
            Anchor.START,
            type.face(true, Palette.INK));
    String ring = Labels.of("note.ring");
    String how =
        panels.stream().anyMatch(Panel::hasGaps) ? ring + " " + Labels.of("note.dashes") : ring;
    TextRun note =
        new TextRun(how, edge(style), foot, Anchor.START, type.face(false, Palette.GREY));
    List<TextRun> texts = new ArrayList<>(List.of(x, y, note));
    texts.addAll(Headings.of(title, subtitle, edge(style), style));
    return texts;
  }
}
