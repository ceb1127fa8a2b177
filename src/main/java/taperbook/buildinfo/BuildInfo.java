package taperbook.buildinfo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import taperbook.session.InputFile;
import taperbook.uptodate.StatCache;

/** Identifies this program. */
public final class BuildInfo {
  private static final String IN_JAR = "jar:";

  private final String version;
  private @Nullable String content;

  private BuildInfo(String version) {
    this.version = version;
  }

  public static BuildInfo ofThisProgram() {
    String version =
        Optional.ofNullable(BuildInfo.class.getPackage().getImplementationVersion())
            .orElse("unreleased");
    return new BuildInfo(version);
  }

  /** Returns the name and version. */
  public String name() {
    return "Taperbook " + version;
  }

  /**
   * Returns a hash of the program's own files, so that a changed program rebuilds reports. Computed
   * on first use, because most commands do not need it.
   */
  public String content() {
    String known = content;
    if (known == null) {
      known = contentOf(ownPlace());
      content = known;
    }
    return known;
  }

  /** Starts to record the file status of a project folder for this program. */
  public static StatCache statCache(Path folder, ReportDate madeDate) {
    return StatCache.begin(folder, ownPlace(), madeDate.fingerprint());
  }

  /**
   * Returns the jar or the folder of classes. A class from a cache of Java 25 names the jar with
   * which the cache was made as its source, so that the class loader is asked instead.
   */
  private static Path ownPlace() {
    String name = BuildInfo.class.getName().replace('.', '/') + ".class";
    String own = String.valueOf(BuildInfo.class.getResource("/" + name));
    String place = own.substring(0, own.length() - name.length());
    return Path.of(
        URI.create(
            place.startsWith(IN_JAR)
                ? place.substring(IN_JAR.length(), place.length() - "!/".length())
                : place));
  }

  /**
   * Hashes the jar, whose manifest names its libraries with their versions, or the classes of an
   * unpackaged program. For a jar the central directory is sufficient, which contains the name,
   * size and CRC-32 of each file: hashing the whole file would take a hundredth of a report's time.
   */
  private static String contentOf(Path place) {
    try {
      if (Files.isRegularFile(place)) {
        return new InputFile("program", JarDirectory.list(Files.readAllBytes(place))).sha256();
      }
      StringBuilder all = new StringBuilder();
      try (Stream<Path> files = Files.walk(place)) {
        List<Path> sorted = files.filter(Files::isRegularFile).sorted().toList();
        for (Path file : sorted) {
          all.append(new InputFile("class", Files.readAllBytes(file)).sha256()).append('\n');
        }
      }
      return new InputFile("program", all.toString().getBytes(StandardCharsets.UTF_8)).sha256();
    } catch (IOException e) {
      throw new UncheckedIOException("the program cannot read itself at " + place, e);
    }
  }

  /**
   * The central directory at the end of a jar.
   *
   * @see <a href="https://pkware.cachefly.net/webdocs/casestudies/APPNOTE.TXT">ZIP file format
   *     specification, 4.3.12 and 4.3.16</a>
   */
  static final class JarDirectory {
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
}
