package taperbook.uptodate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import taperbook.input.folder.RegularFile;

/** Checks whether the output of a report is complete. */
public final class OutputStatus {
  /** The file in a report's folder that records its fingerprint and the files that were created. */
  public static final String STAMP = ".made";

  /**
   * A library has a few files and a session's report some dozens; this is enough for ten thousand
   * names.
   */
  public static final long LARGEST_STAMP_BYTES = 1 << 20;

  private OutputStatus() {}

  /** Returns the first line of the stamp for a fingerprint. */
  public static String stampHead(String fingerprint) {
    return "taperbook " + fingerprint;
  }

  /** Returns the location of the previous version while a new one replaces it. */
  public static Path old(Path reports, String name) {
    return reports.resolve("." + name + ".old-version");
  }

  /** Returns the location where a new version is written. */
  public static Path fresh(Path reports, String name) {
    return reports.resolve("." + name + ".new-version");
  }

  /** Returns the location of the published page while a new one is shown before the other files. */
  public static Path oldPage(Path reports, String name) {
    return reports.resolve("." + name + ".old-page");
  }

  /** Returns the lock file, which exists while a run works on a report or after one was killed. */
  public static Path lock(Path reports, String name) {
    return reports.resolve("." + name + ".lock");
  }

  /** Returns true if a report has this fingerprint, is complete, and no run is working on it. */
  public static boolean isWhole(Path reports, String name, String fingerprint) {
    Path folder = reports.resolve(name);
    try {
      List<String> lines =
          RegularFile.isFolder(folder)
              ? RegularFile.lines(folder.resolve(STAMP), LARGEST_STAMP_BYTES)
              : List.of();
      return !RegularFile.exists(old(reports, name))
          && !RegularFile.exists(fresh(reports, name))
          && !RegularFile.exists(oldPage(reports, name))
          && !lines.isEmpty()
          && lines.get(0).equals(stampHead(fingerprint))
          && lines.stream()
              .skip(1)
              .allMatch(
                  file -> Files.isRegularFile(folder.resolve(file), LinkOption.NOFOLLOW_LINKS));
    } catch (IOException | InvalidPathException e) {
      return false;
    }
  }
}
