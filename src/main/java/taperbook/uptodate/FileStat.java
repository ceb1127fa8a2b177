package taperbook.uptodate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * The status of a file or folder, obtained without opening it: kind, size, both times and its key.
 * The time of the last status change, {@code ctime}, is included because no program can set it
 * back; on a file system without it, files are never trusted by their status.
 *
 * @see <a href="https://pubs.opengroup.org/onlinepubs/9799919799/basedefs/sys_stat.h.html">POSIX.1,
 *     sys/stat.h: st_ctim</a>
 * @param text one word, which differs for every state of the file
 * @param changedNanoseconds time of the last change of any kind, ns since 1970
 */
record FileStat(String text, long changedNanoseconds) {
  private static final FileStat ABSENT = new FileStat("-", Long.MIN_VALUE);

  /**
   * Returns the status of a file, which may be absent.
   *
   * @throws IOException if the status cannot be read or is insufficient
   */
  static FileStat of(Path file) throws IOException {
    try {
      Map<String, Object> stat =
          Files.readAttributes(file, "unix:mode,dev,ino,size,lastModifiedTime,ctime");
      long modified = nanoseconds(stat, "lastModifiedTime");
      long changed = nanoseconds(stat, "ctime");
      String text = stat.get("mode") + "." + stat.get("dev") + "." + stat.get("ino");
      return new FileStat(
          text + "." + stat.get("size") + "." + modified + "." + changed,
          Math.max(modified, changed));
    } catch (NoSuchFileException | NotDirectoryException e) {
      return ABSENT;
    } catch (UnsupportedOperationException | IllegalArgumentException e) {
      throw new IOException("this file system does not tell enough", e);
    }
  }

  private static long nanoseconds(Map<String, Object> stat, String name) throws IOException {
    if (stat.get(name) instanceof FileTime time) {
      return time.to(TimeUnit.NANOSECONDS);
    }
    throw new IOException("no time is told");
  }

  /**
   * Returns true if content read after the mark is current as long as the status stays the same:
   * the last change lies before the mark. A change in the same clock tick as the read would not be
   * visible.
   *
   * @param markNanoseconds when the read began, by the clock of the file system
   */
  boolean isSettled(long markNanoseconds) {
    return changedNanoseconds < markNanoseconds;
  }
}
