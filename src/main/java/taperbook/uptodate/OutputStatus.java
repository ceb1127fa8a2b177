package taperbook.uptodate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import taperbook.input.folder.RegularFile;

/** Whether what was made of a report stands whole in its folder. */
public final class OutputStatus {
  /** The file of a report's folder that says what it was made from and which files were made. */
  public static final String STAMP = ".made";

  /** A library has a few files and a session's report some dozens; this is ten thousand names. */
  public static final long LARGEST_STAMP_BYTES = 1 << 20;

  private static final String STAMP_HEAD = "taperbook ";
  private static final String OLD = ".old-version";
  private static final String FRESH = ".new-version";
  private static final String LOCK = ".lock";

  private OutputStatus() {}

  /** The first line of the stamp of what was made from a fingerprint. */
  public static String stampHead(String fingerprint) {
    return STAMP_HEAD.concat(fingerprint);
  }

  /** Where the version before is kept while a new one takes its place. */
  public static Path old(Path reports, String name) {
    return reports.resolve(".".concat(name).concat(OLD));
  }

  /** Where a new version is written. */
  public static Path fresh(Path reports, String name) {
    return reports.resolve(".".concat(name).concat(FRESH));
  }

  /** The file that is there while a run is at work on a report, or after one was killed. */
  public static Path lock(Path reports, String name) {
    return reports.resolve(".".concat(name).concat(LOCK));
  }

  /** True if a report was made from this fingerprint, is all there, and no run is at work on it. */
  public static boolean isWhole(Path reports, String name, String fingerprint) {
    if (RegularFile.isThere(old(reports, name)) || RegularFile.isThere(fresh(reports, name))) {
      return false;
    }
    Path folder = reports.resolve(name);
    try {
      if (!RegularFile.isFolder(folder)) {
        return false;
      }
      List<String> lines = RegularFile.lines(folder.resolve(STAMP), LARGEST_STAMP_BYTES);
      if (lines.isEmpty() || !lines.get(0).equals(stampHead(fingerprint))) {
        return false;
      }
      for (int i = 1; i < lines.size(); i++) {
        if (!Files.isRegularFile(folder.resolve(lines.get(i)), LinkOption.NOFOLLOW_LINKS)) {
          return false;
        }
      }
      return true;
    } catch (IOException | InvalidPathException e) {
      return false;
    }
  }

  /** True if a run is at work on a report, or was killed at work. */
  static boolean isLocked(Path reports, String name) {
    return RegularFile.isThere(lock(reports, name));
  }
}
