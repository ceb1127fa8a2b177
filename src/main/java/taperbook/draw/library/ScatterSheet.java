package taperbook.draw.library;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.draw.picture.Painting;
import taperbook.draw.style.Box;
import taperbook.draw.style.ChartStyle;
import taperbook.draw.style.Heading;
import taperbook.draw.style.TextRun;
import taperbook.words.Labels;

/**
 * A scatter plot of sessions with whiskers for their bounds.
 *
 * @param dots the sessions
 * @param xUnit unit of the horizontal axis
 * @param yUnit unit of the vertical axis
 * @param equal whether both axes begin at the same amount and have the same length for the same
 *     amount, with the line on which both are equal
 * @param equality what that line says
 * @param heading the words around the plot
 */
record ScatterSheet(
    List<Dot> dots, String xUnit, String yUnit, boolean equal, String equality, Heading heading)
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
    texts.addAll(painter.ticks(xUnit, yUnit));
    texts.addAll(noted(style).texts(style));
    return texts;
  }

  /** The plot with its scales. */
  Plot plot(ChartStyle style) {
    Box room = noted(style).room(style);
    double size = style.type().tick();
    double left = 4.2 * size;
    Box box =
        new Box(
            room.left() + left,
            room.top() + 0.5 * size,
            room.width() - left - 2 * size,
            room.height() - 2.1 * size);
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

  private Heading noted(ChartStyle style) {
    String bounds = dots.stream().anyMatch(Dot::hasBounds) ? Labels.of("note.whiskers") : "";
    return heading.with((bounds + (equal ? " " + Labels.of("note.equal") : "")).strip(), style);
  }
}
