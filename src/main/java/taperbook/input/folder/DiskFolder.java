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
import taperbook.i18n.Texts;
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

  private static final String LEGS = "legs.csv";

  /** Files that belong to one of the two, and form neither on their own. */
  private static final List<String> BESIDE = List.of("conditions.csv", LEGS);

  /** Files that a folder need not have, so that nothing else reports another case. */
  private static final List<String> OPTIONAL = List.of(COLUMN_MAP, RANGE_TEST, LEGS);

  private static final String REPORT_ENDING = ".md";

  private final Path root;
  private final boolean ignoresCase;

  /** Opens the folder with this path, which need not exist. */
  public DiskFolder(Path root) {
    this.root = root;
    this.ignoresCase = ignoresCase(root);
  }

  private static boolean ignoresCase(Path root) {
    Path upper = root.resolve(SESSIONS.toUpperCase(Locale.ROOT));
    try {
      return Files.exists(upper) && Files.isSameFile(upper, root.resolve(SESSIONS));
    } catch (IOException e) {
      return false;
    }
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
    return FileName.isAllowedPath(path)
        && Files.exists(at(path), LinkOption.NOFOLLOW_LINKS)
        && !hasOtherCase(path);
  }

  /**
   * Returns true if the file system ignores case and finds the last name of a path in another case.
   * Such a project would not work on other systems.
   */
  private boolean hasOtherCase(String path) {
    if (!ignoresCase) {
      return false;
    }
    try {
      String stored = String.valueOf(at(path).toRealPath().getFileName());
      String name = path.substring(path.lastIndexOf('/') + 1);
      return stored.equalsIgnoreCase(name) && !stored.equals(name);
    } catch (IOException e) {
      return false;
    }
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
      } else if (hasOtherCase(path)) {
        missing(path, log);
      } else if (!Files.isRegularFile(file)) {
        unreadable(
            log,
            Texts.of("input.disk_folder.something_that_is_not_file"),
            Texts.of("input.disk_folder.put_file_there"));
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
      if (anyOf.stream().anyMatch(file -> isFile(folder + "/" + file))) {
        if (FileName.isAllowed(entry)) {
          names.add(entry);
        } else {
          FileName.refuse(entry, log);
        }
      } else if (reportStrays && Files.isDirectory(at(folder))) {
        reportStray(folder, log);
      }
      if (reportStrays && Files.isDirectory(at(folder))) {
        reportOtherCase(folder, log);
      }
    }
    FileName.reportCaseCollisions(names, log);
    return new Listing(names, log.list());
  }

  private boolean isFile(String path) {
    return Files.isRegularFile(at(path)) && !hasOtherCase(path);
  }

  private void reportOtherCase(String folder, ProblemLog log) {
    for (String file : entries(folder, new ProblemLog(folder))) {
      for (String name : OPTIONAL) {
        if (file.equalsIgnoreCase(name) && !file.equals(name)) {
          log.add(
              ProblemCode.NAME_NOT_ALLOWED,
              Texts.of("input.common.with", folder, file),
              name,
              Texts.of("input.file_name.rename_it"));
        }
      }
    }
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
          Texts.of("input.disk_folder.with_which_is_workbook_and", folder, workbook.get()),
          Texts.of("input.disk_folder.for_session_or_for_range", READINGS, RANGE_TEST),
          Texts.of("input.disk_folder.in_that_folder", SpreadsheetWorkbook.REMEDY, READINGS));
      return;
    }
    if (!tables.isEmpty() && !tables.contains(RANGE_TEST)) {
      log.add(
          ProblemCode.FILE_MISSING,
          Texts.of("input.common.with", folder, String.join(", ", tables)),
          Texts.of("input.disk_folder.for_session_or_for_range", READINGS, RANGE_TEST),
          tables.stream().allMatch(BESIDE::contains)
              ? Texts.of("input.disk_folder.write_readings_or_drive_down")
              : Texts.of("input.disk_folder.rename_file_that_is_meant"));
    }
  }

  /** Returns the names in a folder that do not begin with a full stop, sorted. */
  private List<String> entries(String folder, ProblemLog log) {
    if (RegularFile.isOutside(root, at(folder))) {
      isOutside(log, folder.equals(log.file()) ? "" : folder + ", ");
      return List.of();
    }
    try {
      if (hasOtherCase(folder)) {
        throw new NoSuchFileException(folder);
      }
      return list(at(folder));
    } catch (NoSuchFileException | NotDirectoryException e) {
      log.add(
          ProblemCode.FILE_MISSING,
          Texts.of("input.disk_folder.no_folder", folder),
          Texts.of("input.disk_folder.folder_where_command_is_run", folder),
          Texts.of("input.disk_folder.run_it_in_folder_that"));
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
          Texts.of("input.disk_folder.only_which_is_workbook_and", workbook.get()),
          Texts.of("input.disk_folder.file_of_this_name"),
          SpreadsheetWorkbook.REMEDY + name);
      return;
    }
    log.add(
        ProblemCode.FILE_MISSING,
        there.isEmpty()
            ? Texts.of("input.disk_folder.no_such_file")
            : Texts.of("input.disk_folder.only_in_its_folder", String.join(", ", there)),
        Texts.of("input.disk_folder.file_of_this_name"),
        there.isEmpty()
            ? Texts.of("input.disk_folder.write_file")
            : Texts.of("input.disk_folder.write_file_or_rename_one"));
  }

  private Path at(String path) {
    return root.resolve(path);
  }

  private static void tooLarge(ProblemLog log, long bytes) {
    log.add(
        ProblemCode.FILE_TOO_LARGE,
        Texts.of("input.disk_folder.bytes", bytes),
        Texts.of("input.disk_folder.at_most_bytes", LARGEST_FILE_BYTES),
        log.file().endsWith(".csv")
            ? Texts.of("input.common.keep_rows_of_one_session")
            : Texts.of("input.disk_folder.take_out_what_does_not"));
  }

  private static void isOutside(ProblemLog log, String which) {
    unreadable(
        log,
        Texts.of("input.disk_folder.link_that_leads_out_of", which),
        Texts.of("input.disk_folder.put_file_itself_there"));
  }

  private static void failed(ProblemLog log, IOException e) {
    String reason =
        e instanceof FileSystemException f && f.getReason() != null
            ? f.getReason()
            : e.getClass().getSimpleName();
    boolean loop = reason.contains("symbolic link");
    unreadable(
        log,
        loop
            ? Texts.of("input.disk_folder.link_that_leads_back_to")
            : Texts.of("input.disk_folder.no_way_to_read_it", reason),
        loop
            ? Texts.of("input.disk_folder.put_file_itself_there")
            : Texts.of("input.disk_folder.let_your_account_read_it"));
  }

  private static void unreadable(ProblemLog log, String found, String remedy) {
    log.add(
        ProblemCode.FILE_UNREADABLE,
        found,
        Texts.of("input.disk_folder.file_in_folder_that_can"),
        remedy);
  }
}
