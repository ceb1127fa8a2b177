package taperbook.uptodate;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import taperbook.input.folder.RegularFile;

/**
 * Updates the status cache during one run. A report is entered only if all of its inputs were last
 * changed before the run began, by the clock of the file system itself: as in version control
 * systems, the status does not reveal a change in the same clock tick as the read. If the cache
 * cannot be written, files are read instead.
 *
 * @see <a href="https://git-scm.com/docs/racy-git">racy-git</a>
 */
public final class StatCacheUpdate implements AutoCloseable {
  /** Name prefix of a run's temporary file; its process number follows. */
  private static final String SCRATCH = ".looks.new-";

  private final Path root;
  private final Path reports;
  private final StatCache fresh;
  private final @Nullable Path scratch;
  private final long markNanoseconds;
  private final String templatesBefore;
  private final @Nullable StatCache known;
  private boolean changed;

  /** Starts a run; must be called before anything that reports depend on is read. */
  public static StatCacheUpdate begin(Path root, Path program, String environment) {
    Path reports = root.resolve("reports");
    if (!Files.isDirectory(reports) || RegularFile.isOutside(root, reports)) {
      return none(root);
    }
    StatCache last = StatCache.in(reports);
    try {
      String status = programStatus(program);
      boolean same =
          last != null && last.environment().equals(environment) && last.program().equals(status);
      clear(reports);
      Path scratch = reports.resolve(SCRATCH + ProcessHandle.current().pid());
      Files.deleteIfExists(scratch);
      try (OutputStream out = RegularFile.create(scratch)) {
        out.write('\n');
      }
      long mark = FileStat.changedNanoseconds(scratch);
      if (!FileStat.isSettled(status, mark)) {
        Files.delete(scratch);
        return none(root);
      }
      return new StatCacheUpdate(
          root, new StatCache(status, environment), scratch, mark, same ? last : null);
    } catch (IOException | RuntimeException e) {
      return none(root);
    }
  }

  /** Deletes temporary files of killed runs. */
  private static void clear(Path reports) throws IOException {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(reports, SCRATCH + "*")) {
      for (Path file : left) {
        String pid = String.valueOf(file.getFileName()).substring(SCRATCH.length());
        if (pid.matches("[0-9]{1,18}") && ProcessHandle.of(Long.parseLong(pid)).isEmpty()) {
          Files.deleteIfExists(file);
        }
      }
    }
  }

  /** Returns an update that stores nothing, so that every file is read. */
  static StatCacheUpdate none(Path root) {
    return new StatCacheUpdate(root, new StatCache("", ""), null, 0, null);
  }

  private StatCacheUpdate(
      Path root,
      StatCache fresh,
      @Nullable Path scratch,
      long markNanoseconds,
      @Nullable StatCache known) {
    this.root = root;
    this.reports = root.resolve("reports");
    this.fresh = fresh;
    this.scratch = scratch;
    this.markNanoseconds = markNanoseconds;
    this.templatesBefore = statusOrEmpty("templates");
    this.known = known;
  }

  /**
   * Returns the status of a program's jar.
   *
   * @throws IOException if the program is unpackaged or the status cannot be read
   */
  static String programStatus(Path program) throws IOException {
    if (!Files.isRegularFile(program)) {
      throw new IOException("not packed");
    }
    return FileStat.of(program);
  }

  private String statusOrEmpty(String path) {
    try {
      return FileStat.of(root.resolve(path));
    } catch (IOException e) {
      return "";
    }
  }

  /** Returns true if the file status proves that a report is up to date. */
  public boolean isUpToDate(String report) {
    StatCache.Section section = known == null ? null : known.section(report);
    if (section == null
        || !section.isCurrent(root)
        || OutputStatus.isLocked(reports, report)
        || !OutputStatus.isWhole(reports, report, section.fingerprint)) {
      return false;
    }
    fresh.sections().put(report, section);
    return true;
  }

  /**
   * Enters a report that is up to date and for which there are no messages.
   *
   * @param paths everything it is built from, including folders that are listed
   */
  public void enter(String report, String fingerprint, List<String> paths) {
    StatCache.Section section = new StatCache.Section(fingerprint);
    for (String path : paths) {
      String status = statusOrEmpty(path);
      if (status.isEmpty() || !FileStat.isSettled(status, markNanoseconds)) {
        return;
      }
      section.statuses.add(status);
      section.paths.add(path);
    }
    changed = true;
    fresh.sections().put(report, section);
  }

  /** Enters the folders that a run over all reports lists, if there are no messages about them. */
  public void enterFolders(List<String> paths) {
    enter(StatCache.FOLDERS, "", paths);
  }

  /** Writes the cache if it has changed. */
  @Override
  public void close() {
    if (scratch == null) {
      return;
    }
    try {
      keepOtherSections();
      if (changed && statusOrEmpty("templates").equals(templatesBefore)) {
        fresh.write(reports, scratch);
      }
      Files.deleteIfExists(scratch);
    } catch (IOException e) {
      // The next run reads the files, like this one.
    }
  }

  /** Keeps the entries of reports that this run was not asked for. */
  private void keepOtherSections() {
    if (known != null) {
      for (Map.Entry<String, StatCache.Section> entry : known.sections().entrySet()) {
        fresh.sections().putIfAbsent(entry.getKey(), entry.getValue());
      }
    }
  }
}
