package taperbook.output.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.chart.model.Contrast;

/**
 * Checks every pair of text and background in the style sheets for the contrast that WCAG 2.2
 * requires.
 *
 * @see <a href="https://www.w3.org/TR/WCAG22/#contrast-minimum">WCAG 2.2, 1.4.3: 4.5:1 for text</a>
 * @see <a href="https://www.w3.org/TR/WCAG22/#dfn-relative-luminance">relative luminance</a>
 */
final class PageContrastTest {
  private static final Pattern SETTING = Pattern.compile("--([a-z]+): (#[0-9a-f]{3,6})");
  private static final Pattern COLOR = Pattern.compile("[^-]color: (#[0-9a-f]{6})");
  private static final List<String> TEXTS = List.of("ink", "grey", "petrol", "orange");
  private static final List<String> GROUNDS = List.of("paper", "card", "wash");

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark", "print"})
  void every_text_of_the_page_has_4_5_to_1_on_every_background_of_its_scheme(String scheme)
      throws IOException {
    Map<String, Color> colors = scheme(scheme);
    for (String text : TEXTS) {
      for (String ground : GROUNDS) {
        assertThat(Contrast.between(color(colors, text), color(colors, ground)))
            .as("%s on %s, %s", text, ground, scheme)
            .isGreaterThanOrEqualTo(4.5);
      }
    }
    // The skip link is paper on petrol, and focus outlines are lines.
    assertThat(Contrast.between(color(colors, "orange"), color(colors, "paper"))).isGreaterThan(3);
  }

  @Test
  void every_text_of_the_pdf_has_4_5_to_1_on_white_and_on_the_tint_of_a_notice()
      throws IOException {
    String css = Files.readString(Path.of("templates/print.css"));
    Matcher found = COLOR.matcher(css);
    int count = 0;
    while (found.find()) {
      for (String ground : List.of("#ffffff", "#f1f5f5")) {
        assertThat(Contrast.between(Color.decode(found.group(1)), Color.decode(ground)))
            .as("%s on %s", found.group(1), ground)
            .isGreaterThanOrEqualTo(4.5);
      }
      count++;
    }
    assertThat(count).isGreaterThan(10);
  }

  @Test
  void colours_are_defined_in_the_settings_only() throws IOException {
    String css = Files.readString(Path.of("templates/screen.css"));
    String rules = css.replaceAll("(?s):root \\{.*?\\}", "");
    assertThat(rules).doesNotContainPattern("#[0-9a-fA-F]{3,8}\\b");
  }

  private static Map<String, Color> scheme(String scheme) throws IOException {
    String css = Files.readString(Path.of("templates/screen.css"));
    List<String> blocks =
        Pattern.compile("(?s):root \\{(.*?)\\}")
            .matcher(css)
            .results()
            .map(m -> m.group(1))
            .toList();
    assertThat(blocks).hasSize(3);
    Map<String, Color> colors = new TreeMap<>(settings(blocks.get(0)));
    if (!scheme.equals("light")) {
      colors.putAll(settings(blocks.get(scheme.equals("dark") ? 1 : 2)));
    }
    return colors;
  }

  private static Map<String, Color> settings(String block) {
    Map<String, Color> colors = new TreeMap<>();
    SETTING.matcher(block).results().forEach(m -> colors.put(m.group(1), decoded(m.group(2))));
    return colors;
  }

  private static Color decoded(String hex) {
    return Color.decode(hex.length() == 4 ? hex.replaceAll("([0-9a-f])", "$1$1") : hex);
  }

  private static Color color(Map<String, Color> colors, String name) {
    assertThat(colors).containsKey(name);
    return colors.getOrDefault(name, Color.GRAY);
  }
}
