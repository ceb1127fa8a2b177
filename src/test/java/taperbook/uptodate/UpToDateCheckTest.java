package taperbook.uptodate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What file stats alone prove, and above all when they prove nothing. */
final class UpToDateCheckTest {
  private static final String SESSION = "sessions/visit";
  private static final String READINGS = SESSION + "/readings.csv";
  private static final String ARTICLE = "reports/first.md";
  private static final List<String> PATHS = List.of(ARTICLE, SESSION, READINGS, "templates");
  private static final String FINGERPRINT = "a1b2";

  @TempDir private Path root = Path.of("");
  private Path program = Path.of("");

  @BeforeEach
  void writeProjectWithReport() throws IOException {
    program = file("program.jar", "jar");
    file(READINGS, "elapsed [s]\n1\n");
    file(ARTICLE, "text");
    file("reports/first/report.html", "page");
    file(
        "reports/first/" + OutputStatus.STAMP,
        OutputStatus.stampHead(FINGERPRINT) + "\nreport.html\n");
  }

  @Test
  void a_report_with_unchanged_file_stats_is_up_to_date() throws IOException {
    cacheReport();
    assertThat(answer("report")).isEqualTo("first  up to date\n");
    assertThat(answer("report", "first", "first"))
        .isEqualTo("first  up to date\nfirst  up to date\n");
  }

  @Test
  void leftovers_of_a_killed_run_are_deleted_and_those_of_a_running_one_are_kept()
      throws IOException {
    // No process has this number: the limit of Linux is 4,194,304 by proc(5).
    file("reports/.looks.new-999999999", "");
    long parent = ProcessHandle.current().parent().map(ProcessHandle::pid).orElse(1L);
    file("reports/.looks.new-" + parent, "");
    cacheReport();
    assertThat(root.resolve("reports/.looks.new-999999999")).doesNotExist();
    assertThat(root.resolve("reports/.looks.new-" + parent)).exists();
  }

  @Test
  void a_missing_or_corrupt_cache_proves_nothing() throws IOException {
    assertThat(answer("report")).isEmpty();
    cacheReport();
    Path cache = root.resolve("reports/.looks");
    String whole = Files.readString(cache);
    for (int end = 0; end < whole.length() - 1; end += 7) {
      Files.writeString(cache, whole.substring(0, end));
      assertThat(answer("report")).as("cut off at " + end).isEmpty();
    }
  }

  @Test
  void an_edit_of_equal_size_and_time_is_detected() throws IOException {
    cacheReport();
    Path readings = root.resolve(READINGS);
    FileTime before = Files.getLastModifiedTime(readings);
    Files.writeString(readings, "elapsed [s]\n2\n");
    Files.setLastModifiedTime(readings, before);
    assertThat(Files.getLastModifiedTime(readings)).isEqualTo(before);
    assertThat(answer("report")).isEmpty();
    assertThat(answer("report", "first")).isEmpty();
  }

  /** A change within the clock tick of the reading must not be trusted. */
  @Test
  void files_changed_after_the_start_of_the_run_are_not_cached() throws IOException {
    waitForTheClock();
    try (StatCache update = StatCache.begin(root, program, "")) {
      update.enterFolders(List.of("sessions", SESSION));
      file(READINGS, "elapsed [s]\n3\n");
      update.enter("first", FINGERPRINT, PATHS);
    }
    assertThat(answer("report")).isEmpty();
    assertThat(answer("report", "first")).isEmpty();
    cacheReport();
    assertThat(answer("report")).isNotEmpty();
  }

  @Test
  void the_clock_tick_of_the_mark_is_too_late_and_the_previous_one_is_not() {
    assertThat(new FileStat("f", 1000).isSettled(1001)).isTrue();
    assertThat(new FileStat("f", 1000).isSettled(1000)).isFalse();
  }

