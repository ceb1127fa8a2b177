package taperbook.draw.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.draw.picture.Painting;
import taperbook.draw.style.Box;
import taperbook.draw.style.ChartStyle;
import taperbook.draw.style.Heading;
import taperbook.draw.style.TextRun;
import taperbook.model.Curve;
import taperbook.model.Estimate;

/** All texts of a library's figures, in both styles, with few and many sessions. */
final class SheetLayoutTest {
  private static final List<ChartStyle> STYLES = List.of(ChartStyle.print(), ChartStyle.film());

  static IntStream seeds() {
    return IntStream.rangeClosed(1, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void no_two_texts_of_small_multiples_overlap_and_all_stay_inside(int seed) {
    keepsTextsApart(panels(new Random(seed)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void no_two_texts_of_a_scatter_overlap_and_all_stay_inside(int seed) {
    Random random = new Random(seed);
    int count = 1 + random.nextInt(seed % 4 == 0 ? 300 : 45);
    keepsTextsApart(scatter(random, count, seed % 2 == 0));
  }

  @Test
  void with_up_to_40_dots_all_may_be_labelled_and_with_more_only_those_at_the_edges() {
    Random random = new Random(5);
    for (int count : new int[] {40, 41, 300}) {
      List<Dot> dots = dots(random, count);
      Plot plot = sheet(dots, true).plot(ChartStyle.print());
      Graphics2D g = image(ChartStyle.print()).createGraphics();
      ScatterPainter painter =
          new ScatterPainter(new PanelBrush(g, ChartStyle.print()), plot, dots);
      assertThat(painter.labelled())
          .hasSize(count <= 40 ? 40 : Outermost.of(dots).size())
          .containsAll(Outermost.of(dots));
      g.dispose();
    }
  }

  @Test
  void equal_units_have_equal_lengths_on_both_axes() {
    for (ChartStyle style : STYLES) {
      Plot plot = scatter(new Random(3), 20, true).plot(style);
      assertThat(plot.px(150) - plot.px(50)).isCloseTo(plot.py(50) - plot.py(150), within(1e-9));
      assertThat(plot.x().from()).isEqualTo(plot.y().from());
    }
  }

  @Test
  void every_dot_lies_in_the_plot() {
    for (ChartStyle style : STYLES) {
      for (boolean equal : new boolean[] {true, false}) {
        ScatterSheet sheet = scatter(new Random(8), 60, equal);
        Plot plot = sheet.plot(style);
        assertThat(sheet.dots())
            .allSatisfy(
                d -> {
                  assertThat(plot.px(d.x().value()))
                      .isBetween(plot.box().left(), plot.box().right());
                  assertThat(plot.py(d.y().value()))
                      .isBetween(plot.box().top(), plot.box().bottom());
                });
      }
    }
  }

  @Test
  void the_corners_of_a_square_are_its_outermost_dots() {
    List<Dot> dots = new ArrayList<>();
    for (int x = 0; x <= 4; x++) {
      for (int y = 0; y <= 4; y++) {
        dots.add(new Dot(x + "/" + y, Estimate.exactly(x), Estimate.exactly(y)));
      }
    }
    assertThat(Outermost.of(dots).stream().map(Dot::name))
        .containsExactlyInAnyOrder("0/0", "4/0", "4/4", "0/4");
  }

  @Test
  void ticks_are_round_and_lie_on_the_scale() {
    assertThat(Scale.upTo(340, 4).ticks()).containsExactly(0.0, 100.0, 200.0, 300.0);
    assertThat(new Scale(47, 103, 20).ticks()).containsExactly(60.0, 80.0, 100.0);
    assertThat(Scale.over(300, 480, 8).text(350)).isEqualTo("350");
  }

  private static void keepsTextsApart(Painting painting) {
    for (ChartStyle style : STYLES) {
      Graphics2D g = image(style).createGraphics();
      List<TextRun> texts = painting.paint(g, style);
      g.dispose();
      Box picture = new Box(0, 0, style.width(), style.height());
      for (int a = 0; a < texts.size(); a++) {
        Box box = texts.get(a).box();
        assertThat(box.isInside(picture)).as(texts.get(a).text()).isTrue();
        assertThat(texts.get(a).font().size())
            .isGreaterThanOrEqualTo(style.width() > 1000 ? 40 : 12);
        for (int b = a + 1; b < texts.size(); b++) {
          assertThat(box.overlaps(texts.get(b).box()))
              .as("%s on %s", texts.get(a).text(), texts.get(b).text())
              .isFalse();
        }
      }
    }
  }

  private static BufferedImage image(ChartStyle style) {
    return new BufferedImage(style.width(), style.height(), BufferedImage.TYPE_INT_RGB);
  }

  private static PanelSheet panels(Random random) {
    int count = 1 + random.nextInt(12);
    double most = 0;
    List<Panel> panels = new ArrayList<>();
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
          new Panel(
              name,
              "2026-03-14, Northmoor Finch, second battery revision",
              new Curve(x, y, y, y, new boolean[n]),
              n == 0 ? "" : "143.2\u00a0kW"));
    }
    Scale power = Scale.upTo(most * 1.36, 4);
    int columns = count <= 3 ? count : count == 4 ? 2 : count <= 6 ? 3 : 4;
    int rows = (count + columns - 1) / columns;
    return new PanelSheet(panels, columns, rows, power, heading());
  }

  private static ScatterSheet scatter(Random random, int count, boolean equal) {
    return sheet(dots(random, count), equal);
  }

  private static ScatterSheet sheet(List<Dot> dots, boolean equal) {
    return new ScatterSheet(dots, "kW", "kW", equal, "average = peak", heading());
  }

  private static Heading heading() {
    return new Heading("Most on average: 140 kW", "Power in kW", List.of("9 sessions", "A tester"));
  }

  private static List<Dot> dots(Random random, int count) {
    return IntStream.range(0, count)
        .mapToObj(
            i -> {
              double peak = 50 + 200 * random.nextDouble();
              double average = peak * (0.4 + 0.5 * random.nextDouble());
              return new Dot(
                  "visit-" + i + "-finch",
                  Estimate.around(peak, 0.5),
                  Estimate.around(average, 4 * random.nextDouble()));
            })
        .toList();
  }
}
