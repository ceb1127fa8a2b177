package taperbook.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.model.Unit;
import taperbook.model.WantedDistance;

/** All texts of all charts, in both styles, with sessions of all shapes. */
final class TextLayoutTest {
  static IntStream seeds() {
    return IntStream.rangeClosed(1, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void no_two_texts_overlap_and_all_stay_inside_the_picture(int seed) {
    for (Chart chart : charts(session(new Random(seed)))) {
      for (ChartStyle style : List.of(ChartStyle.print(), ChartStyle.film())) {
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
  }

  @Test
  void no_text_on_film_is_smaller_than_28_pixels() {
    for (Chart chart : charts(InventedSession.handRead())) {
      assertThat(texts(chart, ChartStyle.film()))
          .allSatisfy(text -> assertThat(text.font().size()).isGreaterThanOrEqualTo(28));
    }
  }

  @Test
  void the_hold_the_window_and_every_wanted_distance_are_labelled() {
    List<String> texts = new ArrayList<>();
    for (Chart chart : charts(InventedSession.handRead())) {
      texts(chart, ChartStyle.print()).forEach(t -> texts.add(t.text().replace('\u00a0', ' ')));
    }
    assertThat(texts)
        .contains("20 % to 80 % in 22 min 15 s", "100 mi in 8 min 3 s", "200 mi in 22 min 8 s")
        .contains("80 % after 24 min 40 s", "50 % after", "9 min 40 s")
        .anyMatch(t -> t.matches("171.* kW held for 4 min 41 s"));
  }

  private static List<Chart> charts(InventedSession session) {
    return FigureSet.drafts(session.result()).stream().map(Draft::chart).toList();
  }

  private static List<TextRun> texts(Chart chart, ChartStyle style) {
    BufferedImage image = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB);
    return Painter.paint(image.createGraphics(), chart, style);
  }

  /** Any session: 2 to 60 readings from any state of charge, any peak, marks and distances. */
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
    java.util.Arrays.sort(seconds);
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
