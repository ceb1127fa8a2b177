package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sortable table in a browser, under the content security policy of the page. */
@Tag("slow")
final class LibrarySortTest {
  private static final int LONGEST_SECONDS = 60;
  private static final String HEAD = "Battery at start (\u00b0C)";

  /** Preceded by car and eleven numbers. */
  private static final int DATE = 12;

  @TempDir private Path folder = Path.of("");

  @Test
  void a_click_on_a_head_sorts_by_value_with_withheld_values_last() throws Exception {
    Workplace place = ManySessions.write(folder, 30);
    place.run("report");
    Document before = Jsoup.parse(place.text("reports/library/report.html"));
    int column = column(before, HEAD);
    Document once = clicked(place, column, 1);
    assertThat(once.title()).as("a script that the policy does not know").isNotEqualTo("broken in");
    assertThat(once.select("table.sortable thead th button")).hasSize(16);
    List<Double> rising = values(once, column);
    assertThat(rising)
        .hasSize(20)
        .isSortedAccordingTo(Comparator.naturalOrder())
        .isNotEqualTo(values(before, column));
    assertThat(withheldAreLast(once, column)).isTrue();
    assertThat(sorted(once)).containsExactly("ascending " + HEAD);

    Document twice = clicked(place, column, 2);
    assertThat(values(twice, column)).isSortedAccordingTo(Comparator.reverseOrder());
    assertThat(withheldAreLast(twice, column)).isTrue();
    assertThat(sorted(twice)).containsExactly("descending " + HEAD);
    assertThat(twice.select("td.folder").eachText())
        .containsExactlyInAnyOrderElementsOf(before.select("td.folder").eachText());
  }

  @Test
  void texts_and_dates_are_sortable() throws Exception {
    Workplace place = ManySessions.write(folder, 30);
    place.run("report");
    Document byDay = clicked(place, DATE, 1);
    assertThat(cells(byDay, DATE).map(c -> c.attr("data-sort")).toList())
        .hasSize(30)
        .isSortedAccordingTo(Comparator.naturalOrder());
    // The table is initially sorted by vehicle, so that the first click there reverses it.
    Document byCar = clicked(place, 0, 1);
    assertThat(byCar.select("table.sortable tbody th").eachAttr("data-sort"))
        .isSortedAccordingTo(Comparator.reverseOrder());
  }

  private static int column(Document page, String head) {
    return page.select("table.sortable thead th").eachText().indexOf(head);
  }

  private static List<Double> values(Document page, int column) {
    return cells(page, column)
        .map(c -> c.attr("data-sort"))
        .filter(v -> !v.isEmpty())
        .map(Double::valueOf)
        .toList();
  }

  private static boolean withheldAreLast(Document page, int column) {
    return cells(page, column)
        .skip(values(page, column).size())
        .allMatch(c -> c.text().startsWith("withheld"));
  }

  private static Stream<Element> cells(Document page, int column) {
    return page.select("table.sortable tbody tr").stream().map(r -> r.child(column));
  }

  private static List<String> sorted(Document page) {
    return page.select("th[aria-sort]").stream()
        .map(h -> h.attr("aria-sort") + " " + h.text())
        .toList();
  }

  /** The document after clicks on a head, which an additional script performs. */
  private Document clicked(Workplace place, int column, int clicks) throws Exception {
    String click =
        "for (var i = 0; i < "
            + clicks
            + "; i++) document.querySelectorAll('table.sortable thead th')["
            + column
            + "].querySelector('button').click();";
    String own = "script-src '";
    String html = place.text("reports/library/report.html");
    String changed =
        html.replace(own, "script-src '" + hash(click) + "' '")
            .replace(
                "</body>",
                "<script>"
                    + click
                    + "</script><script>document.title = 'broken in';</script></body>");
    assertThat(html).contains(own);
    Path page = folder.resolve("clicked-" + column + "-" + clicks + ".html");
    Files.writeString(page, changed);
    return Jsoup.parse(new Browser(folder, LONGEST_SECONDS).shown(page));
  }

  private static String hash(String script) throws Exception {
    byte[] hash =
        MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
    return "sha256-" + Base64.getEncoder().encodeToString(hash);
  }
}
