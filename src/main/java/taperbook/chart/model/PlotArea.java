package taperbook.chart.model;

import java.util.List;
import java.util.Map;

/**
 * The position of the plot in the picture, and the mapping of data to it. Linear, y upwards.
 *
 * @param box the plot
 * @param x horizontal axis
 * @param y vertical axis
 */
public record PlotArea(Box box, Axis x, Axis y) {
  /** Share of the height of the upper of two panels. */
  private static final double UPPER = 0.62;

  /** Returns the areas of the panels of a chart, from the top. */
  public static List<PlotArea> all(Chart chart, ChartStyle style) {
    Box room = chart.heading(style).room(style);
    double size = style.type().tick();
    double figures = 0;
    for (Chart panel : chart.panels()) {
      figures = Math.max(figures, widest(panel.y(), 1, size));
    }
    double slack = style.type().slack();
    double left = room.left() + figures * slack + 0.5 * size;
    double right = room.right() - widest(chart.x(), 1, size) * slack / 2;
    double top = room.top() + 0.5 * size;
    double strip = chart.marks().leads().isPresent() ? LeadStrip.strip(style) : 0;
    double height = room.bottom() - 1.6 * size - strip - top;
    Box plot = whole(new Box(left, top, right - left, height));
    if (chart.below().isEmpty()) {
      return List.of(new PlotArea(plot, chart.x(), chart.y()));
    }
    double gap = 1.4 * size;
    double upper = UPPER * (height - gap);
    double lower = height - gap - upper;
    return List.of(
        new PlotArea(
            whole(new Box(plot.left(), plot.top(), plot.width(), upper)), chart.x(), chart.y()),
        new PlotArea(
            whole(new Box(plot.left(), plot.bottom() - lower, plot.width(), lower)),
            chart.x(),
            chart.below().get().y()));
  }

  /** Returns the largest box of whole pixels inside another, as XChart uses whole pixels. */
  private static Box whole(Box box) {
    double left = Math.ceil(box.left());
    double top = Math.ceil(box.top());
    return new Box(left, top, Math.floor(box.right() - left), Math.floor(box.bottom() - top));
  }

  private static double widest(Axis axis, int every, double size) {
    return axis.figures(every).values().stream()
        .mapToDouble(text -> Typeface.width(text, false, size))
        .max()
        .orElse(0);
  }

  /** Returns the tick labels along the horizontal axis that fit. */
  public Map<Double, String> across(ChartStyle style) {
    int every = 1;
    double size = style.type().tick();
    double step = box.width() * x.step() / x.length();
    while (every * step < widest(x, every, size) * style.type().slack() + 0.4 * size) {
      every++;
    }
    return x.figures(every);
  }

  /** Returns the tick labels along the vertical axis that fit. */
  public Map<Double, String> up(ChartStyle style) {
    double step = box.height() * y.step() / y.length();
    return y.figures((int) Math.ceil(1.15 * style.type().tick() / step));
  }

  /** Returns the pixel of an abscissa. */
  public double px(double value) {
    return box.left() + box.width() * (value - x.min()) / x.length();
  }

  /** Returns the pixel of an ordinate. */
  public double py(double value) {
    return box.bottom() - box.height() * (value - y.min()) / y.length();
  }
}
