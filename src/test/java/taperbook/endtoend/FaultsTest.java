package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;
import taperbook.cli.WatchClock;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.input.folder.DiskFolder;
import taperbook.workspace.PublishedFolder;
import taperbook.workspace.ReportLock;
import taperbook.workspace.StoppedException;

/**
 * After any failure, published reports are complete, and the next run succeeds without manual
 * repair.
 */
@Tag("slow")
final class FaultsTest {
  private static final String READINGS = "sessions/stop/readings.csv";

  @TempDir private Path folder = Path.of("");

  @Test
  void a_process_killed_at_any_instant_leaves_one_complete_version() throws Exception {
    Random random = new Random(20261125);
    int kills = Integer.getInteger("kills", 25);
    for (int i = 0; i < kills; i++) {
      Process process =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-XX:TieredStopAtLevel=1",
                  "-cp",
                  System.getProperty("java.class.path"),
                  PublishingLoop.class.getName(),
                  folder.toString())
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      assertThat(process.getInputStream().read()).as("it publishes").isEqualTo('b');
      assertThat(process.waitFor(random.nextInt(100_000_000), TimeUnit.NANOSECONDS))
          .as("it publishes until it is killed")
          .isFalse();
      process.destroyForcibly().waitFor();
      assertWhole(PublishedFolder.current(folder, "look"), "kill " + i);
      new PublishedFolder(folder, "look").recover();
      assertWhole(folder.resolve("look"), "after kill " + i);
      try (ReportLock lock = ReportLock.of(folder, "look")) {
        assertThat(lock.waited()).as("a dead process holds nothing").isFalse();
      }
      assertThat(entries(folder)).as("nothing is left behind").containsExactly("look");
    }
  }

  /** Pass {@code -Dreport.kills=500} for more; {@link ReportKills} is also a program. */
  @Test
  void a_report_killed_at_any_instant_is_the_old_or_the_new_version_and_the_next_run_succeeds()
      throws Exception {
    int kills = Integer.getInteger("report.kills", 3);
    ReportKills.KillCounts counts =
        new ReportKills(ReportKills.ofTheTests(), folder, 20261125, System.out).killRuns(kills);
    assertThat(counts.kills()).isEqualTo(kills);
    assertThat(counts.oldVersion() + counts.newVersion()).isEqualTo(kills);
  }

  @Test
  void two_concurrent_runs_build_the_report_once_and_both_succeed() throws Exception {
    copyValid();
    try (AutoPool pool = new AutoPool(2)) {
      List<Callable<String>> runs = List.of(this::report, this::report);
      List<String> outputs = new ArrayList<>();
      for (Future<String> run : pool.all(runs)) {
        outputs.add(run.get());
      }
      assertThat(outputs).allMatch(s -> s.startsWith("DONE"));
      assertThat(outputs).anyMatch(s -> s.contains("look  made"));
    }
    assertThat(entries(folder.resolve("reports"))).containsExactly("look", "look.md");
    assertThat(report()).contains("up to date");
  }

  @Test
  void a_stale_lock_is_removed_although_the_report_is_up_to_date() throws Exception {
    copyValid();
    assertThat(report()).startsWith("DONE");
    Files.writeString(folder.resolve("reports/.look.lock"), "of a run that was killed");
    assertThat(report()).startsWith("DONE").contains("look  up to date");
    assertThat(entries(folder.resolve("reports"))).containsExactly("look", "look.md");
  }

  @Test
  void watch_does_not_publish_while_another_run_has_the_lock() throws Exception {
    copyValid();
    Workplace place = new Workplace(folder);
    CountDownLatch locked = new CountDownLatch(1);
    CountDownLatch publishes = new CountDownLatch(1);
    Thread watching = Thread.currentThread();
    try (AutoPool pool = new AutoPool(1)) {
      Future<Boolean> other =
          pool.begin(
              () -> {
                try (ReportLock lock = ReportLock.of(folder.resolve("reports"), "look")) {
                  locked.countDown();
                  publishes.await();
                  Waiting.until(
                      "the watching run waits for the lock",
                      Duration.ofSeconds(60),
                      () -> watching.getState() == Thread.State.TIMED_WAITING);
                  return !lock.waited() && !Files.exists(folder.resolve("reports/look"));
                }
              });
      locked.await();
      ScriptedClock script = new ScriptedClock().then(publishes::countDown).idle().idle();
      assertThat(place.run(script, "watch", "look")).isEqualTo(ExitStatus.DONE);
      assertThat(other.get()).as("nothing is published while the other has the lock").isTrue();
    }
    assertThat(place.out()).as(place.err()).containsOnlyOnce("look  made");
    assertThat(entries(folder.resolve("reports"))).containsExactly("look", "look.md");
  }

  @Test
  void an_internal_error_exits_with_3_and_is_reported() throws Exception {
    copyValid();
    Workplace place = new Workplace(folder);
    WatchClock broken = new ScriptedClock().then(() -> Objects.checkIndex(1, 0));
    assertThat(place.run(broken, "watch", "look")).isEqualTo(ExitStatus.OUR_FAULT);
    assertThat(place.err()).contains("a fault of the program").contains("IndexOutOfBounds");
    assertThat(entries(folder.resolve("reports"))).containsExactly("look.md");
  }

  @Test
  void a_full_disk_is_reported_and_keeps_the_old_version_until_there_is_space() throws Exception {
    try (SmallDisk disk = SmallDisk.of(folder.resolve("disk"), 12)) {
      copyValid(disk.folder());
      Workplace place = new Workplace(disk.folder());
      assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
      SortedMap<String, String> old = place.files("reports/look");
      place.replace(READINGS, "7:30,40,130,", "7:30,40,131,");
      Path filler = disk.fill(200_000);
      assertThat(place.run("report")).isEqualTo(ExitStatus.INPUT_REFUSED);
      assertThat(place.err())
          .contains("cannot be written to", "No space left on device", "is unchanged. Make room")
          .doesNotContain("Exception");
      assertThat(place.files("reports/look")).isEqualTo(old);
      assertThat(entries(disk.folder().resolve("reports"))).containsExactly("look", "look.md");
      Files.delete(filler);
      assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
      assertThat(place.files("reports/look").keySet()).isEqualTo(old.keySet());
      assertThat(place.text("reports/look/data/stop/readings.csv")).contains("7:30,40,131,");
    }
  }

  @Test
  void a_run_killed_between_its_renames_keeps_earlier_published_versions() throws Exception {
    copyValid();
    Workplace place = new Workplace(folder);
    place.replace("reports/look.md", "units: km", "state: published\nunits: km");
    assertThat(report()).startsWith("DONE");
    String kept = "versions/report-2026-04-24.pdf";
    SortedMap<String, String> before = place.files("reports/look");
    String found =
        before.keySet().stream().filter(f -> f.endsWith("2026-04-24.pdf")).findFirst().orElse(kept);
    Files.move(folder.resolve("reports/look"), folder.resolve("reports/.look.old-version"));
    place.replace("reports/look.md", "An invented look", "Another invented look");
    assertThat(report()).startsWith("DONE");
    SortedMap<String, String> after = place.files("reports/look");
    assertThat(after).containsKey(found);
    assertThat(entries(folder.resolve("reports"))).containsExactly("look", "look.md");
  }

  @Test
  void a_failed_replacement_is_reported_and_keeps_the_published_report() throws Exception {
    new PublishedFolder(folder, "look").replace(PublishingLoop.version("one"), "1");
    // A file name that every file system rejects simulates any failure during the replacement.
    Map<String, byte[]> bad = new TreeMap<>(PublishingLoop.version("two"));
    bad.put("z".repeat(300), new byte[1]);
    assertThatThrownBy(() -> new PublishedFolder(folder, "look").replace(bad, "2"))
        .isInstanceOf(StoppedException.class)
        .hasMessageContaining("File name too long")
        .hasMessageContaining("What was published there before is unchanged")
        .hasMessageContaining("Make room or make the folder writable, then run again.");
    assertWhole(folder.resolve("look"), "old");
    assertThat(entries(folder)).containsExactly("look");
  }

  @Test
  void a_read_only_folder_is_reported() throws Exception {
    copyValid();
    Path reports = folder.resolve("reports");
    assertThat(reports.toFile().setWritable(false)).isTrue();
    assumeFalse(Files.isWritable(reports), "root may write everywhere");
    assertThat(report())
        .startsWith("INPUT_REFUSED")
        .contains("cannot be written to")
        .contains("it may not be written")
        .doesNotContain("Exception");
  }

  @Test
  void a_file_that_vanishes_between_listing_and_reading_is_reported() throws Exception {
    copyValid();
    DiskFolder project = new DiskFolder(folder);
    assertThat(project.sessions().names()).containsExactly("stop");
    Files.delete(folder.resolve(READINGS));
    Checked<?> read = project.read(READINGS);
    assertThat(read.problems().stream().map(Problem::sentence))
        .containsExactly(
            READINGS
                + ": found only conditions.csv in its folder; expected a file of this name."
                + " To fix: write the file, or rename the one that is meant. [file-missing]");
  }

  private String report() {
    Workplace place = new Workplace(folder);
    ExitStatus status = place.run("report");
    return status + "\n" + place.out() + place.err();
  }

  private void copyValid() throws IOException {
    copyValid(folder);
  }

  private static void copyValid(Path to) throws IOException {
    Path valid = CorpusFile.FOLDER.resolve("valid");
    try (Stream<Path> all = Files.walk(valid)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        Path copy = to.resolve(valid.relativize(file).toString());
        Files.createDirectories(copy.resolve(".."));
        Files.copy(file, copy);
      }
    }
  }

  private static void assertWhole(Path published, String when) throws IOException {
    for (String word : List.of("one", "two")) {
      Map<String, byte[]> whole = PublishingLoop.version(word);
      boolean same = true;
      for (Map.Entry<String, byte[]> file : whole.entrySet()) {
        Path path = published.resolve(file.getKey());
        String there = Files.exists(path) ? Files.readString(path) : "";
        same &= there.equals(new String(file.getValue(), StandardCharsets.UTF_8));
      }
      if (same) {
        return;
      }
    }
    throw new AssertionError(when + ": neither version is whole in " + published);
  }

  private static List<String> entries(Path of) throws IOException {
    try (Stream<Path> all = Files.list(of)) {
      return all.map(p -> String.valueOf(p.getFileName())).sorted().toList();
    }
  }

  /** Shuts its threads down at the end of the test. */
  private record AutoPool(ExecutorService service) implements AutoCloseable {
    AutoPool(int threads) {
      this(Executors.newFixedThreadPool(threads));
    }

    List<Future<String>> all(List<Callable<String>> work) throws InterruptedException {
      return service.invokeAll(work);
    }

    <T> Future<T> begin(Callable<T> work) {
      return service.submit(work);
    }

    @Override
    public void close() {
      service.shutdownNow();
    }
  }
}
