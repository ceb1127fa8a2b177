package taperbook.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A page that is shown before the other files of its version are complete. */
final class ShownPageTest {
  private static final Path PAGE = Path.of("look", "report.html");

  @TempDir private Path reports = Path.of("");
  private PublishedFolder published = new PublishedFolder(reports, "look");

  @BeforeEach
  void publishOne() {
    published = new PublishedFolder(reports, "look");
    published.replace(Map.of("report.html", bytes("one"), "report.pdf", bytes("pdf")), "1");
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private List<String> entries() throws IOException {
    try (Stream<Path> all = Files.list(reports)) {
      return all.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void a_shown_page_is_not_a_published_version() {
    assertThat(published.showPage(bytes("two"))).isTrue();
    assertThat(reports.resolve(PAGE)).hasContent("two");
    assertThat(reports.resolve("look/report.pdf")).hasContent("pdf");
    assertThat(published.isMadeFrom("1")).isFalse();
    assertThat(published.isCutOff()).isTrue();
  }

  @Test
  void the_next_run_after_a_killed_one_restores_the_published_page() throws IOException {
    published.showPage(bytes("two"));
    new PublishedFolder(reports, "look").recover();
    assertThat(reports.resolve(PAGE)).hasContent("one");
    assertThat(published.isMadeFrom("1")).isTrue();
    assertThat(entries()).containsExactly("look");
  }

  @Test
  void a_run_that_was_killed_between_the_two_moves_loses_no_page() throws IOException {
    Files.move(reports.resolve(PAGE), reports.resolve(".look.old-page"));
    assertThat(published.isMadeFrom("1")).isFalse();
    published.recover();
    assertThat(reports.resolve(PAGE)).hasContent("one");
    assertThat(entries()).containsExactly("look");
  }

  @Test
  void the_complete_version_replaces_a_shown_page() throws IOException {
    published.showPage(bytes("two"));
    Files.writeString(reports.resolve("look/own.txt"), "the tester's own");
    published.replace(Map.of("report.html", bytes("two"), "report.pdf", bytes("pdf 2")), "2");
    assertThat(reports.resolve(PAGE)).hasContent("two");
    assertThat(reports.resolve("look/own.txt")).exists();
    assertThat(published.isMadeFrom("2")).isTrue();
    assertThat(entries()).containsExactly("look");
  }

  @Test
  void a_version_that_cannot_be_written_restores_the_published_page() throws IOException {
    published.showPage(bytes("two"));
    Files.writeString(reports.resolve("look/data"), "in the way of a folder");
    assertThatThrownBy(
            () ->
                published.replace(
                    Map.of("report.html", bytes("two"), "data/stop.csv", bytes("rows")), "2"))
        .isInstanceOf(StoppedException.class);
    assertThat(reports.resolve(PAGE)).hasContent("one");
    assertThat(entries()).containsExactly("look");
  }

  @Test
  void without_a_published_version_no_page_is_shown() throws IOException {
    PublishedFolder none = new PublishedFolder(reports, "other");
    assertThat(none.showPage(bytes("two"))).isFalse();
    assertThat(entries()).containsExactly("look");
  }

  @Test
  void the_place_of_the_published_page_is_reserved() throws IOException {
    Files.createDirectory(reports.resolve(".look.old-page"));
    assertThatThrownBy(() -> new PublishedFolder(reports, "look"))
        .isInstanceOf(StoppedException.class)
        .hasMessageContaining(".look.old-page");
  }
}
