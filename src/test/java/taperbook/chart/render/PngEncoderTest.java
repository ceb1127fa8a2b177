package taperbook.chart.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Decodes the output of {@link PngEncoder} with the PNG reader of the JDK. */
final class PngEncoderTest {
  @ParameterizedTest
  @ValueSource(ints = {BufferedImage.TYPE_INT_RGB, BufferedImage.TYPE_INT_ARGB})
  void every_pixel_round_trips(int kind) throws IOException {
    BufferedImage image = new BufferedImage(37, 23, kind);
    Random random = new Random(1);
    for (int y = 0; y < 23; y++) {
      // Every second row equals the previous one, which the encoder writes with another filter.
      for (int x = 0; x < 37; x++) {
        image.setRGB(x, y, y % 2 == 0 ? random.nextInt() : image.getRGB(x, y - 1));
      }
    }
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(PngEncoder.of(image)));
    assertThat(read.getColorModel().hasAlpha()).isEqualTo(image.getColorModel().hasAlpha());
    int[] pixels = image.getRGB(0, 0, 37, 23, null, 0, 37);
    assertThat(read.getRGB(0, 0, 37, 23, null, 0, 37)).isEqualTo(pixels);
    assertThat(Arrays.stream(pixels).distinct().count()).isGreaterThan(400);
  }
}
