package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Headless Chromium that renders a page. */
final class Browser {
  /** Options for headless mode and no background network traffic. */
  static final List<String> QUIET =
      List.of(
          "--headless",
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");

  private final Path scratch;
  private final int longestSeconds;

  /**
   * @param scratch folder for files of the browser
   * @param longestSeconds timeout
   */
  Browser(Path scratch, int longestSeconds) {
    this.scratch = scratch;
    this.longestSeconds = longestSeconds;
  }

  /**
   * Returns the document after its scripts have run; skips the test if there is no browser.
   *
   * @param options further options of Chromium
   */
  String shown(Path page, String... options) throws IOException, InterruptedException {
    Optional<Path> browser = program();
    assumeTrue(browser.isPresent(), "no Chromium on the path");
    List<String> command =
        new ArrayList<>(
            List.of(
                browser.orElseThrow().toString(), "--user-data-dir=" + scratch.resolve("browser")));
    command.addAll(QUIET);
    command.addAll(List.of(options));
    command.addAll(List.of("--dump-dom", page.toUri().toString()));
    Path out = scratch.resolve("dom.html");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    boolean ended = process.waitFor(longestSeconds, TimeUnit.SECONDS);
    process.destroyForcibly();
    assertThat(ended).as("the browser ends by itself").isTrue();
    return Files.readString(out);
  }

  /** Chromium on the path. */
  static Optional<Path> program() {
    String path = String.valueOf(System.getenv("PATH"));
    return Stream.of(path.split(File.pathSeparator, -1))
        .flatMap(p -> Stream.of("chromium", "chromium-browser").map(n -> Path.of(p, n)))
        .filter(Files::isExecutable)
        .findFirst();
  }
}
