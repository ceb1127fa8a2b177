package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;

/** From a published report with a corrected reading to a correction note for readers. */
@Tag("slow")
final class CorrectionsTest {
  private static final String REPORT = "reports/short.md";
  private static final String READINGS = "sessions/finch-quarry-lane-first/readings.csv";
  private static final String KEPT = "reports/short/published/report-2026-04-24.pdf";

  @TempDir private Path folder;

  @Test
  void a_published_report_is_kept_corrected_with_its_cause_and_verified() throws IOException {
    Workplace place = published();
    byte[] first = Files.readAllBytes(folder.resolve(KEPT));
    assertThat(first).isEqualTo(Files.readAllBytes(folder.resolve("reports/short/report.pdf")));
    assertThat(place.run("report", "short")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).contains("short  up to date");

    place.replace(READINGS, "6:10,32,123,", "6:10,32,128,");
    assertThat(place.run("report", "short")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err())
        .contains("error  " + REPORT)
        .contains("numbers moved since the version published on 2026-04-24: peak_power of")
        .contains("below the key corrections write the day, a colon and what was wrong")
        .contains("[numbers-moved]");
    assertThat(Files.readAllBytes(folder.resolve("reports/short/report.pdf"))).isEqualTo(first);

    place.replace(
        REPORT,
        "state: published\n",
        "state: published\ncorrections:\n  - 2026-05-02: the power at 6:10, 123 kW, was misread\n");
    assertThat(place.run("report", "short")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(Files.readAllBytes(folder.resolve(KEPT))).isEqualTo(first);
    assertThat(folder.resolve("reports/short/published/report-2026-05-02.pdf")).exists();
    assertThat(place.text("reports/short/corrections.csv"))
        .contains("2026-05-02,2026-04-24,\"the power at 6:10, 123 kW, was misread\",peak_power,")
        .contains(",128,127.5")
        .contains(READINGS + ":9, power [kW]: \u201c123\u201d became \u201c128\u201d");
    Document page = Jsoup.parse(place.text("reports/short/report.html"));
    assertThat(page.select(".corrections .notice").text())
        .startsWith("2 May 2026. The power at 6:10, 123 kW, was misread. Since the version of")
        .contains("24 April 2026");
    assertThat(page.select("table.moved tr:contains(Peak power) td").eachText())
        .anySatisfy(cell -> assertThat(cell).startsWith("123 kW"))
        .anySatisfy(cell -> assertThat(cell).startsWith("128 kW"));
    assertThat(page.select(".byline").text()).contains("corrected on 2 May 2026");

    String pdf = folder.resolve("reports/short/report.pdf").toString();
    assertThat(place.run("verify", pdf)).as(place.out()).isEqualTo(ExitStatus.DONE);
    assertThat(place.run("report", "short")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).contains("short  up to date");
  }

  /** Row 9 of last year's session is the end of its climb, and thereby the start of a window. */
  @Test
  void one_corrected_cell_of_a_comparison_lists_changed_numbers_and_moves_no_window()
      throws IOException {
    Workplace place = Workplace.withDemo(folder);
    String demo = "reports/finch-first-look.md";
    place.replace(demo, "published: 2026-04-24\n", "published: 2026-04-24\nstate: published\n");
    assertThat(place.run("report", "finch-first-look")).as(place.err()).isEqualTo(ExitStatus.DONE);
    place.replace(READINGS, "6:10,32,123,", "6:10,32,128,");
    place.replace(
        demo,
        "state: published\n",
        "state: published\ncorrections:\n  - 2026-05-02: the power at 6:10 was misread\n");
    assertThat(place.run("report", "finch-first-look")).as(place.err()).isEqualTo(ExitStatus.DONE);

    String record = place.text("reports/finch-first-look/corrections.csv");
    String cause = READINGS + ":9, power [kW]: \u201c123\u201d became \u201c128\u201d";
    assertThat(record.lines().skip(1))
        .isNotEmpty()
        .allSatisfy(row -> assertThat(row).contains(cause))
        .anySatisfy(row -> assertThat(row).contains("peak_power,finch-quarry-lane-first,"))
        .anySatisfy(row -> assertThat(row).contains("warm_up_end_soc,finch-quarry-lane-first,"))
        // Of the other car, only numbers of the pair may have changed.
        .noneSatisfy(row -> assertThat(row).contains(",finch-quarry-lane,,"))
        // No entry for a window that only one of the versions has.
        .noneSatisfy(row -> assertThat(row).contains("_33_80,"));
    assertThat(record.lines()).hasSizeLessThan(45);

    assertThat(place.text("reports/finch-first-look/numbers.json"))
        .contains("\"time_soc_36_80\"")
        .doesNotContain("\"time_soc_33_80\"")
        .contains("\"frozen_since\": \"2026-04-24\"");
    Document page = Jsoup.parse(place.text("reports/finch-first-look/report.html"));
    assertThat(page.text().replace('\u00a0', ' '))
        .contains("These windows are those of the version of 24 April 2026")
        .contains("determined again they would be 15 % to 80 % and 33 % to 80 %.");
    assertThat(page.select(".corrections table.moved tbody tr").size()).isBetween(1, 14);
    assertThat(page.select(".corrections").text()).contains(cause);

    String pdf = folder.resolve("reports/finch-first-look/report.pdf").toString();
    assertThat(place.run("verify", pdf)).as(place.out()).isEqualTo(ExitStatus.DONE);
  }

  @Test
  void two_corrected_cells_are_distinguished_by_the_numbers_that_each_changed() throws IOException {
    Workplace place = published();
    place.replace(READINGS, "6:10,32,123,", "6:10,32,128,");
    String last = "sessions/finch-quarry-lane-first/conditions.csv";
    place.replace(last, "odometer,", "odometer,1");
    place.replace(
        REPORT, "state: published\n", "state: published\ncorrections:\n  - 2026-05-02: both\n");
    assertThat(place.run("report", "short")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.text("reports/short/corrections.csv").lines().skip(1))
        .anySatisfy(
            row -> assertThat(row).contains("peak_power,").contains(READINGS + ":9, power [kW]"))
        .noneSatisfy(row -> assertThat(row).contains("odometer"));
  }

  @Test
  void a_second_correction_is_compared_with_the_first_and_keeps_it() throws IOException {
    Workplace place = published();
    place.replace(READINGS, "6:10,32,123,", "6:10,32,128,");
    place.replace(
        REPORT, "state: published\n", "state: published\ncorrections:\n  - 2026-05-02: one\n");
    assertThat(place.run("report", "short")).as(place.err()).isEqualTo(ExitStatus.DONE);
    place.replace(READINGS, "6:10,32,128,", "6:10,32,127,");
    place.replace(REPORT, "  - 2026-05-02: one\n", "  - 2026-05-02: one\n  - 2026-05-09: two\n");
    assertThat(place.run("report", "short")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.text("reports/short/corrections.csv"))
        .contains("2026-05-02,2026-04-24,one,peak_power,")
        .contains("2026-05-09,2026-05-02,two,peak_power,");
    Document page = Jsoup.parse(place.text("reports/short/report.html"));
    assertThat(page.select(".corrections .notice b").eachText())
        .containsExactly("9 May 2026.", "2 May 2026.");
  }

  @Test
  void a_draft_may_change_and_is_reported_as_a_draft() throws IOException {
    Workplace place = published();
    place.replace(READINGS, "6:10,32,123,", "6:10,32,128,");
    place.replace(REPORT, "state: published\n", "state: draft\n");
    assertThat(place.run("report", "short")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.err()).contains("notice  " + REPORT).contains("[numbers-moved-in-draft]");
    assertThat(folder.resolve(KEPT)).exists();
  }

  @Test
  void a_record_that_was_edited_by_hand_is_refused() throws IOException {
    Workplace place = published();
    place.replace(READINGS, "6:10,32,123,", "6:10,32,128,");
    place.replace(
        REPORT, "state: published\n", "state: published\ncorrections:\n  - 2026-05-02: one\n");
    assertThat(place.run("report", "short")).isEqualTo(ExitStatus.DONE);
    place.replace("reports/short/corrections.csv", "since", "when");
    place.replace(REPORT, "  - 2026-05-02: one\n", "  - 2026-05-02: one\n  - 2026-05-09: two\n");
    assertThat(place.run("report", "short")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err())
        .contains("error  reports/short/corrections.csv:1")
        .contains("[published-not-understood]");
  }

  private Workplace published() throws IOException {
    Workplace place = Workplace.withDemo(folder);
    Files.writeString(
        folder.resolve(REPORT),
        """
        ---
        title: Short
        published: 2026-04-24
        state: published
        session: finch-quarry-lane-first
        ---
        Invented. Peak: ${number("peak_power")}.
        """);
    assertThat(place.run("report", "short")).as(place.err()).isEqualTo(ExitStatus.DONE);
    return place;
  }
}
