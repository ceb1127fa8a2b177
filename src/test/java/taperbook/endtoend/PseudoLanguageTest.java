package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The program in {@link PseudoLanguage}, whose files come first on the class path and are all that
 * differs: no English is left in what it writes and prints.
 */
@Tag("slow")
final class PseudoLanguageTest {
  @TempDir private static Path folder = Path.of("");
  @TempDir private static Path language = Path.of("");

  /** Status, then the lines of results and messages. */
  private static List<String> reported = List.of();

  @BeforeAll
  static void makeReports() throws Exception {
    PseudoLanguage.write(language);
    Workplace.withDemo(folder);
    reported = run("report");
  }

  @Test
  void a_language_differs_in_every_text() {
    assertThat(PseudoLanguage.accented("Charging power of {0}, see numbers.csv"))
        .isEqualTo("Chààrgïïñg pôôwëër ôôf {0}, šëëëë numbers.csv");
  }

  @Test
  void reports_are_made_in_another_language() throws Exception {
    assertThat(reported).first().isEqualTo("0");
    assertThat(strangers(reported)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"finch-first-look", "veldt-long-plateau", "library"})
  void no_english_is_left_in_a_report(String name) throws Exception {
    Path report = folder.resolve("reports").resolve(name);
    PlainWords known = new PlainWords(folder);
    List<String> left = new ArrayList<>();
    for (Map.Entry<String, String> file : PublishedTexts.of(report).entrySet()) {
      known.strangers(file.getValue()).forEach(word -> left.add(file.getKey() + ": " + word));
    }

    assertThat(left).isEmpty();
    assertThat(Jsoup.parse(Files.readString(report.resolve("report.html"))).select("html"))
        .extracting(page -> page.attr("lang"))
        .containsExactly(PseudoLanguage.TAG);
    assertThat(languageOf(report.resolve("report.pdf"))).isEqualTo(PseudoLanguage.TAG);
  }

  @Test
  void values_are_in_another_order() throws Exception {
    assertThat(Files.readString(folder.resolve("reports/finch-first-look/numbers.json")))
        .contains("Tïïmëë frôôm 80 % tôô 10 %");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "help",
        "help report",
        "help check",
        "help explain",
        "help verify",
        "help blank",
        "check",
        "check finch-first-look",
        "explain finch-first-look peak_power",
        "explain finch-first-look time_to_add_100_km finch-quarry-lane-first",
        "explain library peak_power veldt-quarry-lane",
        "verify reports/finch-first-look/report.pdf",
        "verify reports/library/report.pdf",
        "blank session another-session",
        "blank range-test another-drive --legs",
        "blank report another-report finch-quarry-lane finch-ring-road"
      })
  void no_english_is_left_in_messages(String command) throws Exception {
    Path copy = Files.createTempDirectory(folder.resolve(".."), "copy");
    Workplace.copy(folder, copy);

    List<String> printed = run(copy, command.split(" ", -1));

    assertThat(printed).first().isEqualTo("0");
    assertThat(strangers(printed)).isEmpty();
  }

  @Test
  void no_english_is_left_in_problems() throws Exception {
    Path copy = Files.createTempDirectory(folder.resolve(".."), "copy");
    Workplace.copy(folder, copy);
    Files.writeString(
        copy.resolve("reports/broken.md"),
        "---\ntitle: Broken\nsession: quarry\nbasis: none\nroads: cost\n---\n${number(\"peek\")}\n");
    Path readings = copy.resolve("sessions/finch-quarry-lane/readings.csv");
    Files.writeString(readings, Files.readString(readings).replace("2:50,21", "2:50,oops"));

    List<String> printed = run(copy, "check");

    assertThat(printed).first().isEqualTo("1");
    assertThat(new PlainWords(copy).strangers(String.join("\n", printed))).isEmpty();
  }

  @Test
  void no_english_is_left_on_a_recording_sheet() throws Exception {
    assertThat(run("blank", "sheet")).first().isEqualTo("0");

    Path sheet = folder.resolve("recording-sheet-session-a4.pdf");
    assertThat(new PlainWords(folder).strangers(PublishedTexts.pdf(sheet))).isEmpty();
    assertThat(languageOf(sheet)).isEqualTo(PseudoLanguage.TAG);
  }

  private static Set<String> strangers(List<String> printed) throws IOException {
    return new PlainWords(folder).strangers(String.join("\n", printed));
  }

  private static String languageOf(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return document.getDocumentCatalog().getLanguage();
    }
  }

  private static List<String> run(String... arguments) throws Exception {
    return run(folder, arguments);
  }

  /** The files of the language come first on the class path, before those of the program. */
  private static List<String> run(Path project, String... arguments) throws Exception {
    String classPath = language + File.pathSeparator + absolute();
    List<String> call =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-Dstdout.encoding=UTF-8",
                "-Dstderr.encoding=UTF-8",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                classPath,
                "taperbook.Main"));
    call.addAll(List.of(arguments));
    Process program =
        new ProcessBuilder(call).directory(project.toFile()).redirectErrorStream(true).start();
    String printed = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    List<String> lines = new ArrayList<>(List.of(String.valueOf(program.waitFor())));
    // The test's class path has no provider of a library's logging, which the program's lacks too.
    printed.lines().filter(line -> !line.startsWith("SLF4J")).forEach(lines::add);
    return lines;
  }

  /** The process runs in the project folder, which relative entries do not refer to. */
  private static String absolute() {
    return String.join(
        File.pathSeparator,
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
            .map(entry -> Path.of(entry).toAbsolutePath().toString())
            .toList());
  }
}
