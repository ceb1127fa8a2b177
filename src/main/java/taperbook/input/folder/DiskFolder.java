package taperbook.input.folder;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.input.csv.SpreadsheetWorkbook;
import taperbook.session.InputFile;

/**
 * The folder that contains {@code sessions/} and {@code reports/}. Paths are relative to it, with
 * {@code /}; paths that lead out of it are refused.
 */
public final class DiskFolder implements InputFolder {
  /** Maximum file size, bytes: a day of readings at ten per second fits. */
  public static final long LARGEST_FILE_BYTES = 64L * 1024 * 1024;

  private static final String SESSIONS = "sessions";
  private static final String REPORTS = "reports";
  private static final String READINGS = "readings.csv";
  private static final String COLUMN_MAP = "columns.csv";
  private static final String RANGE_TEST = "range-test.csv";

  /** Files that belong to one of the two, and form neither on their own. */
  private static final List<String> BESIDE = List.of("conditions.csv", "legs.csv");

  private static final String REPORT_ENDING = ".md";

  private final Path root;

  /** Opens the folder with this path, which need not exist. */
  public DiskFolder(Path root) {
    this.root = root;
  }

  @Override
  public Listing sessions() {
    return folders(List.of(READINGS, COLUMN_MAP), true);
  }

  @Override
  public Listing rangeTests() {
    return folders(List.of(RANGE_TEST), false);
  }

  @Override
  public List<String> sessionFolders() {
    List<String> folders = new ArrayList<>(List.of(SESSIONS));
    for (String entry : entries(SESSIONS, new ProblemLog(SESSIONS))) {
      if (Files.isDirectory(at(SESSIONS + "/" + entry))) {
        folders.add(SESSIONS + "/" + entry);
      }
    }
    return folders;
  }

  @Override
  public Listing reports() {
    ProblemLog log = new ProblemLog(REPORTS);
    List<String> names = new ArrayList<>();
    for (String entry : entries(REPORTS, log)) {
      if (entry.endsWith(REPORT_ENDING) && Files.isRegularFile(at(REPORTS + "/" + entry))) {
        String name = entry.substring(0, entry.length() - REPORT_ENDING.length());
        if (FileName.isAllowed(entry) && FileName.isAllowed(name)) {
          names.add(name);
        } else {
          FileName.refuse(FileName.isAllowed(entry) ? name : entry, log);
        }
      }
    }
    FileName.reportCaseCollisions(names, log);
    return new Listing(names, log.list());
  }

  @Override
  public boolean has(String path) {
    // Also true for a folder or a dangling link: reading it then reports the problem.
    return FileName.isAllowedPath(path) && Files.exists(at(path), LinkOption.NOFOLLOW_LINKS);
  }

  @Override
  public Checked<InputFile> read(String path) {
    ProblemLog log = new ProblemLog(path);
    if (!FileName.isAllowedPath(path)) {
      FileName.refuse(path, log);
      return Checked.refused(log.list());
    }
    try {
      Path file = at(path).toRealPath();
      if (!file.startsWith(root.toRealPath())) {
        isOutside(log, "");
      } else if (!Files.isRegularFile(file)) {
        unreadable(log, "something that is not a file", "put a file there");
      } else if (Files.size(file) > LARGEST_FILE_BYTES) {
        tooLarge(log, Files.size(file));
      } else {
        return Checked.good(InputFile.wrap(path, RegularFile.bytes(file, LARGEST_FILE_BYTES)));
      }
    } catch (NoSuchFileException | NotDirectoryException e) {
      missing(path, log);
    } catch (IOException e) {
      failed(log, e);
    }
    return Checked.refused(log.list());
  }

  private Listing folders(List<String> anyOf, boolean reportStrays) {
    ProblemLog log = new ProblemLog(SESSIONS);
    List<String> names = new ArrayList<>();
    for (String entry : entries(SESSIONS, log)) {
      String folder = SESSIONS + "/" + entry;
      if (anyOf.stream().anyMatch(file -> Files.isRegularFile(at(folder).resolve(file)))) {
        if (FileName.isAllowed(entry)) {
          names.add(entry);
        } else {
          FileName.refuse(entry, log);
        }
      } else if (reportStrays && Files.isDirectory(at(folder))) {
        reportStray(folder, log);
      }
    }
    FileName.reportCaseCollisions(names, log);
    return new Listing(names, log.list());
  }

