package taperbook.chart.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.knowm.xchart.XYChart;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Box;
import taperbook.chart.model.Brush;
import taperbook.chart.model.Chart;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Heading;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.PlotLine;
import taperbook.result.Curve;

final class SolidLinesTest {
  private static final ChartStyle STYLE = ChartStyle.film();

  @ParameterizedTest
  @ValueSource(doubles = {7.3, 52, 97, 118.4, 171, 208.6, 260, 349})
  void grid_lines_are_at_the_ticks_of_the_axis_only(double max) {
    gridLiesAtTicks(chart(Axis.upTo("Power", "kW", max, 6)));
  }

  @ParameterizedTest
  @CsvSource({"-24, 92", "-77, 8", "-3.9, 3.4", "-0.4, 61.5", "-118, 121"})
  void grid_lines_are_at_the_ticks_of_an_axis_across_zero(double min, double max) {
    gridLiesAtTicks(chart(Axis.between("Difference", "kW", min, max, 8)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {60, 90, 130, 200, 300})
  void grid_lines_of_a_low_panel_are_at_the_ticks(double height) {
    for (double max : new double[] {52, 100, 171, 238}) {
      Chart chart = chart(Axis.upTo("Power", "kW", max, 6));
      PlotArea whole = PlotArea.all(chart, STYLE).get(0);
      Box box = new Box(whole.box().left(), whole.box().top(), whole.box().width(), height);
      gridLiesAtTicks(chart, new PlotArea(box, whole.x(), whole.y()));
    }
  }

  private static void gridLiesAtTicks(Chart chart) {
    gridLiesAtTicks(chart, PlotArea.all(chart, STYLE).get(0));
  }

  private static void gridLiesAtTicks(Chart chart, PlotArea area) {
    BufferedImage image = painted(chart, area);
    TreeSet<Integer> expected = new TreeSet<>();
    for (double tick : area.up(STYLE).keySet()) {
      int row = (int) Math.round(area.py(tick));
      if (tick > chart.y().min()) {
        expected.add(row);
      }
    }
    int column = (int) area.box().right() - 3;
    TreeSet<Integer> found = new TreeSet<>();
    for (int y = 0; y < image.getHeight(); y++) {
      // A line of two pixels covers the row above its centre at least nearly in full.
      if (image.getRGB(column, y) != Color.WHITE.getRGB() && image.getRGB(column, y - 1) == -1) {
        found.add(y + 1);
      }
    }
    assertThat(found).as(expected + " in " + area).hasSameSizeAs(expected);
    for (int row : found) {
      assertThat(expected.subSet(row - 1, true, row + 1, true)).isNotEmpty();
    }
  }

  @Test
  void the_scale_of_the_chart_library_is_the_scale_of_the_plot_area() {
    assertScaleIsThatOfThePlotArea(chart(Axis.upTo("Power", "kW", 208.6, 6)));
    assertScaleIsThatOfThePlotArea(chart(Axis.between("Difference", "kW", -50, 40, 8)));
  }

  private static void assertScaleIsThatOfThePlotArea(Chart chart) {
    PlotArea area = PlotArea.all(chart, STYLE).get(0);
    XYChart xy = SolidLines.prepare(chart, area, STYLE);
    Graphics2D g = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics();
    xy.paint(g, (int) area.box().width(), (int) area.box().height());
    for (double share : new double[] {0, 0.17, 0.5, 1}) {
      double x = area.x().max() * share;
      double y = area.y().min() + area.y().length() * share;
      assertThat(area.box().left() + xy.getScreenXFromChart(x)).isCloseTo(area.px(x), within(0.51));
      assertThat(area.box().top() + xy.getScreenYFromChart(y)).isCloseTo(area.py(y), within(0.51));
    }
  }

  private static BufferedImage painted(Chart chart, PlotArea area) {
    BufferedImage image =
        new BufferedImage(STYLE.width(), STYLE.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, STYLE.width(), STYLE.height());
    new AxisLayer(new Brush(g, STYLE), area).paintGrid();
    SolidLines.paint(g, chart, area, STYLE);
    g.dispose();
    return image;
  }

  private static Chart chart(Axis axis) {
    double[] x = {10, 40};
    double[] y = {axis.max() / 2, axis.max() / 3};
    return new Chart(
        "grid",
        new Heading("Grid", "", List.of()),
        Axis.stateOfCharge(10),
        axis,
        new PlotLine(new Curve(x, y, y, y, new boolean[2]), v -> v, v -> v),
        new Chart.Marks(Optional.empty(), Optional.empty(), List.of()));
  }
}
