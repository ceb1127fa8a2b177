package taperbook.i18n;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * Texts in one language, by key. They are in the properties files beside this class, in UTF-8; a
 * translation is the same files with other values, first on the class path. The part of a key
 * before its first dot names a group; each group is in one file, which is read when a text of it is
 * first asked for.
 *
 * <p>A text may contain values as <code>{0}</code>, <code>{1}</code> and so on, in any order.
 * Braces that are part of a text are doubled. Quotes and formats have no meaning.
 */
public final class Texts {
  /** The files of groups that are not in {@code labels.properties}. */
  private static final Map<String, String> FILES =
      Map.ofEntries(
          Map.entry("method", "methods"),
          Map.entry("assumption", "methods"),
          Map.entry("uncertainty", "methods"),
          Map.entry("condition", "items"),
          Map.entry("range", "items"),
          Map.entry("channel", "items"),
          Map.entry("key", "items"),
          Map.entry("input", "input"),
          Map.entry("problem", "input"),
          Map.entry("metric", "metric"),
          Map.entry("caveat", "metric"),
          Map.entry("topic", "metric"),
          Map.entry("format", "format"),
          Map.entry("figure", "figure"),
          Map.entry("page", "page"),
          Map.entry("article", "page"),
          Map.entry("function", "page"),
          Map.entry("pdf", "page"),
          Map.entry("data", "page"),
          Map.entry("prose", "page"),
          Map.entry("verify", "page"),
          Map.entry("command", "command"),
          Map.entry("option", "command"),
          Map.entry("exit", "command"),
          Map.entry("project", "command"),
          Map.entry("blank", "blank"));

  private static final Map<String, Texts> LOADED = new ConcurrentHashMap<>();

  private final Properties written;

  /** The texts that were asked for: a report uses a quarter of them. */
  private final Map<String, TextPattern> patterns = new ConcurrentHashMap<>();

  private Texts(Properties written) {
    this.written = written;
  }

  /**
   * Returns a text in the language of the program.
   *
   * @param key the key, such as {@code metric.later_stops.order}
   * @param values the values of its braces, formatted
   * @throws IllegalStateException if there is no such text, or it takes another number of values
   */
  public static String of(String key, @Nullable Object... values) {
    int dot = key.indexOf('.');
    String group = dot < 0 ? key : key.substring(0, dot);
    String file = FILES.getOrDefault(group, "labels");
    return LOADED.computeIfAbsent(file, Texts::load).text(key, values);
  }

  /**
   * Formats a count with its noun, such as {@code 1 error} or {@code 2 errors}.
   *
   * @param one key of the text for 1
   * @param more key of the text for other numbers
   */
  public static String count(long number, String one, String more) {
    return of(number == 1 ? one : more, number);
  }

  /** Returns several texts that take no values. */
  public static List<String> all(String... keys) {
    return Arrays.stream(keys).map(key -> of(key)).toList();
  }

  /**
   * Returns a text of an enum constant, whose key is made from the constant's name.
   *
   * @param group the group of the key, such as {@code method}
   * @param part what the text is of the constant, such as {@code title}
   * @throws IllegalStateException if there is no such text
   */
  public static String ofConstant(String group, Enum<?> constant, String part) {
    return of(group + "." + constant.name().toLowerCase(Locale.ROOT) + "." + part);
  }

  /** Parses the text of a properties file. */
  public static Texts parse(String file) {
    Properties read = new Properties();
    try {
      read.load(new StringReader(file));
    } catch (IOException e) {
      throw new UncheckedIOException("texts", e);
    }
    return new Texts(read);
  }

  /**
   * Returns a text of these, as {@link #of(String, Object...)} does.
   *
   * @throws IllegalStateException if there is no such text, it takes another number of values, or
   *     its braces are not closed or not numbered from 0 on
   */
  public String text(String key, @Nullable Object... values) {
    return patterns.computeIfAbsent(key, this::pattern).format(values);
  }

  private TextPattern pattern(String key) {
    String text = written.getProperty(key);
    if (text == null) {
      throw new IllegalStateException("no text has the key " + key);
    }
    return TextPattern.parse(key, text);
  }

  private static Texts load(String file) {
    String name = file + ".properties";
    try (InputStream in = Texts.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing from the program");
      }
      return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }
}
