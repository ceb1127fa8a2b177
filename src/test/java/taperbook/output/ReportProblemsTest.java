package taperbook.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.plan.ReportPlan;
import taperbook.result.ReportResult;

@Tag("slow")
final class ReportProblemsTest {
  @Test
  void suggests_the_nearest_id_of_a_number() {
    List<Problem> problems =
        problems("First line.\n\nThen ${number(\"time_to_ad_150_km\")} and more.\n");
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).code()).isEqualTo(ProblemCode.NUMBER_UNKNOWN);
    // The article starts on line 12 of its file; its third line is line 14.
    assertThat(problems.get(0).place()).hasToString("reports/finch-first-look.md:14:6");
    assertThat(problems.get(0).found()).isEqualTo("\"time_to_ad_150_km\"");
    assertThat(problems.get(0).remedy()).startsWith("write time_to_add_150_km");
  }

  @Test
  void reports_all_unknown_names_together() {
    List<Problem> problems =
        problems(
            """
            ${number("peak_powr")} ${both("peak_power", "finch-sprig")}
            ${figure("power-over-sock")}
            ${nothing}
            """);
    assertThat(problems)
        .extracting(p -> p.code() + " " + p.place().line() + ":" + p.place().column())
        .containsExactly(
            "NUMBER_UNKNOWN 12:1",
            "NAME_UNKNOWN 12:24",
            "NAME_UNKNOWN 13:1",
            "TEMPLATE_BROKEN 14:3");
    assertThat(problems).extracting(Problem::remedy).contains("write finch-spring");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
        "<#assign x ="
            + " \"freemarker.template.utility.ObjectConstructor\"?new()>${x(\"java.io.File\")}",
        "${\"freemarker.template.utility.JythonRuntime\"?new()}",
        "${number.class.protectionDomain}",
        "${number?api.class}",
        "<#include \"/etc/passwd\">",
        "<#import \"report.ftlh\" as r>",
        "<#list 1..2000000000 as i>xxxxxxxxxxxxxxxxxxxx</#list>"
      })
  void refuses_an_article_that_accesses_other_objects(String article) {
    List<Problem> problems = problems(article);
    assertThat(problems).isNotEmpty();
    assertThat(problems).extracting(Problem::code).containsOnly(ProblemCode.TEMPLATE_BROKEN);
  }

  @Test
  void a_number_of_a_pair_is_quoted_by_session_or_by_id_only() {
    String article =
        "A ${number(\"mean_lead_shared\", \"finch-spring\")}, B ${number(\"mean_lead_shared\")}.\n";
    byte[] page =
        ReportWriter.write(InventedReport.jobWithPair(article))
            .value()
            .orElseThrow()
            .bytes("report.html");
    String text = Jsoup.parse(new String(page, StandardCharsets.UTF_8)).select("main p").text();
    assertThat(text.replace('\u00a0', ' ')).contains("A 12.5 kW, B 12.5 kW.");
  }

  @Test
  void a_mistyped_number_of_a_pair_has_its_nearest_name() {
    Checked<ReportFiles> written =
        ReportWriter.write(InventedReport.jobWithPair("${number(\"mean_leed_shared\")}"));
    assertThat(written.problems())
        .extracting(Problem::remedy)
        .containsExactly("write mean_lead_shared");
  }

  @Test
  void prints_a_table_with_its_numbers_and_their_intervals() {
    String html = html("Before.\n\n${table(\"milestones\")}\n\n${table(\"legs\", \"value\")}\n");
    Document page = Jsoup.parse(html);
    assertThat(page.select(".prose table thead th").eachText())
        .startsWith(
            "State of charge",
            "Time (min:s)",
            "Power there (kW)",
            "Energy added (kWh)",
            "Distance added (km)");
    assertThat(page.select(".prose table").select("tbody tr")).hasSizeGreaterThan(2);
    assertThat(page.select(".prose table").select("tbody td").text()).contains("\u2013");
  }

  @Test
  void a_table_shows_only_values_or_only_intervals_if_requested() {
    String value = html("${table(\"milestones\", \"value\")}\n");
    assertThat(Jsoup.parse(value).select(".prose table").text()).doesNotContain("\u2013");
    String range = html("${table(\"milestones\", \"range\")}\n");
    assertThat(Jsoup.parse(range).select(".prose table").text()).contains("\u2013");
  }

  @Test
  void prints_dates_and_stated_facts() {
    String html =
        html(
            "On ${date(\"session\")}, told on ${date(\"published\")}, with"
                + " ${fact(\"vehicle\")}; it moved ${spread(\"peak_power\")}.\n");
    assertThat(Jsoup.parse(html).select(".prose").text().replace('\u00a0', ' '))
        .contains("On 3 May 2026, told on 10 May 2026, with Northmoor Finch")
        .containsPattern("it moved (give or take|between) ");
  }

  @Test
  void suggests_the_nearest_table_fact_or_date() {
    List<Problem> problems =
        problems(
            "${table(\"milestnes\")} ${fact(\"vehicel\")} ${date(\"sesion\")}"
                + " ${table(\"legs\", \"rang\")} ${date(\"session\", \"finch-sprig\")}\n");
    assertThat(problems).extracting(Problem::code).containsOnly(ProblemCode.NAME_UNKNOWN);
    assertThat(problems)
        .extracting(Problem::remedy)
        .containsExactly(
            "write milestones",
            "write vehicle",
            "write session",
            "write range",
            "write finch-spring");
    assertThat(problems.get(1).place()).hasToString("reports/finch-first-look.md:12:23");
  }

  @Test
  void a_table_without_rows_states_it() {
    assertThat(html("${table(\"segments\")}\n")).contains("(No table: the report has no rows");
  }

  @Test
  void refuses_an_article_that_cannot_be_parsed() {
    List<Problem> problems = problems("One.\n\nTwo ${number(\"peak_power\"} three.\n");
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).code()).isEqualTo(ProblemCode.TEMPLATE_BROKEN);
    assertThat(problems.get(0).place().line()).isEqualTo(14);
  }

  @Test
  void reports_the_line_of_a_failing_template() {
    List<Problem> problems =
        write("Text.", "<html>\n<p>${report.title}</p>\n<p>${report.titel}</p>\n</html>");
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).code()).isEqualTo(ProblemCode.TEMPLATE_BROKEN);
    assertThat(problems.get(0).place()).hasToString("templates/report.ftlh:3:6");
    assertThat(problems.get(0).found()).contains("report.titel").hasSizeLessThan(260);
  }

  @Test
  void reports_the_line_of_a_template_that_does_not_parse() {
    List<Problem> problems = write("Text.", "<html>\n<#if report.title>\n</html>");
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).place().file()).isEqualTo("templates/report.ftlh");
    assertThat(problems.get(0).place().line()).isBetween(2, 3);
  }

  @Test
  void refuses_a_template_that_does_not_exist() {
    ReportJob job = InventedReport.job();
    ReportPlan plan = InventedReport.result(job).plan();
    ReportPlan other =
        new ReportPlan(
            plan.name(),
            plan.heading(),
            plan.subject(),
            plan.wishes(),
            new ReportPlan.Style(plan.style().units(), plan.style().basis(), "shorter"),
            plan.article());
    ReportJob wrong =
        InventedReport.with(
            job,
            new ReportResult(
                other, InventedReport.result(job).main(), InventedReport.result(job).compared()));
    List<Problem> problems = ReportWriter.write(wrong).problems();
    assertThat(problems).extracting(Problem::code).startsWith(ProblemCode.NAME_UNKNOWN);
    assertThat(problems.get(0).remedy()).contains("full, library, report, or write");
  }

  @Test
  void a_withheld_number_in_a_sentence_is_named_with_its_place_and_reason() {
    List<Problem> problems = problems("It took\n${number(\"time_to_soc_100\")} in all.\n");
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).place()).hasToString("reports/finch-first-look.md:13:1");
    assertThat(problems.get(0).found()).isEqualTo("\"time_to_soc_100\"");
    assertThat(problems.get(0).expected())
        .isEqualTo("a number that the readings support; of this one, the readings end at 90 %");
    assertThat(problems.get(0).remedy()).isEqualTo("write the sentence without it");
    assertThat(problems.get(0).code()).isEqualTo(ProblemCode.NUMBER_WITHHELD);
  }

  @Test
  void prints_raw_html_of_an_article_as_text() {
    String html = html("Before <script>alert(1)</script> <img src=x onerror=alert(2)> after.\n");
    assertThat(html).doesNotContain("<script>alert").doesNotContain("<img");
    assertThat(html).contains("&lt;script&gt;alert(1)&lt;/script&gt;");
  }

  @Test
  void refuses_links_that_run_a_script() {
    String html = html("[here](javascript:alert(1)) and [there](https://example.org/a)\n");
    assertThat(html).doesNotContain("javascript:").contains("href=\"https://example.org/a\"");
  }

  @Test
  void prints_an_image_as_its_alternative_text() {
    assertThat(html("See ![the plug](plug.png) here.\n")).contains("See the plug here.");
  }

  @Test
  void prints_the_reason_in_place_of_a_withheld_number() {
    assertThat(html("It took ${number(\"time_to_soc_100\")}.\n"))
        .contains("It took withheld (the readings end at 90&nbsp;%).");
  }

  private static List<Problem> problems(String article) {
    return ReportWriter.write(InventedReport.job(article, InventedReport.TITLE)).problems();
  }

  private static List<Problem> write(String article, String template) {
    ReportJob job = InventedReport.job(article, InventedReport.TITLE);
    return ReportWriter.write(
            InventedReport.with(job, job.templates().with(Map.of("report.ftlh", template))))
        .problems();
  }

  private static String html(String article) {
    ReportJob job = InventedReport.job(article, InventedReport.TITLE);
    ReportFiles files = ReportWriter.write(job).value().orElseThrow();
    return new String(files.bytes("report.html"), StandardCharsets.UTF_8);
  }
}