  /**
   * A folder with CSV files, none of which has a known name, most likely contains a misspelled
   * name.
   */
  private void reportStray(String folder, ProblemLog log) {
    List<String> files = entries(folder, log);
    List<String> tables =
        files.stream().filter(n -> n.toLowerCase(Locale.ROOT).endsWith(".csv")).toList();
    Optional<String> workbook = files.stream().filter(SpreadsheetWorkbook::isName).findFirst();
    boolean table = tables.contains(RANGE_TEST) || !BESIDE.containsAll(tables);
    if (workbook.isPresent() && !table) {
      log.add(
          ProblemCode.WORKBOOK,
          folder + " with " + workbook.get() + ", which is a workbook and is not read",
          READINGS + " for a session, or " + RANGE_TEST + " for a range test",
          SpreadsheetWorkbook.REMEDY + READINGS + " in that folder");
      return;
    }
    if (!tables.isEmpty() && !tables.contains(RANGE_TEST)) {
      log.add(
          ProblemCode.FILE_MISSING,
          folder + " with " + String.join(", ", tables),
          READINGS + " for a session, or " + RANGE_TEST + " for a range test",
          tables.stream().allMatch(BESIDE::contains)
              ? "write the readings or the drive down in that file, or take the folder away"
              : "rename the file that is meant");
    }
  }

  /** Returns the names in a folder that do not begin with a full stop, sorted. */
  private List<String> entries(String folder, ProblemLog log) {
    if (RegularFile.isOutside(root, at(folder))) {
      isOutside(log, folder.equals(log.file()) ? "" : folder + ", ");
      return List.of();
    }
    try {
      return list(at(folder));
    } catch (NoSuchFileException | NotDirectoryException e) {
      log.add(
          ProblemCode.FILE_MISSING,
          "no folder " + folder,
          "a folder " + folder + " where the command is run",
          "run it in the folder that holds sessions and reports, or name that with --folder");
    } catch (IOException e) {
      failed(log, e);
    }
    return List.of();
  }

  /** Lists a folder. Checks the type first, because opening a pipe would block. */
  private static List<String> list(Path folder) throws IOException {
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new NotDirectoryException(folder.toString());
    }
    try (Stream<Path> paths = Files.list(folder)) {
      return paths
          .map(p -> String.valueOf(p.getFileName()))
          .filter(n -> !n.startsWith("."))
          .sorted()
          .toList();
    }
  }

  private void missing(String path, ProblemLog log) {
    int slash = path.lastIndexOf('/');
    String folder = slash < 0 ? "" : path.substring(0, slash);
    Path parent = slash < 0 ? root : at(folder);
    List<String> there =
        Files.isDirectory(parent)
            ? entries(folder, new ProblemLog(path)).stream().limit(20).toList()
            : List.of();
    String name = path.substring(slash + 1);
    Optional<String> workbook =
        there.stream()
            .filter(
                n -> SpreadsheetWorkbook.isName(n) && SpreadsheetWorkbook.csvName(n).equals(name))
            .findFirst();
    if (workbook.isPresent()) {
      log.add(
          ProblemCode.FILE_MISSING,
          "only " + workbook.get() + ", which is a workbook and is not read",
          "a file of this name",
          SpreadsheetWorkbook.REMEDY + name);
      return;
    }
    log.add(
        ProblemCode.FILE_MISSING,
        there.isEmpty() ? "no such file" : "only " + String.join(", ", there) + " in its folder",
        "a file of this name",
        there.isEmpty() ? "write the file" : "write the file, or rename the one that is meant");
  }

  private Path at(String path) {
    return root.resolve(path);
  }

  private static void tooLarge(ProblemLog log, long bytes) {
    log.add(
        ProblemCode.FILE_TOO_LARGE,
        bytes + " bytes",
        "at most " + LARGEST_FILE_BYTES + " bytes",
        log.file().endsWith(".csv")
            ? "keep the rows of one session only"
            : "take out what does not belong there");
  }

  private static void isOutside(ProblemLog log, String which) {
    unreadable(log, which + "a link that leads out of the folder", "put the file itself there");
  }

  private static void failed(ProblemLog log, IOException e) {
    String reason =
        e instanceof FileSystemException f && f.getReason() != null
            ? f.getReason()
            : e.getClass().getSimpleName();
    boolean loop = reason.contains("symbolic link");
    unreadable(
        log,
        loop ? "a link that leads back to itself" : "no way to read it (" + reason + ")",
        loop ? "put the file itself there" : "let your account read it");
  }

  private static void unreadable(ProblemLog log, String found, String remedy) {
    log.add(ProblemCode.FILE_UNREADABLE, found, "a file in the folder that can be read", remedy);
  }
}
