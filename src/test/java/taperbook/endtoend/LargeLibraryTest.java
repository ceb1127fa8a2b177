package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;
import taperbook.result.LibraryResult;

@Tag("slow")
final class LargeLibraryTest {
  private static final int SESSIONS = 300;

  @TempDir private Path folder = Path.of("");

  /** The limit allows for a busy machine; two idle cores take a tenth of it. */
  @Test
  @Timeout(value = 300, unit = TimeUnit.SECONDS)
  void three_hundred_sessions_build_into_one_page_of_moderate_size() throws IOException {
    Workplace place = ManySessions.write(folder, SESSIONS);
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    String html = place.text("reports/library/report.html");
    assertThat(Jsoup.parse(html).select("table.sortable tbody tr")).hasSize(SESSIONS);
    // One car in five has no range test, and a session that starts above 30 % has no window.
    assertThat(Jsoup.parse(html).select("#figure-library-time-to-add figcaption").text())
        .contains("Shown are 8 of 240 sessions, the quickest of each car; the other 232")
        .contains("60 sessions lack this number.");
    // Curve, table row, and text; a page of two megabytes opens on a phone: common practice, no
    // source.
    assertThat(html.length()).isLessThan(SESSIONS * 6_000);
    assertThat(place.files("reports/library/figures").keySet())
        .hasSize(2 * (2 + 25))
        .contains("library-curves-25.png");
  }

  /**
   * With more sessions than the page includes, its size is bounded and the data files are complete.
   */
  @Test
  @Timeout(value = 600, unit = TimeUnit.SECONDS)
  void more_sessions_than_fit_show_a_selection_and_all_are_in_the_data() throws IOException {
    int many = LibraryResult.MAX_SHOWN + 20;
    Workplace place = ManySessions.write(folder, many);
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    Document page = Jsoup.parse(place.text("reports/library/report.html"));
    assertThat(page.select("table.sortable tbody tr")).hasSize(LibraryResult.MAX_SHOWN);
    assertThat(page.select("table.vehicles tbody tr")).hasSize(5);
    assertThat(page.text())
        .contains("There are 520 sessions, too many to show each. The table shows 500")
        .contains("numbers.csv");
    assertThat(page.select("table.vehicles tbody td:nth-child(2)").eachText())
        .containsOnly(String.valueOf(many / 5));
    List<String> ids = page.select("[id]").eachAttr("id");
    assertThat(page.select("a[href^=#]").eachAttr("href"))
        .allSatisfy(target -> assertThat(ids).contains(target.substring(1)));
    assertThat(place.files("reports/library/figures").keySet())
        .hasSize(2 * (2 + LibraryResult.MAX_IN_DETAIL / 12));
    String csv = place.text("reports/library/numbers.csv");
    String json = place.text("reports/library/numbers.json");
    for (int i = 0; i < many; i++) {
      assertThat(csv).contains("," + ManySessions.name(i) + ",");
      assertThat(json).contains("\"sessions/" + ManySessions.name(i) + "/readings.csv\"");
    }
    try (PDDocument pdf = Loader.loadPDF(place.path("reports/library/report.pdf").toFile())) {
      assertThat(pdf.getDocumentCatalog().getNames()).as("attachments").isNull();
      assertThat(new PDFTextStripper().getText(pdf)).contains("There are 520 sessions");
    }
    assertThat(place.files("reports/library").keySet()).noneMatch(f -> f.startsWith("data/"));
  }
}