  @Test
  void the_later_one_of_both_times_counts() throws IOException {
    Path future = file("future", "");
    Files.setLastModifiedTime(future, FileTime.from(Instant.parse("2100-01-01T00:00:00Z")));
    Path past = file("past", "");
    Files.setLastModifiedTime(past, FileTime.from(Instant.EPOCH));
    long now = FileStat.of(file("now", "")).changedNanoseconds();

    assertThat(FileStat.of(future).isSettled(now)).isFalse();
    assertThat(FileStat.of(past).changedNanoseconds()).isCloseTo(now, within(60_000_000_000L));
    assertThat(FileStat.of(root.resolve("absent")).isSettled(0)).isTrue();
  }

  @Test
  void a_new_session_a_new_report_and_a_new_template_are_detected() throws IOException {
    cacheReport();
    file("sessions/other/readings.csv", "");
    assertThat(answer("report")).isEmpty();
    assertThat(answer("report", "first")).isNotEmpty();
    cacheReport();
    file("reports/second.md", "");
    assertThat(answer("report")).isEmpty();
    assertThat(answer("report", "second")).isEmpty();
    Files.delete(root.resolve("reports/second.md"));
    assertThat(answer("report")).isNotEmpty();
    file("templates/report.ftlh", "");
    assertThat(answer("report")).isEmpty();
    assertThat(answer("report", "first")).isEmpty();
  }

  @Test
  void a_missing_output_another_fingerprint_and_an_active_run_are_detected() throws IOException {
    cacheReport();
    Files.delete(root.resolve("reports/first/report.html"));
    assertThat(answer("report")).isEmpty();
    file("reports/first/report.html", "page");
    assertThat(answer("report")).isNotEmpty();
    file("reports/first/" + OutputStatus.STAMP, OutputStatus.stampHead("c3d4") + "\nreport.html\n");
    assertThat(answer("report")).isEmpty();
    file(
        "reports/first/" + OutputStatus.STAMP,
        OutputStatus.stampHead(FINGERPRINT) + "\nreport.html\n");
    assertThat(answer("report")).isNotEmpty();
    Files.createDirectories(OutputStatus.fresh(root.resolve("reports"), "first"));
    assertThat(answer("report")).isEmpty();
  }

  @Test
  void another_program_and_another_report_date_are_detected() throws IOException {
    cacheReport();
    assertThat(printed(program, "1700000000", "report")).isEmpty();
    assertThat(printed(file("other.jar", "jar"), "", "report")).isEmpty();
    assertThat(printed(root, "", "report")).isEmpty();
    Files.writeString(program, "JAR");
    assertThat(answer("report")).isEmpty();
  }

  @Test
  void other_commands_and_options_are_passed_to_the_program() throws IOException {
    cacheReport();
    for (String word : List.of("check", "--help", "--version", "-h")) {
      assertThat(answer(word)).isEmpty();
      assertThat(answer("report", word)).isEmpty();
    }
    assertThat(answer("report", "*")).isEmpty();
    assertThat(printed(program, "", new String[0])).isEmpty();
  }

  @Test
  void one_corrected_report_keeps_the_others_cached() throws IOException {
    file("reports/second.md", "text");
    file("reports/second/" + OutputStatus.STAMP, OutputStatus.stampHead("9") + "\n");
    waitForTheClock();
    try (StatCache update = StatCache.begin(root, program, "")) {
      update.enter("first", FINGERPRINT, PATHS);
      update.enter("second", "9", List.of("reports/second.md"));
    }
    file(ARTICLE, "more text");
    waitForTheClock();
    try (StatCache update = StatCache.begin(root, program, "")) {
      assertThat(update.isUpToDate("first")).isFalse();
      assertThat(update.isUpToDate("second")).isTrue();
      update.enter("first", FINGERPRINT, PATHS);
    }
    assertThat(answer("report", "first", "second"))
        .isEqualTo("first  up to date\nsecond  up to date\n");
  }

