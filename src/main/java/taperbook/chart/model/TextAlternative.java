package taperbook.chart.model;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.IntFunction;
import taperbook.i18n.Texts;

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
    sentences.add(Texts.of("figure.text_alternative.line_chart_horizontal_axis_vertical", x, y));
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
            : Texts.of("figure.text_alternative.tinted_band_shows_bounds_of"));
  }

  /** Describes the coverage of a band from draws, with its widest and narrowest place. */
  private static String ofBand(PlotLine band) {
    int widest = 0;
    int narrowest = 0;
    for (int i = 1; i < band.size(); i++) {
      widest = band.width(i) > band.width(widest) ? i : widest;
      narrowest = band.width(i) < band.width(narrowest) ? i : narrowest;
    }
    return Texts.of(
        "figure.text_alternative.tinted_band_holds_true_power",
        between(band, widest),
        between(band, narrowest));
  }

  private static String between(PlotLine band, int i) {
    return Texts.of(
        "figure.text_alternative.to_kw_at",
        FigureText.plain(band.low(i)),
        FigureText.plain(band.high(i)),
        FigureText.plain(band.x(i)));
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
    String which =
        points.size() == line.size() ? ": " : Texts.of("figure.text_alternative.of_which");
    String name =
        series.name().isEmpty() ? Texts.of("figure.text_alternative.curve") : series.name();
    sentences.add(
        Texts.of(
            "figure.text_alternative.has",
            name,
            counted(series),
            which,
            String.join("; ", points)));
    return add(gaps(series));
  }

  private static String counted(Series series) {
    int size = series.line().size();
    return series.pen().marksReadings()
        ? Texts.count(size, "figure.text_alternative.reading", "figure.text_alternative.readings")
        : Texts.count(size, "figure.text_alternative.point", "figure.text_alternative.points");
  }

  private static String gaps(Series series) {
    int gaps = series.line().wideGaps();
    String appearance =
        series.pen().isOneOfSeveral()
            ? Texts.of("figure.text_alternative.thin")
            : Texts.of("figure.text_alternative.dashed");
    return switch (gaps) {
      case 0 -> "";
      case 1 -> Texts.of("figure.text_alternative.1_join_spans_long_gap", appearance);
      default -> Texts.of("figure.text_alternative.joins_span_long_gaps_between", gaps, appearance);
    };
  }

  public String text() {
    return String.join(" ", sentences);
  }
}
