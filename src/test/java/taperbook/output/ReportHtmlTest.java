package taperbook.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.result.ReportNumber;

final class ReportHtmlTest {
  /** Scripts that would run; data blocks do not. */
  private static final ReportJob JOB = InventedReport.job();

  private static final String HTML =
      new String(InventedReport.written().bytes("report.html"), StandardCharsets.UTF_8);
  private static final Document PAGE = Jsoup.parse(HTML);

  @Test
  void parses_without_errors() {
    Parser parser = Parser.htmlParser().setTrackErrors(20);
    Jsoup.parse(HTML, "", parser);
    assertThat(parser.getErrors()).isEmpty();
  }

  @Test
  void references_no_other_file() {
    assertThat(PAGE.select("iframe, object, embed, base, img, [action], [formaction]")).isEmpty();
    assertThat(PAGE.select("link").eachAttr("href")).allMatch(href -> href.startsWith("data:"));
    assertThat(PAGE.select("[src], [srcset], [onclick], [onload]")).isEmpty();
    assertThat(PAGE.select("[href]:not(a, link)")).isEmpty();
    assertThat(PAGE.select("meta[http-equiv=Content-Security-Policy]").attr("content"))
        .startsWith("default-src 'none'; base-uri 'none'; form-action 'none'; style-src ")
        .contains("script-src 'sha256-")
        .doesNotContain("connect-src");
    String style = PAGE.select("style").html();
    assertThat(style.replaceAll("url\\(data:font/ttf;base64,[A-Za-z0-9+/=]+\\)", ""))
        .doesNotContain("url(")
        .doesNotContain("@import")
        .doesNotContain("http");
  }

  @Test
  void its_policy_allows_only_its_script_by_hash() throws NoSuchAlgorithmException {
    // The page as written: a browser hashes the bytes between the tags.
    Matcher script = Pattern.compile("<script>(.*?)</script>", Pattern.DOTALL).matcher(HTML);
    assertThat(script.find()).isTrue();
    byte[] hash =
        MessageDigest.getInstance("SHA-256")
            .digest(script.group(1).getBytes(StandardCharsets.UTF_8));
    String policy = PAGE.select("meta[http-equiv=Content-Security-Policy]").attr("content");
    assertThat(policy).contains("'sha256-" + Base64.getEncoder().encodeToString(hash) + "'");
    assertThat(script.find()).as("a second script").isFalse();
    assertThat(PAGE.select("script[type]").eachAttr("type"))
        .allMatch(List.of("application/json", "application/ld+json")::contains);
    assertThat(script.reset().find()).isTrue();
    assertThat(script.group(1).length()).isLessThan(30_000);
  }

  @Test
  void has_its_language_and_landmarks() {
    assertThat(PAGE.select("html").attr("lang")).isEqualTo("en");
    assertThat(PAGE.select("main")).hasSize(1);
    assertThat(PAGE.select("h1")).hasSize(1);
    assertThat(PAGE.select("nav[aria-label]")).hasSize(1);
    assertThat(PAGE.select("a.skip").attr("href")).isEqualTo("#content");
    assertThat(PAGE.title()).isEqualTo(InventedReport.TITLE);
  }

  @Test
  void every_table_has_a_caption_and_every_head_a_scope() {
    Element article = PAGE.select("section.article").first();
    for (Element table : PAGE.select("table")) {
      if (article == null || !table.parents().contains(article)) {
        assertThat(table.select("caption").text()).isNotBlank();
      }
      assertThat(table.select("th:not([scope])")).isEmpty();
    }
  }

  @Test
  void heading_levels_increase_by_at_most_one() {
    int above = 0;
    for (Element heading : PAGE.select("h1, h2, h3, h4, h5, h6")) {
      int level = heading.normalName().charAt(1) - '0';
      assertThat(level).as(heading.text()).isLessThanOrEqualTo(above + 1);
      above = level;
    }
  }

  @Test
  void every_internal_link_has_a_target() {
    for (Element link : PAGE.select("a[href^=#]")) {
      assertThat(PAGE.getElementById(link.attr("href").substring(1)))
          .as(link.attr("href"))
          .isNotNull();
    }
  }

  @Test
  void every_id_is_unique() {
    List<String> ids = PAGE.select("[id]").stream().map(Element::id).toList();
    assertThat(ids).doesNotHaveDuplicates();
  }

  @Test
  void every_number_states_its_origin() {
    for (var session : InventedReport.result(JOB).sessions()) {
      boolean main = session.equals(InventedReport.result(JOB).main());
      for (ReportNumber number : session.numbers().all()) {
        String before = main ? "number-" : "number-" + session.session().name() + "-";
        Element row = PAGE.getElementById(before + number.id());
        assertThat(row).as(number.id()).isNotNull();
        if (row != null) {
          assertThat(row.text()).contains(number.label(), number.id(), number.method().title());
          number.withheld().ifPresent(reason -> assertThat(row.text()).contains(reason));
        }
      }
    }
  }

