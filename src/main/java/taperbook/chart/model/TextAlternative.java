package taperbook.chart.model;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.IntFunction;

/** Describes a chart as text: axes, readings, gaps, and a few points of the curve. */
public final class TextAlternative {
  /** Number of points to describe besides the peak: enough to convey the shape. */
  private static final int SAMPLES = 9;

  private final List<String> sentences = new ArrayList<>();

  /**
   * Creates a text that starts with the kind of chart.
   *
   * @param x description of the horizontal axis, with its range
   * @param y description of the vertical axis, with its range
   */
  public TextAlternative(String x, String y) {
    sentences.add("Line chart. Horizontal axis: " + x + ". Vertical axis: " + y + ".");
  }

  public TextAlternative add(String sentence) {
    if (!sentence.isEmpty()) {
      sentences.add(sentence);
    }
    return this;
  }

  /** Describes some points of a chart's only curve, and its gaps and band. */
  public TextAlternative curve(Chart chart, IntFunction<String> point) {
    line(chart.series().get(0), point);
    if (!chart.hasVisibleBand()) {
      return this;
    }
    return add(
        chart.line().hasOwnBand()
            ? ofBand(chart.line().band())
            : "A tinted band shows the bounds of the readings.");
  }

  /** Describes the coverage of a band from draws, with its widest and narrowest place. */
  private static String ofBand(PlotLine band) {
    int widest = 0;
    int narrowest = 0;
    for (int i = 1; i < band.size(); i++) {
      widest = band.width(i) > band.width(widest) ? i : widest;
      narrowest = band.width(i) < band.width(narrowest) ? i : narrowest;
    }
    return "A tinted band holds the true power at each state of charge in 95 % of cases, given all"
        + " readings: at its widest "
        + between(band, widest)
        + ", at its narrowest "
        + between(band, narrowest)
        + ".";
  }

  private static String between(PlotLine band, int i) {
    return FigureText.plain(band.low(i))
        + " to "
        + FigureText.plain(band.high(i))
        + " kW at "
        + FigureText.plain(band.x(i))
        + " %";
  }

  /**
   * Describes some points of a line, including both ends and the peak, and its gaps.
   *
   * @param point formats a point by its index
   */
  public TextAlternative line(Series series, IntFunction<String> point) {
    PlotLine line = series.line();
    TreeSet<Integer> named = new TreeSet<>();
    int last = line.size() - 1;
    for (int k = 0; k < SAMPLES; k++) {
      named.add((int) Math.round((double) k * last / (SAMPLES - 1)));
    }
    named.add(line.peak());
    List<String> points = named.stream().map(point::apply).toList();
    String which = points.size() == line.size() ? ": " : ", of which ";
    String name = series.name().isEmpty() ? "The curve" : series.name();
    sentences.add(name + " has " + counted(series) + which + String.join("; ", points) + ".");
    return add(gaps(series));
  }

  private static String counted(Series series) {
    String what = series.pen().marksReadings() ? "reading" : "point";
    int size = series.line().size();
    return size == 1 ? "1 " + what : size + " " + what + "s";
  }

  private static String gaps(Series series) {
    int gaps = series.line().wideGaps();
    String appearance = series.pen().isOneOfSeveral() ? "thin" : "dashed";
    return switch (gaps) {
      case 0 -> "";
      case 1 -> "1 join spans a long gap between readings and is drawn " + appearance + ".";
      default -> gaps + " joins span long gaps between readings and are drawn " + appearance + ".";
    };
  }

  public String text() {
    return String.join(" ", sentences);
  }
}
