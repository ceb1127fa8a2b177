package taperbook.input.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.session.InputFile;

final class DiskFolderTest {
  @TempDir Path temporary;
  private Path root;
  private DiskFolder folder;

  @BeforeEach
  void createFolder() throws IOException {
    root = Files.createDirectory(temporary.resolve("project"));
    folder = new DiskFolder(root);
  }

  @Test
  void sessions_range_tests_and_reports_are_listed_by_name() throws IOException {
    write("sessions/b-2/readings.csv");
    write("sessions/a_1/readings.csv");
    write("sessions/a_1/range-test.csv");
    write("sessions/ring.road/range-test.csv");
    write("sessions/.hidden/readings.csv");
    write("sessions/notes.txt");
    write("sessions/pictures/one.png");
    write("reports/look.md");
    write("reports/look/report.html");
    write("reports/.draft.md");
    assertThat(folder.sessions()).isEqualTo(new Listing(List.of("a_1", "b-2"), List.of()));
    assertThat(folder.rangeTests()).isEqualTo(new Listing(List.of("a_1", "ring.road"), List.of()));
    assertThat(folder.reports()).isEqualTo(new Listing(List.of("look"), List.of()));
  }

  @Test
  void invalid_names_are_reported_and_the_others_are_kept() throws IOException {
    write("sessions/good/readings.csv");
    write("sessions/not good/readings.csv");
    write("reports/not good.md");
    assertThat(folder.sessions().names()).containsExactly("good");
    assertThat(sentences(folder.sessions()))
        .containsExactly(
            "sessions: found the name \"not good\"; expected letters a to z, digits, hyphens,"
                + " underscores, and full stops that do not lead. To fix: rename it."
                + " [name-not-allowed]");
    assertThat(sentences(folder.reports()))
        .containsExactly(
            "reports: found the name \"not good.md\"; expected letters a to z, digits, hyphens,"
                + " underscores, and full stops that do not lead. To fix: rename it."
                + " [name-not-allowed]");
  }

  @Test
  void a_folder_whose_tables_have_other_names_is_reported() throws IOException {
    write("sessions/finch/Reading.CSV");
    write("sessions/finch/conditions.csv");
    assertThat(sentences(folder.sessions()))
        .containsExactly(
            "sessions: found sessions/finch with Reading.CSV, conditions.csv; expected readings.csv"
                + " for a session, or range-test.csv for a range test. To fix: rename the file"
                + " that is meant. [file-missing]");
    assertThat(folder.rangeTests()).isEqualTo(new Listing(List.of(), List.of()));
  }

  /** Elsewhere they would be ignored without a word, as a column map that is not there. */
  @Test
  void a_file_that_may_be_missing_is_reported_if_its_name_has_another_case() throws IOException {
    write("sessions/finch/readings.csv");
    write("sessions/finch/Columns.csv");
    write("sessions/ring-road/range-test.csv");
    write("sessions/ring-road/Legs.csv");
    assertThat(sentences(folder.sessions()))
        .containsExactly(
            "sessions: found sessions/finch with Columns.csv; expected columns.csv."
                + " To fix: rename it. [name-not-allowed]",
            "sessions: found sessions/ring-road with Legs.csv; expected legs.csv."
                + " To fix: rename it. [name-not-allowed]");
    assertThat(folder.sessions().names()).containsExactly("finch");
    assertThat(folder.rangeTests().names()).containsExactly("ring-road");
  }

  @Test
  void a_missing_folder_is_reported() {
    assertThat(sentences(folder.sessions()))
        .containsExactly(
            "sessions: found no folder sessions; expected a folder sessions where the command is"
                + " run. To fix: run it in the folder that holds sessions and reports, or name that"
                + " with --folder. [file-missing]");
    assertThat(folder.reports().problems()).hasSize(1);
  }

  @Test
  void file_is_read_with_its_path() throws IOException {
    write("sessions/a/readings.csv");
    InputFile file = folder.read("sessions/a/readings.csv").value().orElseThrow();
    assertThat(file.path()).isEqualTo("sessions/a/readings.csv");
    assertThat(file.bytes()).isEqualTo("x".getBytes(StandardCharsets.UTF_8));
    assertThat(folder.has("sessions/a/readings.csv")).isTrue();
    assertThat(folder.has("sessions/a/legs.csv")).isFalse();
    // An entry that is not a file is reported when it is read.
    assertThat(folder.has("sessions/a")).isTrue();
  }

