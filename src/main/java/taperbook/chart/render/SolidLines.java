package taperbook.chart.render;

import java.awt.Color;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;
import taperbook.chart.model.Chart;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.LineThinning;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.Series;
import taperbook.chart.model.Typeface;

/**
 * The layer that XChart paints: solid lines. XChart draws each segment separately, which restarts
 * dashes at each reading, so dashed lines are painted elsewhere.
 *
 * <p>XChart paints exactly the plot, without padding and axis texts, so that its scale is that of
 * the {@link PlotArea}. It draws text as outlines, which cannot be searched or read aloud, so the
 * painter sets the texts.
 */
final class SolidLines {
  private static final Color CLEAR = new Color(0, 0, 0, 0);

  private SolidLines() {}

  /** Paints the lines into the frame's plot. */
  static void paint(Graphics2D g, Chart chart, PlotArea area, ChartStyle style) {
    XYChart xy = prepare(chart, area, style);
    Graphics2D plot = (Graphics2D) g.create();
    plot.translate(area.box().left(), area.box().top());
    xy.paint(plot, pixels(area.box().width()), pixels(area.box().height()));
    plot.dispose();
  }

  /** Creates the XChart chart, ready to be painted at the size of the plot. */
  static XYChart prepare(Chart chart, PlotArea area, ChartStyle style) {
    XYChart xy = new XYChart(pixels(area.box().width()), pixels(area.box().height()));
    bare(xy.getStyler());
    XYStyler styler = xy.getStyler();
    styler.setXAxisMin(area.x().min()).setXAxisMax(area.x().max());
    styler.setYAxisMin(area.y().min()).setYAxisMax(area.y().max());
    for (int i = 0; i < chart.series().size(); i++) {
      Series series = chart.series().get(i);
      if (!series.pen().isDashed()) {
        add(xy, "line " + i, series.line(), area, style)
            .setMarker(SeriesMarkers.NONE)
            .setLineStyle(series.pen().line(style))
            .setLineColor(style.background().of(series.pen().color()));
      }
    }
    return xy;
  }

  private static void bare(XYStyler styler) {
    styler.setLegendVisible(false).setChartTitleVisible(false).setChartPadding(0);
    styler.setPlotContentSize(1.0).setPlotBorderVisible(false);
    styler.setChartBackgroundColor(CLEAR).setPlotBackgroundColor(CLEAR);
    AxesChartStyler axes = styler;
    axes.setAxisTicksVisible(false).setAxisTitlesVisible(false).setPlotMargin(0);
    axes.setPlotTicksMarksVisible(false).setPlotGridLinesVisible(false);
    // Invisible, but XChart determines tick spacing from the size of tick labels.
    axes.setAxisTickLabelsFont(Typeface.font(false, 4)).setLocale(Locale.ROOT);
    styler.setDecimalPattern("0.######");
  }

  /** Adds the points to draw, with a break at each wide gap. */
  private static XYSeries add(
      XYChart xy, String name, PlotLine line, PlotArea area, ChartStyle style) {
    List<Double> xs = new ArrayList<>();
    List<Double> ys = new ArrayList<>();
    for (PlotLine.Run run : line.runs()) {
      for (int i : LineThinning.keep(line, run, area, 0.3 * style.weights().curve())) {
        xs.add(line.x(i));
        ys.add(line.y(i));
      }
      xs.add(line.x(run.last()));
      ys.add(Double.NaN);
    }
    return xy.addSeries(name, xs, ys);
  }

  private static int pixels(double length) {
    return (int) Math.round(length);
  }
}
