package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;

/** Rebuilds on save, with real files and scripted time. */
@Tag("slow")
final class WatchTest {
  private static final String READINGS = "sessions/stop/readings.csv";
  private static final String CONDITIONS = "sessions/stop/conditions.csv";
  private static final String ROWS =
      """
      elapsed [min:s],soc [%],power [kW],energy added [kWh]
      0:00,10,100,0.0
      5:00,25,110,8.9
      10:00,40,100,17.7
      20:00,62,70,31.9
      30:00,78,50,41.9
      36:00,85,40,46.4
      """;
  private static final String MORE = "40:00,88,32,48.8\n";
  private static final String FACTS =
      """
      item,value,unit,how known
      date,2026-03-14,,
      vehicle,Northmoor Finch,,
      odometer,,km,unknown
      station rated power,,kW,unknown
      ambient temperature,,Cel,unknown
      battery temperature at start,,Cel,unknown
      preconditioned,,,unknown
      read from,film,,
      """;

  @TempDir private Path folder = Path.of("");
  private Workplace place = new Workplace(folder);

  @BeforeEach
  void writeOneSession() throws IOException {
    place = new Workplace(folder);
    write(READINGS, ROWS);
    write(CONDITIONS, FACTS);
    write("reports/all.md", "---\nkind: library\ntitle: All stops\n---\n");
  }

  private void write(String path, String text) throws IOException {
    Files.createDirectories(place.path(path).resolveSibling(""));
    Files.writeString(place.path(path), text);
  }

  private void watch(ScriptedClock script) {
    assertThat(place.run(script, "watch")).as(place.err()).isEqualTo(ExitStatus.DONE);
  }

  private static String watching() {
    return "Watching sessions/, reports/*.md and templates/. Ctrl-C ends it."
        + System.lineSeparator();
  }

  private long count(String what) {
    return place.out().lines().filter(line -> line.contains(what)).count();
  }

  @Test
  void watch_builds_outdated_reports_at_its_start_and_nothing_without_a_change() {
    watch(new ScriptedClock().idle().idle().idle());
    assertThat(place.out()).matches("all  made in [0-9]+\\.[0-9] s\\R");
    assertThat(place.err()).isEqualTo(watching());
    assertThat(place.path("reports/all/report.pdf")).exists();

    watch(new ScriptedClock().idle().idle());
    assertThat(place.out()).isEmpty();
  }

  @Test
  void two_quick_saves_cause_one_rebuild_with_the_later_content() {
    watch(
        new ScriptedClock()
            .idle()
            .then(() -> write(READINGS, ROWS.replace("20:00,62,70", "20:00,62,72")))
            .then(() -> write(READINGS, ROWS.replace("20:00,62,70", "20:00,62,123")))
            .idle());
    assertThat(count("all  made")).isEqualTo(2);
    assertThat(place.text("reports/all/numbers.json")).contains("123");
  }

  @Test
  void an_incomplete_file_is_not_read() {
    watch(
        new ScriptedClock()
            .idle()
            .then(() -> write(READINGS, ROWS.substring(0, 90)))
            .then(() -> {})
            .then(() -> write(READINGS, ROWS + MORE))
            .idle());
    assertThat(place.err()).isEqualTo(watching());
    assertThat(count("all  made")).isEqualTo(2);
  }

  @Test
  void a_save_during_a_build_discards_that_version() {
    watch(
        new ScriptedClock()
            .idle()
            .then(() -> write(READINGS, ROWS.replace("5:00,25,110", "5:00,25,oops")))
            .thenDuringBuild(() -> write(READINGS, ROWS.replace("5:00,25,110", "5:00,25,137")))
            .idle()
            .idle());
    assertThat(place.err()).isEqualTo(watching());
    assertThat(count("all  made")).isEqualTo(2);
    assertThat(place.text("reports/all/numbers.json")).contains("137");
  }

  @Test
  void saving_or_moving_equal_content_builds_nothing() {
    watch(
        new ScriptedClock()
            .idle()
            .then(() -> write(READINGS, ROWS))
            .idle()
            .then(() -> write("sessions/stop/.readings.csv.part", ROWS))
            .then(
                () ->
                    Files.move(
                        place.path("sessions/stop/.readings.csv.part"),
                        place.path(READINGS),
                        StandardCopyOption.REPLACE_EXISTING))
            .idle());
    assertThat(count("all  made")).isEqualTo(1);
    assertThat(place.err()).isEqualTo(watching());
  }

  @Test
  void a_problem_is_reported_once_while_it_lasts_and_the_fixed_report_is_built()
      throws IOException {
    write("reports/one.md", "---\nsession: stop\n---\n");
    Files.delete(place.path("reports/all.md"));
    String fixed = "---\nkind: library\ntitle: One\n---\n";
    watch(
        new ScriptedClock()
            .idle()
            .then(() -> write(READINGS, ROWS + MORE))
            .idle()
            .then(() -> write("reports/one.md", fixed))
            .idle());
    assertThat(place.err()).containsOnlyOnce("[key-missing]").contains("reports/one.md");
    assertThat(count("one  refused")).isEqualTo(1);
    assertThat(count("one  made")).isEqualTo(1);
  }

