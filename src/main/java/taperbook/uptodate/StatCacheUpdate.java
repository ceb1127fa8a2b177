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
 * Keeps the book of looks over one run. A report is entered only if everything it was made from was
 * last changed before the run began, by the clock of the file system itself: as version control
 * systems know it, a file that changes in the same tick in which it is read cannot be told by its
 * look. Nothing goes wrong where no book can be kept; files are read then.
 *
 * @see <a href="https://git-scm.com/docs/racy-git">racy-git</a>
 */
public final class StatCacheUpdate implements AutoCloseable {
  /** Beginning of the name of what a run writes; its process number follows. */
  private static final String SCRATCH = ".looks.new-";

  private final Path root;
  private final Path reports;
  private final StatCache fresh;
  private final @Nullable Path scratch;
  private final long markNanoseconds;
  private final String templatesBefore;
  private final @Nullable StatCache known;
  private boolean changed;

  /** A run begins; nothing that reports depend on may be read before. */
  public static StatCacheUpdate begin(Path root, Path program, String environment) {
    Path reports = root.resolve("reports");
    if (!Files.isDirectory(reports) || RegularFile.leadsOut(root, reports)) {
      return none(root);
    }
    StatCache last = StatCache.in(reports);
    try {
      String look = programLook(program);
      boolean same =
          last != null && last.environment().equals(environment) && last.program().equals(look);
      clear(reports);
      Path scratch = reports.resolve(SCRATCH + ProcessHandle.current().pid());
      Files.deleteIfExists(scratch);
      try (OutputStream out = RegularFile.create(scratch)) {
        out.write('\n');
      }
      long mark = FileStat.changedNanoseconds(scratch);
      if (!FileStat.isSettled(look, mark)) {
        Files.delete(scratch);
        return none(root);
      }
      return new StatCacheUpdate(
          root, new StatCache(look, environment), scratch, mark, same ? last : null);
    } catch (IOException | RuntimeException e) {
      return none(root);
    }
  }

  /** Takes away what runs that were killed had begun to write. */
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

  /** Keeps nothing: every file is read. */
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
    this.templatesBefore = lookOrNothing("templates");
    this.known = known;
  }

  /** The look of a program's jar; nothing is known of a program that was not packed. */
  static String programLook(Path program) throws IOException {
    if (!Files.isRegularFile(program)) {
      throw new IOException("not packed");
    }
    return FileStat.of(program);
  }

  private String lookOrNothing(String path) {
    try {
      return FileStat.of(root.resolve(path));
    } catch (IOException e) {
      return "";
    }
  }

  /** True if a report is up to date for sure, by its looks alone. */
  public boolean isUpToDate(String report) {
    StatCache.Section section = known == null ? null : known.section(report);
    if (section == null
        || !section.holds(root)
        || OutputStatus.isLocked(reports, report)
        || !OutputStatus.isWhole(reports, report, section.fingerprint)) {
      return false;
    }
    fresh.sections().put(report, section);
    return true;
  }

  /**
   * Enters a report that is up to date, and of which nothing had to be told.
   *
   * @param paths everything it is made from, folders that were listed among it
   */
  public void enter(String report, String fingerprint, List<String> paths) {
    StatCache.Section section = new StatCache.Section(fingerprint);
    for (String path : paths) {
      String look = lookOrNothing(path);
      if (look.isEmpty() || !FileStat.isSettled(look, markNanoseconds)) {
        return;
      }
      section.looks.add(look);
      section.paths.add(path);
    }
    changed = true;
    fresh.sections().put(report, section);
  }

  /** Enters the folders that a run over all reports lists, if nothing had to be told of them. */
  public void enterFolders(List<String> paths) {
    enter(StatCache.FOLDERS, "", paths);
  }

  /** Writes the book, if it says something new. */
  @Override
  public void close() {
    if (scratch == null) {
      return;
    }
    try {
      keepOthers();
      if (changed && lookOrNothing("templates").equals(templatesBefore)) {
        fresh.write(reports, scratch);
      }
      Files.deleteIfExists(scratch);
    } catch (IOException e) {
      // The next run reads the files, as this one did.
    }
  }

  /** Reports that this run was not asked for stay as they are known. */
  private void keepOthers() {
    if (known != null) {
      for (Map.Entry<String, StatCache.Section> entry : known.sections().entrySet()) {
        fresh.sections().putIfAbsent(entry.getKey(), entry.getValue());
      }
    }
  }
}
