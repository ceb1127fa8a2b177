package taperbook.chart.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.chart.model.Box;
import taperbook.chart.model.Chart;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Pen;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.Series;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.Thumbnail;
import taperbook.chart.plots.ChartPictures;
import taperbook.chart.plots.Comparisons;
import taperbook.chart.plots.FigureSet;
import taperbook.chart.plots.InventedComparison;
import taperbook.chart.plots.InventedSession;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.ReportResult;

/** Layout of all texts of all charts, in both styles, with sessions of all shapes. */
@Tag("slow")
final class TextLayoutTest {
  private static final List<ChartStyle> STYLES =
      List.of(
          ChartStyle.print(),
          ChartStyle.column(),
          ChartStyle.narrow(),
          ChartStyle.film(),
          ChartStyle.tall(1350),
          ChartStyle.tall(1080));

  private static final List<String> NAMES =
      List.of(
          "second battery revision",
          "first battery revision",
          "a cold morning without preparation",
          "shared",
          "a very long visit to a station at the end of a dark winter's day",
          "software 5.2");

  static Stream<Map.Entry<String, List<Figure>>> drawn() {
    return ChartPictures.figures().entrySet().stream();
  }

  static IntStream seeds() {
    return IntStream.rangeClosed(1, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void no_two_texts_overlap_and_all_stay_inside_the_picture(int seed) {
    charts(session(new Random(seed))).forEach(TextLayoutTest::textsDoNotOverlap);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void texts_of_two_to_six_sessions_do_not_overlap(int seed) {
    charts(comparison(new Random(seed))).forEach(TextLayoutTest::textsDoNotOverlap);
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void texts_do_not_overlap_with_any_common_range(Map.Entry<String, List<Figure>> drawn) {
    drawn.getValue().forEach(figure -> textsDoNotOverlap(figure.chart().orElseThrow()));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void every_line_is_labelled_with_its_letter_at_least(int seed) {
    for (Chart chart : charts(comparison(new Random(seed)))) {
      for (ChartStyle style : STYLES) {
        List<Pen> named = new ArrayList<>();
        for (Callout.Placed label : placed(chart, style)) {
          label.callout().key().ifPresent(named::add);
        }
        assertThat(named)
            .containsExactlyInAnyOrderElementsOf(
                chart.series().stream().map(Series::pen).filter(Pen::isOneOfSeveral).toList());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void no_label_covers_a_reading(Map.Entry<String, List<Figure>> drawn) {
    for (Figure figure : drawn.getValue()) {
      for (ChartStyle style : STYLES) {
        Chart shown = Thumbnail.of(figure.chart().orElseThrow(), style);
        for (int i = 0; i < shown.panels().size(); i++) {
          Chart panel = shown.panels().get(i);
          PlotArea area = PlotArea.all(shown, style).get(i);
          List<Callout.Placed> labels = PlacedLabels.place(panel, area, style).labels();
          for (Box reading : readings(panel, area, style)) {
            assertThat(labels)
                .as("%s %s", drawn.getKey(), panel.id())
                .noneMatch(label -> label.box().overlaps(reading));
          }
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void no_text_is_too_small_to_read(Map.Entry<String, List<Figure>> drawn) {
    for (Figure figure : drawn.getValue()) {
      // In pixels on film and on a phone; in print, 720 units are 150 mm and 500 units are 118 mm.
      smallest(figure, ChartStyle.film(), 48);
      smallest(figure, ChartStyle.tall(1350), 36);
      smallest(figure, ChartStyle.tall(1080), 36);
      smallest(figure, ChartStyle.print(), 8 / (150 / 25.4 * 72 / 720));
      smallest(figure, ChartStyle.column(), 8 / (118 / 25.4 * 72 / 500));
      // On a screen of 360 px, the picture is 340.8 px wide.
      smallest(figure, ChartStyle.narrow(), 12 * 360 / 340.8);
    }
  }

  private static void smallest(Figure figure, ChartStyle style, double least) {
    assertThat(texts(figure.chart().orElseThrow(), style))
        .allMatch(text -> text.font().size() >= least);
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void pictures_for_film_and_phone_have_three_labels_and_a_margin_of_a_twentieth(
      Map.Entry<String, List<Figure>> drawn) {
    for (Figure figure : drawn.getValue()) {
      for (ChartStyle style :
          List.of(ChartStyle.film(), ChartStyle.tall(1350), ChartStyle.tall(1080))) {
        Box safe = new Box(0, 0, style.width(), style.height());
        double across = 0.05 * style.width();
        double down = 0.05 * style.height();
        safe = new Box(across, down, safe.width() - 2 * across, safe.height() - 2 * down);
        for (TextRun text : texts(figure.chart().orElseThrow(), style)) {
          assertThat(text.box().isInside(safe)).as("%s in %s", text, figure.id()).isTrue();
        }
        Chart shown = Thumbnail.of(figure.chart().orElseThrow(), style);
        int names = (int) shown.series().stream().filter(s -> !s.name().isEmpty()).count();
        int labels = 0;
        for (int i = 0; i < shown.panels().size(); i++) {
          PlotArea area = PlotArea.all(shown, style).get(i);
          labels += PlacedLabels.place(shown.panels().get(i), area, style).labels().size();
        }
        assertThat(labels).isLessThanOrEqualTo(Math.max(3, names));
      }
    }
  }

  private static void textsDoNotOverlap(Chart chart) {
    for (ChartStyle style : STYLES) {
      List<TextRun> texts = texts(chart, style);
      Box picture = new Box(0, 0, style.width(), style.height());
      for (int a = 0; a < texts.size(); a++) {
        Box box = texts.get(a).box();
        assertThat(box.isInside(picture)).as(texts.get(a).text()).isTrue();
        for (int b = a + 1; b < texts.size(); b++) {
          assertThat(box.overlaps(texts.get(b).box()))
              .as("%s: %s on %s", chart.id(), texts.get(a).text(), texts.get(b).text())
              .isFalse();
        }
      }
    }
  }

  private static List<Callout.Placed> placed(Chart chart, ChartStyle style) {
    Chart shown = Thumbnail.of(chart, style);
    return PlacedLabels.place(shown, PlotArea.all(shown, style).get(0), style).labels();
  }

  /** The area of the readings of a chart's lines that have markers. */
  private static List<Box> readings(Chart chart, PlotArea area, ChartStyle style) {
    double r = style.weights().dot();
    List<Box> boxes = new ArrayList<>();
    for (Series series : chart.series()) {
      for (int i : series.marked(chart.markersApart())) {
        double x = area.px(series.line().x(i));
        double y = area.py(series.line().y(i));
        boxes.add(new Box(x - r, y - r, 2 * r, 2 * r));
      }
    }
    return boxes;
  }

  @Test
  void the_hold_the_window_and_every_requested_distance_are_labelled() {
    List<String> texts = new ArrayList<>();
    for (Chart chart : charts(InventedSession.handRead())) {
      texts(chart, ChartStyle.print()).forEach(t -> texts.add(t.text().replace('\u00a0', ' ')));
    }
    assertThat(texts)
        .contains("20 % to 80 % in 22 min 15 s", "100 mi in 8 min 3 s", "200 mi in 22 min 8 s")
        .contains("80 % after 24 min 40 s", "50 % after", "9 min 40 s")
        .anyMatch(t -> t.matches("within 2 % of 171.* kW for 4 min 41 s"));
  }

  private static List<Chart> charts(InventedSession session) {
    return FigureSet.ofSession(session.result()).stream()
        .map(f -> f.chart().orElseThrow())
        .toList();
  }

  private static List<Chart> charts(ReportResult comparison) {
    return FigureSet.ofComparison(comparison).stream().map(f -> f.chart().orElseThrow()).toList();
  }

  /** Two to six random sessions with short and long names. */
  private static ReportResult comparison(Random random) {
    int others = 1 + random.nextInt(5);
    InventedSession[] sessions = new InventedSession[others + 1];
    for (int i = 0; i <= others; i++) {
      sessions[i] = Comparisons.any(random, NAMES.get(i));
    }
    return InventedComparison.of(
        1 + random.nextInt(6), sessions[0], Arrays.copyOfRange(sessions, 1, others + 1));
  }

  private static List<TextRun> texts(Chart chart, ChartStyle style) {
    BufferedImage image = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB);
    return ChartPainter.paint(image.createGraphics(), chart, style);
  }

  /** A random session: 2 to 60 readings, any start, peak, marks, and distances. */
  private static InventedSession session(Random random) {
    int n = 2 + random.nextInt(59);
    double[] seconds = new double[n];
    double[] soc = new double[n];
    double[] power = new double[n];
    double start = random.nextInt(80);
    double peak = 7 + random.nextInt(340);
    for (int i = 0; i < n; i++) {
      double share = (double) i / (n - 1);
      seconds[i] = Math.rint(share * share * (900 + random.nextInt(60)) * 3 + i);
      soc[i] = Math.rint(start + (100 - start) * share);
      power[i] = Math.rint(peak * Math.min(1, 0.5 + 4 * share) * (1 - 0.85 * share));
    }
    Arrays.sort(seconds);
    InventedSession session = InventedSession.plain(seconds, soc, power);
    if (random.nextBoolean()) {
      session
          .measured("peak_hold_time", Unit.SECOND, 1 + random.nextInt(400), 1)
          .measured("peak_hold_soc_from", Unit.PERCENT, start + 1, 1)
          .measured("peak_hold_soc_to", Unit.PERCENT, start + 2 + random.nextInt(15), 1);
    }
    int near = 20 + random.nextInt(200);
    return session
        .socMarks(10, 20, 30, 40, 50, 60, 70, 80, 90, 100)
        .window((int) start + 1, 100)
        .distances(
            new WantedDistance(near, Unit.MILE),
            new WantedDistance(near + 3, Unit.MILE),
            new WantedDistance(near + 9, Unit.KILOMETRE));
  }
}