  @Test
  void a_report_reverted_to_the_published_state_is_reported_as_up_to_date() {
    String good = "---\nkind: library\ntitle: All stops\n---\n";
    watch(
        new ScriptedClock()
            .idle()
            .then(() -> write("reports/all.md", good.replace("title", "titel")))
            .idle()
            .then(() -> write("reports/all.md", good))
            .idle());
    assertThat(place.out())
        .containsSubsequence("all  made", "all  refused", "all  fixed; what is published");
    assertThat(count("all  made")).isEqualTo(1);
  }

  @Test
  void a_new_session_is_included_and_a_deleted_file_is_reported() {
    watch(
        new ScriptedClock()
            .idle()
            .then(() -> Files.createDirectories(place.path("sessions/second")))
            .then(() -> write("sessions/second/readings.csv", ROWS + MORE))
            .then(() -> write("sessions/second/conditions.csv", FACTS))
            .idle()
            .then(() -> Files.delete(place.path(CONDITIONS)))
            .idle());
    assertThat(count("all  made")).isEqualTo(3);
    assertThat(place.text("reports/all/report.html")).contains("second");
    assertThat(place.err()).containsOnlyOnce("[file-missing]").contains(CONDITIONS);
  }

  @Test
  void a_notice_of_a_built_page_is_not_repeated_while_it_lasts() {
    watch(
        new ScriptedClock()
            .idle()
            .then(() -> write("sessions/second/readings.csv", ROWS))
            .idle()
            .then(() -> write("templates/mine.md", "not used"))
            .idle()
            .then(() -> write(READINGS, ROWS + MORE))
            .idle());
    assertThat(count("all  made")).isEqualTo(3);
    assertThat(place.err()).containsOnlyOnce("[file-missing]");
  }

  @Test
  void a_missing_folder_is_refused() {
    Workplace nowhere = new Workplace(folder.resolve("nowhere"));
    assertThat(nowhere.run(new ScriptedClock().idle(), "watch"))
        .isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(nowhere.err()).contains("there is no folder");
  }

  private static String titled(String title) {
    return "---\nkind: library\ntitle: " + title + "\n---\n";
  }

  private String shown() {
    return place.text("reports/all/report.html").replaceAll("(?s).*<title>(.*)</title>.*", "$1");
  }

  private List<String> hidden() throws IOException {
    try (Stream<Path> all = Files.list(place.path("reports"))) {
      return all.map(p -> String.valueOf(p.getFileName()))
          .filter(n -> n.startsWith(".all") && !n.equals(".all.rows"))
          .sorted()
          .toList();
    }
  }

  @Test
  void the_page_is_shown_before_the_other_files_are_made_and_taken_back_when_stopped()
      throws IOException {
    place.run("report");
    byte[] pdf = Files.readAllBytes(place.path("reports/all/report.pdf"));
    ScriptedClock clock = new ScriptedClock();
    watch(
        clock
            .then(() -> write("reports/all.md", titled("Some stops")))
            .thenBeforePublishing(() -> assertThat(shown()).startsWith("All stops"))
            .thenBeforePublishing(
                () -> {
                  assertThat(shown()).startsWith("Some stops");
                  assertThat(place.path("reports/all/report.pdf")).hasBinaryContent(pdf);
                  clock.stop();
                  assertThat(shown()).startsWith("All stops");
                  assertThat(hidden()).isEmpty();
                })
            .idle());
    assertThat(place.err()).isEqualTo(watching());
    assertThat(shown()).startsWith("Some stops");
    assertThat(Files.readAllBytes(place.path("reports/all/report.pdf"))).isNotEqualTo(pdf);
    assertThat(hidden()).isEmpty();
  }

  @Test
  void a_page_of_a_discarded_version_is_taken_back() throws IOException {
    place.run("report");
    watch(
        new ScriptedClock()
            .then(() -> write("reports/all.md", titled("Some stops")))
            .thenBeforePublishing(() -> write("reports/all.md", titled("Few stops")))
            .thenBeforePublishing(() -> assertThat(shown()).startsWith("Some stops"))
            .thenBeforePublishing(() -> assertThat(shown()).startsWith("All stops"))
            .idle()
            .idle());
    assertThat(place.err()).isEqualTo(watching());
    assertThat(shown()).startsWith("Few stops");
    assertThat(count("all  made")).isEqualTo(1);
    assertThat(hidden()).isEmpty();
  }

  @Test
  void after_a_version_that_cannot_be_written_a_stop_changes_nothing() throws IOException {
    place.run("report");
    Path numbers = place.path("reports/all/numbers.json");
    Path lock = place.path("reports/.all.lock");
    ScriptedClock clock = new ScriptedClock();
    watch(
        clock
            .then(() -> write("reports/all.md", titled("Some stops")))
            .thenBeforePublishing(() -> assertThat(shown()).startsWith("All stops"))
            .thenBeforePublishing(
                () -> {
                  Files.delete(numbers);
                  write("reports/all/numbers.json/own.txt", "in the way");
                })
            .idle()
            .then(() -> Files.writeString(lock, "of another run"))
            .then(clock::stop));
    assertThat(place.err()).contains("numbers.json");
    assertThat(shown()).startsWith("All stops");
    assertThat(lock).hasContent("of another run");
  }
}
