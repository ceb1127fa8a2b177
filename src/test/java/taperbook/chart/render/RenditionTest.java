package taperbook.chart.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.chart.model.Background;
import taperbook.chart.model.Box;
import taperbook.chart.model.Chart;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.TextRun;
import taperbook.chart.model.Thumbnail;
import taperbook.chart.plots.ChartPictures;
import taperbook.chart.plots.FigureSet;
import taperbook.chart.plots.InventedSession;

/** Renditions of figures for a film. */
@Tag("slow")
final class RenditionTest {
  private static final Figure FIGURE = FigureSet.draw(InventedSession.handRead().result()).get(0);

  static Stream<Map.Entry<String, List<Figure>>> drawn() {
    return ChartPictures.figures().entrySet().stream();
  }

  @ParameterizedTest
  @EnumSource(Rendition.class)
  void each_rendition_has_its_size_and_reproducible_bytes(Rendition rendition) throws IOException {
    byte[] png = FIGURE.png(rendition);
    BufferedImage image = image(png);
    int[] size =
        switch (rendition) {
          case FILM, DARK, CLEAR -> new int[] {1920, 1080};
          case PORTRAIT -> new int[] {1080, 1350};
          case SQUARE -> new int[] {1080, 1080};
          case SMALL -> new int[] {320, 180};
        };
    assertThat(image.getWidth()).isEqualTo(size[0]);
    assertThat(image.getHeight()).isEqualTo(size[1]);
    assertThat(FIGURE.png(rendition)).isEqualTo(png);
  }

  @Test
  void the_transparent_rendition_has_no_background_and_opaque_text() throws IOException {
    BufferedImage image = image(FIGURE.png(Rendition.CLEAR));
    assertThat(image.getColorModel().hasAlpha()).isTrue();
    for (int[] corner : new int[][] {{0, 0}, {1919, 0}, {0, 1079}, {1919, 1079}}) {
      assertThat(image.getRGB(corner[0], corner[1]) >>> 24).isZero();
    }
    long light =
        Stream.iterate(0, x -> x + 1)
            .limit(1920)
            .filter(x -> column(image, x).anyMatch(p -> p == 0xfff3f6f7))
            .count();
    assertThat(light).isPositive();
  }

  @Test
  void the_dark_rendition_is_dark_up_to_its_corners() throws IOException {
    BufferedImage image = image(FIGURE.png(Rendition.DARK));
    assertThat(image.getRGB(0, 0)).isEqualTo(Background.DARK.color().getRGB());
    assertThat(image.getRGB(1919, 1079)).isEqualTo(Background.DARK.color().getRGB());
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void texts_of_a_thumbnail_are_large_inside_and_do_not_overlap(
      Map.Entry<String, List<Figure>> drawn) {
    ChartStyle style = Rendition.SMALL.style();
    Box picture = new Box(0, 0, style.width(), style.height());
    BufferedImage image = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB);
    for (Figure figure : drawn.getValue()) {
      Chart chart = Thumbnail.of(figure.chart().orElseThrow(), style);
      List<TextRun> texts = ChartPainter.paint(image.createGraphics(), chart, style);
      for (int a = 0; a < texts.size(); a++) {
        Box box = texts.get(a).box();
        assertThat(texts.get(a).font().size()).isGreaterThanOrEqualTo(16);
        assertThat(box.isInside(picture)).as("%s in %s", texts.get(a), chart.id()).isTrue();
        for (TextRun other : texts.subList(a + 1, texts.size())) {
          assertThat(box.overlaps(other.box()))
              .as("%s %s: %s on %s", drawn.getKey(), chart.id(), texts.get(a).text(), other.text())
              .isFalse();
        }
      }
    }
  }

  /**
   * Source over in closed form: alpha = a + b (1 - a), colour = (a top + b (1 - a) bottom) / alpha;
   * within 1 of 255 for rounding.
   *
   * @see <a href="https://www.w3.org/TR/compositing-1/#porterduffcompositingoperators_srcover">W3C,
   *     Compositing and Blending Level 1</a>
   */
  @Test
  void the_outline_is_composited_by_source_over() {
    Color dark = new Color(Halo.over(0, 255), true);
    assertThat(dark.getAlpha()).isEqualTo(255);
    assertThat(Halo.over(0xff123456, 200)).isEqualTo(0xff123456);
    assertThat(Halo.over(0x00ffffff, 0)).isZero();
    for (int above = 0; above <= 255; above += 15) {
      for (int below = 0; below <= 255; below += 51) {
        double a = above / 255.0;
        double rest = below / 255.0 * (1 - a);
        Color mixed = new Color(Halo.over((above << 24) | 0x80ff20, below), true);
        assertThat(mixed.getAlpha() / 255.0).isBetween(a + rest - 0.004, a + rest + 0.004);
        if (mixed.getAlpha() > 100) {
          double red = (a * 0x80 + rest * dark.getRed()) / (a + rest);
          assertThat((double) mixed.getRed()).isBetween(red - 2, red + 2);
        }
      }
    }
  }

  private static java.util.stream.IntStream column(BufferedImage image, int x) {
    return java.util.stream.IntStream.range(0, image.getHeight()).map(y -> image.getRGB(x, y));
  }

  private static BufferedImage image(byte[] png) throws IOException {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
    if (image == null) {
      throw new IOException("not a picture");
    }
    return image;
  }
}
