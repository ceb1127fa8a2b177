package taperbook.draw.library;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.draw.picture.Painting;
import taperbook.draw.style.Box;
import taperbook.draw.style.ChartStyle;
import taperbook.draw.style.Palette;
import taperbook.draw.style.TextRun;
import taperbook.draw.style.TextRun.Anchor;
import taperbook.words.Labels;

/**
 * A scatter plot of sessions with whiskers for their bounds.
 *
 * @param dots the sessions
 * @param xTitle title of the horizontal axis, with its unit
 * @param yTitle title of the vertical axis, with its unit
 * @param equal whether both axes begin at the same amount and have the same length for the same
 *     amount, with the line on which both are equal
 * @param equality what that line says
 * @param title what stands above the plot on film
 * @param subtitle what stands below the title on film
 */
record ScatterSheet(
    List<Dot> dots,
    String xTitle,
    String yTitle,
    boolean equal,
    String equality,
    String title,
    String subtitle)
    implements Painting {
  private static final int MOST_TICKS_ACROSS = 8;
  private static final int MOST_TICKS_UP = 6;

  /** Room above the highest value, as a factor on the axis. */
  private static final double HEADROOM = 1.08;

  ScatterSheet {
    dots = List.copyOf(dots);
    if (dots.isEmpty()) {
      throw new IllegalArgumentException("a scatter plot needs a dot");
    }
  }

  @Override
  public List<TextRun> paint(Graphics2D g, ChartStyle style) {
    Plot plot = plot(style);
    ScatterPainter painter = new ScatterPainter(new PanelBrush(g, style), plot, dots);
    painter.grid();
    Optional<String> line = equal ? Optional.of(equality) : Optional.empty();
    List<TextRun> texts = new ArrayList<>(painter.marks(line));
    texts.addAll(painter.ticks());
    texts.addAll(rim(plot, style));
    return texts;
  }

  /** The plot with its scales. */
  Plot plot(ChartStyle style) {
    ChartStyle.Margins m = style.margins();
    Box box =
        new Box(
            m.left(),
            m.top(),
            style.width() - m.left() - m.right(),
            style.height() - m.top() - m.bottom());
    double top = greatest(true);
    double right = greatest(false);
    if (!equal) {
      double least = dots.stream().mapToDouble(d -> d.x().bounds().low()).min().orElse(0);
      return new Plot(
          box,
          Scale.over(least, right, MOST_TICKS_ACROSS),
          Scale.upTo(top * HEADROOM, MOST_TICKS_UP));
    }
    return equalPlot(box, right, top);
  }

  /** Both axes begin a little below the least value of all, so that the dots use the room. */
  private Plot equalPlot(Box box, double right, double top) {
    double least =
        dots.stream()
            .mapToDouble(d -> Math.min(d.x().bounds().low(), d.y().bounds().low()))
            .min()
            .orElse(0);
    double room = 0.08 * Math.max(right - least, 0.1 * right);
    double from = Math.max(0, least - room);
    double width = right + room - from;
    double height = top + room - from;
    double pixels = Math.min(box.width() / width, box.height() / height);
    double step = Scale.roundStep(box.height() / pixels, MOST_TICKS_UP);
    return new Plot(
        box,
        new Scale(from, from + box.width() / pixels, step),
        new Scale(from, from + box.height() / pixels, step));
  }

  private double greatest(boolean up) {
    double most =
        dots.stream().mapToDouble(d -> (up ? d.y() : d.x()).bounds().high()).max().orElse(0);
    return most > 0 ? most : 1;
  }

  private List<TextRun> rim(Plot plot, ChartStyle style) {
    double size = style.type().tick();
    double edge = style.margins().left() * 0.4;
    double foot = plot.box().bottom() + size * 3.1;
    TextRun.Face bold = new TextRun.Face(size, true, Palette.INK);
    TextRun.Face quiet = new TextRun.Face(size, false, Palette.GREY);
    TextRun x = new TextRun(xTitle, plot.box().right(), foot, Anchor.END, bold);
    List<TextRun> texts = new ArrayList<>(List.of(x));
    texts.add(new TextRun(yTitle, edge, plot.box().top() - 1.25 * size, Anchor.START, bold));
    String bounds = dots.stream().anyMatch(Dot::hasBounds) ? Labels.of("note.whiskers") : "";
    String lines = (bounds + (equal ? " " + Labels.of("note.equal") : "")).strip();
    TextRun note = new TextRun(lines, edge, foot, Anchor.START, quiet);
    if (note.left() + note.width() * style.type().slack() < x.left() - size) {
      texts.add(note);
    }
    texts.addAll(Headings.of(title, subtitle, edge, style));
    return texts;
  }
}
