package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run in a separate process with an empty home folder. */
@Tag("slow")
final class QuietRunTest {
  @TempDir private Path folder = Path.of("");
  @TempDir private Path home = Path.of("");

  @Test
  void prints_only_its_messages_and_writes_only_the_report() throws Exception {
    Workplace.withDemo(folder);
    Path err = home.resolveSibling(home.getFileName() + ".err");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-Duser.home=" + home,
                "-cp",
                classPath(),
                "taperbook.Main",
                "report",
                "finch-first-look",
                "--folder",
                folder.toString())
            .redirectError(err.toFile())
            .start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).isZero();
    assertThat(out).contains("finch-first-look  made");
    // A busy machine may take long enough for lines of progress.
    assertThat(Files.readString(err).lines()).allMatch(line -> line.matches(".+: .+, [0-9]+ s"));
    Files.delete(err);
    assertThat(files(home)).isEmpty();
  }

  /** The class path of the program, without the logging library of the tests. */
  private static String classPath() {
    return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
        .filter(entry -> !entry.contains("slf4j"))
        .collect(Collectors.joining(File.pathSeparator));
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).toList();
    }
  }
}
