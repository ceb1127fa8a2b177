package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.cli.ExitStatus;
import taperbook.workspace.ReportLock;

/**
 * Links, pipes, and hard links to outside files in an untrusted project folder: nothing outside is
 * read, listed, or written, and each entry is reported with a remedy.
 */
@Timeout(value = 60, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
@Tag("slow")
final class HostileEntriesTest {
  private static final String LIBRARY =
      """
      ---
      kind: library
      title: All
      author: The corpus
      distances: 100 km
      window: 10-80 %
      units: km
      basis: driven
      ---
      All of them.
      """;

  @TempDir private Path temporary = Path.of("");
  private Path folder = Path.of("");
  private Path outside = Path.of("");

  @BeforeEach
  void copyValidFolderAndCreateFilesOutside() throws IOException {
    folder = temporary.resolve("project");
    outside = Files.createDirectories(temporary.resolve("outside"));
    Workplace.copy(CorpusFile.FOLDER.resolve("valid"), folder);
  }

  @ParameterizedTest
  @ValueSource(strings = {"link", "hard link", "pipe", "link to nowhere", "device"})
  void nothing_is_written_through_links_with_the_name_of_a_program_file(String kind)
      throws IOException {
    Files.writeString(folder.resolve("reports/all.md"), LIBRARY);
    List<Canary> canaries = new ArrayList<>();
    for (String name :
        List.of(
            "reports/.look.new-version",
            "reports/.all.rows",
            "reports/.all.rows.new-rows",
            "reports/look/.made",
            "reports/look/report.html",
            "reports/all/numbers.csv")) {
      Canary canary = Canary.in(outside, "canary" + canaries.size(), "line\n".repeat(20));
      canaries.add(canary);
      Path entry = folder.resolve(name);
      Files.createDirectories(entry.resolveSibling(""));
      put(kind, entry, canary.file());
    }
    Workplace place = new Workplace(folder);
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    for (Canary canary : canaries) {
      canary.assertUnchanged(kind);
      canary.assertUnread(place, kind);
    }
    assertThat(outside.resolve("nowhere")).doesNotExist();
    assertThat(names(folder.resolve("reports")))
        .containsExactly(".all.rows", "all", "all.md", "look", "look.md");
  }

  @Test
  void a_lock_that_is_a_hard_link_is_removed_and_its_target_unchanged() throws IOException {
    Canary canary = Canary.in(outside, "canary", "");
    put("hard link", folder.resolve("reports/.look.lock"), canary.file());
    Workplace place = new Workplace(folder);
    assertThat(place.run("report")).isEqualTo(ExitStatus.DONE);
    canary.assertUnchanged("hard link");
    canary.assertUnread(place, "hard link");
    assertThat(folder.resolve("reports/.look.lock")).doesNotExist();
  }

  @ParameterizedTest
  @ValueSource(strings = {"link", "pipe", "link to nowhere", "device"})
  void a_lock_that_is_not_a_file_stops_the_report_and_is_named(String kind) throws IOException {
    Canary canary = Canary.in(outside, "canary", "");
    put(kind, folder.resolve("reports/.look.lock"), canary.file());
    Workplace place = new Workplace(folder);
    assertThat(place.run("report")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err())
        .contains(
            ".look.lock is "
                + (kind.equals("pipe") ? "not what belongs there" : "a link")
                + ", and was neither followed nor changed. Remove it, then run again.");
    assertThat(folder.resolve("reports/look")).doesNotExist();
    assertThat(outside.resolve("nowhere")).doesNotExist();
    canary.assertUnchanged(kind);
  }

  @ParameterizedTest
  @ValueSource(strings = {"reports", "reports/look", "reports/.look.old-version"})
  void an_output_folder_that_is_a_link_stops_the_report_and_is_named(String name)
      throws IOException {
    Path entry = folder.resolve(name);
    Path target = outside.resolve("target");
    if (Files.exists(entry)) {
      Files.move(entry, target);
    } else {
      Files.createDirectories(target);
    }
    Canary canary = Canary.in(target, "corrections.csv", "");
    Files.createSymbolicLink(entry, target);
    List<String> before = names(target);
    Workplace place = new Workplace(folder);
    for (List<String> arguments :
        List.of(List.of("report"), List.of("report", "look"), List.of("check", "look"))) {
      assertThat(place.run(arguments.toArray(new String[0]))).isEqualTo(ExitStatus.INPUT_REFUSED);
      assertThat(place.err()).contains(name + " is a link");
      canary.assertUnread(place, name);
    }
    canary.assertUnchanged(name);
    assertThat(names(target)).isEqualTo(before);
  }

  @Test
  void blank_does_not_write_through_a_link_out_of_the_project() throws IOException {
    for (String name : List.of("sessions", "reports")) {
      Path target = Files.createDirectories(outside.resolve("of-" + name));
      Path moved = temporary.resolve("moved-" + name);
      Files.move(folder.resolve(name), moved);
      Files.createSymbolicLink(folder.resolve(name), target);
      Workplace place = new Workplace(folder);
      assertThat(place.run("blank", "session", "fresh"))
          .as(place.out())
          .isEqualTo(ExitStatus.INPUT_REFUSED);
      assertThat(place.err()).contains(name + " is a link that leads out of the project folder");
      assertThat(names(target)).isEmpty();
      Files.delete(folder.resolve(name));
      Files.move(moved, folder.resolve(name));
      deleteIfPresent(folder.resolve("sessions/fresh"));
    }
  }

  @Test
  void targets_of_links_in_sessions_and_templates_are_not_listed() throws IOException {
    Path secret = Files.createDirectories(outside.resolve("secrets"));
    Canary canary = Canary.in(secret, Canary.MARK + ".csv", "");
    Files.createDirectories(secret.resolve("deep-" + Canary.MARK));
    Files.createSymbolicLink(folder.resolve("sessions/x"), secret);
    Files.createSymbolicLink(folder.resolve("sessions/stop/inner"), secret);
    Workplace place = new Workplace(folder);
    assertThat(place.run("report")).isEqualTo(ExitStatus.DONE);
    assertThat(place.err()).contains("sessions/x, a link that leads out of the folder");
    canary.assertUnread(place, "sessions/x");
    Files.writeString(
        folder.resolve("reports/other.md"),
        place.text("reports/look.md").replace("session: stop", "session: x"));
    assertThat(place.run("report", "other")).isEqualTo(ExitStatus.INPUT_REFUSED);
    canary.assertUnread(place, "a report of x");
    Files.createSymbolicLink(folder.resolve("templates"), secret);
    assertThat(place.run("report")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("templates is a link that leads out of the project folder");
    canary.assertUnread(place, "templates");
    Files.delete(folder.resolve("templates"));
    ScriptedClock script = new ScriptedClock().idle();
    assertThat(place.run(script, "watch", "look")).isEqualTo(ExitStatus.DONE);
    canary.assertUnread(place, "watch");
  }

  @Test
  void a_sessions_folder_that_is_a_link_is_reported_and_not_listed() throws IOException {
    Path target = outside.resolve("sessions");
    Files.move(folder.resolve("sessions"), target);
    Canary canary = Canary.in(target.resolve(Canary.MARK), "readings.csv", "");
    Files.createSymbolicLink(folder.resolve("sessions"), target);
    Workplace place = new Workplace(folder);
    assertThat(place.run("report")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err())
        .contains("error  sessions\n", "a link that leads out of the folder", "file-unreadable");
    canary.assertUnread(place, "sessions");
  }

  @ParameterizedTest
  @ValueSource(strings = {"sessions", "reports", "templates", "sessions/x", "sessions/stop"})
  void a_pipe_in_place_of_a_folder_does_not_block(String name) throws IOException {
    Path entry = folder.resolve(name);
    if (Files.exists(entry)) {
      Files.move(entry, folder.resolve("moved"));
    }
    Canary.pipe(entry);
    for (String command : List.of("report", "check")) {
      assertThat(new Workplace(folder).run(command))
          .isIn(ExitStatus.DONE, ExitStatus.INPUT_REFUSED);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"link", "pipe", "device", "folder"})
  void earlier_versions_are_read_from_regular_files_only(String kind) throws IOException {
    for (String name :
        List.of(
            "reports/look/published",
            "reports/look/published/report-2026-01-01.pdf",
            "reports/look/corrections.csv")) {
      Canary canary = Canary.in(outside, "canary", "");
      Path entry = folder.resolve(name);
      Files.createDirectories(entry.resolveSibling(""));
      if (kind.equals("folder")) {
        Files.createDirectories(entry);
      } else {
        put(kind, entry, name.endsWith("published") ? outside : canary.file());
      }
      Workplace place = new Workplace(folder);
      ExitStatus status = place.run("report");
      if (!kind.equals("folder") || !name.endsWith("published")) {
        assertThat(status).as(name + place.out()).isEqualTo(ExitStatus.INPUT_REFUSED);
        assertThat(place.err()).contains(Path.of(name).getFileName().toString()).contains("emove");
      }
      canary.assertUnread(place, name);
      canary.assertUnchanged(name);
      deleteIfPresent(folder.resolve("reports/look"));
    }
  }

  @Test
  void a_file_above_the_size_limit_is_not_read_into_memory() throws IOException {
    for (String name : List.of("reports/look/.made", "reports/look/corrections.csv")) {
      assertThat(new Workplace(folder).run("report")).isEqualTo(ExitStatus.DONE);
      Path entry = folder.resolve(name);
      try (var sparse = new java.io.RandomAccessFile(entry.toFile(), "rw")) {
        sparse.setLength(5L << 30);
      }
      Workplace place = new Workplace(folder);
      assertThat(place.run("report")).as(name).isIn(ExitStatus.DONE, ExitStatus.INPUT_REFUSED);
      assertThat(place.err()).doesNotContain("memory");
      Files.deleteIfExists(entry);
    }
  }

  @Test
  void the_testers_links_next_to_a_report_are_kept_and_named() throws IOException {
    Canary canary = Canary.in(outside, "secret", "");
    Path report = Files.createDirectories(folder.resolve("reports/look"));
    Files.createSymbolicLink(report.resolve("photo.jpg"), canary.file());
    Files.createSymbolicLink(report.resolve("album"), outside);
    Files.createDirectories(report.resolve("own"));
    Files.writeString(report.resolve("own/notes.txt"), "mine");
    Files.createSymbolicLink(report.resolve("own/inner"), Path.of("notes.txt"));
    Canary.pipe(report.resolve("own/pipe"));
    Workplace place = new Workplace(folder);
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.err())
        .contains(
            "Links that lead out of the project were kept beside the report, and nothing of what"
                + " they lead to was read: album, photo.jpg");
    for (int i = 0; i < 2; i++) {
      assertThat(report.resolve("photo.jpg")).isSymbolicLink();
      assertThat(report.resolve("album")).isSymbolicLink();
      assertThat(report.resolve("own/inner")).isSymbolicLink();
      assertThat(report.resolve("own/notes.txt")).hasContent("mine");
      assertThat(Files.exists(report.resolve("own/pipe"), LinkOption.NOFOLLOW_LINKS)).isTrue();
      assertThat(report.resolve("report.html")).isRegularFile();
      canary.assertUnread(place, "own links");
      place.replace("reports/look.md", "An invented look", "An invented look again");
      assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    }
    canary.assertUnchanged("own links");
    assertThat(names(folder.resolve("reports"))).containsExactly("look", "look.md");
  }

  @Test
  void the_testers_files_with_reserved_names_stop_the_report_before_any_change()
      throws IOException {
    Path report = Files.createDirectories(folder.resolve("reports/look"));
    Files.createSymbolicLink(report.resolve("data"), outside);
    Workplace place = new Workplace(folder);
    assertThat(place.run("report")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("look/data is in its way");
    assertThat(names(outside)).isEmpty();
    assertThat(names(report)).containsExactly("data");
    assertThat(names(folder.resolve("reports"))).containsExactly("look", "look.md");
  }

  @Test
  void no_file_of_the_tester_is_moved_through_a_link() throws IOException {
    Path old = Files.createDirectories(folder.resolve("reports/.look.old-version/a"));
    Files.writeString(old.resolve("b"), "mine");
    Files.createDirectories(folder.resolve("reports/look"));
    Files.createSymbolicLink(folder.resolve("reports/look/a"), outside);
    Workplace place = new Workplace(folder);
    assertThat(place.run("report")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("look/a is not a folder", "Move it yourself");
    assertThat(names(outside)).isEmpty();
    assertThat(old.resolve("b")).hasContent("mine");
  }

  @Test
  void the_next_run_moves_the_testers_files_after_a_run_killed_after_its_renames()
      throws IOException {
    Workplace place = new Workplace(folder);
    assertThat(place.run("report")).isEqualTo(ExitStatus.DONE);
    Path reports = folder.resolve("reports");
    Path old = Files.createDirectories(reports.resolve(".look.old-version"));
    Files.copy(reports.resolve("look/.made"), old.resolve(".made"));
    Files.writeString(old.resolve("report.html"), "the page before");
    Files.createDirectories(old.resolve("own"));
    Files.writeString(old.resolve("own/notes.txt"), "mine");
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(reports.resolve("look/own/notes.txt")).hasContent("mine");
    assertThat(place.text("reports/look/report.html")).doesNotContain("the page before");
    assertThat(old).doesNotExist();
  }

  @Test
  void a_file_of_the_tester_in_both_versions_is_neither_lost_nor_overwritten() throws IOException {
    Workplace place = new Workplace(folder);
    assertThat(place.run("report")).isEqualTo(ExitStatus.DONE);
    Path reports = folder.resolve("reports");
    Path old = Files.createDirectories(reports.resolve(".look.old-version"));
    Files.writeString(old.resolve("notes.txt"), "before");
    Files.writeString(reports.resolve("look/notes.txt"), "after");
    assertThat(place.run("report")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("notes.txt is in both", "Move it yourself");
    assertThat(old.resolve("notes.txt")).hasContent("before");
    assertThat(reports.resolve("look/notes.txt")).hasContent("after");
  }

  @Test
  void a_lock_excludes_other_processes_until_its_owner_exits() throws Exception {
    Path reports = folder.resolve("reports");
    Process owner = LockHolder.start(reports);
    try {
      Process second =
          new ProcessBuilder(
                  owner.info().command().orElseThrow(),
                  "-cp",
                  System.getProperty("java.class.path"),
                  LockHolder.class.getName(),
                  reports.toString())
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      try {
        assertThat(second.waitFor(3, TimeUnit.SECONDS)).isFalse();
        assertThat(second.getInputStream().available()).as("the second has no lock").isZero();
        owner.destroyForcibly().waitFor();
        assertThat(second.getInputStream().readNBytes(11)).asString().isEqualTo("holds false");
      } finally {
        second.destroyForcibly().waitFor();
      }
    } finally {
      owner.destroyForcibly().waitFor();
    }
    try (ReportLock lock = ReportLock.of(reports, "look")) {
      assertThat(lock.waited()).as("a dead process holds nothing").isFalse();
    }
  }

  private static void put(String kind, Path entry, Path target) throws IOException {
    Files.deleteIfExists(entry);
    switch (kind) {
      case "link" -> Files.createSymbolicLink(entry, target);
      case "hard link" -> Files.createLink(entry, target);
      case "link to nowhere" -> Files.createSymbolicLink(entry, target.resolveSibling("nowhere"));
      case "device" -> Files.createSymbolicLink(entry, Path.of("/dev/zero"));
      default -> Canary.pipe(entry);
    }
  }

  private static List<String> names(Path of) throws IOException {
    try (Stream<Path> all = Files.list(of)) {
      return all.map(p -> String.valueOf(p.getFileName())).sorted().toList();
    }
  }

  private static void deleteIfPresent(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path each : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
          Files.delete(each);
        }
      }
    }
  }
}
