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
 * What a file or folder looks like without opening it: kind, size, both its times and its key. The
 * time of the last change of any kind, {@code ctime}, is among them, as no program can set it back;
 * where a file system has none, nothing is ever known by its look.
 *
 * @see <a href="https://pubs.opengroup.org/onlinepubs/9799919799/basedefs/sys_stat.h.html">POSIX.1,
 *     sys/stat.h: st_ctim</a>
 */
final class FileStat {
  /** What stands for a file that is not there. */
  static final String ABSENT = "-";

  private static final String WANTED = "unix:isDirectory,size,lastModifiedTime,ctime,ino,dev";

  private FileStat() {}

  /**
   * The look of a file in one word; of the same file in another state it is another word.
   *
   * @throws IOException if it cannot be looked at, or tells too little
   */
  @SuppressWarnings("UnnecessaryStringBuilder") // Joining by + loads much before the first word.
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
   * True if a look tells for sure that what was read after the mark is what stands there as long as
   * it looks the same: the last change lies before the mark. A change in the same tick of the clock
   * as the reading would not be seen.
   *
   * @param look what a file looked like at or after the mark
   * @param markNanoseconds when the reading began, by the clock of the file system
   */
  static boolean isSettled(String look, long markNanoseconds) {
    if (look.equals(ABSENT)) {
      return true;
    }
    int changed = look.lastIndexOf('.');
    int modified = look.lastIndexOf('.', changed - 1);
    return Long.parseLong(look, changed + 1, look.length(), 10) < markNanoseconds
        && Long.parseLong(look, modified + 1, changed, 10) < markNanoseconds;
  }

  /** When a file was last changed in any way, ns since 1970. */
  static long changedNanoseconds(Path file) throws IOException {
    String look = of(file);
    return Long.parseLong(look, look.lastIndexOf('.') + 1, look.length(), 10);
  }

  private static long nanoseconds(@Nullable Object time) throws IOException {
    if (time instanceof FileTime told) {
      return told.to(TimeUnit.NANOSECONDS);
    }
    throw new IOException("no time is told");
  }
}
