package taperbook.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import taperbook.quantity.Unit;

final class LabelsTest {
  private static final Path FILE = Path.of("src/main/resources/taperbook/format/labels.properties");
  private static final Pattern LITERAL = Pattern.compile("\"([a-z]+\\.[a-z0-9_]+)\"");
  private static final Pattern ASKED = Pattern.compile("Labels\\.of\\(\\s*\"([^\"]*)\"\\s*[,)]");
  private static final Pattern PLACE = Pattern.compile("\\{([0-9])}");

  @Test
  void every_label_is_asked_for_in_the_code() {
    Set<String> literals = found(LITERAL);
    literals.addAll(unitsAndMonths());

    assertThat(written().keySet()).isSubsetOf(literals);
  }

  @Test
  void every_label_that_the_code_asks_for_is_in_the_file() {
    Set<String> asked = found(ASKED);
    asked.addAll(unitsAndMonths());

    assertThat(asked).hasSizeGreaterThan(200).isSubsetOf(written().keySet());
  }

  /** Keys that reach {@code Labels.of} as an argument are found by the groups that they bear. */
  @Test
  void every_name_in_the_code_that_looks_like_a_label_is_one() {
    Set<String> groups =
        written().keySet().stream()
            .map(key -> key.substring(0, key.indexOf('.') + 1))
            .collect(Collectors.toSet());

    assertThat(found(LITERAL))
        .filteredOn(name -> groups.contains(name.substring(0, name.indexOf('.') + 1)))
        .isSubsetOf(written().keySet());
  }

  @Test
  void no_label_is_written_twice() {
    List<String> keys = lines().stream().map(line -> line.substring(0, line.indexOf('='))).toList();

    assertThat(keys).doesNotHaveDuplicates();
  }

  @Test
  void one_text_without_values_stands_under_one_name() {
    List<String> texts =
        written().values().stream().filter(text -> !PLACE.matcher(text).find()).toList();

    assertThat(texts).doesNotHaveDuplicates().doesNotContain("");
  }

  @Test
  void no_text_has_a_brace_that_is_not_a_place() {
    assertThat(written().values())
        .allSatisfy(
            text -> assertThat(PLACE.matcher(text).replaceAll("")).doesNotContain("{", "}"));
  }

  @Test
  void values_may_come_in_any_order_and_more_than_once() {
    Labels labels = Labels.parse("a.b=It's {1}, '{0}' and {1}\n");

    assertThat(labels.text("a.b", "x{1}", 7)).isEqualTo("It's 7, 'x{1}' and 7");
  }

  @Test
  void a_missing_label_is_reported_by_its_name() {
    assertThatIllegalStateException()
        .isThrownBy(() -> Labels.of("number.none"))
        .withMessage("no label is called number.none");
  }

  @Test
  void too_few_and_too_many_values_are_reported() {
    Labels labels = Labels.parse("a.b=from {0} to {1}\n");

    assertThatIllegalStateException()
        .isThrownBy(() -> labels.text("a.b", 1))
        .withMessage("label a.b takes 2 values, not 1");
    assertThatIllegalStateException()
        .isThrownBy(() -> labels.text("a.b", 1, 2, 3))
        .withMessage("label a.b takes 2 values, not 3");
  }

  @Test
  void braces_that_do_not_match_or_skip_a_number_are_reported() {
    for (String text :
        List.of("{", "}", "{0", "0}", "{}", "{x}", "{10}", "{1}", "{0} {2}", "{{0}}")) {
      assertThatIllegalStateException()
          .as(text)
          .isThrownBy(() -> Labels.parse("a.b=" + text))
          .withMessage("label a.b must number its braces {0}, {1} and so on: " + text);
    }
  }

  @Test
  void another_file_is_another_language() {
    StringBuilder capitals = new StringBuilder();
    written().forEach((key, text) -> capitals.append(key + "=" + shouted(text) + "\n"));
    Labels translated = Labels.parse(capitals.toString());

    written()
        .forEach(
            (key, text) ->
                assertThat(translated.text(key, values(text)))
                    .isEqualTo(Labels.of(key, values(text)).toUpperCase(Locale.ROOT)));
    assertThat(translated.text("number.time_to_add_driven", "100 km"))
        .isEqualTo("TIME TO ADD 100 km, BY THE DRIVEN RANGE");
  }

  private static String shouted(String text) {
    return text.toUpperCase(Locale.ROOT);
  }

  /** As many values as the label has places, each a digit, which has no capital. */
  private static Object[] values(String text) {
    Matcher place = PLACE.matcher(text);
    Set<String> numbers = new TreeSet<>();
    while (place.find()) {
      numbers.add(place.group(1));
    }
    return numbers.toArray();
  }

  private static Set<String> unitsAndMonths() {
    Function<Unit, String> key = unit -> "unit." + unit.name().toLowerCase(Locale.ROOT);
    return Stream.concat(
            Stream.of(Unit.values()).filter(u -> u != Unit.ONE && u != Unit.CURRENCY).map(key),
            IntStream.rangeClosed(1, 12).mapToObj(month -> "month." + month))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> found(Pattern pattern) {
    Set<String> found = new TreeSet<>();
    for (Path source : sources()) {
      Matcher matcher = pattern.matcher(read(source));
      while (matcher.find()) {
        found.add(matcher.group(1));
      }
    }
    return found;
  }

  private static List<Path> sources() {
    try (Stream<Path> all = Files.walk(Path.of("src/main/java"))) {
      return all.filter(path -> path.toString().endsWith(".java")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Key and text of each line, with the no-break space as the file escapes it. */
  private static Map<String, String> written() {
    Map<String, String> written = new LinkedHashMap<>();
    for (String line : lines()) {
      int equals = line.indexOf('=');
      written.put(
          line.substring(0, equals), line.substring(equals + 1).replace("\\u00a0", "\u00a0"));
    }
    return written;
  }

  private static List<String> lines() {
    List<String> lines = new ArrayList<>(read(FILE).lines().toList());
    lines.removeIf(line -> line.isEmpty() || line.startsWith("#"));
    return lines;
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
