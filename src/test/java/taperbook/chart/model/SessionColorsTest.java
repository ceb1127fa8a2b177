package taperbook.chart.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Distances between session colours for each kind of dichromacy and in grey.
 *
 * @see <a href="https://doi.org/10.1109/TVCG.2009.113">Machado, Oliveira and Fernandes 2009: the
 *     matrices for severity 1, on linear sRGB</a>
 * @see <a href="https://www.iso.org/standard/74166.html">ISO/CIE 11664-4:2019: L*, a*, b* and the
 *     distance between colours</a>
 */
final class SessionColorsTest {
  /** Linear sRGB to X, Y, Z under D65: IEC 61966-2-1:1999. */
  private static final double[][] TO_XYZ = {
    {0.4124, 0.3576, 0.1805}, {0.2126, 0.7152, 0.0722}, {0.0193, 0.1192, 0.9505}
  };

  enum Eyes {
    ALL_CONES(new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}),
    PROTANOPIA(
        new double[][] {
          {0.152286, 1.052583, -0.204868},
          {0.114503, 0.786281, 0.099216},
          {-0.003882, -0.048116, 1.051998}
        }),
    DEUTERANOPIA(
        new double[][] {
          {0.367322, 0.860646, -0.227968},
          {0.280085, 0.672501, 0.047413},
          {-0.011820, 0.042940, 0.968881}
        }),
    TRITANOPIA(
        new double[][] {
          {1.255528, -0.076749, -0.178779},
          {-0.078411, 0.930809, 0.147602},
          {0.004733, 0.691367, 0.303900}
        });

    private final double[][] matrix;

    Eyes(double[][] matrix) {
      this.matrix = matrix;
    }
  }

  @ParameterizedTest
  @EnumSource(Eyes.class)
  void white_stays_white_in_every_simulation(Eyes eyes) {
    double[] white = lab(Color.WHITE, eyes);
    assertThat(white[0]).isCloseTo(100, within(0.01));
    assertThat(Math.hypot(white[1], white[2])).isLessThan(0.05);
  }

  /** L*, a*, b* of the sRGB primaries as tabulated in many places; from memory. */
  @ParameterizedTest
  @CsvSource({
    "#ff0000, 53.24, 80.09, 67.20",
    "#00ff00, 87.73, -86.18, 83.18",
    "#0000ff, 32.30, 79.19, -107.86"
  })
  void primaries_have_the_published_lab_values(String color, double lightness, double a, double b) {
    double[] lab = lab(Color.decode(color), Eyes.ALL_CONES);
    assertThat(lab[0]).isCloseTo(lightness, within(0.02));
    assertThat(lab[1]).isCloseTo(a, within(0.05));
    assertThat(lab[2]).isCloseTo(b, within(0.05));
  }

  /** A pair whose distance must shrink; otherwise the matrices would prove nothing. */
  @Test
  void a_red_and_a_green_are_close_without_their_cones() {
    Color red = Color.decode("#b04a2a");
    Color green = Color.decode("#6f6a1e");
    double all = distance(red, green, Eyes.ALL_CONES);
    assertThat(distance(red, green, Eyes.DEUTERANOPIA)).isLessThan(all / 2);
  }

  @ParameterizedTest
  @EnumSource(Eyes.class)
  void any_two_session_colours_differ_in_every_simulation(Eyes eyes) {
    // The just noticeable difference is 2.3 (Mahy, Van Eycken and Oosterlinck 1994).
    pairs().forEach(p -> assertThat(distance(p[0], p[1], eyes)).isGreaterThan(20));
  }

  @Test
  void any_two_session_colours_differ_in_grey() {
    pairs()
        .forEach(
            p -> {
              double lightness = lab(p[0], Eyes.ALL_CONES)[0] - lab(p[1], Eyes.ALL_CONES)[0];
              assertThat(Math.abs(lightness)).isGreaterThan(8);
            });
  }

  private static Stream<Color[]> pairs() {
    return Palette.SESSIONS.stream()
        .flatMap(
            a ->
                Palette.SESSIONS.stream()
                    .filter(b -> Palette.SESSIONS.indexOf(b) > Palette.SESSIONS.indexOf(a))
                    .map(b -> new Color[] {a, b}));
  }

  private static double distance(Color one, Color other, Eyes eyes) {
    double[] a = lab(one, eyes);
    double[] b = lab(other, eyes);
    return Math.sqrt(
        Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
  }

  private static double[] lab(Color color, Eyes eyes) {
    double[] linear = {linear(color.getRed()), linear(color.getGreen()), linear(color.getBlue())};
    double[] seen = times(eyes.matrix, linear);
    for (int i = 0; i < 3; i++) {
      seen[i] = Math.max(0, Math.min(1, seen[i]));
    }
    double[] xyz = times(TO_XYZ, seen);
    double x = root(xyz[0] / 0.9505);
    double y = root(xyz[1]);
    double z = root(xyz[2] / 1.0890);
    return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
  }

  private static double root(double share) {
    return share > 216.0 / 24389 ? Math.cbrt(share) : (24389.0 / 27 * share + 16) / 116;
  }

  private static double[] times(double[][] matrix, double[] vector) {
    double[] product = new double[3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        product[i] += matrix[i][j] * vector[j];
      }
    }
    return product;
  }

  private static double linear(int eightBit) {
    double share = eightBit / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