  @Test
  void no_link_is_followed_to_the_cache_or_the_output() throws IOException {
    Path outside = file("outside", "canary");
    Path scratch = root.resolve("reports/.looks.new-" + ProcessHandle.current().pid());
    Path cache = root.resolve("reports/.looks");
    for (boolean hard : new boolean[] {true, false}) {
      for (Path each : List.of(scratch, cache)) {
        Files.deleteIfExists(each);
        if (hard) {
          Files.createLink(each, outside);
        } else {
          Files.createSymbolicLink(each, outside);
        }
      }
      cacheReport();
      assertThat(outside).hasContent("canary");
      assertThat(scratch).doesNotExist();
      assertThat(Files.isSymbolicLink(cache)).isFalse();
      assertThat(answer("report")).isNotEmpty();
    }
    Files.move(cache, root.resolve("moved"));
    Files.createSymbolicLink(cache, root.resolve("moved"));
    assertThat(answer("report")).isEmpty();
  }

  @Test
  void reports_elsewhere_are_neither_read_nor_written() throws IOException {
    cacheReport();
    Path elsewhere = root.resolveSibling(root.getFileName() + "-elsewhere");
    Files.move(root.resolve("reports"), elsewhere);
    Files.createSymbolicLink(root.resolve("reports"), elsewhere);
    assertThat(answer("report")).isEmpty();
    Files.delete(elsewhere.resolve(".looks"));
    cacheReport();
    assertThat(elsewhere.resolve(".looks")).doesNotExist();
    Files.delete(root.resolve("reports"));
    Files.move(elsewhere, root.resolve("reports"));
  }

  @Test
  @Timeout(60)
  void a_pipe_in_place_of_reports_does_not_block() throws Exception {
    Files.move(root.resolve("reports"), root.resolve("moved"));
    Process mkfifo = new ProcessBuilder("mkfifo", root.resolve("reports").toString()).start();
    assumeTrue(mkfifo.waitFor() == 0, "a pipe can be made");
    cacheReport();
    assertThat(answer("report")).isEmpty();
  }

  @Test
  void no_control_code_in_a_name_is_printed() throws IOException {
    String name = "\u001b[2J";
    file("reports/" + name + ".md", "text");
    file("reports/" + name + "/" + OutputStatus.STAMP, OutputStatus.stampHead("9") + "\n");
    waitForTheClock();
    try (StatCache update = StatCache.begin(root, program, "")) {
      update.enterFolders(List.of("sessions"));
      update.enter("first", FINGERPRINT, PATHS);
      update.enter(name, "9", List.of());
    }
    assertThat(answer("report")).isEmpty();
    assertThat(answer("report", name)).isEmpty();
    assertThat(answer("report", "first")).isNotEmpty();
  }

  /** Caches the report as a run that finds it up to date. */
  private void cacheReport() throws IOException {
    waitForTheClock();
    try (StatCache update = StatCache.begin(root, program, "")) {
      update.enterFolders(List.of("sessions", SESSION));
      update.enter("first", FINGERPRINT, PATHS);
    }
  }

  /** Waits until the clock of the file system has advanced after the last write. */
  private void waitForTheClock() throws IOException {
    Path first = file("tick", "");
    long then = FileStat.of(first).changedNanoseconds();
    while (FileStat.of(file("tick", "")).changedNanoseconds() <= then) {
      Thread.onSpinWait();
    }
  }

  private String answer(String... arguments) {
    return printed(program, "", arguments);
  }

  private String printed(Path asProgram, String environment, String... arguments) {
    String[] all = new String[arguments.length == 0 ? 0 : arguments.length + 2];
    System.arraycopy(arguments, 0, all, 0, arguments.length);
    if (all.length > 0) {
      all[all.length - 2] = "--folder";
      all[all.length - 1] = root.toString();
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream text = new PrintStream(out, true, StandardCharsets.UTF_8);
    boolean known = UpToDateCheck.nothingToDo(all, asProgram, environment, text);
    String printed = out.toString(StandardCharsets.UTF_8);
    assertThat(printed.isEmpty()).isEqualTo(!known);
    return printed;
  }

  private Path file(String path, String text) throws IOException {
    Path file = root.resolve(path);
    Files.createDirectories(file.resolve("..").normalize());
    return Files.writeString(file, text);
  }
}
