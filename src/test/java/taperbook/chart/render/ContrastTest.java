package taperbook.chart.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.chart.model.Background;
import taperbook.chart.model.Contrast;
import taperbook.chart.model.Palette;

/**
 * Compares the palette with the contrast that WCAG 2.2 requires.
 *
 * @see <a href="https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio">contrast ratio</a>
 */
final class ContrastTest {
  @ParameterizedTest
  @CsvSource({
    "#000000, 21.000",
    "#767676, 4.542",
    "#0072B2, 5.185",
    "#D55E00, 3.867",
    "#009E73, 3.421",
    "#CC79A7, 3.061",
    "#E69F00, 2.252",
    "#56B4E9, 2.307"
  })
  void contrast_on_white_agrees_with_values_from_outside(String color, double expected) {
    assertThat(Contrast.between(Color.decode(color), Color.WHITE))
        .isCloseTo(expected, within(0.001));
  }

  @Test
  void text_has_at_least_4_5_to_1_on_paper() {
    for (Color text : List.of(Palette.INK, Palette.GREY, Palette.ACCENT)) {
      assertThat(Contrast.between(text, Palette.PAPER)).isGreaterThanOrEqualTo(4.5);
    }
  }

  @Test
  void lines_and_dots_have_at_least_3_to_1_on_paper_and_tints() {
    for (Color line : List.of(Palette.CURVE, Palette.GAP, Palette.ACCENT, Palette.GREY)) {
      assertThat(Contrast.between(line, Palette.PAPER)).isGreaterThanOrEqualTo(3);
    }
    assertThat(Contrast.between(Palette.CURVE, Palette.BAND)).isGreaterThanOrEqualTo(3);
  }

  @Test
  void lines_of_sessions_have_at_least_3_to_1_on_paper() {
    for (Color session : Palette.SESSIONS) {
      assertThat(Contrast.between(session, Palette.PAPER)).isGreaterThanOrEqualTo(3);
    }
  }

  @Test
  void on_a_dark_background_text_has_4_5_to_1_and_lines_and_sessions_have_3_to_1() {
    for (Color text : List.of(Palette.INK, Palette.GREY, Palette.ACCENT)) {
      assertThat(onDark(text, Palette.PAPER)).isGreaterThanOrEqualTo(4.5);
    }
    List<Color> lines = new ArrayList<>(Palette.SESSIONS);
    lines.addAll(List.of(Palette.CURVE, Palette.GAP, Palette.ACCENT));
    for (Color line : lines) {
      assertThat(onDark(line, Palette.PAPER)).isGreaterThanOrEqualTo(3);
    }
    assertThat(onDark(Palette.CURVE, Palette.BAND)).isGreaterThanOrEqualTo(3);
  }

  @Test
  void on_film_texts_and_lines_contrast_with_their_outline() {
    Color outline = new Color(Halo.over(0, 255));
    for (Color text : List.of(Palette.INK, Palette.GREY, Palette.ACCENT, Palette.CURVE)) {
      assertThat(Contrast.between(Background.CLEAR.of(text), outline)).isGreaterThanOrEqualTo(4.5);
    }
  }

  private static double onDark(Color mark, Color below) {
    return Contrast.between(Background.DARK.of(mark), Background.DARK.of(below));
  }
}
