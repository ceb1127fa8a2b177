package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;

/**
 * What spreadsheets, editors, and version control on Windows do to the same text, a byte order mark
 * and other line ends, moves no number and appears in no output but copies of the inputs.
 */
@Tag("slow")
final class LineEndsTest {
  private static final Path INPUT = Path.of("src/test/resources/golden/by-hand/input");
  private static final String REPORT = "reports/wren.md";

  /** Files whose formats end lines with CR LF on each system. */
  private static final List<String> CRLF =
      List.of("numbers.csv", "share/table.csv", "share/captions.srt");

  @TempDir private Path folder;

  @Test
  void line_ends_and_byte_order_marks_of_windows_move_no_published_number() throws IOException {
    Workplace.copy(INPUT, folder);
    Workplace.copy(Path.of("templates"), folder.resolve("templates"));
    Workplace place = new Workplace(folder);
    place.replace(REPORT, "session: ", "state: published\nsession: ");
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    SortedMap<String, String> before = place.files("reports/wren");

    for (Path file : inputs()) {
      String text = Files.readString(file);
      Files.writeString(file, "\ufeff" + text.replace("\n", "\r\n"));
    }
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).contains("no number moved since the last version");
    SortedMap<String, String> after = place.files("reports/wren");
    assertThat(after.keySet()).isEqualTo(before.keySet());
    assertThat(after.get("published/report-2026-03-02.pdf"))
        .isEqualTo(before.get("published/report-2026-03-02.pdf"));
    assertThat(withoutHashes(after)).isEqualTo(withoutHashes(before));
    assertThat(after.get("data/wren-mill-street/readings.csv"))
        .as("the input itself")
        .isEqualTo(place.files("sessions/wren-mill-street").get("readings.csv"));

    String pdf = folder.resolve("reports/wren/report.pdf").toString();
    assertThat(place.run("verify", pdf)).as(place.out()).isEqualTo(ExitStatus.DONE);
  }

  private List<Path> inputs() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile)
          .filter(file -> !file.startsWith(folder.resolve("reports/wren")))
          .toList();
    }
  }

  /** Returns the text files without hashes of inputs and copies of them. */
  private static Map<String, String> withoutHashes(Map<String, String> files) {
    Map<String, String> texts = new TreeMap<>();
    files.forEach(
        (path, text) -> {
          boolean copy = path.startsWith("data/") || path.equals(".made");
          if (!copy && !path.endsWith(".pdf") && !path.equals("datapackage.json")) {
            texts.put(path, text.replaceAll("[0-9a-f]{64}", "hash"));
            assertThat(text.contains("\r") && !path.endsWith(".png"))
                .as(path)
                .isEqualTo(CRLF.contains(path));
          }
        });
    return texts;
  }
}
