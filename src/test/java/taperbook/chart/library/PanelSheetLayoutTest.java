package taperbook.chart.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Box;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Heading;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.TextRun;
import taperbook.chart.render.Painting;
import taperbook.quantity.Interval;
import taperbook.result.Curve;

/** Layout of texts in all figures of a library, in both styles, with few and many sessions. */
final class PanelSheetLayoutTest {
  private static final List<ChartStyle> STYLES = List.of(ChartStyle.print(), ChartStyle.film());

  /** Lists are also drawn for narrow screens, regardless of the number of figures. */
  private static final List<ChartStyle> LIST_STYLES =
      List.of(ChartStyle.print(), ChartStyle.narrow(), ChartStyle.film());

  static IntStream seeds() {
    return IntStream.rangeClosed(1, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void no_two_texts_of_small_multiples_overlap_and_all_stay_inside(int seed) {
    STYLES.forEach(style -> keepsTextsApart(panels(new Random(seed)), style));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void no_two_texts_of_a_list_overlap_and_all_stay_inside(int seed) {
    LIST_STYLES.forEach(style -> keepsTextsApart(list(new Random(seed)), style));
  }

  @Test
  void a_list_has_no_more_rows_than_are_legible() {
    List<DotPlot.Row> rows =
        IntStream.range(0, 9)
            .mapToObj(i -> new DotPlot.Row("Car " + i, "", i, new Interval(i, i), i + " min"))
            .toList();
    assertThatThrownBy(() -> new DotPlot(rows, "min", heading()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("9 rows in a list");
  }

  @Test
  void a_name_that_is_too_long_is_truncated_at_the_car_and_not_the_detail() {
    String car = "Northmoor Finch, second battery revision, with the towing package";
    DotPlot sheet =
        new DotPlot(
            IntStream.range(0, 8)
                .mapToObj(
                    i ->
                        new DotPlot.Row(
                            car, "18 April 202" + i, 6, new Interval(5, 7), "6 min 30 s"))
                .toList(),
            "min",
            heading());
    for (ChartStyle style : LIST_STYLES) {
      Graphics2D g = image(style).createGraphics();
      List<String> texts = sheet.paint(g, style).stream().map(TextRun::text).toList();
      g.dispose();
      for (int i = 0; i < 8; i++) {
        String day = "18 April 202" + i;
        assertThat(texts).as(style.width() + " wide").anyMatch(t -> t.endsWith(day));
      }
    }
  }

  @Test
  void a_detail_takes_two_lines_if_it_is_too_long_for_one() {
    PlotLine none = new PlotLine(Curve.EMPTY, v -> v, v -> v);
    PanelSheet.Panel panel =
        new PanelSheet.Panel("Northmoor Finch", "18 April 2026, second battery revision", none, "");
    PanelSheet sheet =
        new PanelSheet(Collections.nCopies(3, panel), 3, 1, Axis.upTo("", "kW", 200, 4), heading());
    Graphics2D g = image(ChartStyle.print()).createGraphics();
    List<String> texts = sheet.paint(g, ChartStyle.print()).stream().map(TextRun::text).toList();
    g.dispose();
    assertThat(texts).contains("Northmoor Finch", "18 April 2026, second battery", "revision");
  }

  private static void keepsTextsApart(Painting painting, ChartStyle style) {
    Graphics2D g = image(style).createGraphics();
    List<TextRun> texts = painting.paint(g, style);
    g.dispose();
    Box picture = new Box(0, 0, style.width(), style.height());
    for (int a = 0; a < texts.size(); a++) {
      Box box = texts.get(a).box();
      assertThat(box.isInside(picture)).as(texts.get(a).text()).isTrue();
      assertThat(texts.get(a).font().size())
          .isGreaterThanOrEqualTo(style.width() > 1000 ? 40 : style.width() > 400 ? 12 : 11);
      for (int b = a + 1; b < texts.size(); b++) {
        assertThat(box.overlaps(texts.get(b).box()))
            .as("%s on %s", texts.get(a).text(), texts.get(b).text())
            .isFalse();
      }
    }
  }

  private static BufferedImage image(ChartStyle style) {
    return new BufferedImage(style.width(), style.height(), BufferedImage.TYPE_INT_RGB);
  }

  private static PanelSheet panels(Random random) {
    int count = 1 + random.nextInt(12);
    double most = 0;
    List<PanelSheet.Panel> panels = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int n = random.nextInt(8) == 0 ? 0 : 2 + random.nextInt(20);
      double[] x = new double[n];
      double[] y = new double[n];
      for (int k = 0; k < n; k++) {
        x[k] = 100.0 * k / (n - 1);
        y[k] = 5 + 300 * random.nextDouble();
        most = Math.max(most, y[k]);
      }
      String name = "a-session-with-quite-a-long-name-".substring(0, 3 + random.nextInt(30)) + i;
      panels.add(
          new PanelSheet.Panel(
              name,
              "2026-03-14, Northmoor Finch, second battery revision",
              new PlotLine(new Curve(x, y, y, y, new boolean[n]), v -> v, v -> v),
              n == 0 ? "" : "143.2\u00a0kW"));
    }
    Axis power = Axis.upTo("", "kW", most * 1.36, 4);
    int columns = count <= 3 ? count : count == 4 ? 2 : count <= 6 ? 3 : 4;
    int rows = (count + columns - 1) / columns;
    return new PanelSheet(panels, columns, rows, power, heading());
  }

  private static DotPlot list(Random random) {
    List<DotPlot.Row> rows = new ArrayList<>();
    int count = 1 + random.nextInt(DotPlot.MOST);
    for (int i = 0; i < count; i++) {
      double value = 5 + 40 * random.nextDouble();
      double half = 3 * random.nextDouble();
      rows.add(
          new DotPlot.Row(
              "Northmoor Finch, second battery revision".substring(0, 5 + random.nextInt(36)),
              random.nextBoolean() ? "" : "20 September 2026, Quarry Lane",
              value,
              new Interval(value - half, value + half),
              (int) value + "\u00a0min 30\u00a0s"));
    }
    return new DotPlot(rows, "min", heading());
  }

  private static Heading heading() {
    return new Heading("Most on average: 140 kW", "Power in kW", List.of("9 sessions", "A tester"));
  }
}
