package taperbook.chart.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.chart.model.Axis;
import taperbook.chart.model.Chart;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Heading;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.TextRun;
import taperbook.result.Curve;

/** Event flags that would overlap are merged, and no label overlaps a flag. */
final class FlagLayerTest {
  private static Chart chart(double... minutes) {
    List<Chart.Flag> flags =
        IntStream.range(0, minutes.length)
            .mapToObj(i -> new Chart.Flag(minutes[i], i + 1))
            .toList();
    double[] x = {0, 10, 20, 30};
    double[] y = {100, 100, 70, 50};
    Chart.Hold hold = new Chart.Hold(0, 10, 100, List.of("100 kW held for 10 min", "9 to 11 min"));
    return new Chart(
        "flags",
        new Heading("Flags", "", List.of()),
        Axis.time(30),
        Axis.power(100).withRoom(),
        new PlotLine(new Curve(x, y, y, y, new boolean[4]), v -> v, v -> v),
        new Chart.Marks(Optional.of(hold), Optional.empty(), List.of(), Optional.empty(), flags));
  }

  private static List<String> texts(ChartStyle style, double... minutes) {
    Chart chart = chart(minutes);
    return new FlagLayer(chart, PlotArea.all(chart, style).get(0), style)
        .texts().stream().map(TextRun::text).toList();
  }

  @Test
  void distant_flags_are_separate_and_close_ones_are_merged() {
    assertThat(texts(ChartStyle.print(), 1, 10, 29.9)).containsExactly("1", "2", "3");
    assertThat(texts(ChartStyle.print(), 1, 1.1, 29)).containsExactly("1, 2", "3");
    assertThat(texts(ChartStyle.print(), 1, 1.3, 1.6, 2)).containsExactly("1\u20134");
    assertThat(texts(ChartStyle.print())).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.4, 1.3, 2.2, 5, 9})
  void no_two_texts_overlap(double apart) {
    for (ChartStyle style : List.of(ChartStyle.print(), ChartStyle.narrow(), ChartStyle.film())) {
      Chart chart = chart(4, 4 + apart, 4 + 2 * apart);
      BufferedImage image =
          new BufferedImage(style.width(), style.height(), BufferedImage.TYPE_INT_RGB);
      List<TextRun> texts = ChartPainter.paint(image.createGraphics(), chart, style);
      for (int i = 0; i < texts.size(); i++) {
        for (int j = 0; j < i; j++) {
          assertThat(texts.get(i).box().overlaps(texts.get(j).box()))
              .as(texts.get(i).text() + " on " + texts.get(j).text())
              .isFalse();
        }
      }
    }
  }
}
