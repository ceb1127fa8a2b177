package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.cli.ExitStatus;
import taperbook.session.InputFile;

/**
 * Compares every file that a report of a small project consists of with the file in {@code
 * src/test/resources/golden}. See the {@code README.md} there for what is kept in which form.
 *
 * <p>{@code -Dgolden.update=true} rewrites the expected files. The actual files of the last run are
 * in {@code target/golden}.
 */
final class GoldenReportsTest {
  private static final Path GOLDEN = Path.of("src/test/resources/golden");
  private static final Path ACTUAL = Path.of("target/golden");
  private static final String HASHES = "hashes.txt";

  /** State of the program with its hash, which is not part of a report. */
  private static final String STATE = ".made";

  /** Font files in a page: 12 000 characters on one line. */
  private static final Pattern LONG_BASE_64 = Pattern.compile("base64,([A-Za-z0-9+/=]{200,})");

  @TempDir private Path folder = Path.of("");

  @ParameterizedTest
  @ValueSource(strings = {"by-hand", "logger"})
  void every_file_of_a_report_is_as_expected(String name) throws IOException {
    Workplace.copy(GOLDEN.resolve(name).resolve("input"), folder);
    Workplace place = new Workplace(folder);
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    SortedMap<String, String> actual = kept(place.files("reports"));
    actual.put("output.txt", place.out().replace(folder.toString(), "FOLDER"));
    assertThat(place.err()).isEmpty();
    write(ACTUAL.resolve(name), actual);

    Path expected = GOLDEN.resolve(name).resolve("expected");
    if (Boolean.getBoolean("golden.update")) {
      write(expected, actual);
    }
    assertThat(differences(read(expected), actual))
        .as(
            "rewrite with -Dgolden.update=true if this is intended; actual files are in "
                + ACTUAL.resolve(name))
        .isEmpty();
  }

  /** The files of a report in the form in which they are compared. */
  private static SortedMap<String, String> kept(Map<String, String> published) throws IOException {
    SortedMap<String, String> kept = new TreeMap<>();
    StringBuilder hashes = new StringBuilder();
    for (Map.Entry<String, String> file : published.entrySet()) {
      String path = file.getKey();
      byte[] bytes = file.getValue().getBytes(StandardCharsets.ISO_8859_1);
      if (path.endsWith(".png") || path.endsWith("/numbers.csv")) {
        hashes.append(line(sha256(bytes), path));
      } else if (path.endsWith("/methods.pdf")) {
        hashes.append(line(sha256(textOf(bytes)), path + ", its text and structure"));
      } else if (path.endsWith(".pdf")) {
        kept.put(path + ".txt", textOf(bytes));
        hashes.append(line(pagesOf(bytes), path + ", the content of its pages"));
      } else if (path.contains("/") && !path.endsWith(STATE)) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        kept.put(
            path,
            LONG_BASE_64
                .matcher(text)
                .replaceAll(data -> "base64, SHA-256 " + sha256(data.group(1))));
      }
    }
    kept.put(HASHES, hashes.toString());
    return kept;
  }

  private static String line(String hash, String what) {
    return hash + "  " + what + "\n";
  }

  private static String textOf(byte[] bytes) throws IOException {
    return PdfOutline.of(bytes);
  }

  private static String pagesOf(byte[] bytes) throws IOException {
    try (PDDocument pdf = PdfOutline.open(bytes)) {
      StringBuilder all = new StringBuilder();
      for (var page : pdf.getPages()) {
        all.append(new String(page.getContents().readAllBytes(), StandardCharsets.ISO_8859_1));
      }
      return sha256(all.toString());
    }
  }

  private static String sha256(String text) {
    return sha256(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String sha256(byte[] bytes) {
    return new InputFile("golden", bytes).sha256();
  }

  /** One line for each file that is missing, not expected, or differs, with its first such line. */
  private static List<String> differences(
      SortedMap<String, String> expected, SortedMap<String, String> actual) {
    List<String> differences = new ArrayList<>();
    TreeSet<String> paths = new TreeSet<>(expected.keySet());
    paths.addAll(actual.keySet());
    for (String path : paths) {
      if (!actual.containsKey(path)) {
        differences.add(path + " was not written");
      } else if (!expected.containsKey(path)) {
        differences.add(path + " is not expected");
      } else if (!expected.get(path).equals(actual.get(path))) {
        differences.add(firstDifference(path, expected.get(path), actual.get(path)));
      }
    }
    return differences;
  }

  private static String firstDifference(String path, String expected, String actual) {
    String[] before = expected.split("\n", -1);
    String[] after = actual.split("\n", -1);
    int i = 0;
    while (i < before.length && i < after.length && before[i].equals(after[i])) {
      i++;
    }
    return "\n%s:%d\n  expected  %s\n  actual    %s"
        .formatted(
            path, i + 1, i < before.length ? before[i] : "", i < after.length ? after[i] : "");
  }

  private static void write(Path to, SortedMap<String, String> files) throws IOException {
    if (Files.exists(to)) {
      try (Stream<Path> all = Files.walk(to)) {
        for (Path old : all.filter(Files::isRegularFile).toList()) {
          Files.delete(old);
        }
      }
    }
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path path = to.resolve(file.getKey());
      Files.createDirectories(path.resolve(".."));
      Files.writeString(path, file.getValue());
    }
  }

  private static SortedMap<String, String> read(Path from) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      return all.filter(Files::isRegularFile)
          .collect(
              Collectors.toMap(
                  file -> from.relativize(file).toString().replace('\\', '/'),
                  GoldenReportsTest::text,
                  (one, other) -> one,
                  TreeMap::new));
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
