package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A file outside a project folder that must not be read or changed. */
final class Canary {
  /** Content of every canary and of no other file. */
  static final String MARK = "kanarienvogel-7f3a";

  private static final FileTime THEN = FileTime.from(Instant.parse("2020-02-02T02:02:02Z"));
  private static final long SECONDS = 20;

  private final Path file;
  private final String content;

  private Canary(Path file, String content) {
    this.file = file;
    this.content = content;
  }

  /** Writes a canary that contains the mark and a text. */
  static Canary in(Path folder, String name, String text) throws IOException {
    Files.createDirectories(folder);
    String content = MARK + "\n" + text;
    Path file = Files.writeString(folder.resolve(name), content);
    Files.setLastModifiedTime(file, THEN);
    return new Canary(file, content);
  }

  Path file() {
    return file;
  }

  /** Asserts that content, size, and time are unchanged. */
  void assertUnchanged(String when) throws IOException {
    assertThat(file).as(when).isRegularFile().content().as(when).isEqualTo(content);
    assertThat(Files.getLastModifiedTime(file)).as(when).isEqualTo(THEN);
  }

  /**
   * Asserts that a run did not print the mark or write it to a file of the project. The canary
   * itself, under another name in the project, is exempt.
   */
  void assertUnread(Workplace place, String when) throws IOException {
    assertThat(place.out() + place.err()).as(when).doesNotContain(MARK);
    List<Path> marked = new ArrayList<>();
    try (Stream<Path> all = Files.walk(place.path(""))) {
      for (Path each : all.filter(p -> Files.isRegularFile(p)).toList()) {
        boolean small = Files.size(each) < 20_000_000;
        if (small && !isCanary(each) && containsMark(each)) {
          marked.add(each);
        }
      }
    }
    assertThat(marked).as(when).isEmpty();
  }

  private boolean isCanary(Path each) throws IOException {
    try (Stream<Path> beside = Files.list(file.resolveSibling(""))) {
      for (Path canary : beside.toList()) {
        if (Files.isSameFile(each, canary)) {
          return true;
        }
      }
      return false;
    }
  }

  private static boolean containsMark(Path each) throws IOException {
    return !Files.isSymbolicLink(each)
        && new String(Files.readAllBytes(each), StandardCharsets.ISO_8859_1).contains(MARK);
  }

  /** Creates a named pipe, which blocks processes that open it. */
  static void pipe(Path path) throws IOException {
    try {
      Process process = new ProcessBuilder("mkfifo", path.toString()).start();
      assumeTrue(
          process.waitFor(SECONDS, TimeUnit.SECONDS) && process.exitValue() == 0,
          "a pipe can be made");
    } catch (IOException e) {
      assumeTrue(false, "there is no mkfifo: " + e);
    } catch (InterruptedException e) {
      throw new IllegalStateException("interrupted", e);
    }
  }
}
