package taperbook.uptodate;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import taperbook.input.folder.RegularFile;

/**
 * The file status of everything that up-to-date reports depend on, stored in {@code
 * reports/.looks}. It is only a cache: if it is missing or in any doubt, or cannot be written,
 * files are read.
 *
 * <p>A run enters a report only if all of its inputs were last changed before the run began, by the
 * clock of the file system itself: as in version control systems, the status does not reveal a
 * change in the same clock tick as the read.
 *
 * @see <a href="https://git-scm.com/docs/racy-git">racy-git</a>
 */
public final class StatCache implements AutoCloseable {
  /** Enough for the status and path of two hundred thousand files. */
  private static final long LARGEST_BYTES = 32L << 20;

  private static final String FILE = ".looks";
  private static final String HEAD = "taperbook looks 2";
  private static final String END = "end";
  private static final String TEMPLATES = "templates";

  /** Name prefix of a run's temporary file; its process number follows. */
  private static final String SCRATCH = ".looks.new-";

  /**
   * The section for what a run over all reports depends on in addition to them: the folders of
   * sessions.
   */
  private static final String FOLDERS = "*";

  private final Path root;
  private final Path reports;

  /** The status of the program's jar, and the environment that reports depend on. */
  private final String context;

  private final Map<String, Section> sections = new LinkedHashMap<>();
  private @Nullable Path scratch;
  private long markNanoseconds;
  private String templatesBefore = "";
  private boolean changed;

  private StatCache(Path root, String context) {
    this.root = root;
    this.reports = root.resolve("reports");
    this.context = context;
  }

  /**
   * The inputs of a report.
   *
   * @param fingerprint the report's fingerprint
   * @param statuses the status of each path
   */
  private record Section(String fingerprint, Map<String, String> statuses) {}

  /**
   * Reads the cache of a project; empty if it is missing, invalid, or of another context.
   *
   * @param program the jar of this program
   * @param environment the part of the environment that reports depend on
   * @throws IOException if the program is unpackaged, or there is no folder of reports in the
   *     project
   */
  static StatCache in(Path root, Path program, String environment) throws IOException {
    StatCache cache = new StatCache(root, FileStat.of(program).text() + " " + environment);
    if (!Files.isRegularFile(program)
        || !Files.isDirectory(cache.reports)
        || RegularFile.isOutside(root, cache.reports)) {
      throw new IOException("not cached");
    }
    try {
      cache.parse(RegularFile.lines(cache.reports.resolve(FILE), LARGEST_BYTES));
    } catch (IOException | RuntimeException e) {
      cache.sections.clear();
    }
    return cache;
  }

  private void parse(List<String> lines) {
    int last = lines.size() - 1;
    if (last < 2
        || !lines.get(0).equals(HEAD)
        || !lines.get(1).equals(context)
        || !lines.get(last).equals(END)) {
      return;
    }
    Map<String, String> statuses = new LinkedHashMap<>();
    for (String line : lines.subList(2, last)) {
      int space = line.indexOf(' ');
      String name = line.substring(space + 1);
      if (line.charAt(0) == '>') {
        statuses = new LinkedHashMap<>();
        sections.put(name, new Section(line.substring(1, space), statuses));
      } else {
        statuses.put(name, line.substring(0, space));
      }
    }
  }

  /** Starts a run; must be called before anything that reports depend on is read. */
  public static StatCache begin(Path root, Path program, String environment) {
    try {
      StatCache cache = in(root, program, environment);
      cache.begin(program);
      return cache;
    } catch (IOException | RuntimeException e) {
      return new StatCache(root, "");
    }
  }

  private void begin(Path program) throws IOException {
    clear();
    Path file = reports.resolve(SCRATCH + ProcessHandle.current().pid());
    Files.deleteIfExists(file);
    RegularFile.create(file).close();
    markNanoseconds = FileStat.of(file).changedNanoseconds();
    if (!FileStat.of(program).isSettled(markNanoseconds)) {
      Files.delete(file);
      throw new IOException("the program has just changed");
    }
    templatesBefore = status(TEMPLATES);
    scratch = file;
  }

  /** Deletes temporary files of killed runs. */
  private void clear() throws IOException {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(reports, SCRATCH + "*")) {
      for (Path file : left) {
        String pid = String.valueOf(file.getFileName()).substring(SCRATCH.length());
        if (pid.matches("[0-9]{1,18}") && ProcessHandle.of(Long.parseLong(pid)).isEmpty()) {
          Files.deleteIfExists(file);
        }
      }
    }
  }

  /** Returns the status of a path; empty if it cannot be read. */
  private String status(String path) {
    try {
      return FileStat.of(root.resolve(path)).text();
    } catch (IOException | InvalidPathException e) {
      return "";
    }
  }

  /** Returns a section if the status of each of its paths is unchanged. */
  private Optional<Section> current(String name) {
    return Optional.ofNullable(sections.get(name))
        .filter(
            section ->
                section.statuses.entrySet().stream()
                    .allMatch(entry -> entry.getValue().equals(status(entry.getKey()))));
  }

  /** Returns true if the file status proves that a report is up to date. */
  public boolean isUpToDate(String report) {
    return current(report)
        .filter(section -> OutputStatus.isWhole(reports, report, section.fingerprint))
        .filter(section -> !RegularFile.exists(OutputStatus.lock(reports, report)))
        .isPresent();
  }

  /** Returns true if the folders that a run over all reports lists are unchanged. */
  boolean areFoldersCurrent() {
    return current(FOLDERS).isPresent();
  }

  /**
   * Enters a report that is up to date and for which there are no messages.
   *
   * @param paths everything it is built from, including folders that are listed
   */
  public void enter(String report, String fingerprint, List<String> paths) {
    Map<String, String> statuses = new LinkedHashMap<>();
    try {
      for (String path : paths) {
        FileStat status = FileStat.of(root.resolve(path));
        if (!status.isSettled(markNanoseconds)) {
          return;
        }
        statuses.put(path, status.text());
      }
    } catch (IOException e) {
      return;
    }
    changed = true;
    sections.put(report, new Section(fingerprint, statuses));
  }

  /** Enters the folders that a run over all reports lists, if there are no messages about them. */
  public void enterFolders(List<String> paths) {
    enter(FOLDERS, "", paths);
  }

  /** Writes the cache if it has changed. */
  @Override
  public void close() {
    if (scratch == null) {
      return;
    }
    try {
      if (changed && status(TEMPLATES).equals(templatesBefore)) {
        write(scratch);
      }
      Files.deleteIfExists(scratch);
    } catch (IOException e) {
      // The next run reads the files, like this one.
    }
  }

  /** Replaces the cache file atomically. */
  private void write(Path file) throws IOException {
    StringBuilder text = new StringBuilder(HEAD + "\n" + context + "\n");
    sections.forEach(
        (name, section) -> {
          text.append(">" + section.fingerprint + " " + name + "\n");
          section.statuses.forEach((path, status) -> text.append(status + " " + path + "\n"));
        });
    Files.delete(file);
    try (OutputStream out = RegularFile.create(file)) {
      out.write(text.append(END + "\n").toString().getBytes(StandardCharsets.UTF_8));
    }
    Files.move(file, reports.resolve(FILE), StandardCopyOption.ATOMIC_MOVE);
  }
}
