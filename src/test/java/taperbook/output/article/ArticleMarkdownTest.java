package taperbook.output.article;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class ArticleMarkdownTest {
  private static final Set<String> CHARTS = Set.of("power-over-soc");

  @Test
  void nests_headings_below_those_of_the_page_without_a_gap() {
    assertThat(html("## Deep first\n\n# High\n\n#### Jump\n"))
        .contains("<h3>Deep first</h3>", "<h3>High</h3>", "<h4>Jump</h4>");
  }

  @Test
  void keeps_headings_of_one_level_on_one_level() {
    assertThat(html("## One\n\n## Two\n\n### Part\n\n## Three\n"))
        .contains("<h3>One</h3>", "<h3>Two</h3>", "<h4>Part</h4>", "<h3>Three</h3>");
  }

  @Test
  void splits_the_text_at_a_chart() {
    List<ArticlePart> parts =
        ArticleMarkdown.converted(
                "One.\n\n" + ArticleText.token("power-over-soc") + "\n\nTwo.\n", CHARTS)
            .parts();
    assertThat(parts)
        .containsExactly(
            new ArticlePart("<p>One.</p>", ""),
            new ArticlePart("", "power-over-soc"),
            new ArticlePart("<p>Two.</p>", ""));
  }

  @Test
  void reports_a_chart_in_an_invalid_position() {
    assertThat(html("> Said " + ArticleText.token("power-over-soc") + " once.\n"))
        .contains("Said (see the chart power-over-soc) once.");
  }

  @Test
  void adds_scopes_and_alignment_to_tables() {
    assertThat(html("| a | b |\n|---|--:|\n| 1 | 2 |\n"))
        .contains("<th scope=\"col\">a</th>")
        .contains("<th class=\"align-right\" scope=\"col\">b</th>")
        .contains("<td class=\"align-right\">2</td>");
  }

  @Test
  void keeps_emphasis_lists_and_code() {
    assertThat(html("**strong** *soft* `code`\n\n- one\n- two\n"))
        .contains("<strong>strong</strong>", "<em>soft</em>", "<code>code</code>", "<li>one</li>");
  }

  @Test
  void keeps_typed_amounts_and_their_units_on_one_line() {
    assertThat(html("From 20 % to 80 % at 150 kW in 9 s, 3 minutes of `5 km`"))
        .contains("From 20&nbsp;% to 80&nbsp;% at 150&nbsp;kW in 9&nbsp;s, 3 minutes of")
        .contains("<code>5 km</code>");
  }

  @Test
  void omits_empty_parts() {
    assertThat(ArticleMarkdown.converted("\n\n", CHARTS).parts()).isEmpty();
  }

  private static String html(String markdown) {
    return ArticleMarkdown.converted(markdown, CHARTS).parts().get(0).html();
  }
}
