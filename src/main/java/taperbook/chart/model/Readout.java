package taperbook.chart.model;

import java.util.ArrayList;
import java.util.List;
import taperbook.format.NumberFormatter;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;

/**
 * The data of a chart's reading line: the formatted points of its lines, and their positions in its
 * pictures.
 *
 * @param wide the plot in the picture for wide screens
 * @param narrow the plot in the picture for narrow screens
 * @param x the horizontal axis
 * @param lines the lines, those of a lower panel last
 */
public record Readout(Plot wide, Plot narrow, Axis x, List<Line> lines) {
  /** Maximum number of points of a line; a pointer cannot distinguish more. */
  private static final int MOST_POINTS = 100;

  public Readout {
    lines = List.copyOf(lines);
  }

  /**
   * The position of the plot in a picture.
   *
   * @param picture width and height of the picture
   * @param plot all panels together
   */
  public record Plot(Box picture, Box plot) {
    private static Plot of(Chart chart, ChartStyle style) {
      List<PlotArea> frames = PlotArea.all(chart, style);
      Box first = frames.get(0).box();
      double bottom = frames.get(frames.size() - 1).box().bottom();
      return new Plot(
          new Box(0, 0, style.width(), style.height()),
          new Box(first.left(), first.top(), first.width(), bottom - first.top()));
    }
  }

  /**
   * A line.
   *
   * @param name its name
   * @param color its colour in the picture, in CSS notation
   * @param ofSession true if it is the line of one of several sessions
   * @param unit unit of its ordinates; empty if they have none
   * @param points its points, from left to right
   */
  public record Line(
      String name, String color, boolean ofSession, String unit, List<Point> points) {
    public Line {
      points = List.copyOf(points);
    }
  }

  /**
   * A point.
   *
   * @param x abscissa
   * @param value ordinate, rounded as its interval allows
   * @param range its formatted interval; empty if it is exact
   */
  public record Point(double x, String value, String range) {}

  /** Returns the readout of a chart. */
  public static Readout of(Chart chart) {
    List<Line> lines = new ArrayList<>();
    for (Chart panel : chart.panels()) {
      for (Series series : panel.series()) {
        lines.add(line(panel, series));
      }
    }
    return new Readout(
        Plot.of(chart, ChartStyle.print()), Plot.of(chart, ChartStyle.narrow()), chart.x(), lines);
  }

  private static Line line(Chart panel, Series series) {
    PlotLine line = series.line();
    double last = line.size() == 0 ? 0 : line.lastX() - line.x(0);
    List<Point> points = new ArrayList<>();
    for (int i : line.every(line.size() > MOST_POINTS ? last / MOST_POINTS : 0)) {
      points.add(point(line, i));
    }
    return new Line(
        series.name().isEmpty() ? panel.y().title() : series.name(),
        Palette.hex(series.pen().color()),
        series.pen().isOneOfSeveral(),
        panel.y().unit(),
        points);
  }

  private static Point point(PlotLine line, int i) {
    double y = line.y(i);
    Interval bounds = new Interval(Math.min(line.low(i), y), Math.max(line.high(i), y));
    return new Point(
        line.x(i),
        NumberFormatter.figures(new Estimate(y, bounds)),
        bounds.width() == 0 ? "" : NumberFormatter.figures(bounds));
  }
}
