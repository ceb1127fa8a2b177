package taperbook.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ProgressListener;
import taperbook.endtoend.Workplace;
import taperbook.result.SessionResult;

/** A report that is built again by the same process equals that of a new process. */
@Tag("slow")
final class ResultCacheTest {
  private static final Path VALID = Path.of("src/test/resources/corpus/valid");
  private static final String REPORT = "reports/look.md";
  private static final String READINGS = "sessions/stop/readings.csv";
  private static final String DRIVE = "sessions/drive/range-test.csv";

  @TempDir private Path folder = Path.of("");
  private final ResultCache cache = ResultCache.ofLastReports();

  @BeforeEach
  void copy() throws IOException {
    Workplace.copy(VALID, folder);
  }

  private void replace(String file, String old, String fresh) throws IOException {
    String text = Files.readString(folder.resolve(file));
    assertThat(text).contains(old);
    Files.writeString(folder.resolve(file), text.replaceFirst(old, fresh));
  }

  private ReportBuild build(ResultCache results) {
    return CommandContext.in(folder, Map.of(), results).reportBuild("look").value().orElseThrow();
  }

  /** Builds with the cache and without, compares all files, and returns the measured session. */
  private SessionResult checked() {
    Map<String, byte[]> expected = files(ResultCache.none());
    Map<String, byte[]> made = files(cache);
    assertThat(made.keySet()).isEqualTo(expected.keySet());
    expected.forEach((file, bytes) -> assertThat(made.get(file)).as(file).isEqualTo(bytes));
    return ((Pipeline) build(cache)).measured().value().orElseThrow().main();
  }

  private Map<String, byte[]> files(ResultCache results) {
    return build(results).make(ProgressListener.NONE).value().orElseThrow().files().all();
  }

  @Test
  void a_changed_text_uses_the_measured_session() throws IOException {
    SessionResult first = checked();
    replace(REPORT, "It peaked", "In the end it peaked");
    assertThat(checked()).isSameAs(first);
    replace(REPORT, "title:", "answer: It took a while.\ntitle:");
    assertThat(checked()).isSameAs(first);
  }

  @Test
  void everything_else_is_measured_again() throws IOException {
    SessionResult last = checked();
    for (String[] edit :
        new String[][] {
          {READINGS, "\n0:00,10,", "\n0:00,11,"},
          {DRIVE, "distance,[0-9]+", "distance,301"},
          {REPORT, "title: An invented", "title: Another invented"},
          {REPORT, "author: The corpus", "author: A tester"},
          {REPORT, "80 %", "75 %"},
          {REPORT, "driven", "rated"},
        }) {
      String text = Files.readString(folder.resolve(edit[0]));
      Files.writeString(folder.resolve(edit[0]), text.replaceFirst(edit[1], edit[2]));
      assertThat(Files.readString(folder.resolve(edit[0]))).isNotEqualTo(text);
      SessionResult next = checked();
      assertThat(next).as(edit[2]).isNotSameAs(last);
      last = next;
    }
  }
}
