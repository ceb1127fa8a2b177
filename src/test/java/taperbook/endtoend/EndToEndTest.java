package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;

@Tag("slow")
final class EndToEndTest {
  private static final String READINGS = "sessions/finch-quarry-lane/readings.csv";

  @TempDir private Path folder = Path.of("");

  @Test
  void one_run_builds_all_reports_and_the_next_has_nothing_to_do() throws IOException {
    Workplace place = Workplace.withDemo(folder);
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.out())
        .contains("finch-first-look  made")
        .contains("veldt-long-plateau  made")
        .contains("Time to add 100 km");
    assertThat(place.err()).isEmpty();
    assertThat(place.files("reports/finch-first-look").keySet())
        .contains(
            "report.html",
            "report.pdf",
            "methods.pdf",
            "numbers.json",
            "numbers.csv",
            "figures/power-over-soc.svg",
            "figures/power-over-soc.png",
            "figures/power-over-time.svg",
            "figures/distance-over-time.svg",
            "share/portrait.png",
            "share/square.png",
            "share/captions.srt",
            "share/captions.vtt",
            "share/summary.md",
            "share/table.html",
            "share/table.csv");
    assertThat(place.text("reports/finch-first-look/report.html"))
        .contains("How the power runs", ">Plateau<", ">Taper<", "What a per cent holds");