  @Test
  void article_and_numbers_are_in_order() {
    String text = PAGE.body().wholeText();
    assertThat(text)
        .containsSubsequence(
            InventedReport.TITLE,
            "10 May 2026",
            "Quarry Lane station",
            "What matters on the road",
            "5\u00a0min\u00a030\u00a0s to 8\u00a0min\u00a040\u00a0s",
            "Charging time for a distance",
            "From the first row to each state of charge",
            "Differ by 6.4\u00a0Wh/km (4.1 to 8.7\u00a0Wh/km), more than rounding allows.",
            "Cautions",
            "Taperbook 0.1.0",
            "How to read the intervals",
            "What the numbers take for granted",
            "The sessions began at different states of charge",
            "Record of the range test",
            "Agree.",
            "Cannot be checked: the odometer was not read at the end.",
            "Numbers withheld, and why",
            JOB.inputs().get(0).sha256(),
            "Where each number comes from");
  }

  @Test
  void its_head_describes_it_and_links_to_its_other_files() {
    String answer = PAGE.select(".answer").text();
    assertThat(answer).isNotEmpty();
    assertThat(PAGE.select("meta[name=description]").attr("content")).isEqualTo(answer);
    assertThat(PAGE.select("meta[property=og:description]").attr("content")).isEqualTo(answer);
    assertThat(PAGE.select(".ways a").eachAttr("href"))
        .containsExactly(
            "report.pdf", "methods.pdf", "numbers.json", "numbers.csv", "datapackage.json");
  }

  @Test
  void times_for_distances_come_first() {
    assertThat(PAGE.select(".strip.lead .item .label").eachText())
        .startsWith("Time to add 150 km", "Time to add 300 km")
        .hasSize(3);
    assertThat(PAGE.select(".strip.rest .item")).hasSize(3);
  }

  @Tag("slow")
  @Test
  void compares_the_common_window_in_addition_to_the_headline_window() {
    Document page = Jsoup.parse(html(InventedReport.jobWhoseFirstWindowIsWithheld()));
    assertThat(page.select("table.compared-numbers tbody th").eachText())
        .contains("Time from 10 to 80 % (min:s)")
        .containsSubsequence("Time from 20 to 80 % (min:s)", "Average power from 20 to 80 % (kW)");
    Element row = page.select("table.compared-numbers tr:contains(Time from 20 to 80)").first();
    assertThat(row).isNotNull();
    if (row != null) {
      assertThat(row.select(".value")).hasSize(2);
    }
    assertThat(page.select(".strip .item:contains(Time from 10 to 80)").text())
        .contains("withheld", "The session began at 12 %, above 10 %.");
  }

  @Test
  void states_the_method_and_the_budget_of_intervals() {
    assertThat(PAGE.select("#budgets, table.budgets")).isEmpty();
    assertThat(PAGE.text()).doesNotContain("Monte Carlo").contains("An interval called bounds");
    Document page = Jsoup.parse(html(InventedReport.jobWithBudget()));
    assertThat(page.text())
        .contains("An interval called bounds")
        .contains("A 95 % coverage interval")
        .contains("Monte Carlo")
        .contains("JCGM 101:2008");
    assertThat(page.select("table.budgets tbody tr")).hasSize(1);
    assertThat(page.select("table.budgets tbody td").eachText())
        .containsExactly(
            "what happened between two readings 81 %; rounding of the power 17 %;"
                + " whether the display had just changed when it was read 2 %",
            "Read more often, above all where the power changes fast and near the wanted marks.");
  }

  @Test
  void keeps_a_unit_with_a_slash_on_one_line() {
    assertThat(PAGE.select("span.unit").eachText()).contains("152.6 Wh/km");
    assertThat(PAGE.select("svg span, title span")).isEmpty();
  }

  @Test
  void omits_charts_that_the_article_includes() {
    assertThat(PAGE.select("#figure-power-over-soc")).hasSize(1);
    assertThat(PAGE.select("section.article #figure-power-over-soc")).hasSize(1);
    // One wide and one for narrow screens.
    assertThat(PAGE.select("details:has(#charts) #figure-soc-over-time svg")).hasSize(2);
    assertThat(PAGE.select("#figure-power-over-soc [role=img]").attr("aria-label"))
        .contains("128 kW at 24 %");
  }

  @Test
  void lists_every_withheld_number_with_its_reason() {
    String list = PAGE.select("table.withheld").text();
    assertThat(list).contains("The readings end at 90 %.", "Time from plugging in to 100 %");
    assertThat(list).contains("The session began at 34 %, above 10 %.", "(finch-spring)");
  }

  @Tag("slow")
  @Test
  void escapes_markup_in_a_title() {
    String title = "Finch <b>&\"'</b> <script>alert(1)</script>";
    Document page = Jsoup.parse(html(InventedReport.job("Text.", title)));
    assertThat(page.title()).isEqualTo(title);
    assertThat(page.select("h1").text()).isEqualTo(title);
    assertThat(page.select("script:not([type])")).hasSize(1);
  }

  @Test
  void uses_a_custom_template_instead_of_the_built_in_one() {
    ReportJob job = InventedReport.job();
    ReportJob own =
        InventedReport.with(
            job, job.templates().with(Map.of("report.ftlh", "<p>only ${report.title}</p>")));
    assertThat(html(own))
        .isEqualTo("<p>only Northmoor Finch: a first look at charging &amp; range</p>");
  }

  private static String html(ReportJob job) {
    ReportFiles files = ReportWriter.write(job).value().orElseThrow();
    return new String(files.bytes("report.html"), StandardCharsets.UTF_8);
  }
}
