package taperbook.format;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;

/**
 * The labels of numbers, checks, charts, columns and units in one language. They are stored in
 * {@code labels.properties} beside this class, in UTF-8, so that a translation is another such
 * file. A label may take values in numbered braces from {@code {0}} on; quotes and formats have no
 * special meaning.
 */
public final class Labels {
  private static final Labels BUILT_IN = builtIn();

  private final Map<String, LabelPattern> patterns;

  private Labels(Map<String, LabelPattern> patterns) {
    this.patterns = patterns;
  }

  /**
   * Returns a label in the language of the program.
   *
   * @param key its name in {@code labels.properties}
   * @param values formatted values for the placeholders
   * @throws IllegalStateException if there is no such label, or it takes another number of values
   */
  public static String of(String key, Object... values) {
    return BUILT_IN.text(key, values);
  }

  /**
   * Parses labels from the text of a properties file.
   *
   * @throws IllegalStateException if a label's braces are not closed or not numbered from 0 on
   */
  public static Labels parse(String text) {
    Properties read = new Properties();
    try {
      read.load(new StringReader(text));
    } catch (IOException e) {
      throw new UncheckedIOException("labels", e);
    }
    Map<String, LabelPattern> patterns = new HashMap<>();
    for (String key : read.stringPropertyNames()) {
      patterns.put(key, LabelPattern.of(key, read.getProperty(key)));
    }
    return new Labels(Map.copyOf(patterns));
  }

  /** As {@link #of(String, Object...)}, in the language of these labels. */
  public String text(String key, Object... values) {
    LabelPattern pattern = patterns.get(key);
    if (pattern == null) {
      throw new IllegalStateException("no label is called " + key);
    }
    return pattern.filled(values);
  }

  private static Labels builtIn() {
    try (InputStream file = Labels.class.getResourceAsStream("labels.properties")) {
      if (file == null) {
        throw new IllegalStateException("labels.properties is missing from the program");
      }
      return parse(new String(file.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("labels.properties", e);
    }
  }
}
