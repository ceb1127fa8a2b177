package taperbook.buildinfo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import taperbook.session.InputFile;
import taperbook.uptodate.StatCacheUpdate;

/** Which program this is. */
public final class BuildInfo {
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

  /** Name and version in words. */
  public String name() {
    return "Taperbook " + version;
  }

  /**
   * Hash of the program's own files, so that a report is made anew by a changed one. Found when it
   * is first asked for, as most commands do not ask.
   */
  public String content() {
    String known = content;
    if (known == null) {
      known = contentOf(ownPlace());
      content = known;
    }
    return known;
  }

  /** Begins to keep what a project folder looks like to this program. */
  public static StatCacheUpdate looks(Path folder, ReportDate madeDate) {
    return StatCacheUpdate.begin(folder, ownPlace(), madeDate.fingerprint());
  }

  private static Path ownPlace() {
    try {
      return Path.of(BuildInfo.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException("the program does not know where it stands", e);
    }
  }

  /**
   * The jar, which names its libraries with their versions in its manifest; or the classes of a
   * program that was not packed. Of the jar its list of contents will do, which tells name, size
   * and CRC-32 of each file: to hash all of it would take a hundredth of a report's time.
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
}
