package taperbook.output;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.plan.ReportPlan;
import taperbook.result.ReportResult;

/** Compares the files for sharing with the page that they are derived from. */
final class ShareFilesTest {
  private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0]+");
  private static final ReportFiles FILES = InventedReport.written();

  @Test
  void the_summary_has_the_answer_numbers_caveat_and_link_of_the_page() {
    String summary = text(FILES, "share/summary.md");
    Document page = Jsoup.parse(text(FILES, "report.html"));
    String read = plain(page.text());

    assertThat(summary)
        .startsWith(plain(page.select(".answer").text()) + "\n\n- ")
        .endsWith(
            "\n\nFull report: Northmoor Finch: a first look at charging & range, by A. Tester,"
                + " 10 May 2026.\n");
    List<String> numbers = summary.lines().filter(line -> line.startsWith("- ")).toList();
    assertThat(numbers).isNotEmpty();
    for (String number : numbers) {
      String value = number.substring(number.lastIndexOf(": ") + 2, number.lastIndexOf(" ("));
      String spread = number.substring(number.lastIndexOf(" (") + 2, number.length() - 1);
      assertThat(read).contains(value);
      String ends = plain(page.select(".item summary:contains(" + value + ") .between").text());
      assertThat(spread).isIn(giveOrTake(value, ends), "between " + ends.replace(" to ", " and "));
    }
    String caveat = summary.lines().filter(l -> l.startsWith("Note: ")).findFirst().orElseThrow();
    for (String sentence : caveat.substring("Note: ".length()).split("(?<=\\.) ", -1)) {
      assertThat(read).contains(sentence.replace("\\", ""));
    }
    assertThat(words(summary)).isLessThanOrEqualTo(120);
  }

  /** Distance of a time from the farther end of its interval, in text. */
  private static String giveOrTake(String value, String ends) {
    String[] both = ends.split(" to ", 2);
    int most =
        Math.max(
            seconds(value) - seconds(both[0]), seconds(both[both.length - 1]) - seconds(value));
    return "give or take " + (most < 60 ? "" : most / 60 + " min ") + most % 60 + " s";
  }

  /** A time such as {@code 13 min 50 s} or {@code 13 min}. */
  private static int seconds(String time) {
    int all = 0;
    String[] words = time.split(" ", -1);
    for (int i = 0; i + 1 < words.length; i += 2) {
      all += Integer.parseInt(words[i]) * (words[i + 1].equals("min") ? 60 : 1);
    }
    return all;
  }

  @Tag("slow")
  @Test
  void a_summary_is_short_and_escaped_for_any_article() {
    ReportJob job = InventedReport.job("Text.", "*A* <b>title</b> " + "again and ".repeat(80));
    ReportPlan plan = InventedReport.result(job).plan();
    ReportPlan.Heading heading =
        new ReportPlan.Heading(
            plan.heading().title(),
            "Many " + "names ".repeat(50),
            plan.heading().published(),
            plan.heading().history(),
            Optional.of(new ReportPlan.Article("word ".repeat(200) + "end.", "reports/x.md", 3)));
    ReportPlan longer =
        new ReportPlan(
            plan.name(), heading, plan.subject(), plan.wishes(), plan.style(), plan.article());
    ReportFiles files =
        written(
            job,
            new ReportResult(
                longer, InventedReport.result(job).main(), InventedReport.result(job).compared()));
    String summary = text(files, "share/summary.md");

    assertThat(words(summary)).isLessThanOrEqualTo(120);
    assertThat(summary)
        .startsWith("word word ")
        .contains("word\u2026\n\n", "Note: ")
        .contains("Full report: \\*A\\* \\<b\\>title\\</b\\> again and ", "\u2026, by Many names ");
  }

  @Test
  void the_table_is_that_of_the_page_and_requires_no_style_sheet() {
    Element table = Jsoup.parseBodyFragment(text(FILES, "share/table.html")).body().child(0);

    assertThat(table.tagName()).isEqualTo("table");
    assertThat(table.select("> caption")).hasSize(1);
    assertThat(table.select("> caption").text()).startsWith(InventedReport.TITLE + ". From ");
    assertThat(table.select("> thead > tr > th").eachAttr("scope")).hasSize(5).containsOnly("col");
    assertThat(table.select("> tbody > tr > th").eachAttr("scope"))
        .isNotEmpty()
        .containsOnly("row");
    assertThat(table.getAllElements())
        .allSatisfy(
            e ->
                assertThat(List.of("", "scope=\"col\"", "scope=\"row\""))
                    .contains(e.attributes().html().strip()));
    List<List<String>> shared = new ArrayList<>();
    table.select("> tbody > tr").forEach(row -> shared.add(row.select("td").eachText()));
    Element onPage =
        Jsoup.parse(text(FILES, "report.html"))
            .select("table:has(caption:contains(to each state of charge))")
            .get(0);
    List<List<String>> printed = new ArrayList<>();
    for (Element row : onPage.select("tbody > tr")) {
      List<Element> cells = row.select("td");
      List<String> line = new ArrayList<>();
      for (int i = 0; i + 1 < cells.size(); i += 2) {
        String ends = cells.get(i + 1).text();
        line.add(cells.get(i).text() + (ends.isEmpty() ? "" : " (" + ends + ")"));
      }
      printed.add(line);
    }
    assertThat(shared).isNotEmpty().isEqualTo(printed);
  }

  @Test
  void the_csv_file_has_the_same_cells_with_each_end_in_a_column() throws IOException {
    Element html = Jsoup.parseBodyFragment(text(FILES, "share/table.html")).body().child(0);
    String csv = text(FILES, "share/table.csv");
    assertThat(csv).endsWith("\r\n").doesNotContain("\u00a0");
    try (CSVParser parsed = CSVParser.parse(new StringReader(csv), CSVFormat.RFC4180)) {
      List<CSVRecord> rows = parsed.getRecords();
      assertThat(rows).hasSize(1 + html.select("tbody > tr").size());
      assertThat(rows.get(0).toList())
          .hasSize(13)
          .startsWith(
              "State of charge (%)", "Time (min:s)", "Time: low (min:s)", "Time: high (min:s)");
      for (int i = 1; i < rows.size(); i++) {
        Element row = html.select("tbody > tr").get(i - 1);
        assertThat(rows.get(i).get(0) + " %").isEqualTo(plain(row.select("th").text()));
        for (int k = 0; k < 4; k++) {
          String value = rows.get(i).get(1 + 3 * k);
          String low = rows.get(i).get(2 + 3 * k);
          String high = rows.get(i).get(3 + 3 * k);
          String cell = row.select("td").get(k).text();
          if (value.isEmpty()) {
            assertThat(cell).isIn("withheld", "\u2013");
            assertThat(low + high).isEmpty();
          } else {
            assertThat(cell)
                .isEqualTo(low.isEmpty() ? value : value + " (" + low + "\u2013" + high + ")");
          }
        }
      }
    }
  }

  @Test
  void without_requested_marks_there_is_no_table() {
    ReportJob job = InventedReport.job("Text.", InventedReport.TITLE);
    ReportPlan plan = InventedReport.result(job).plan();
    ReportPlan.Wishes wishes =
        new ReportPlan.Wishes(plan.wishes().distances(), List.of(), plan.wishes().windows());
    ReportPlan markless =
        new ReportPlan(
            plan.name(), plan.heading(), plan.subject(), wishes, plan.style(), plan.article());
    ReportFiles files =
        written(
            job,
            new ReportResult(
                markless,
                InventedReport.result(job).main(),
                InventedReport.result(job).compared()));

    assertThat(files.all().keySet())
        .filteredOn(path -> path.startsWith("share/"))
        .contains("share/summary.md")
        .doesNotContain("share/table.html", "share/table.csv");
    assertThat(text(files, "datapackage.json")).doesNotContain("share/table.csv");
  }

  private static ReportFiles written(ReportJob job, ReportResult result) {
    ReportJob other = InventedReport.with(job, result);
    return ReportWriter.write(other).value().orElseThrow();
  }

  private static int words(String text) {
    return SPACES.split(text.strip(), -1).length;
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  private static String text(ReportFiles files, String path) {
    return new String(files.bytes(path), UTF_8);
  }
}
