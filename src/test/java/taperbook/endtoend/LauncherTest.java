package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The launchers for each system start the same program in the same way. */
final class LauncherTest {
  private static final Path FOLDER = Path.of("src/main/launcher");
  private static final Pattern FLAG =
      Pattern.compile("(?:^|\\s)(-XX:[+\\w-]+(?:=[\\w.%]+)?|-D[\\w.]+)(?==?[\\w\"$%]*)");

  private static String text(String name) throws IOException {
    return Files.readString(FOLDER.resolve(name), StandardCharsets.UTF_8);
  }

  /** Returns the options of the last start of Java, without the caches of classes. */
  private static List<String> flags(String script) {
    String start = script.substring(script.lastIndexOf("-Xlog:disable"));
    return FLAG.matcher(start)
        .results()
        .map(MatchResult::group)
        .map(String::strip)
        .sorted()
        .toList();
  }

  @Test
  void both_launchers_give_java_the_same_options() throws IOException {
    List<String> flags = flags(text("taperbook.cmd"));
    assertThat(flags)
        .contains("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Djava.awt.headless")
        .isEqualTo(flags(text("taperbook")));
  }

  @Test
  void the_launcher_of_windows_is_plain_ascii() throws IOException {
    assertThat(text("taperbook.cmd").chars()).allMatch(c -> c < 128);
  }
}
