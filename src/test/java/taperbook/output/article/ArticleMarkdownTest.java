package taperbook.output.article;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class ArticleMarkdownTest {
  private static final Set<String> CHARTS = Set.of("power-over-soc");

  @Test
  void setsHeadingsBelowThoseOfThePageWithoutAGap() {
    assertThat(html("## Deep first\n\n# High\n\n#### Jump\n"))
        .contains("<h3>Deep first</h3>", "<h3>High</h3>", "<h4>Jump</h4>");
  }

  @Test
  void headingsOfOneLevelStayOfOneLevel() {
    assertThat(html("## One\n\n## Two\n\n### Part\n\n## Three\n"))
        .contains("<h3>One</h3>", "<h3>Two</h3>", "<h4>Part</h4>", "<h3>Three</h3>");
  }

  @Test
  void splitsTheTextWhereAChartStands() {
    List<ArticlePart> parts =
        ArticleMarkdown.parts(
            "One.\n\n" + ArticleText.token("power-over-soc") + "\n\nTwo.\n", CHARTS);
    assertThat(parts)
        .containsExactly(
            new ArticlePart("<p>One.</p>", ""),
            new ArticlePart("", "power-over-soc"),
            new ArticlePart("<p>Two.</p>", ""));
  }

  @Test
  void namesAChartWhereItCannotStand() {
    assertThat(html("> Said " + ArticleText.token("power-over-soc") + " once.\n"))
        .contains("Said (see the chart power-over-soc) once.");
  }

  @Test
  void givesTablesScopesAndSides() {
    assertThat(html("| a | b |\n|---|--:|\n| 1 | 2 |\n"))
        .contains("<th scope=\"col\">a</th>")
        .contains("<th class=\"align-right\" scope=\"col\">b</th>")
        .contains("<td class=\"align-right\">2</td>");
  }

  @Test
  void keepsEmphasisListsAndCode() {
    assertThat(html("**strong** *soft* `code`\n\n- one\n- two\n"))
        .contains("<strong>strong</strong>", "<em>soft</em>", "<code>code</code>", "<li>one</li>");
  }

  @Test
  void keepsTypedAmountsAndTheirUnitsInOneLine() {
    assertThat(html("From 20 % to 80 % at 150 kW in 9 s, 3 minutes of `5 km`"))
        .contains("From 20&nbsp;% to 80&nbsp;% at 150&nbsp;kW in 9&nbsp;s, 3 minutes of")
        .contains("<code>5 km</code>");
  }

  @Test
  void hasNoPartsWithoutText() {
    assertThat(ArticleMarkdown.parts("\n\n", CHARTS)).isEmpty();
  }

  private static String html(String markdown) {
    return ArticleMarkdown.parts(markdown, CHARTS).get(0).html();
  }
}
