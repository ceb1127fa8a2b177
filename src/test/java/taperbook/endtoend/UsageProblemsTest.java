package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.cli.ExitStatus;

/** Problems of usage that are not internal errors: options, names, temporary files. */
@Tag("slow")
final class UsageProblemsTest {
  @TempDir private Path folder = Path.of("");

  @BeforeEach
  void copyValidFolder() throws IOException {
    Workplace.copy(CorpusFile.FOLDER.resolve("valid"), folder);
  }

  @Test
  void a_repeated_or_empty_option_is_wrong_usage() {
    Workplace place = new Workplace(folder);
    assertThat(place.run("report", "--folder", "x")).isEqualTo(ExitStatus.WRONG_USAGE);
    assertThat(place.err()).contains("--folder is given twice.");
    assertThat(place.run("report", "--folder", "")).isEqualTo(ExitStatus.WRONG_USAGE);
    assertThat(place.err()).contains("--folder needs the name of a folder, not ''.");
    assertThat(place.run("report", "--folder=")).isEqualTo(ExitStatus.WRONG_USAGE);
    assertThat(place.run("blank", "sheet", "--units", "km", "--units", "mi"))
        .isEqualTo(ExitStatus.WRONG_USAGE);
    assertThat(place.err()).contains("--units is given twice.");
  }

  @Test
  void watching_an_unknown_report_exits_and_names_the_nearest() {
    Workplace place = new Workplace(folder);
    assertThat(place.run("watch", "lok")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("there is no report called 'lok'. Perhaps look?");
  }

  @ParameterizedTest
  @ValueSource(strings = {"con", "NUL", "aux", "com1", "Lpt9", "con.1", "look.", "prn.x.y"})
  void a_name_that_windows_cannot_store_is_refused(String name) throws IOException {
    Files.copy(folder.resolve("reports/look.md"), folder.resolve("reports/" + name + ".md"));
    Path session = folder.resolve("sessions/" + name);
    Files.createDirectories(session);
    Files.copy(folder.resolve("sessions/stop/readings.csv"), session.resolve("readings.csv"));
    Workplace place = new Workplace(folder);
    assertThat(place.run("check")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("the name \"" + name + "\"", "Windows", "[name-not-allowed]");
    assertThat(place.run("report", name)).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(folder.resolve("reports").resolve(name)).doesNotExist();
  }

  @Test
  void names_that_differ_only_by_case_are_reported() throws IOException {
    Files.copy(folder.resolve("reports/look.md"), folder.resolve("reports/Look.md"));
    Files.createDirectories(folder.resolve("sessions/STOP"));
    Files.copy(
        folder.resolve("sessions/stop/readings.csv"), folder.resolve("sessions/STOP/readings.csv"));
    Workplace place = new Workplace(folder);
    assertThat(place.run("check")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err())
        .contains("the names \"Look\" and \"look\"", "the names \"STOP\" and \"stop\"")
        .contains("names that differ by more than case");
  }

  @Test
  @Timeout(value = 120, unit = TimeUnit.SECONDS)
  void a_missing_temporary_folder_is_reported_as_an_input_problem() throws Exception {
    List<String> command = new ArrayList<>(ReportKills.ofTheTests());
    Path missing = folder.resolve("missing");
    command.add(1, "-Djava.io.tmpdir=" + missing);
    command.addAll(List.of("report", "--folder", folder.toString()));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(output).isEqualTo(ExitStatus.INPUT_REFUSED.code());
    assertThat(output)
        .contains("the folder for temporary files, " + missing + ", is missing, full or may not")
        .doesNotContain("a fault of the program");
  }
}
