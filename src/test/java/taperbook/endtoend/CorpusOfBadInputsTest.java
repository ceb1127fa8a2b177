package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.cli.ExitStatus;

/**
 * Every invalid input of the corpus is reported with exactly these messages, locations, and
 * remedies, and with no others. A reviewer compared the messages with the documented format; the
 * test keeps them unchanged, and detects hangs and internal errors.
 */
@Tag("slow")
final class CorpusOfBadInputsTest {
  private static final int FEWEST = 200;

  @TempDir private Path folder = Path.of("");

  static List<CorpusCase> cases() {
    return CorpusFile.cases();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  @Timeout(value = 30, unit = TimeUnit.SECONDS)
  void is_reported_with_location_and_remedy(CorpusCase bad) throws IOException {
    copyValid();
    bad.applyTo(folder);
    Workplace place = new Workplace(folder);
    ExitStatus status = place.run("check");
    assertProblems(problems(place.err()), bad.problemsWithFullPaths());
    assertThat(status)
        .isEqualTo(place.err().contains("error  ") ? ExitStatus.INPUT_REFUSED : ExitStatus.DONE);
  }

  /** Compares problems with a list in which dots match any number of others. */
  private static void assertProblems(List<String> problems, List<String> expected) {
    int dots = expected.indexOf("...");
    if (dots < 0) {
      assertThat(problems).isEqualTo(expected.equals(List.of("nothing")) ? List.of() : expected);
      return;
    }
    List<String> last = expected.subList(dots + 1, expected.size());
    assertThat(problems).hasSizeGreaterThanOrEqualTo(dots + last.size());
    assertThat(problems.subList(0, dots)).isEqualTo(expected.subList(0, dots));
    assertThat(problems.subList(problems.size() - last.size(), problems.size())).isEqualTo(last);
  }

  @Test
  void the_base_folder_is_valid() throws IOException {
    copyValid();
    Workplace place = new Workplace(folder);
    assertThat(place.run("check")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.err()).isEmpty();
  }

  @Test
  void the_corpus_lists_its_cases_by_kind() throws IOException {
    Map<String, Long> counts =
        cases().stream()
            .collect(Collectors.groupingBy(CorpusCase::kind, TreeMap::new, Collectors.counting()));
    StringBuilder table = new StringBuilder("| kind | bad inputs |\n|---|---|\n");
    counts.forEach((kind, n) -> table.append("| ").append(kind).append(" | ").append(n + " |\n"));
    table.append("| all | ").append(cases().size()).append(" |\n");
    Files.writeString(Path.of("target/corpus.md"), table);
    assertThat(cases()).hasSizeGreaterThanOrEqualTo(FEWEST);
    assertThat(counts.values()).allMatch(n -> n >= 5);
    assertThat(cases()).allMatch(c -> !c.edits().isEmpty() && !c.problems().isEmpty());
    assertThat(cases().stream().map(CorpusCase::toString)).doesNotHaveDuplicates();
  }

  private void copyValid() throws IOException {
    Workplace.copy(CorpusFile.FOLDER.resolve("valid"), folder);
  }

  /** The problems as printed, one per line: location, code, found, expected, remedy. */
  static List<String> problems(String printed) {
    List<String> problems = new ArrayList<>();
    List<String> lines = printed.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (line.startsWith("error  ") || line.startsWith("notice  ")) {
        problems.add(
            line.substring(line.indexOf(' ')).strip()
                + lines.get(i + 4).stripLeading().replaceFirst("^", " ")
                + " "
                + part(lines.get(i + 1))
                + " | "
                + part(lines.get(i + 2))
                + " | "
                + part(lines.get(i + 3)));
        i += 4;
      } else {
        problems.add(line);
      }
    }
    return problems;
  }

  private static String part(String line) {
    return line.substring("    expected  ".length());
  }

  /** Writes the cases with their actual problems for review. */
  public static void main(String[] arguments) throws IOException {
    StringBuilder all = new StringBuilder();
    for (CorpusCase bad : cases()) {
      Path folder = Files.createTempDirectory(Path.of("target"), "corpus-");
      CorpusOfBadInputsTest test = new CorpusOfBadInputsTest();
      test.folder = folder;
      test.copyValid();
      bad.applyTo(folder);
      Workplace place = new Workplace(folder);
      long start = System.nanoTime();
      ExitStatus status = place.run("check");
      long millis = Duration.ofNanos(System.nanoTime() - start).toMillis();
      all.append(bad + "  (" + status + ", " + millis + " ms)\n");
      bad.problemsWithFullPaths().forEach(t -> all.append("  < ").append(t).append('\n'));
      problems(place.err()).forEach(t -> all.append("  > ").append(t).append('\n'));
      System.out.println(bad + " " + status + " " + millis);
      Files.writeString(Path.of("target/corpus-told.txt"), all, StandardCharsets.UTF_8);
    }
  }
}
