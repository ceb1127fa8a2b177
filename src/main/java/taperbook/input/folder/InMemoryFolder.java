package taperbook.input.folder;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.session.InputFile;

/** The files embedded in a PDF as a folder in memory; never written to disk. */
public final class InMemoryFolder implements InputFolder {
  private final TreeMap<String, InputFile> files;

  /**
   * Creates a folder of these files.
   *
   * @param files by path relative to the folder, with {@code /}
   */
  public InMemoryFolder(Map<String, InputFile> files) {
    this.files = new TreeMap<>(files);
  }

  @Override
  public Listing sessions() {
    TreeSet<String> names = new TreeSet<>(folders("/readings.csv").names());
    names.addAll(folders("/columns.csv").names());
    return new Listing(List.copyOf(names), List.of());
  }

  @Override
  public Listing rangeTests() {
    return folders("/range-test.csv");
  }

  @Override
  public List<String> sessionFolders() {
    return List.of();
  }

  @Override
  public Listing reports() {
    return listing("reports/", ".md");
  }

  @Override
  public boolean has(String path) {
    return files.containsKey(path);
  }

  @Override
  public Checked<InputFile> read(String path) {
    InputFile file = files.get(path);
    if (file != null) {
      return Checked.good(file);
    }
    ProblemLog log = new ProblemLog(path);
    log.add(
        ProblemCode.FILE_MISSING,
        "no such file among those that the PDF carries",
        "every file that the report was made from",
        "verify the PDF as it was published");
    return Checked.refused(log.list());
  }

  private Listing folders(String file) {
    return listing("sessions/", file);
  }

  /** Lists valid names without a slash between a prefix and a suffix. */
  private Listing listing(String before, String after) {
    TreeSet<String> names = new TreeSet<>();
    for (String path : files.keySet()) {
      if (path.startsWith(before) && path.endsWith(after)) {
        int end = path.length() - after.length();
        String name = end > before.length() ? path.substring(before.length(), end) : "";
        if (!name.isEmpty() && name.indexOf('/') < 0 && FileName.isAllowed(name)) {
          names.add(name);
        }
      }
    }
    return new Listing(List.copyOf(names), List.of());
  }
}
