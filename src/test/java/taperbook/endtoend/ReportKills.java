package taperbook.endtoend;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import taperbook.Main;
import taperbook.session.InputFile;
import taperbook.workspace.PublishedFolder;

/**
 * Runs the program's {@code report} as a process for a small project, edits a reading before each
 * run, and kills the process: every second time at a uniformly distributed instant of the run,
 * otherwise soon after it has started to write, which is a small part of the run. After each kill,
 * the published report must be one of two complete versions; after the next complete run, it must
 * be the version of the current readings, without leftovers. A file of the tester next to the
 * report is moved from each version to the next and is never lost.
 *
 * <p>Each of the two versions is built without a kill in a separate folder, and its PDF must
 * verify.
 */
final class ReportKills {
  private static final String READINGS = "sessions/stop/readings.csv";
  private static final String FIRST = "7:30,40,130,";
  private static final String EDITED = "7:30,40,131,";
  private static final String OWN = "own/notes.txt";
  private static final long MOST_SECONDS = 1800;
  private static final long NANOS_OF_WRITING = 100_000_000;

  /** Upper limit of consecutive kills without a complete run. */
  private static final int MOST_IN_A_ROW = 3;

  private final List<String> program;
  private final Path folder;
  private final Random random;
  private final PrintStream log;
  private final List<SortedMap<String, String>> versions = new ArrayList<>();
  private long nanosOfRun;
  private boolean edited;

  /** How many kills there were, and in which state they left the report. */
  record KillCounts(int kills, int tooLate, int oldVersion, int newVersion, int leftBehind) {}

  ReportKills(List<String> program, Path folder, long seed, PrintStream log) {
    this.program = List.copyOf(program);
    this.folder = folder;
    this.random = new Random(seed);
    this.log = log;
  }

