package taperbook.i18n;

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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.cli.ExitStatus;
import taperbook.cli.Option;
import taperbook.diagnostics.ProblemCode;
import taperbook.input.plan.ReportKey;
import taperbook.output.article.ArticleFunction;
import taperbook.quantity.Unit;
import taperbook.result.Assumption;
import taperbook.result.Method;
import taperbook.result.UncertaintySource;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.RangeItem;

/** Compares the properties files of texts with the keys in the code. */
final class TextsTest {
  private static final Path FOLDER = Path.of("src/main/resources/taperbook/i18n");
  private static final Pattern LITERAL = Pattern.compile("\"([a-z]+(?:\\.[a-z0-9_]+)+)\"");

  /** A number whose label has no values has the key {@code number.ID}. */
  private static final Pattern ID = Pattern.compile("\"([a-z][a-z0-9_]+)\"");

  private static final Pattern USED =
      Pattern.compile("(?:Texts|Message)\\s*\\.of\\(\\s*\"([^\"]*)\"\\s*[,)]");
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([0-9]+)}");

  /** Enums whose texts have keys composed from the names of constants. */
  private static final Map<String, Enum<?>[]> ENUMS =
      Map.ofEntries(
          Map.entry("method.*.title", Method.values()),
          Map.entry("method.*.definition", Method.values()),
          Map.entry("method.*.formula", Method.values()),
          Map.entry("assumption.*.sentence", Assumption.values()),
          Map.entry("assumption.*.source", Assumption.values()),
          Map.entry("uncertainty.*.words", UncertaintySource.values()),
          Map.entry("uncertainty.*.advice", UncertaintySource.values()),
          Map.entry("condition.*.explanation", ConditionItem.values()),
          Map.entry("range.*.explanation", RangeItem.values()),
          Map.entry("channel.*.explanation", Channel.values()),
          Map.entry("key.*.meaning", ReportKey.values()),
          Map.entry("caveat.*.title", Caveat.Kind.values()),
          Map.entry("topic.*.title", Caveat.Topic.values()),
          Map.entry("problem.*.meaning", ProblemCode.values()),
          Map.entry("exit.*.meaning", ExitStatus.values()),
          Map.entry("option.*.meaning", Option.values()),
          Map.entry("function.*.meaning", ArticleFunction.values()));

  static List<String> files() {
    try (Stream<Path> all = Files.list(FOLDER)) {
      return all.map(file -> file.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void every_key_is_used_in_the_code() {
    Set<String> used = found(LITERAL);
    found(ID).forEach(id -> used.add("number." + id));
    used.addAll(composed());

    assertThat(all().keySet()).isSubsetOf(used);
  }

  @Test
  void every_key_in_the_code_is_in_a_file() {
    Set<String> used = found(USED);
    used.addAll(composed());

    assertThat(used).hasSizeGreaterThan(1500).isSubsetOf(all().keySet());
  }

  /** Keys that reach {@code Texts.of} as an argument are found by their groups. */
  @Test
  void every_literal_in_the_form_of_a_key_is_a_key() {
    Set<String> groups = new TreeSet<>();
    for (String key : all().keySet()) {
      groups.add(key.substring(0, key.lastIndexOf('.') + 1));
    }

    assertThat(found(LITERAL))
        .filteredOn(name -> groups.contains(name.substring(0, name.lastIndexOf('.') + 1)))
        .isSubsetOf(all().keySet());
  }

  @Test
  void every_key_returns_its_text() {
    all().forEach((key, text) -> assertThat(Texts.of(key, values(text))).as(key).isNotEmpty());
  }

  @ParameterizedTest
  @MethodSource("files")
  void no_file_has_duplicate_keys(String file) {
    List<String> keys =
        lines(file).stream().map(line -> line.substring(0, line.indexOf('='))).toList();

    assertThat(keys).doesNotHaveDuplicates();
  }

  @Test
  void a_label_without_placeholders_has_one_key() {
    List<String> texts =
        written("labels.properties").values().stream()
            .filter(text -> !PLACEHOLDER.matcher(text).find())
            .toList();

    assertThat(texts).doesNotHaveDuplicates().doesNotContain("");
  }

  @Test
  void placeholders_may_be_reordered_and_repeated() {
    Texts texts = Texts.parse("a.b=It's {1}, '{0}' and {1}\n");

    assertThat(texts.text("a.b", "x{1}", 7)).isEqualTo("It's 7, 'x{1}' and 7");
  }

  @Test
  void doubled_braces_are_literal_braces() {
    Texts texts = Texts.parse("a.b=write ${{number(\"{0}\")}}\n");

    assertThat(texts.text("a.b", "peak_power")).isEqualTo("write ${number(\"peak_power\")}");
  }

  @Test
  void a_missing_text_is_named_by_its_key() {
    assertThatIllegalStateException()
        .isThrownBy(() -> Texts.of("number.none"))
        .withMessage("no text has the key number.none");
  }

  @Test
  void too_few_and_too_many_values_are_refused() {
    Texts texts = Texts.parse("a.b=from {0} to {1}\n");

    assertThatIllegalStateException()
        .isThrownBy(() -> texts.text("a.b", 1))
        .withMessage("text a.b takes 2 values, not 1");
    assertThatIllegalStateException()
        .isThrownBy(() -> texts.text("a.b", 1, 2, 3))
        .withMessage("text a.b takes 2 values, not 3");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"{", "}", "{0", "0}", "{}", "{x}", "{1}", "{0} {2}", "{00}", "{0}}", "{{0}"})
  void braces_that_do_not_match_or_skip_a_number_are_refused(String text) {
    assertThatIllegalStateException()
        .isThrownBy(() -> Texts.parse("a.b=" + text).text("a.b"))
        .withMessage("text a.b must number its braces {0}, {1} and so on: " + text);
  }

  @ParameterizedTest
  @MethodSource("files")
  void a_replaced_file_replaces_the_language(String file) {
    StringBuilder capitals = new StringBuilder();
    written(file)
        .forEach((key, text) -> capitals.append(key + "=" + escaped(upperCase(text)) + "\n"));
    Texts translated = Texts.parse(capitals.toString());

    written(file)
        .forEach(
            (key, text) ->
                assertThat(translated.text(key, values(text)))
                    .isEqualTo(upperCase(Texts.of(key, values(text)))));
  }

  private static String upperCase(String text) {
    return text.toUpperCase(Locale.ROOT);
  }

  private static String escaped(String text) {
    String escaped = text.replace("\\", "\\\\").replace("\n", "\\n");
    return escaped.startsWith(" ") ? "\\" + escaped : escaped;
  }

  /** One value for each placeholder of the text; digits, which do not change in upper case. */
  private static Object[] values(String text) {
    Matcher placeholder = PLACEHOLDER.matcher(text.replace("{{", "").replace("}}", ""));
    Set<String> numbers = new TreeSet<>();
    while (placeholder.find()) {
      numbers.add(placeholder.group(1));
    }
    return numbers.toArray();
  }

  private static Set<String> composed() {
    Set<String> keys =
        Stream.concat(
                Stream.of(Unit.values())
                    .filter(unit -> unit != Unit.ONE && unit != Unit.CURRENCY)
                    .map(unit -> "unit." + unit.name().toLowerCase(Locale.ROOT)),
                IntStream.rangeClosed(1, 12).mapToObj(month -> "month." + month))
            .collect(Collectors.toCollection(TreeSet::new));
    ENUMS.forEach(
        (pattern, constants) -> {
          for (Enum<?> constant : constants) {
            keys.add(pattern.replace("*", constant.name().toLowerCase(Locale.ROOT)));
          }
        });
    return keys;
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

  private static Map<String, String> all() {
    Map<String, String> all = new LinkedHashMap<>();
    files().forEach(file -> all.putAll(written(file)));
    return all;
  }

  /** Key and text of each line of a file, unescaped. */
  private static Map<String, String> written(String file) {
    Map<String, String> written = new LinkedHashMap<>();
    for (String line : lines(file)) {
      int equals = line.indexOf('=');
      written.put(line.substring(0, equals), unescaped(line.substring(equals + 1)));
    }
    return written;
  }

  private static String unescaped(String text) {
    return Pattern.compile("\\\\u([0-9a-f]{4})")
        .matcher(text)
        .replaceAll(m -> Character.toString(Integer.parseInt(m.group(1), 16)))
        .replace("\\n", "\n")
        .replace("\\ ", " ")
        .replace("\\\\", "\\");
  }

  private static List<String> lines(String file) {
    List<String> lines = new ArrayList<>(read(FOLDER.resolve(file)).lines().toList());
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
