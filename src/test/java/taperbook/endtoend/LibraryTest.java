package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;

@Tag("slow")
final class LibraryTest {
  private static final String READINGS = "sessions/visit-0001/readings.csv";
  private static final int FIRST_NUMBER_COLUMN = 1;

  @TempDir private Path folder = Path.of("");

  @Test
  void a_library_is_built_once_and_is_then_up_to_date() throws IOException {
    Workplace place = ManySessions.write(folder, 5);
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.err()).isEmpty();
    assertThat(place.out())
        .isEqualTo(
            "library  made: reports/library/, 25 files\n"
                + "  5 sessions, 75 numbers, "
                + count(place.text("reports/library/numbers.csv"), "withheld")
                + " withheld; nothing left out\n  open "
                + place.path("reports/library/report.html")
                + "\n");
    assertThat(place.files("reports/library").keySet())
        .filteredOn(path -> path.startsWith("data/"))
        .hasSize(14);
    assertThat(place.files("reports/library").keySet())
        .filteredOn(path -> !path.startsWith("data/"))
        .containsExactlyInAnyOrder(
            ".made",
            "report.html",
            "report.pdf",
            "numbers.json",
            "numbers.csv",
            "datapackage.json",
            "figures/library-curves.png",
            "figures/library-curves.svg",
            "figures/library-time-to-add.png",
            "figures/library-time-to-add.svg",
            "figures/library-window-time.png",
            "figures/library-window-time.svg");
    assertThat(place.run("report")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).isEqualTo("library  up to date\n");
    assertThat(place.run("check")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.out())
        .isEqualTo("checked 5 sessions, 4 range tests, 1 report: 0 errors, 0 notices\n");
  }

  /** Numbers without a value, counted independently: two commas after the label. */
  private static long count(String csv, String what) {
    assertThat(what).isNotEmpty();
    return csv.lines()
        .skip(1)
        .filter(l -> l.matches("[a-z0-9_]+,(\"[^\"]*\"|[^,\"]*),,.*"))
        .count();
  }

  @Test
  void a_corrected_reading_a_new_session_and_a_new_range_test_rebuild_it() throws IOException {
    Workplace place = ManySessions.write(folder, 4);
    place.run("report");
    place.replace(READINGS, "\n60,", "\n61,");
    place.run("report");
    assertThat(place.out()).contains("library  made");
    ManySessions.write(folder, 5);
    place.run("report");
    assertThat(place.out()).contains("library  made").contains("5 sessions");
    Files.delete(place.path("sessions/drive-0/range-test.csv"));
    place.run("report");
    assertThat(place.out()).contains("library  made");
    assertThat(place.text("reports/library/report.html"))
        .contains("There is no range test of this vehicle in the folder.");
  }

  @Test
  void a_refused_session_is_named_and_the_others_are_included() throws IOException {
    Workplace place = ManySessions.write(folder, 6);
    place.replace(READINGS, "\n60,", "\nsixty,");
    Files.createDirectories(place.path("sessions/bad name"));
    Files.copy(
        place.path("sessions/visit-0002/readings.csv"),
        place.path("sessions/bad name/readings.csv"));
    assertThat(place.run("report")).isEqualTo(ExitStatus.DONE);
    assertThat(place.err()).contains(READINGS + ":3:1").contains("sixty").contains("bad name");
    assertThat(place.out()).contains("5 sessions").contains("2 left out");
    Document page = page(place);
    assertThat(page.select("table.sortable tbody td.folder").eachText())
        .containsExactlyInAnyOrder(
            "visit-0000", "visit-0002", "visit-0003", "visit-0004", "visit-0005");
    assertThat(page.select("h2#left-out")).hasSize(1);
    assertThat(page.select("h2#left-out ~ div tbody").text())
        .contains("visit-0001 session " + READINGS + ":3:1: found \"sixty\"")
        .contains("the name \"bad name\"");
    assertThat(place.run("check")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("sixty");
  }

  @Test
  void an_unused_drive_is_named() throws IOException {
    Workplace place = ManySessions.write(folder, 3);
    String unused = "No number of this page rests on the range tests ";
    assertThat(place.run("report")).isEqualTo(ExitStatus.DONE);
    assertThat(place.text("reports/library/report.html")).doesNotContain(unused);
    Files.createDirectories(place.path("sessions/slow-drive"));
    Files.copy(
        place.path("sessions/drive-0/range-test.csv"),
        place.path("sessions/slow-drive/range-test.csv"));
    place.replace("sessions/slow-drive/range-test.csv", "speed,100", "speed,80");
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.text("reports/library/report.html")).contains(unused + "slow-drive:");
  }

  @Test
  void a_library_without_a_valid_session_is_refused() throws IOException {
    Workplace place = ManySessions.write(folder, 0);
    assertThat(place.run("report")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err())
        .contains("error  reports/library.md")
        .contains("found     no session in sessions/ that can be used")
        .contains("expected  at least one session for a library")
        .contains("to fix    add a session")
        .contains("[library-empty]");
    assertThat(place.out()).isEqualTo("library  refused\n");
  }

  @Test
  void an_article_names_the_session_of_its_numbers() throws IOException {
    Workplace place = ManySessions.write(folder, 2);
    place.replace(
        "reports/library.md", "All of it is invented.", "It took ${number(\"peak_power\")}.");
    assertThat(place.run("report")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("reports/library.md:8").contains("the session is expected");
    place.replace("reports/library.md", "(\"peak_power\")", "(\"peak_power\", \"visit-0001\")");
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(page(place).select(".prose").text()).matches("It took [0-9]+.kW\\.");
  }

  @Test
  void a_number_is_explained_with_its_session() throws IOException {
    Workplace place = ManySessions.write(folder, 2);
    assertThat(place.run("explain", "library", "average_power_30_70"))
        .isEqualTo(ExitStatus.WRONG_USAGE);
    assertThat(place.err()).contains("name of a session too");
    assertThat(place.run("explain", "library", "average_power_30_70", "visit-0001"))
        .as(place.err())
        .isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).contains("Session     visit-0001").contains(READINGS);
  }

  @Test
  void the_table_has_every_session_with_the_numbers_of_the_data_file() throws IOException {
    Workplace place = ManySessions.write(folder, 25);
    place.run("report");
    Document page = page(place);
    List<String> lines =
        place
            .text("reports/library/numbers.csv")
            .lines()
            .skip(1)
            .filter(line -> !line.startsWith("day_"))
            .toList();
    List<Element> rows = page.select("table.sortable tbody tr");
    assertThat(rows).hasSize(25);
    // Two distances, the time for the window, peak and hold; then the remaining numbers of each
    // session.
    List<Integer> order = List.of(0, 1, 4, 2, 3, 5, 6, 7, 8, 9, 10);
    int first = 0;
    for (Element row : rows) {
      assertThat(row.children()).hasSize(17);
      assertThat(row.select("th").text()).doesNotContain("visit-");
      for (int column = 0; column < order.size(); column++) {
        Element cell = row.child(FIRST_NUMBER_COLUMN + column);
        String line = lines.get(first + order.get(column));
        String written = line.replaceFirst("^[a-z0-9_]+,(\"[^\"]*\"|[^,\"]*),", "");
        assertThat(line).contains("," + row.select("td.folder").text() + ",");
        assertThat(cell.attr("data-sort")).isEqualTo(written.substring(0, written.indexOf(',')));
        assertThat(cell.text().startsWith("withheld")).isEqualTo(cell.attr("data-sort").isEmpty());
      }
      first += order.size();
    }
    assertThat(first).isEqualTo(lines.size());
    assertThat(page.select("table.sortable thead th").eachText().subList(0, 6))
        .containsExactly(
            "Car",
            "Time to add 100 km (min:s)",
            "Time to add 150 km (min:s)",
            "Time, 30 % to 70 % (min:s)",
            "Peak power (kW)",
            "Peak held for (min:s)");
    assertThat(page.select("table.sortable a[href^=#reason-]"))
        .isNotEmpty()
        .allSatisfy(a -> assertThat(page.select(a.attr("href"))).hasSize(1));
    List<String> sorted =
        rows.stream()
            .map(r -> r.child(0).attr("data-sort") + r.child(12).attr("data-sort"))
            .toList();
    assertThat(sorted).isSortedAccordingTo(Comparator.naturalOrder());
  }

  /** Readers know cars; folder names are for commands only. */
  @Test
  void sessions_are_named_by_their_cars() throws IOException {
    Workplace place = ManySessions.write(folder, 12);
    place.run("report");
    Document page = page(place);
    assertThat(page.select("td.folder").eachText())
        .hasSize(12)
        .allMatch(t -> t.matches("visit-.*"));
    page.select("td.folder, section.sources").remove();
    assertThat(page.outerHtml()).doesNotContain("visit-0");
    assertThat(page.select("[role=img]").eachAttr("aria-label"))
        .anyMatch(alt -> alt.contains("8 sessions") && alt.contains("Northmoor Finch, "));
    assertThat(page.select("#figure-library-window-time .narrow svg")).hasSize(1);
    assertThat(page.select("#figure-library-window-time figcaption").text())
        .contains(
            "Shown are 8 of 10 sessions, the quickest of each car; the other 2 are in the table.",
            "2 sessions lack this number.");
  }

  @Test
  void the_page_parses_and_its_policy_allows_only_its_own_script() throws Exception {
    Workplace place = ManySessions.write(folder, 3);
    place.run("report");
    String html = place.text("reports/library/report.html");
    Parser parser = Parser.htmlParser().setTrackErrors(20);
    Document page = Jsoup.parse(html, "", parser);
    assertThat(parser.getErrors()).isEmpty();
    assertThat(page.select("script")).hasSize(1);
    assertThat(page.select("[onclick], [onload], [src], link, iframe, base, form")).isEmpty();
    String script = page.select("script").get(0).data();
    byte[] hash =
        MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
    assertThat(page.select("meta[http-equiv=Content-Security-Policy]").attr("content"))
        .isEqualTo(
            "default-src 'none'; base-uri 'none'; form-action 'none'; style-src 'unsafe-inline';"
                + " script-src 'sha256-"
                + Base64.getEncoder().encodeToString(hash)
                + "'; img-src data:; font-src data:");
    assertThat(page.select("table")).allSatisfy(t -> assertThat(t.select("caption")).hasSize(1));
    assertThat(page.select("th:not([scope])")).isEmpty();
    List<String> ids = page.select("[id]").eachAttr("id");
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(page.select("a[href^=#]").eachAttr("href"))
        .allSatisfy(target -> assertThat(ids).contains(target.substring(1)));
  }

  @Test
  void the_pdf_has_every_session_and_embeds_its_inputs() throws IOException {
    Workplace place = ManySessions.write(folder, 40);
    place.run("report");
    try (PDDocument pdf = Loader.loadPDF(place.path("reports/library/report.pdf").toFile())) {
      String text = new PDFTextStripper().getText(pdf);
      for (int i = 0; i < 40; i++) {
        assertThat(text).contains(ManySessions.name(i));
      }
      List<Float> widths = new ArrayList<>();
      pdf.getPages().forEach(p -> widths.add(p.getMediaBox().getWidth()));
      // A4 is 210 mm by 297 mm, a point is 25.4 mm / 72: the table is on landscape pages.
      assertThat(widths).anyMatch(w -> Math.abs(w - 297 * 72 / 25.4) < 0.5);
      assertThat(pdf.getDocumentCatalog().getNames().getEmbeddedFiles().getNames())
          .hasSize(1 + 2 * 40 + 4 + 1);
    }
  }

  @Test
  void equal_inputs_give_equal_bytes() throws IOException {
    Workplace place = ManySessions.write(folder, 14);
    place.run("report");
    SortedMap<String, String> first = place.files("reports/library");
    Files.delete(place.path("reports/library/numbers.csv"));
    place.run("report");
    assertThat(place.files("reports/library").equals(first)).isTrue();
  }

  private static Document page(Workplace place) {
    return Jsoup.parse(place.text("reports/library/report.html"));
  }
}