  /**
   * Kills runs of a launcher until stopped or done.
   *
   * @param arguments number of kills, the launcher, and a working folder
   */
  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createDirectories(Path.of(arguments[2]));
    List<String> program = List.of(arguments[1]);
    KillCounts counts =
        new ReportKills(program, folder, 20261125, System.out)
            .killRuns(Integer.parseInt(arguments[0]));
    System.out.println("done: " + counts);
  }

  /** Kills the given number of runs; fails at the first invalid state. */
  KillCounts killRuns(int kills) throws IOException, InterruptedException {
    buildBothVersions();
    Path project = project("killed");
    expectDone(start(project));
    Path own = project.resolve("reports/look").resolve(OWN);
    Files.createDirectories(own.resolve(".."));
    Files.writeString(own, OWN);
    edited = false;
    int done = 0;
    int tooLate = 0;
    int old = 0;
    int fresh = 0;
    int left = 0;
    while (done < kills) {
      int before = version(project);
      editReading(project);
      int row = 1 + random.nextInt(MOST_IN_A_ROW);
      for (int i = 0; i < row && done < kills; i++) {
        boolean killed = killOnce(project);
        int is = version(project);
        done += killed ? 1 : 0;
        tooLate += killed ? 0 : 1;
        old += killed && is == before ? 1 : 0;
        fresh += killed && is != before ? 1 : 0;
        left += entries(project).equals(List.of("look", "look.md")) ? 0 : 1;
      }
      expectDone(start(project));
      expect(Files.exists(own), "the tester's own file is beside the report");
      expect(version(project) == (edited ? 1 : 0), "the next run makes what was asked for");
      expect(entries(project).equals(List.of("look", "look.md")), "nothing is left behind");
      log.println(
          done + " kills, old " + old + ", new " + fresh + ", left " + left + ", late " + tooLate);
    }
    return new KillCounts(done, tooLate, old, fresh, left);
  }

  /**
   * Builds both versions without a kill; the second run of the second one gives the duration of a
   * run.
   */
  private void buildBothVersions() throws IOException, InterruptedException {
    for (int i = 0; i < 2; i++) {
      Path project = project("whole" + i);
      if (i == 1) {
        editReading(project);
      }
      long start = System.nanoTime();
      expectDone(start(project));
      nanosOfRun = System.nanoTime() - start;
      versions.add(hashes(project.resolve("reports/look")));
      expectDone(start(project, "verify", project.resolve("reports/look/report.pdf").toString()));
    }
    expect(!versions.get(0).equals(versions.get(1)), "a corrected reading makes another version");
  }

  private boolean killOnce(Path project) throws IOException, InterruptedException {
    Process process = start(project);
    boolean whileWriting = random.nextBoolean();
    if (whileWriting) {
      Path begun = project.resolve("reports/.look.new-version");
      while (!Files.exists(begun) && !process.waitFor(1, TimeUnit.MILLISECONDS)) {}
    }
    long nanos = (long) (random.nextDouble() * (whileWriting ? NANOS_OF_WRITING : nanosOfRun));
    boolean ended = process.waitFor(nanos, TimeUnit.NANOSECONDS);
    process.destroyForcibly().waitFor();
    return !ended;
  }

  /** Returns the published version, or fails if it is not complete. */
  private int version(Path project) throws IOException {
    Path published = PublishedFolder.current(project.resolve("reports"), "look");
    SortedMap<String, String> found = hashes(published);
    found.remove(OWN);
    if (project.endsWith("killed")) {
      List<Path> places = List.of(Path.of("look"), Path.of(".look.old-version"));
      long copies =
          places.stream()
              .map(place -> project.resolve("reports").resolve(place).resolve(OWN))
              .filter(Files::exists)
              .count();
      expect(copies == 1, "the tester's own file is there once, not " + copies + " times");
    }
    int version = versions.indexOf(found);
    if (version < 0) {
      SortedMap<String, String> more = new TreeMap<>(found);
      more.entrySet().removeAll(versions.get(0).entrySet());
      throw new IllegalStateException(
          "neither version is whole in " + published + "; not of the first: " + more.keySet());
    }
    return version;
  }

  private void editReading(Path project) throws IOException {
    Path file = project.resolve(READINGS);
    String text = Files.readString(file);
    String from = text.contains(FIRST) ? FIRST : EDITED;
    edited = from.equals(FIRST);
    Files.writeString(file, text.replace(from, edited ? EDITED : FIRST));
  }

  private Path project(String name) throws IOException {
    Path project = folder.resolve(name);
    Path valid = CorpusFile.FOLDER.resolve("valid");
    try (Stream<Path> all = Files.walk(valid)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        Path copy = project.resolve(valid.relativize(file).toString());
        Files.createDirectories(copy.resolve(".."));
        Files.copy(file, copy);
      }
    }
    return project;
  }

  private Process start(Path project) throws IOException {
    return start(project, "report", "--folder", project.toString());
  }

  private Process start(Path project, String... arguments) throws IOException {
    List<String> command = new ArrayList<>(program);
    command.addAll(Arrays.asList(arguments));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(project.resolve("said.txt").toFile())
        .start();
  }

  private static void expectDone(Process process) throws InterruptedException {
    expect(process.waitFor(MOST_SECONDS, TimeUnit.SECONDS), "a whole run ends");
    expect(process.exitValue() == 0, "a whole run is done, not " + process.exitValue());
  }

  private static void expect(boolean holds, String what) {
    if (!holds) {
      throw new IllegalStateException("it does not hold that " + what);
    }
  }

  private static List<String> entries(Path project) throws IOException {
    try (Stream<Path> all = Files.list(project.resolve("reports"))) {
      // The cache of file stats is not part of a report, and stays.
      return all.map(p -> String.valueOf(p.getFileName()))
          .filter(name -> !name.equals(".looks"))
          .sorted()
          .toList();
    }
  }

  private static SortedMap<String, String> hashes(Path of) throws IOException {
    Map<String, String> found = new TreeMap<>();
    try (Stream<Path> all = Files.walk(of)) {
      all.filter(Files::isRegularFile)
          .forEach(file -> found.put(of.relativize(file).toString(), hash(file)));
    }
    return new TreeMap<>(found);
  }

  private static String hash(Path file) {
    try {
      return new InputFile("published", Files.readAllBytes(file)).sha256();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The program from the class path of the tests, without the launcher. */
  static List<String> ofTheTests() {
    return List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-XX:TieredStopAtLevel=1",
        "-XX:+UseSerialGC",
        "-Djava.awt.headless=true",
        "-cp",
        System.getProperty("java.class.path"),
        Main.class.getName());
  }
}