  @Test
  void missing_file_is_reported_with_the_names_that_exist() throws IOException {
    write("sessions/a/readings.csv");
    write("sessions/a/condition.csv");
    assertThat(sentence(folder.read("sessions/a/conditions.csv")))
        .isEqualTo(
            "sessions/a/conditions.csv: found only condition.csv, readings.csv in its folder;"
                + " expected a file of this name. To fix: write the file, or rename the one that is"
                + " meant. [file-missing]");
    assertThat(sentence(folder.read("sessions/b/conditions.csv")))
        .isEqualTo(
            "sessions/b/conditions.csv: found no such file; expected a file of this name."
                + " To fix: write the file. [file-missing]");
    assertThat(sentence(folder.read("nothing.md"))).contains("found only sessions in its folder");
  }

  @ParameterizedTest
  @ValueSource(strings = {"../outside.csv", "/etc/hosts", "a//b", "a/./b", "", ".x", "a\\b", "c:x"})
  void paths_with_other_names_are_refused(String path) throws IOException {
    Files.writeString(temporary.resolve("outside.csv"), "x");
    Checked<InputFile> read = new DiskFolder(root).read(path.isEmpty() ? "a/" : path);
    assertThat(sentence(read)).contains("[name-not-allowed]");
    assertThat(folder.has(path)).isFalse();
  }

  @Test
  void a_link_out_of_the_project_is_refused_and_a_link_within_it_is_followed() throws IOException {
    write("sessions/a/readings.csv");
    Files.writeString(temporary.resolve("outside.csv"), "x");
    Path outward = root.resolve("sessions/a/conditions.csv");
    Files.createSymbolicLink(outward, temporary.resolve("outside.csv"));
    Files.createSymbolicLink(root.resolve("sessions/b"), root.resolve("sessions/a"));
    assertThat(sentence(folder.read("sessions/a/conditions.csv")))
        .isEqualTo(
            "sessions/a/conditions.csv: found a link that leads out of the folder; expected a file"
                + " in the folder that can be read. To fix: put the file itself there."
                + " [file-unreadable]");
    assertThat(folder.read("sessions/b/readings.csv").isUsable()).isTrue();
  }

  @Test
  void folder_in_place_of_a_file_is_refused() throws IOException {
    Files.createDirectories(root.resolve("sessions/a/readings.csv"));
    assertThat(sentence(folder.read("sessions/a/readings.csv")))
        .isEqualTo(
            "sessions/a/readings.csv: found something that is not a file; expected a file in the"
                + " folder that can be read. To fix: put a file there. [file-unreadable]");
  }

  @Test
  void a_file_in_place_of_a_folder_has_no_entries() throws IOException {
    write("sessions");
    assertThat(folder.sessions().problems()).hasSize(1);
    assertThat(folder.read("sessions/a/readings.csv").isUsable()).isFalse();
  }

  @Test
  void an_unreadable_file_is_reported() throws IOException {
    Path file = write("sessions/a/readings.csv");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
    assumeThat(Files.isReadable(file)).as("an account that may read everything").isFalse();
    assertThat(sentence(folder.read("sessions/a/readings.csv")))
        .isEqualTo(
            "sessions/a/readings.csv: found no way to read it (AccessDeniedException); expected a"
                + " file in the folder that can be read. To fix: let your account read it."
                + " [file-unreadable]");
  }

  @Test
  void a_file_that_is_too_large_is_not_read() throws IOException {
    Path file = write("sessions/a/readings.csv");
    try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
      sparse.setLength(DiskFolder.LARGEST_FILE_BYTES + 1);
    }
    assertThat(sentence(folder.read("sessions/a/readings.csv")))
        .isEqualTo(
            "sessions/a/readings.csv: found 67108865 bytes; expected at most 67108864 bytes."
                + " To fix: keep the rows of one session only. [file-too-large]");
  }

  private Path write(String path) throws IOException {
    Path file = root.resolve(path);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, "x");
  }

  private static String sentence(Checked<?> checked) {
    assertThat(checked.isUsable()).isFalse();
    assertThat(checked.problems()).hasSize(1);
    return checked.problems().get(0).sentence();
  }

  private static List<String> sentences(Listing listing) {
    return listing.problems().stream().map(Problem::sentence).toList();
  }
}
