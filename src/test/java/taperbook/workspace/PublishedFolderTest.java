package taperbook.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On Windows, a folder cannot be renamed while any program has a file in it open. */
final class PublishedFolderTest {
  @TempDir private Path reports;

  private Path look = Path.of("");
  private Path old = Path.of("");

  @BeforeEach
  void publish() throws IOException {
    look = reports.resolve("look");
    old = reports.resolve(".look.old-version");
    new PublishedFolder(reports, "look").replace(version("one"), "first");
    Files.writeString(look.resolve("photo.png"), "own");
  }

  private static Map<String, byte[]> version(String text) {
    return Map.of("report.html", text.getBytes(StandardCharsets.UTF_8));
  }

  /** Renames that fail as on Windows, as long as a rule says so. */
  private static final class OpenFiles extends RetryingFiles {
    private final BiPredicate<Path, Integer> fails;
    private int tries;

    OpenFiles(BiPredicate<Path, Integer> fails) {
      this.fails = fails;
    }

    @Override
    void tryToMove(Path from, Path to) throws IOException {
      tries++;
      if (fails.test(from, tries)) {
        throw new AccessDeniedException(from.toString(), to.toString(), null);
      }
      super.tryToMove(from, to);
    }
  }

  private void replace(OpenFiles files) {
    new PublishedFolder(reports, "look", files).replace(version("two"), "second");
  }

  private Map<String, String> files(Path folder) throws IOException {
    Map<String, String> found = new TreeMap<>();
    try (Stream<Path> all = Files.list(folder)) {
      for (Path file : all.toList()) {
        found.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    found.remove(".made");
    return found;
  }

  @Test
  void a_file_that_is_open_for_a_moment_only_delays_the_new_version() throws IOException {
    OpenFiles scanner = new OpenFiles((from, tries) -> tries <= 3);
    replace(scanner);
    assertThat(files(look)).isEqualTo(Map.of("report.html", "two", "photo.png", "own"));
    assertThat(reports).isDirectoryNotContaining(path -> !path.equals(look));
  }

  @Test
  void an_own_file_with_a_backslash_in_its_name_is_kept() throws IOException {
    Files.writeString(look.resolve("a\\b.png"), "own");
    replace(new OpenFiles((from, tries) -> false));
    assertThat(files(look))
        .isEqualTo(Map.of("report.html", "two", "photo.png", "own", "a\\b.png", "own"));
  }

  @Test
  void a_file_that_stays_open_leaves_the_version_before_as_it_is() throws IOException {
    OpenFiles viewer = new OpenFiles((from, tries) -> from.equals(look));
    assertThatThrownBy(() -> replace(viewer))
        .isInstanceOf(StoppedException.class)
        .hasMessage(
            "the new version of the report cannot replace the one before (it may not be written),"
                + " which is whole in "
                + look
                + ". Close every program that has a file of the report open, or make the folder"
                + " writable, then run again.");
    assertThat(viewer.tries).as("it tries again for a second").isEqualTo(10);
    assertThat(files(look)).isEqualTo(Map.of("report.html", "one", "photo.png", "own"));
    assertThat(reports).isDirectoryNotContaining(path -> !path.equals(look));
    replace(new OpenFiles((from, tries) -> false));
    assertThat(files(look)).isEqualTo(Map.of("report.html", "two", "photo.png", "own"));
  }

  @Test
  void if_the_new_version_stays_open_the_one_before_returns() throws IOException {
    OpenFiles scanner = new OpenFiles((from, tries) -> from.toString().endsWith(".new-version"));
    assertThatThrownBy(() -> replace(scanner)).hasMessageContaining("which is whole in " + look);
    assertThat(files(look)).isEqualTo(Map.of("report.html", "one", "photo.png", "own"));
    assertThat(reports).isDirectoryNotContaining(path -> !path.equals(look));
  }

  @Test
  void if_it_cannot_return_either_the_message_names_its_place_and_the_next_run_restores_it()
      throws IOException {
    OpenFiles scanner = new OpenFiles((from, tries) -> tries > 1);
    assertThatThrownBy(() -> replace(scanner)).hasMessageContaining("which is whole in " + old);
    assertThat(files(old)).isEqualTo(Map.of("report.html", "one", "photo.png", "own"));
    assertThat(PublishedFolder.current(reports, "look")).isEqualTo(old);
    new PublishedFolder(reports, "look").recover();
    assertThat(files(look)).isEqualTo(Map.of("report.html", "one", "photo.png", "own"));
  }
}
