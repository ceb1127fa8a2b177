package taperbook.buildinfo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;

/**
 * The central directory at the end of a jar.
 *
 * @see <a href="https://pkware.cachefly.net/webdocs/casestudies/APPNOTE.TXT">ZIP file format
 *     specification, 4.3.12 and 4.3.16</a>
 */
final class JarDirectory {
  private static final int END_RECORD = 22;
  private static final int END_SIGNATURE = 0x06054b50;
  private static final int SIZE_AT = 12;

  private JarDirectory() {}

  /**
   * Returns the central directory of a jar, or all of its bytes if the directory does not
   * immediately precede the end record.
   */
  static byte[] list(byte[] jar) {
    int end = jar.length - END_RECORD;
    if (end < 0) {
      return jar;
    }
    ByteBuffer record = ByteBuffer.wrap(jar).order(ByteOrder.LITTLE_ENDIAN);
    int size = record.getInt(end + SIZE_AT);
    boolean plain = record.getInt(end) == END_SIGNATURE && size >= 0 && size <= end;
    return plain ? Arrays.copyOfRange(jar, end - size, end) : jar;
  }
}
