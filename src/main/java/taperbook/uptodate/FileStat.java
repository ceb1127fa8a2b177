package taperbook.uptodate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * The status of a file or folder, obtained without opening it: kind, size, both times and its key.
 * The time of the last status change, {@code ctime}, is included because no program can set it
 * back; on a file system without it, files are never trusted by their status.
 *
 * @see <a href="https://pubs.opengroup.org/onlinepubs/9799919799/basedefs/sys_stat.h.html">POSIX.1,
 *     sys/stat.h: st_ctim</a>
 */
final class FileStat {
  /** Represents a file that does not exist. */
  static final String ABSENT = "-";

  private static final String WANTED = "unix:isDirectory,size,lastModifiedTime,ctime,ino,dev";

  private FileStat() {}

  /**
   * Returns the file status as one word, which differs for every state of the file.
   *
   * @throws IOException if the status cannot be read or is insufficient
   */
  @SuppressWarnings(
      "UnnecessaryStringBuilder") // String concatenation with + loads many classes on first use
  static String of(Path file) throws IOException {
    try {
      Map<String, Object> seen = Files.readAttributes(file, WANTED);
      return new StringBuilder()
          .append(Boolean.TRUE.equals(seen.get("isDirectory")) ? 'd' : 'f')
          .append(seen.get("dev"))
          .append('.')
          .append(seen.get("ino"))
          .append('.')
          .append(seen.get("size"))
          .append('.')
          .append(nanoseconds(seen.get("lastModifiedTime")))
          .append('.')
          .append(nanoseconds(seen.get("ctime")))
          .toString();
    } catch (NoSuchFileException | NotDirectoryException e) {
      return ABSENT;
    } catch (UnsupportedOperationException | IllegalArgumentException e) {
      throw new IOException("this file system does not tell enough", e);
    }
  }

  /**
   * Returns true if the status guarantees that the content read after the mark is current as long
   * as the status stays the same: the last change lies before the mark. A change in the same clock
   * tick as the read would not be visible.
   *
   * @param status status of a file at or after the mark
   * @param markNanoseconds when the read began, by the clock of the file system
   */
  static boolean isSettled(String status, long markNanoseconds) {
    if (status.equals(ABSENT)) {
      return true;
    }
    int changed = status.lastIndexOf('.');
    int modified = status.lastIndexOf('.', changed - 1);
    return Long.parseLong(status, changed + 1, status.length(), 10) < markNanoseconds
        && Long.parseLong(status, modified + 1, changed, 10) < markNanoseconds;
  }

  /** Returns the time of the last change of any kind, ns since 1970. */
  static long changedNanoseconds(Path file) throws IOException {
    String status = of(file);
    return Long.parseLong(status, status.lastIndexOf('.') + 1, status.length(), 10);
  }

  private static long nanoseconds(@Nullable Object time) throws IOException {
    if (time instanceof FileTime fileTime) {
      return fileTime.to(TimeUnit.NANOSECONDS);
    }
    throw new IOException("no time is told");
  }
}
