package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A report by a program that finds other labels: the same in capitals, a language made up for this
 * test. Nothing but the file of labels differs.
 */
@Tag("slow")
final class TranslationTest {
  private static final Pattern LABEL = Pattern.compile("\"label\" ?: ?\"([^\"]*)\"");

  @TempDir private Path folder = Path.of("");
  @TempDir private Path language = Path.of("");

  @Test
  void a_translation_of_labels_is_one_file() throws Exception {
    Workplace.withDemo(folder);
    Path file = language.resolve("taperbook/i18n/labels.properties");
    Files.createDirectories(file.resolve(".."));
    Files.writeString(file, inCapitals());

    assertThat(report()).isZero();

    Path made = folder.resolve("reports/finch-first-look");
    Matcher label = LABEL.matcher(Files.readString(made.resolve("numbers.json")));
    List<String> labels = label.results().map(found -> found.group(1)).toList();
    assertThat(labels)
        .hasSizeGreaterThan(100)
        .contains("PEAK POWER", "TIME TO ADD 100 km, BY THE DRIVEN RANGE")
        .allSatisfy(text -> assertThat(text).matches("[A-Z-]+([ ,:].*)?"));
    String chart = Files.readString(made.resolve("figures/power-over-soc.svg"));
    assertThat(chart)
        .contains("CHARGING POWER IN KW BY STATE OF CHARGE", "WITHIN 2 % OF", "BATTERY 27")
        .doesNotContain(">Charging power", ">State of charge");
    assertThat(Files.readString(made.resolve("report.html")))
        .contains("24 APRIL 2026", "143", "KW");
    assertThat(Files.readString(made.resolve("film/script.md")))
        .contains("## DO NOT LEAVE OUT", "- ON SCREEN: PLUGGED IN AT ");
  }

  private static String inCapitals() throws Exception {
    return Files.readAllLines(Path.of("src/main/resources/taperbook/i18n/labels.properties"))
        .stream()
        .filter(line -> !line.startsWith("#") && line.contains("="))
        .map(line -> line.split("=", 2))
        .map(parts -> parts[0] + "=" + capitals(parts[1]) + "\n")
        .collect(Collectors.joining());
  }

  private static String capitals(String text) {
    return text.replace("\\u00a0", "\u00a0").toUpperCase(Locale.ROOT);
  }

  /** The labels of the language come first on the class path, before those of the program. */
  private int report() throws Exception {
    String classPath = language + File.pathSeparator + System.getProperty("java.class.path");
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Djava.awt.headless=true",
            "-XX:TieredStopAtLevel=1",
            "-cp",
            classPath,
            "taperbook.Main",
            "report",
            "finch-first-look",
            "--folder",
            folder.toString())
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start()
        .waitFor();
  }
}
