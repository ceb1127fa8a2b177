package taperbook.output;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import taperbook.plan.ReportPlan;
import taperbook.result.ReportResult;

/**
 * The JSON-LD in the head of a page.
 *
 * @see <a
 *     href="https://www.w3.org/TR/json-ld11/#restrictions-for-contents-of-json-ld-script-elements">
 *     JSON-LD 1.1, 7.2</a>
 */
final class LinkedDataTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @Test
  void the_page_describes_itself_and_links_its_numbers() throws IOException {
    ReportFiles files = InventedReport.written();
    JsonNode article = data(page(files));

    assertThat(article.get("@context").textValue()).isEqualTo("https://schema.org");
    assertThat(article.get("@type").textValue()).isEqualTo("Article");
    assertThat(article.get("headline").textValue()).isEqualTo(InventedReport.TITLE);
    assertThat(article.get("datePublished").textValue()).isEqualTo("2026-05-10");
    assertThat(article.has("dateModified")).isFalse();
    assertThat(article.get("author").textValue()).isEqualTo("A. Tester");
    assertThat(article.get("description").textValue())
        .isEqualTo(page(files).select("meta[name=description]").attr("content"));
    assertThat(article.at("/about/name").textValue()).isEqualTo("Northmoor Finch");
    JsonNode dataset = article.get("mainEntity");
    assertThat(dataset.get("@type").textValue()).isEqualTo("Dataset");
    for (JsonNode download : dataset.get("distribution")) {
      assertThat(files.all()).containsKey(download.get("contentUrl").textValue());
    }
    assertThat(dataset.get("distribution")).hasSize(2);
  }

  @Test
  void its_variables_are_the_headline_numbers_as_the_data_file_has_them() throws IOException {
    ReportFiles files = InventedReport.written();
    JsonNode numbers = JSON.readTree(files.bytes("numbers.json")).get("numbers");
    JsonNode variables = data(page(files)).at("/mainEntity/variableMeasured");
    Set<String> ids = new TreeSet<>();
    for (JsonNode variable : variables) {
      ids.add(variable.get("propertyID").textValue());
      JsonNode number = number(numbers, variable.get("propertyID").textValue());
      assertThat(variable.get("@type").textValue()).isEqualTo("PropertyValue");
      assertThat(variable.get("name")).isEqualTo(number.get("label"));
      assertThat(variable.get("value")).isEqualTo(number.get("value"));
      assertThat(variable.get("minValue")).isEqualTo(number.get("low"));
      assertThat(variable.get("maxValue")).isEqualTo(number.get("high"));
      assertThat(variable.get("unitText")).isEqualTo(number.get("unit"));
      // UN/ECE Recommendation 20: second, kilowatt.
      String code = number.get("unit").textValue().equals("s") ? "SEC" : "KWT";
      assertThat(variable.get("unitCode").textValue()).isEqualTo(code);
    }
    assertThat(ids).contains("peak_power", "time_to_add_150_km", "time_soc_20_80");
  }

  @Test
  void no_text_ends_the_enclosing_element() throws IOException {
    String hostile = "</script><script>alert(1)</script><!--<script> & ]]> \u2028 \"x\" \\";
    ReportPlan plan = InventedReport.result(InventedReport.job()).plan();
    ReportPlan.Heading heading =
        new ReportPlan.Heading(
            hostile + "title",
            hostile + "author",
            plan.heading().published(),
            plan.heading().history(),
            Optional.of(new ReportPlan.Article("Word.", "reports/x.md", 3)));
    Document page = page(written(heading));

    assertThat(page.select("script[type=application/ld+json]")).hasSize(1);
    assertThat(page.select("script:not([type])")).as("the script of the page").hasSize(1);
    String raw = page.select("script[type=application/ld+json]").get(0).data();
    assertThat(raw).doesNotContain("<").doesNotContain(">").doesNotContain("&");
    JsonNode article = data(page);
    assertThat(article.get("headline").textValue()).isEqualTo(hostile + "title");
    assertThat(article.get("author").textValue()).isEqualTo(hostile + "author");
    assertThat(article.at("/mainEntity/creator").textValue()).isEqualTo(hostile + "author");
  }

  @Test
  void a_correction_is_the_day_of_the_last_change() throws IOException {
    ReportPlan plan = InventedReport.result(InventedReport.job()).plan();
    ReportPlan.History corrected =
        new ReportPlan.History(
            true,
            List.of(
                new ReportPlan.Reason(LocalDate.of(2026, 6, 1), "one"),
                new ReportPlan.Reason(LocalDate.of(2026, 7, 2), "another")));
    ReportPlan.Heading heading =
        new ReportPlan.Heading("T", "", plan.heading().published(), corrected);
    JsonNode article = data(page(written(heading)));

    assertThat(article.get("datePublished").textValue()).isEqualTo("2026-05-10");
    assertThat(article.get("dateModified").textValue()).isEqualTo("2026-07-02");
    assertThat(article.at("/mainEntity/dateModified").textValue()).isEqualTo("2026-07-02");
    assertThat(article.has("author")).isFalse();
  }

  private static ReportFiles written(ReportPlan.Heading heading) {
    ReportJob job = InventedReport.job("Text.", "T");
    ReportPlan plan = InventedReport.result(job).plan();
    ReportPlan other =
        new ReportPlan(
            plan.name(), heading, plan.subject(), plan.wishes(), plan.style(), plan.article());
    ReportResult result =
        new ReportResult(
            other, InventedReport.result(job).main(), InventedReport.result(job).compared());
    ReportJob changed = InventedReport.with(job, result);
    return ReportWriter.write(changed).value().orElseThrow();
  }

  private static Document page(ReportFiles files) {
    return Jsoup.parse(new String(files.bytes("report.html"), UTF_8));
  }

  private static JsonNode data(Document page) throws IOException {
    Element script = page.select("head > script").get(0);
    assertThat(script.attr("type")).isEqualTo("application/ld+json");
    return JSON.readTree(script.data());
  }

  private static JsonNode number(JsonNode numbers, String id) {
    for (JsonNode number : numbers) {
      if (number.get("id").textValue().equals(id)) {
        return number;
      }
    }
    throw new AssertionError("no number " + id);
  }
}