    assertThat(place.run("report")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out())
        .isEqualTo(
            "finch-first-look  up to date\nlibrary  up to date\nveldt-long-plateau  up to date\n");
  }

  @Test
  void a_corrected_reading_rebuilds_only_the_reports_that_use_it() throws IOException {
    Workplace place = Workplace.withMadeDemo(folder);
    String before = place.text("reports/finch-first-look/numbers.json");
    place.replace("sessions/finch-quarry-lane-first/readings.csv", "5:00,28,120", "5:00,28,119");
    assertThat(place.run("report")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out())
        .contains("finch-first-look  made")
        .contains("library  made")
        .contains("veldt-long-plateau  up to date")
        .containsPattern("\n  [0-9]+ of [0-9]+ numbers moved since the last version: .+, before .+")
        .contains("\n  open " + folder.resolve("reports/finch-first-look/report.html") + "\n");
    assertThat(place.text("reports/finch-first-look/numbers.json")).isNotEqualTo(before);
  }

  @Test
  void a_refused_input_states_the_reason_and_keeps_the_published_report() throws IOException {
    Workplace place = Workplace.withMadeDemo(folder);
    SortedMap<String, String> before = place.files("reports");
    place.replace(READINGS, "11:40,57,121", "11:40,57,12l");
    place.replace(READINGS, "12:55,61,97", "12:55,161,97");
    assertThat(place.run("report", "finch-first-look")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err())
        .contains(READINGS + ":18:3")
        .contains("12l")
        .contains(READINGS + ":19:2")
        .contains("161")
        .contains("unchanged");
    assertThat(place.out()).isEqualTo("finch-first-look  refused\n");
    assertThat(place.files("reports")).isEqualTo(before);
  }

  @Test
  void check_reports_every_problem_and_writes_nothing() throws IOException {
    Workplace place = Workplace.withDemo(folder);
    place.replace(READINGS, "power [kW]", "power");
    place.replace("sessions/veldt-quarry-lane/conditions.csv", "odometer,9840", "odomter,9840");
    place.replace("reports/veldt-long-plateau.md", "units: mi", "units: miles");
    SortedMap<String, String> before = place.files(".");
    assertThat(place.run("check")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err())
        .contains("column-without-unit")
        .contains("item-unknown")
        .contains("odometer")
        .contains("miles");
    assertThat(place.files(".")).isEqualTo(before);
  }

  @Test
  void check_of_the_demo_reports_nothing() throws IOException {
    Workplace place = Workplace.withDemo(folder);
    assertThat(place.run("check")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.out())
        .isEqualTo(
            """
            finch-first-look: 2 figures typed by hand: 1 supported, 1 not checked
              Not checked is no error: the text leaves open which number such a figure means. \
            Compare it yourself; taperbook check finch-first-look lists it with its place.
            checked 6 sessions, 6 range tests, 3 reports: 0 errors, 0 notices
            """);
  }

  @Test
  void a_figure_that_contradicts_the_results_refuses_the_report_until_it_is_marked()
      throws IOException {
    Workplace place = Workplace.withMadeDemo(folder);
    String article = "reports/veldt-long-plateau.md";
    String old = "The Carrier never shows a spectacular number.";
    place.replace(article, old, "The Carrier peaked at 160 kW.\n" + old);
    assertThat(place.run("report", "veldt-long-plateau")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err())
        .contains(article + ":" + line(place.text(article), "The Carrier peaked") + ":23")
        .contains("Peak power: 143.2 kW")
        .contains("${number(\"peak_power\")}")
        .contains("[figure-contradicted]")
        .contains("unchanged");

    place.replace(article, "160 kW.", "160 kW. <!-- deliberate -->");
    assertThat(place.run("report", "veldt-long-plateau"))
        .as(place.err())
        .isEqualTo(ExitStatus.DONE);
    assertThat(place.text("reports/veldt-long-plateau/report.html"))
        .contains("peaked at 160&nbsp;kW.")
        .doesNotContain("deliberate");
  }

  @Test
  void check_of_a_named_report_lists_each_figure_with_its_location() throws IOException {
    Workplace place = Workplace.withDemo(folder);
    assertThat(place.run("check", "finch-first-look")).isEqualTo(ExitStatus.DONE);
    String article = "reports/finch-first-look.md";
    String at = "  " + article + ":" + line(place.text(article), "We drove the Finch");
    assertThat(place.out())
        .contains(at + ":53  110 km/h  supported: target speed\n")
        .contains(at + ":89  1 %  not checked\n")
        .contains("\n  Not checked is no error: ")
        .contains(" Compare it yourself.\n");
  }

  @Test
  void pages_have_curly_apostrophes_except_in_code_and_data() throws IOException {
    Workplace place = Workplace.withMadeDemo(folder);
    for (String report : List.of("finch-first-look", "veldt-long-plateau", "library")) {
      String words =
          place
              .text("reports/" + report + "/report.html")
              .replaceAll("(?s)<(code|pre|script|style)\\b.*?</\\1>|<!--.*?-->|<[^>]*+>", " ");
      assertThat(words).contains("\u2019").doesNotContain("'", "&#39;");
    }
    assertThat(place.text("reports/finch-first-look/numbers.json"))
        .contains("the station's energy")
        .doesNotContain("\u2019");
  }

  @Test
  void a_table_across_pages_repeats_its_head_on_each_page() throws IOException {
    Workplace place = Workplace.withMadeDemo(folder);
    try (PDDocument pdf =
        Loader.loadPDF(place.path("reports/finch-first-look/methods.pdf").toFile())) {
      PDFTextStripper page = new PDFTextStripper();
      boolean begun = false;
      for (int i = 1; i <= pdf.getNumberOfPages(); i++) {
        page.setStartPage(i);
        page.setEndPage(i);
        String text = page.getText(pdf);
        begun |= text.contains("Where each number comes from");
        assertThat(!begun || text.contains("Number and its id")).as("page " + i).isTrue();
      }
      assertThat(begun).isTrue();
    }
  }

  @Test
  void equal_inputs_give_equal_bytes() throws IOException {
    Workplace place = Workplace.withMadeDemo(folder);
    SortedMap<String, String> first = place.files("reports/finch-first-look");
    Files.delete(place.path("reports/finch-first-look/numbers.csv"));
    place.run("report", "finch-first-look");
    assertThat(place.out()).contains("finch-first-look  made");
    SortedMap<String, String> second = place.files("reports/finch-first-look");
    assertThat(second.keySet()).isEqualTo(first.keySet());
    first.forEach(
        (path, bytes) ->
            assertThat(bytes.equals(second.get(path))).as(path + " is the same").isTrue());
  }

  @Test
  void a_changed_template_rebuilds_the_report_and_is_used() throws IOException {
    Workplace place = Workplace.withMadeDemo(folder);
    Files.createDirectories(place.path("templates"));
    Files.writeString(place.path("templates/screen.css"), "body { color: #123456 }\n");
    place.run("report", "finch-first-look");
    assertThat(place.out()).contains("finch-first-look  made");
    assertThat(place.text("reports/finch-first-look/report.html")).contains("#123456");
  }

  @Test
  void files_of_the_tester_next_to_the_report_are_kept() throws IOException {
    Workplace place = Workplace.withMadeDemo(folder);
    Files.writeString(place.path("reports/finch-first-look/corrections.csv"), "mine\n");
    place.replace(READINGS, "11:40,57,121", "11:40,57,119");
    place.run("report", "finch-first-look");
    assertThat(place.out()).contains("made");
    assertThat(place.text("reports/finch-first-look/corrections.csv")).isEqualTo("mine\n");
  }

  @Test
  void a_run_killed_between_its_renames_is_recovered_by_the_next() throws IOException {
    Workplace place = Workplace.withMadeDemo(folder);
    SortedMap<String, String> before = place.files("reports/finch-first-look");
    Files.move(
        place.path("reports/finch-first-look"),
        place.path("reports/.finch-first-look.old-version"));
    assertThat(place.run("report", "finch-first-look")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).isEqualTo("finch-first-look  up to date\n");
    assertThat(place.files("reports/finch-first-look")).isEqualTo(before);
  }

  @Test
  void an_unknown_report_is_refused_with_the_names_that_exist() throws IOException {
    Workplace place = Workplace.withDemo(folder);
    assertThat(place.run("report", "finch-frist-look")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("finch-first-look");
  }

  @Test
  void wrong_usage_has_its_own_exit_status() {
    Workplace place = new Workplace(folder);
    assertThat(place.run("publish")).isEqualTo(ExitStatus.WRONG_USAGE);
    assertThat(place.err()).contains("no command 'publish'");
    assertThat(place.run("report", "--loud")).isEqualTo(ExitStatus.WRONG_USAGE);
    assertThat(place.err()).contains("no option --loud");
    assertThat(place.run("--help")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).contains("taperbook report");
  }

  /** Index of the first line that starts with a text. */
  private static int line(String file, String beginning) {
    List<String> lines = file.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).startsWith(beginning)) {
        return i + 1;
      }
    }
    throw new IllegalArgumentException("no line begins with " + beginning);
  }
}
